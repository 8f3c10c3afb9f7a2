package swardcase.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An invented farm of two paddocks, quick to decide about. */
final class SmallFarm {

  private static final String YAML =
      """
      name: %s
      currency: A$
      growth: Katanning
      mobs:
        - name: ewes
          ewes: 300
          joining_start: 30 January
      sow: Narrikup
      """;

  private SmallFarm() {}

  static Path write(Path folder) throws IOException {
    return write(folder, "Small Farm", "Flat");
  }

  /** The farm with names as they would be typed into the files. */
  static Path write(Path folder, String yamlName, String csvPaddock) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("farm.yaml"), YAML.formatted(yamlName));
    Files.writeString(
        folder.resolve("paddocks.csv"),
        "paddock,area_ha,clover_percent\nHill,30,40\n" + csvPaddock + ",20,50\n");
    Files.writeString(
        folder.resolve("plants.csv"),
        "paddock,cultivar,plants\nHill,Geraldton,40\n" + csvPaddock + ",Yarloop,50\n");
    return folder;
  }
}
