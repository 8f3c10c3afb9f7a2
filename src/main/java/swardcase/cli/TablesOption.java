package swardcase.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import swardcase.tables.TablesLoader;

/** The program's tables, with a user's rows laid over them if a folder is given. */
final class TablesOption {

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "Folder with rows of your own that replace rows of the program's tables.")
  private Path folder;

  /** The user's folder; null if there is none. */
  Path folder() {
    return folder;
  }

  TablesLoader loader() {
    TablesLoader standard = TablesLoader.standard();
    return folder == null ? standard : standard.with(folder);
  }
}
