package swardcase.money;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swardcase.evaluation.MoneyChecks;
import swardcase.evaluation.PublishedCheck;

/** Published and separately worked values, sources beside them in money.csv. */
class PublishedMoneyTest {

  @Test
  void values_ofEveryRow_areWithinHalfOfTheLastDigit() {
    assertThat(MoneyChecks.all()).hasSizeGreaterThan(40).allMatch(PublishedCheck::agrees);
  }
}
