package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swardcase.chance.DrawnInformation;
import swardcase.decision.Purchase.Advice;

class PurchaseTest {

  @Test
  void advice_valueAgainstPrice_allowsForTheError() {
    assertThat(new Purchase(0, 500, 50, 200).advice()).isEqualTo(Advice.WORTH_DOING);
    assertThat(new Purchase(0, 250, 50, 200).advice()).isEqualTo(Advice.ABOUT_EVEN);
    assertThat(new Purchase(0, 50, 20, 200).advice()).isEqualTo(Advice.NOT_WORTH_DOING);
    assertThat(new Purchase(0, 0, 500, 200).advice()).isEqualTo(Advice.NOT_WORTH_DOING);
  }

  @Test
  void bestPlants_severalWorthDoing_isTheOneThatLeavesMost() {
    List<Purchase> plants =
        List.of(
            new Purchase(20, 100, 5, 40),
            new Purchase(50, 300, 5, 100),
            new Purchase(100, 340, 5, 200));
    PaddockFindings paddock =
        new PaddockFindings(
            Verdict.TOO_CLOSE,
            Optional.empty(),
            Optional.empty(),
            List.of(),
            false,
            List.of(),
            0,
            Optional.empty(),
            Optional.empty(),
            new DrawnInformation(400, 5),
            new Purchase(0, 0, 0, 200),
            plants);
    assertThat(paddock.bestPlants()).contains(plants.get(1));
  }
}
