package swardcase.sward;

import java.util.ArrayList;
import java.util.List;
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
 * sowing. A number below the low end of its critical range is poor, one at or above the high end
 * good, and one between them settles nothing. Critical values, their sources and what a look costs
 * are rows {@code check.*} of stand-checks.csv. Worked number: Olsen P 11 mg/kg against 12 to 15 is
 * poor, 13 is unsettled, 15 good.
 */
public final class StandGate {

  /** Subspecies of subterranean clover that stands water in winter. */
  private static final String STANDS_WET = "yanninicum";

  private static final double NO_BUFFERING = 0;
  private static final double MIDDLE_BUFFERING = 60;

  /** Buffering beyond which no critical Colwell P was read: it is higher there. */
  private static final double MOST_BUFFERING = 180;

  /** What is looked at, in the order in which it is told. */
  public enum What {
    /** Soil phosphorus, by either test. */
    SOIL_PHOSPHORUS("soil-test"),
    /** Acidity of the topsoil. */
    SOIL_ACIDITY("soil-test"),
    /** Seedlings after the break. */
    SEEDLINGS("seedling-count"),
    /** Nodules on the roots. */
    NODULES("roots-dug-up"),
    /** Rot and pruning of the roots. */
    ROOTS("roots-dug-up"),
    /** Mites and fleas. */
    MITES("mite-look"),
    /** Standing water in winter, against what the cultivar to be sown stands. */
    WET_GROUND("wet-ground-look");

    private final String look;

    What(String look) {
      this.look = look;
    }
  }

  /** What a look found. */
  public enum State {
    /** Not what holds the clover back. */
    GOOD,
    /** It holds the clover back, and would hold a new cultivar back too. */
    POOR,
    /** Known, but between the critical values. */
    BETWEEN,
    /** Nobody has looked. */
    UNKNOWN
  }

  /**
   * What a number is held against, in its unit.
   *
   * @param poorBelow the low end of the critical range
   * @param goodFrom its high end; empty where none is known
   */
  public record Critical(double poorBelow, OptionalDouble goodFrom) {

    private State state(double value) {
      return value < poorBelow
          ? State.POOR
          : value >= goodFrom.orElse(Double.POSITIVE_INFINITY) ? State.GOOD : State.BETWEEN;
    }

    private Critical towards(Critical other, double share) {
      double high = goodFrom.orElseThrow();
      return new Critical(
          poorBelow + share * (other.poorBelow - poorBelow),
          OptionalDouble.of(high + share * (other.goodFrom.orElseThrow() - high)));
    }
  }

  /**
   * One thing looked at.
   *
   * @param what which
   * @param state what was found
   * @param value the number found, in the unit of its column; empty where there is none
   * @param critical what it is held against; empty where it is no number
   * @param look price of looking, or of looking again
   */
  public record Finding(
      What what, State state, OptionalDouble value, Optional<Critical> critical, Assumption look) {}

  private final Tables tables;
  private final List<Finding> findings = new ArrayList<>();

  private StandGate(Tables tables) {
    this.tables = tables;
  }

  /** Everything that is looked at in a paddock, good or not. */
  public static List<Finding> of(Paddock paddock, Cultivar sown, Tables tables) {
    StandGate gate = new StandGate(tables);
    StandSigns signs = paddock.signs();
    if (signs.olsenPMgPerKg().isPresent()) {
      gate.number(What.SOIL_PHOSPHORUS, signs.olsenPMgPerKg(), gate.critical("olsen-p"));
    } else {
      gate.number(
          What.SOIL_PHOSPHORUS,
          signs.colwellPMgPerKg(),
          gate.criticalColwell(signs.phosphorusBufferingIndex()));
    }
    gate.number(What.SOIL_ACIDITY, signs.phCaCl2(), gate.critical("ph-cacl2"));
    gate.number(What.SEEDLINGS, paddock.seedlingsPerM2(), gate.critical("seedlings"));
    gate.number(What.NODULES, signs.nodulesPerPlant(), gate.critical("nodules"));
    gate.seen(What.ROOTS, signs.rootsGood());
    gate.seen(What.MITES, signs.mitesGood());
    gate.seen(What.WET_GROUND, standsWater(paddock, sown));
    return List.copyOf(gate.findings);
  }

  /** As the farm says; else good on drained ground or of a subspecies that stands water. */
  private static Optional<Boolean> standsWater(Paddock paddock, Cultivar sown) {
    boolean good = !paddock.waterlogged() || sown.subspecies().equals(STANDS_WET);
    return paddock.signs().wetGroundGood().or(() -> good ? Optional.of(true) : Optional.empty());
  }

  private Critical critical(String key) {
    Range range = tables.parameter("check." + key).range();
    return new Critical(range.low(), OptionalDouble.of(range.high()));
  }

  /**
   * Critical Colwell P at a phosphorus buffering index, along straight lines between the rows at 0,
   * 60 and 180. Without an index as little as at 0 may be enough; then, and beyond 180, as much as
   * nobody read may be needed, so that no number is good. At 120: poor below 32.5, good from 37.5.
   */
  private Critical criticalColwell(OptionalDouble index) {
    Critical none = critical("colwell-p.buffering-0");
    Critical middle = critical("colwell-p.buffering-60");
    Critical most = critical("colwell-p.buffering-180");
    double at = index.orElse(NO_BUFFERING);
    if (index.isEmpty() || at > MOST_BUFFERING) {
      return new Critical((index.isEmpty() ? none : most).poorBelow, OptionalDouble.empty());
    }
    return at < MIDDLE_BUFFERING
        ? none.towards(middle, at / MIDDLE_BUFFERING)
        : middle.towards(most, (at - MIDDLE_BUFFERING) / (MOST_BUFFERING - MIDDLE_BUFFERING));
  }

  private void number(What what, OptionalDouble value, Critical critical) {
    State state = value.isPresent() ? critical.state(value.getAsDouble()) : State.UNKNOWN;
    add(what, state, value, Optional.of(critical));
  }

  private void seen(What what, Optional<Boolean> good) {
    State state = good.map(is -> is ? State.GOOD : State.POOR).orElse(State.UNKNOWN);
    add(what, state, OptionalDouble.empty(), Optional.empty());
  }

  private void add(What what, State state, OptionalDouble value, Optional<Critical> critical) {
    findings.add(
        new Finding(what, state, value, critical, tables.parameter("check.look." + what.look)));
  }
}
