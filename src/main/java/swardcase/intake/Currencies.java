package swardcase.intake;

import java.util.List;
import swardcase.evidence.Assumption;

/** The currency of the tables beside that of the farm. */
final class Currencies {

  /** What the prices and costs of the tables are in. */
  static final String OF_TABLES = "A$";

  private static final List<String> SAME = List.of(OF_TABLES, "AU$", "AUD");

  private Currencies() {}

  /** Whether a farm's currency sign surely means the currency of the tables; {@code $} may not. */
  static boolean isOfTables(String currency) {
    return SAME.contains(currency);
  }

  /** A number that the farm wrote in place of a table's, in the currency of the farm. */
  static Assumption ofFarm(Assumption written, String currency) {
    String unit = written.unit().replace(OF_TABLES, currency);
    return Assumption.ofFarm(written.name(), written.range(), unit).withDoubt(written.doubt());
  }
}
