package swardcase.intake;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.ActionNumber;
import swardcase.farm.Farm;

/** How old the prices and quotes of a farm are. A year is our own judgement (inferred). */
final class PriceAge {

  private static final int OLD_YEARS = 1;

  private PriceAge() {}

  /** The doubt that prices taken on one day raise on another, if they do. */
  static Optional<Doubt> doubt(LocalDate taken, LocalDate day) {
    if (taken.isAfter(day)) {
      return Optional.of(
          new Doubt(
              "The prices and quotes are dated " + taken + ", which is after " + day + ".",
              "If that is a slip, nobody can tell how old they are: put price_date right."));
    }
    if (taken.plusYears(OLD_YEARS).isBefore(day)) {
      return Optional.of(
          new Doubt(
              "The prices and quotes were taken on "
                  + taken
                  + ", more than a year before "
                  + day
                  + ".",
              "If lamb, supplement, seed or work cost something else by now, the gain is another and"
                  + " the choice may be too: ask again for the prices that move the answer most."));
    }
    return Optional.empty();
  }

  /** Whether any sum of money that can go out of date is the farm's own. */
  static boolean matters(Farm farm) {
    Stream<Assumption> prices =
        Stream.of(
            farm.prices().netValuePerLamb(),
            farm.prices().costPerDryEwe(),
            farm.prices().replacementEwe(),
            farm.prices().spareFeedPerTonneDm(),
            farm.prices().grossMarginPerEwe(),
            farm.prices().nitrogenPerKg(),
            farm.prices().leafTest(),
            farm.prices().plantIdentification(),
            farm.supplement().pricePerTonne());
    Stream<Assumption> ofActions =
        farm.actions().stream()
            .flatMap(
                action ->
                    Stream.concat(
                        Stream.of(action.number(ActionNumber.CROP_MARGIN)),
                        action.costs().stream().map(line -> line.costPerHa())));
    return Stream.concat(prices, ofActions).anyMatch(sum -> sum.setBy() == SetBy.USER);
  }
}
