package swardcase.cli;

import java.nio.file.Path;
import java.util.Optional;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Loads the program's tables, with a user's rows laid over them if there are any. */
final class TablesOption {

  private TablesOption() {}

  static Tables load(Optional<Path> overrides) {
    TablesLoader standard = TablesLoader.standard();
    return overrides.map(standard::with).orElse(standard).load();
  }
}
