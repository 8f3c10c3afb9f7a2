package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class PrinterTest {

  @Test
  void minus_inACharsetWithoutIt_becomesAHyphen() {
    assertThat(written(StandardCharsets.US_ASCII)).isEqualTo("a loss of -5 and -7");
  }

  @Test
  void minus_inUtf8_stays() {
    assertThat(written(StandardCharsets.UTF_8)).isEqualTo("a loss of \u22125 and \u22127");
  }

  private static String written(Charset charset) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PrintWriter printer = new Printer(bytes, charset)) {
      printer.print("a loss of \u22125");
      printer.print(" and \u2212");
      printer.print(7);
    }
    return bytes.toString(charset);
  }
}
