package swardcase.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where the letters of a PDF stand. */
final class PdfText extends PDFTextStripper {

  /** Letters drawn in one go, in points from the top left corner of their page. */
  record Run(int page, String text, double left, double right, double baseline, double size) {}

  private final List<Run> runs = new ArrayList<>();

  private PdfText() {
    setSortByPosition(false);
  }

  static List<Run> runs(byte[] pdf) throws IOException {
    PdfText text = new PdfText();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      text.getText(document);
    }
    return text.runs;
  }

  /** The text in the order it was drawn. */
  static String of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  static String ofPage(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      return stripper.getText(document);
    }
  }

  static int pages(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    }
  }

  @Override
  protected void writeString(String text, List<TextPosition> letters) {
    TextPosition first = letters.get(0);
    TextPosition last = letters.get(letters.size() - 1);
    runs.add(
        new Run(
            getCurrentPageNo(),
            text,
            first.getXDirAdj(),
            last.getXDirAdj() + last.getWidthDirAdj(),
            first.getYDirAdj(),
            first.getFontSizeInPt()));
  }
}
