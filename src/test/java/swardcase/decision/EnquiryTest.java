package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swardcase.chance.DrawnInformation;
import swardcase.decision.Enquiry.Advice;

class EnquiryTest {

  private static Advice advice(double worth, double error) {
    return Enquiry.advice(new DrawnInformation(worth, error), 200);
  }

  @Test
  void advice_nearThePrice_isAboutEven() {
    assertThat(advice(500, 50)).isEqualTo(Advice.WORTH_DOING);
    assertThat(advice(250, 50)).isEqualTo(Advice.ABOUT_EVEN);
    assertThat(advice(50, 20)).isEqualTo(Advice.NOT_WORTH_DOING);
    assertThat(advice(0, 500)).isEqualTo(Advice.NOT_WORTH_DOING);
  }
}
