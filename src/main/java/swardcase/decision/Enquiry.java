package swardcase.decision;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import swardcase.chance.DrawnInformation;
import swardcase.outcome.Course;

/**
 * Something that can be found out before choosing: what that is worth, what it costs, and what its
 * result would change.
 *
 * @param kind which kind of thing
 * @param place of the paddock that is walked or sampled, or of the mob that is scanned; of no
 *     account for a number
 * @param number the number that would be known; empty for a walk, plants, a leaf test or a scan
 * @param plants plants to identify; 0 for anything else
 * @param worth on average, present value
 * @param price what it costs; empty where it cannot simply be bought
 * @param advice whether to do it; without a price, who could tell
 * @param changes answers that its result may change, the likeliest first; none if it is worth
 *     nothing
 * @param settles paddocks whose answer is open, and which nothing else would settle sooner
 */
public record Enquiry(
    Kind kind,
    int place,
    Optional<Unknown> number,
    int plants,
    DrawnInformation worth,
    OptionalDouble price,
    Advice advice,
    List<Change> changes,
    List<Integer> settles) {

  private static final double ERRORS = 2;

  /** Which kind of thing. */
  public enum Kind {
    /** A first walk through a paddock that nobody looked at, so many plants identified. */
    WALK,
    /** So many more plants of a paddock identified. */
    PLANTS,
    /** A laboratory test of a paddock's clover leaf. */
    LEAF_TEST,
    /** A mob scanned for ewes in lamb after the coming joining, grazed as now. */
    SCAN,
    /** A number known for certain. */
    NUMBER
  }

  /** What to do about it. */
  public enum Advice {
    /** Worth its price, beyond the error of the draws. */
    WORTH_DOING,
    /** Somebody on the farm could ask, measure or get a quote. */
    ASK,
    /** Only research can tell. */
    RESEARCH,
    /** Value and price are too near to each other to say. */
    ABOUT_EVEN,
    /** Not worth its price, beyond the error of the draws. */
    NOT_WORTH_DOING;

    /** Whether it is advised, or would be if somebody could tell. */
    public boolean isWorthKnowing() {
      return this == WORTH_DOING || this == ASK || this == RESEARCH;
    }
  }

  /**
   * An answer that a result would change.
   *
   * @param place the paddock, or behind the paddocks the rule of the farm, that is chosen anew;
   *     empty for keeping everything
   * @param to what is chosen then; of a rule the action is its choice
   * @param chance that the result comes out so, 0 to 1
   * @param ifHigh whether that is when it comes out high rather than low
   */
  public record Change(OptionalInt place, Optional<Course> to, double chance, boolean ifHigh) {}

  /** Whether something with a price is worth it. */
  static Advice advice(DrawnInformation worth, double price) {
    double net = worth.value() - price;
    double margin = ERRORS * worth.standardError();
    if (net > margin) {
      return Advice.WORTH_DOING;
    }
    return net < -margin || worth.value() == 0 ? Advice.NOT_WORTH_DOING : Advice.ABOUT_EVEN;
  }

  /** The paddock that is walked or sampled; empty for a number or a scan. */
  public OptionalInt paddock() {
    return kind == Kind.NUMBER || kind == Kind.SCAN ? OptionalInt.empty() : OptionalInt.of(place);
  }

  /** The mob that is scanned; empty for anything else. */
  public OptionalInt mob() {
    return kind == Kind.SCAN ? OptionalInt.of(place) : OptionalInt.empty();
  }

  /** Value less price. */
  double net() {
    return worth.value() - price.orElse(0);
  }

  /** The same, said to settle a paddock too. */
  Enquiry settling(int paddock) {
    return with(changes, Stream.concat(settles.stream(), Stream.of(paddock)).toList());
  }

  /** The same number, known for two reasons: the greater worth, and all that it would change. */
  Enquiry and(Enquiry other) {
    List<OptionalInt> places = changes.stream().map(Change::place).toList();
    Enquiry more = worth.value() < other.worth.value() ? other : this;
    return more.with(
        Stream.concat(
                changes.stream(),
                other.changes.stream().filter(change -> !places.contains(change.place())))
            .toList(),
        Stream.concat(settles.stream(), other.settles.stream()).distinct().toList());
  }

  private Enquiry with(List<Change> changes, List<Integer> settles) {
    return new Enquiry(kind, place, number, plants, worth, price, advice, changes, settles);
  }
}
