package swardcase.paper;

import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * An empty document with its two faces: what a sheet needs before anything is known of the farm, so
 * that it can be made while the farm is still being worked out. It serves for one sheet.
 */
public final class BlankSheet {

  private final PDDocument document = new PDDocument();
  private final Lettering lettering = new Lettering(document);

  PDDocument document() {
    return document;
  }

  Lettering lettering() {
    return lettering;
  }
}
