package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import swardcase.chance.Drawn;
import swardcase.chance.Spread;
import swardcase.decision.FarmDifference;
import swardcase.report.ComparisonReport.Other;
import swardcase.report.ComparisonReport.PaddockSide;
import swardcase.report.ComparisonReport.Side;

/** The words of a comparison. */
public final class ComparisonWords {

  /** What a plan adds is often a small part of what a change does by itself. */
  private static final double FINER = 10;

  private ComparisonWords() {}

  /** What to do with a paddock in a few words; that a change is not sure is said. */
  public static String verdict(PaddockSide paddock) {
    return PaddockWords.verdict(paddock.call(), paddock.actionName(), paddock.sure());
  }

  /** Whether there is no difference in any draw. */
  public static boolean isNothing(FarmDifference difference) {
    return isNothing(difference.byItself()) && isNothing(difference.planAdds());
  }

  private static boolean isNothing(Spread part) {
    return part.standardError() == 0 && part.drawn().equals(Drawn.exactly(0));
  }

  /** What is said in place of a difference of nothing. */
  public static String nothing() {
    return Texts.get("comparison.none");
  }

  /**
   * The rows of a difference: what, the mean with its ends, and two standard errors of it. By one
   * unit; the first two add up to the last.
   */
  public static List<List<String>> rows(FarmDifference difference) {
    Spread together = difference.together();
    Spread[] parts = {difference.byItself(), difference.planAdds()};
    double unit = MoneyUnit.of(Stream.of(parts).mapToDouble(part -> part.drawn().mean() / FINER));
    double sum = RoundedSums.total(together.mean(), unit);
    double[] means = RoundedSums.parts(sum, new double[] {parts[0].mean(), parts[1].mean()}, unit);
    return List.of(
        row("comparison.byItself", means[0], parts[0], unit),
        row("comparison.planAdds", means[1], parts[1], unit),
        row("comparison.together", sum, together, unit));
  }

  private static List<String> row(String key, double mean, Spread part, double unit) {
    return List.of(
        Texts.get(key),
        Words.range(Drawn.of(mean, part.low(), part.high()), unit),
        within(2 * part.standardError()));
  }

  private static String within(double error) {
    return Words.rounded(error, Math.max(1, Words.step(error, error)));
  }

  /**
   * What has to be known to read the differences from a farm.
   *
   * @param first that farm
   * @param called what it is called
   * @param compared those compared with it
   */
  public static List<String> notes(Side first, String called, List<Other> compared) {
    List<Side> others = compared.stream().map(Other::side).toList();
    List<String> notes = new ArrayList<>();
    notes.add(Texts.get("comparison.note"));
    notes.add(Texts.get("comparison.counted", called));
    if (others.stream().anyMatch(side -> side.scenario().isPresent() && side.figuresObserved())) {
      notes.add(Texts.get("comparison.observed"));
    }
    for (Other other : compared) {
      List<String> notHeld = other.difference().notHeld();
      if (!notHeld.isEmpty()) {
        notes.add(
            Texts.get("comparison.notHeld", other.side().called(), String.join(", ", notHeld)));
      }
      if (!other.difference().heldWithinLimits()) {
        notes.add(Texts.get("comparison.beyondLimits", other.side().called()));
      }
    }
    for (Side other : others) {
      int years = other.farm().horizonYears();
      double rate = other.farm().discountRatePercent();
      if (years != first.farm().horizonYears()) {
        notes.add(
            Texts.get(
                "comparison.years",
                Texts.capital(called),
                first.farm().horizonYears(),
                other.called(),
                years));
      }
      if (rate != first.farm().discountRatePercent()) {
        notes.add(
            Texts.get(
                "comparison.rate",
                Texts.capital(called),
                Words.exact(first.farm().discountRatePercent()),
                other.called(),
                Words.exact(rate)));
      }
    }
    return notes;
  }
}
