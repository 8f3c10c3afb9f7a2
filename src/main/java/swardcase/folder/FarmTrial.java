package swardcase.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import swardcase.check.FaultsException;
import swardcase.intake.FarmFolder;
import swardcase.tables.Tables;

/** Reads the files of a farm as they would be, in a folder of their own. */
public final class FarmTrial {

  private FarmTrial() {}

  /**
   * Reads them.
   *
   * @param texts by the names of the files
   * @param beside a folder whose other files stand beside them
   * @throws FaultsException with all faults, if there is one
   */
  public static void read(Map<String, String> texts, Optional<Path> beside, Tables tables) {
    try {
      Path trial = Files.createTempDirectory("swardcase");
      try {
        for (String name : FarmFolder.FILES) {
          Optional<Path> other = beside.map(folder -> folder.resolve(name));
          if (texts.containsKey(name)) {
            Files.writeString(trial.resolve(name), texts.get(name));
          } else if (other.filter(Files::isRegularFile).isPresent()) {
            Files.copy(other.get(), trial.resolve(name));
          }
        }
        FarmFolder.read(trial, tables);
      } finally {
        for (String name : FarmFolder.FILES) {
          Files.deleteIfExists(trial.resolve(name));
        }
        Files.delete(trial);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
