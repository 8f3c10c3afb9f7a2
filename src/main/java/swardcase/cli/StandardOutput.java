package swardcase.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.util.Locale;

/** What is printed; knows whether it stopped because whoever read it had read enough. */
final class StandardOutput extends FileOutputStream {

  private boolean readerGone;

  StandardOutput() {
    super(FileDescriptor.out);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    try {
      super.write(bytes, from, length);
    } catch (IOException failure) {
      readerGone = ("" + failure.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
      throw failure;
    }
  }

  /** Whether the reader went before the end, as {@code head} does. */
  boolean readerGone() {
    return readerGone;
  }
}
