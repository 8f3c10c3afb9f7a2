package swardcase.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Writes arrays of numbers as files that numpy reads: NPY 1.0, doubles, little end first. */
public final class NumpyFiles {

  private static final int ALIGNMENT = 64;
  private static final int BEFORE_TEXT = 10;

  private final Path folder;

  /** Files go into this folder, which is made if it is not there. */
  public NumpyFiles(Path folder) {
    this.folder = folder;
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes {@code name.npy}.
   *
   * @param shape lengths of the dimensions, the last one running fastest; none for one number
   */
  public void write(String name, double[] values, int... shape) {
    int size = Arrays.stream(shape).reduce(1, (a, b) -> a * b);
    if (size != values.length) {
      throw new IllegalArgumentException(
          name + " has " + values.length + " values, not " + Arrays.toString(shape));
    }
    String lengths =
        Arrays.stream(shape).mapToObj(length -> length + ",").collect(Collectors.joining());
    String text = "{'descr': '<f8', 'fortran_order': False, 'shape': (" + lengths + "), }";
    int unpadded = BEFORE_TEXT + text.length() + 1;
    text += " ".repeat(Math.floorMod(-unpadded, ALIGNMENT)) + "\n";
    ByteBuffer bytes =
        ByteBuffer.allocate(BEFORE_TEXT + text.length() + Double.BYTES * values.length)
            .order(ByteOrder.LITTLE_ENDIAN)
            .put((byte) 0x93)
            .put("NUMPY".getBytes(StandardCharsets.US_ASCII))
            .put((byte) 1)
            .put((byte) 0)
            .putShort((short) text.length())
            .put(text.getBytes(StandardCharsets.US_ASCII));
    for (double value : values) {
      bytes.putDouble(value);
    }
    try {
      Files.write(folder.resolve(name + ".npy"), bytes.array());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
