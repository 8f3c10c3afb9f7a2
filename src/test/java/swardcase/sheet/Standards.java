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

  private Standards() {}

  /** Fails with the first faults found. */
  public static void assertKept(String name, byte[] pdf) throws Exception {
    for (String standard : List.of("ua1", "2a")) {
      PDFAFlavour flavour = PDFAFlavour.fromString(standard);
      try (PDFAParser parser =
          Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour)) {
        ValidationResult result =
            Foundries.defaultInstance().createValidator(flavour, false).validate(parser);
        assertThat(
                result.getTestAssertions().stream()
                    .map(fault -> fault.getRuleId() + " " + fault.getMessage())
                    .distinct()
                    .limit(5))
            .as("%s, %s", name, standard)
            .isEmpty();
        assertThat(result.isCompliant()).as("%s, %s", name, standard).isTrue();
      }
    }
  }
}
