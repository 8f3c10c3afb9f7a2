package swardcase.sward;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Paddock;
import swardcase.farm.StandSigns;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/**
 * Whether something other than the cultivar may hold a paddock's clover back: the gate before a
 * sowing. A number below the low end of its critical range is poor, one from the high end on good,
 * one between unsettled. The ranges, their sources and what a look costs are rows of
 * stand-checks.csv. Worked number: Olsen P 11 mg/kg against 12 to 15 is poor, 13 between, 15 good.
 */
public final class StandGate {

  /** Buffering of the rows of Colwell P; beyond the last no critical value was read. */
  private static final double MIDDLE_BUFFERING = 60;

  private static final double MOST_BUFFERING = 180;

  private final Tables tables;

  private StandGate(Tables tables) {
    this.tables = tables;
  }

  /** What is looked at, in the order in which it is told; mites with fleas. */
  public enum What {
    SOIL_PHOSPHORUS,
    SOIL_ACIDITY,
    SEEDLINGS,
    NODULES,
    ROOTS,
    MITES,
    WET_GROUND
  }

  /** What a look found: unknown if there was none. */
  public enum State {
    GOOD,
    POOR,
    BETWEEN,
    UNKNOWN
  }

  /**
   * What a number is held against, in its unit.
   *
   * @param poorBelow poor below this
   * @param goodFrom good from here on; empty where nobody can tell
   */
  public record Critical(double poorBelow, OptionalDouble goodFrom) {}

  /**
   * Something that may hold clover back whatever its cultivar.
   *
   * @param what which
   * @param state what was found
   * @param value the number found, in the unit of its column; empty where there is none
   * @param critical what it is held against; empty where it is no number
   * @param cost price of looking; one test tells phosphorus and acidity, one digging nodules and
   *     roots
   * @param costCurrency the currency of that price
   */
  public record LookFirst(
      What what,
      State state,
      OptionalDouble value,
      Optional<Critical> critical,
      Range cost,
      String costCurrency) {}

  /** Everything that is looked at in a paddock, good or not. */
  public static List<LookFirst> of(Paddock paddock, Cultivar sown, Tables tables) {
    StandGate gate = new StandGate(tables);
    StandSigns signs = paddock.signs();
    return List.of(
        signs.olsenPMgPerKg().isPresent()
            ? gate.number(What.SOIL_PHOSPHORUS, signs.olsenPMgPerKg(), gate.critical("olsen-p"))
            : gate.colwell(signs.colwellPMgPerKg(), signs.phosphorusBufferingIndex()),
        gate.number(What.SOIL_ACIDITY, signs.phCaCl2(), gate.critical("ph-cacl2")),
        gate.number(What.SEEDLINGS, paddock.seedlingsPerM2(), gate.critical("seedlings")),
        gate.number(What.NODULES, signs.nodulesPerPlant(), gate.critical("nodules")),
        gate.seen(What.ROOTS, signs.rootsGood()),
        gate.seen(What.MITES, signs.mitesGood()),
        gate.seen(
            What.WET_GROUND,
            isWetGroundUnknown(paddock, sown)
                ? Optional.empty()
                : signs.wetGroundGood().or(() -> Optional.of(true))));
  }

  /**
   * Whether ground is wet, and neither the farm nor the cultivar table says that this stands it.
   */
  public static boolean isWetGroundUnknown(Paddock paddock, Cultivar sown) {
    return paddock.waterlogged()
        && paddock.signs().wetGroundGood().isEmpty()
        && !sown.subspecies().equals("yanninicum");
  }

  private Critical critical(String key) {
    Range range = tables.parameter("check." + key).range();
    return new Critical(range.low(), OptionalDouble.of(range.high()));
  }

  /**
   * By buffering, along straight lines between its rows. Without an index, and beyond the last row,
   * no number is good. At 120: poor below 32.5, good from 37.5.
   */
  private LookFirst colwell(OptionalDouble value, OptionalDouble index) {
    double at = Math.min(index.orElse(0), MOST_BUFFERING);
    boolean isLow = at < MIDDLE_BUFFERING;
    Critical from = critical("colwell-p.buffering-" + (isLow ? 0 : 60));
    Critical to = critical("colwell-p.buffering-" + (isLow ? 60 : 180));
    double share =
        isLow
            ? at / MIDDLE_BUFFERING
            : (at - MIDDLE_BUFFERING) / (MOST_BUFFERING - MIDDLE_BUFFERING);
    double low = from.poorBelow + share * (to.poorBelow - from.poorBelow);
    double high = from.goodFrom.orElseThrow();
    high += share * (to.goodFrom.orElseThrow() - high);
    boolean isRead = index.isPresent() && index.getAsDouble() <= MOST_BUFFERING;
    OptionalDouble good = isRead ? OptionalDouble.of(high) : OptionalDouble.empty();
    return number(What.SOIL_PHOSPHORUS, value, new Critical(low, good));
  }

  private LookFirst number(What what, OptionalDouble value, Critical critical) {
    State state = State.UNKNOWN;
    if (value.isPresent()) {
      boolean good = value.getAsDouble() >= critical.goodFrom.orElse(Double.POSITIVE_INFINITY);
      boolean poor = value.getAsDouble() < critical.poorBelow;
      state = poor ? State.POOR : good ? State.GOOD : State.BETWEEN;
    }
    return found(what, state, value, Optional.of(critical));
  }

  private LookFirst seen(What what, Optional<Boolean> good) {
    State state = good.map(is -> is ? State.GOOD : State.POOR).orElse(State.UNKNOWN);
    return found(what, state, OptionalDouble.empty(), Optional.empty());
  }

  private LookFirst found(
      What what, State state, OptionalDouble value, Optional<Critical> critical) {
    String row = what.name().toLowerCase(Locale.ROOT).replace('_', '-');
    Assumption look = tables.parameter("check.look." + row);
    return new LookFirst(what, state, value, critical, look.range(), look.unit());
  }
}
