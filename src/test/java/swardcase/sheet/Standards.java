package swardcase.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Both standards a sheet keeps to, by an independent validator: PDF/UA-1 and PDF/A-2a. */
public final class Standards {

  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static final List<PDFAFlavour> STANDARDS =
      List.of(PDFAFlavour.fromString("ua1"), PDFAFlavour.fromString("2a"));

  private Standards() {}

  /** Fails with the first faults found; the document is read once for both. */
  public static void assertKept(String name, byte[] pdf) throws Exception {
    try (PDFAParser parser =
        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), STANDARDS.get(0))) {
      parser.setFlavours(STANDARDS);
      List<ValidationResult> results =
          Foundries.defaultInstance().createValidator(STANDARDS).validateAll(parser);
      assertThat(results)
          .extracting(ValidationResult::getPDFAFlavour)
          .containsExactlyInAnyOrderElementsOf(STANDARDS);
      for (ValidationResult result : results) {
        assertThat(
                result.getTestAssertions().stream()
                    .map(fault -> fault.getRuleId() + " " + fault.getMessage())
                    .distinct()
                    .limit(5))
            .as("%s, %s", name, result.getPDFAFlavour())
            .isEmpty();
        assertThat(result.isCompliant()).as("%s, %s", name, result.getPDFAFlavour()).isTrue();
      }
    }
  }
}
