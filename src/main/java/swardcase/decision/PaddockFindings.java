package swardcase.decision;

import java.util.List;
import java.util.Optional;
import swardcase.chance.DrawnInformation;
import swardcase.draws.Spread;

/**
 * How sure the answer for a paddock is.
 *
 * @param verdict what to do
 * @param courses every choice, keeping first
 * @param weighed place of the choice the verdict is about: the planned one, or the likeliest to pay
 *     if the plan keeps the paddock; 0 if nothing else can be done
 * @param alone gain of what is planned with every other paddock kept; nil if the paddock is kept
 * @param perfect value of knowing everything before choosing for this paddock
 * @param leafTest a laboratory formononetin test of this paddock
 * @param plants identifying more plants, by rising number; empty if nobody has looked at one yet,
 *     since nothing then says what would be found
 */
public record PaddockFindings(
    Verdict verdict,
    List<CourseFindings> courses,
    int weighed,
    Spread alone,
    DrawnInformation perfect,
    Purchase leafTest,
    List<Purchase> plants) {

  /** Copies the lists. */
  public PaddockFindings {
    courses = List.copyOf(courses);
    plants = List.copyOf(plants);
  }

  /** The number of plants that brings most beyond its price, if any is worth doing. */
  public Optional<Purchase> bestPlants() {
    Optional<Purchase> best = Optional.empty();
    for (Purchase purchase : plants) {
      if (purchase.advice() == Purchase.Advice.WORTH_DOING
          && (best.isEmpty() || purchase.net() > best.get().net())) {
        best = Optional.of(purchase);
      }
    }
    return best;
  }
}
