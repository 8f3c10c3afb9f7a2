package swardcase.tables;

import java.util.List;
import java.util.Locale;

/** The files of the reference tables, each with the columns that make up the key of a row. */
enum TableFile {
  SOURCES("key"),
  CULTIVARS("name"),
  DISTRICTS("name"),
  PASTURE_QUALITY("profile", "month"),
  SUPPLEMENTS("name"),
  DRY_STOCK("stock"),
  ACTIONS("key"),
  ACTION_VALUES("action", "value"),
  ACTION_COSTS("action", "name"),
  FEED_PARAMETERS("key"),
  STAND_PARAMETERS("key"),
  STAND_CHECKS("key"),
  DOSE_RESPONSE("key"),
  FARM_DEFAULTS("key");

  /** The files that hold nothing but parameters of the calculators. */
  static final List<TableFile> PARAMETERS =
      List.of(FEED_PARAMETERS, STAND_PARAMETERS, STAND_CHECKS, DOSE_RESPONSE, FARM_DEFAULTS);

  private final List<String> key;

  TableFile(String... key) {
    this.key = List.of(key);
  }

  /** The name without its ending, such as {@code dry-stock}. */
  String title() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  String fileName() {
    return title() + ".csv";
  }

  List<String> key() {
    return key;
  }
}
