package swardcase.cli;

import java.nio.file.Path;
import swardcase.tables.TablesLoader;

/** The program's tables, with a user's rows laid over them if a folder is given. */
final class TablesOption {

  private TablesOption() {}

  static TablesLoader loader(Path overrides) {
    TablesLoader standard = TablesLoader.standard();
    return overrides == null ? standard : standard.with(overrides);
  }
}
