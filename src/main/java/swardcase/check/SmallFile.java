package swardcase.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads a file whole, if it is one and not larger than it may be. */
public final class SmallFile {

  private SmallFile() {}

  /** Why a file cannot be read, as the rule it breaks: a device and a pipe are no files. */
  public static Optional<String> refusal(Path file, int mostBytes) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Optional.of("must be a file");
    }
    return Files.size(file) > mostBytes ? Optional.of(tooLarge(mostBytes)) : Optional.empty();
  }

  /**
   * The bytes of a file, or empty after {@code refused} was told why not. No more is read than may
   * be, even if the file grows meanwhile.
   */
  public static Optional<byte[]> find(Path file, int mostBytes, Consumer<String> refused) {
    try {
      Optional<String> refusal = refusal(file, mostBytes);
      if (refusal.isPresent()) {
        refused.accept(refusal.get());
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(mostBytes + 1);
        if (bytes.length <= mostBytes) {
          return Optional.of(bytes);
        }
        refused.accept(tooLarge(mostBytes));
      }
    } catch (IOException unreadable) {
      refused.accept("must be readable");
    }
    return Optional.empty();
  }

  private static String tooLarge(int mostBytes) {
    return "must not be larger than " + mostBytes / 1_000_000 + " MB";
  }
}
