package swardcase.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.intake.Scenario;
import swardcase.intake.ScenarioFile;

/** The farm folder, which is read anew for every request. */
final class Disk {

  private final Setup setup;

  Disk(Setup setup) {
    this.setup = setup;
  }

  /**
   * The farm.
   *
   * @param print tells this state of the files from any other
   * @param base as the files have it
   * @param farm with the changes of the page
   */
  record Read(String print, LoadedFarm base, LoadedFarm farm) {}

  /** The farm with these changes; what is read stands in the files at one moment. */
  Read read(Asked asked) {
    String before = print();
    LoadedFarm base = FarmFolder.read(setup.folder(), setup.tables());
    LoadedFarm farm = Levers.scenario(base.farm(), asked).map(text -> under(text)).orElse(base);
    String after = print();
    return before.equals(after)
        ? new Read(after, base.on(setup.day()), farm.on(setup.day()))
        : read(asked);
  }

  private LoadedFarm under(String text) {
    Scenario scenario = ScenarioFile.parse("page", text).get(0);
    return FarmFolder.read(setup.folder(), setup.tables(), scenario);
  }

  /** Tells the files of the folder as they are now from any other state of them. */
  String print() {
    StringBuilder all = new StringBuilder();
    for (String name : FarmFolder.FILES) {
      all.append(name).append(' ').append(print(setup.folder().resolve(name))).append('\n');
    }
    return hash(all.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String print(Path file) {
    try {
      return Files.isRegularFile(file) ? hash(Files.readAllBytes(file)) : "none";
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The first half of SHA-256, in hexadecimal digits. */
  static String hash(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest, 0, digest.length / 2);
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  /** The names of the files a farm folder may hold. */
  static List<String> names() {
    return FarmFolder.FILES;
  }
}
