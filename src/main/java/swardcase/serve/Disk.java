package swardcase.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Collectors;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.intake.ScenarioFile;

/** The farm folder, which is read anew for every request. */
final class Disk {

  private record Known(String print, LoadedFarm farm) {}

  private final Setup setup;
  private volatile Known known = new Known("", null);

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

  /** The farm as its files have it. */
  LoadedFarm base() {
    return read(Asked.NOTHING).base();
  }

  /** The farm with these changes; what is read stands in the files at one moment. */
  Read read(Asked asked) {
    String before = print();
    Known base = known;
    if (!base.print().equals(before)) {
      base = new Known(before, FarmFolder.read(setup.folder(), setup.tables()));
      known = base;
    }
    LoadedFarm farm = base.farm();
    LoadedFarm under = Levers.scenario(farm.farm(), asked).map(this::under).orElse(farm);
    return before.equals(print())
        ? new Read(before, farm.on(setup.day()), under.on(setup.day()))
        : read(asked);
  }

  private LoadedFarm under(String scenario) {
    return FarmFolder.read(
        setup.folder(), setup.tables(), ScenarioFile.parse("page", scenario).get(0));
  }

  /** Tells the files of the folder as they are now from any other state of them. */
  String print() {
    return hash(
        FarmFolder.FILES.stream()
            .map(name -> name + " " + print(setup.folder().resolve(name)) + "\n")
            .collect(Collectors.joining())
            .getBytes(StandardCharsets.UTF_8));
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
}
