package swardcase.intake;

import java.util.List;

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
}
