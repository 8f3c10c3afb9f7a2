package swardcase.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where the letters of a PDF stand. */
public final class PdfText extends PDFTextStripper {

  /** Letters drawn in one go, in points from the top left corner of their page. */
  public record Run(
      int page, String text, double left, double right, double baseline, double size) {}

  private final List<Run> runs = new ArrayList<>();

  private PdfText() {
    setSortByPosition(false);
  }

  public static List<Run> runs(byte[] pdf) throws IOException {
    PdfText text = new PdfText();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      text.getText(document);
    }
    return text.runs;
  }

  /** The text in the order it was drawn. */
  public static String of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  public static String ofPage(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      return stripper.getText(document);
    }
  }

  public static int pages(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    }
  }

  /**
   * What stands in each paragraph, heading, cell and item of a page; what pictures say is left out.
   */
  public static List<String> elements(byte[] pdf, int page) throws IOException {
    PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      extractor.processPage(document.getPage(page - 1));
    }
    return extractor.getMarkedContents().stream()
        .filter(content -> !List.of("Figure", "Artifact").contains(content.getTag()))
        .map(PdfText::inOneLine)
        .toList();
  }

  private static String inOneLine(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    float baseline = Float.NaN;
    for (Object each : content.getContents()) {
      if (each instanceof TextPosition letter) {
        if (!Float.isNaN(baseline) && letter.getYDirAdj() != baseline) {
          text.append(' ');
        }
        baseline = letter.getYDirAdj();
        text.append(letter.getUnicode());
      }
    }
    return text.toString();
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
