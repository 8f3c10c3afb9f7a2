package swardcase.outcome;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.HalfMonths;
import swardcase.reproduction.FlockEffect;

/**
 * What a run of the farm as it stands would have a farm write down in each of its recorded years:
 * the workspace of one thread.
 *
 * <p>A mob of which the record tells neither paddocks nor another joining start is taken to have
 * grazed and joined as now, so that its years are alike. Where it names the paddocks grazed before
 * joining, the mob took each by the feed it gives, in the weeks before and during joining and not
 * at other times. Ewes made barren earlier are those of grazing as now.
 */
public final class RecordedYears {

  /** Years of one mob that are expected to be alike. */
  private record Alike(int mob, List<Integer> paddocks, int joiningDay) {}

  private final Farm farm;
  private final List<Alike> kinds = new ArrayList<>();
  private final int[] kindOf;
  private final int[] mobOf;
  private final double[] share;
  private final double[] tonnes;

  /** A workspace for the records of a farm. */
  public RecordedYears(Farm farm) {
    this.farm = farm;
    List<FlockRecord> records = farm.records();
    List<String> paddocks = farm.paddocks().stream().map(paddock -> paddock.name()).toList();
    List<String> mobs = farm.mobs().stream().map(mob -> mob.name()).toList();
    kindOf = new int[records.size()];
    mobOf = new int[records.size()];
    for (int r = 0; r < kindOf.length; r++) {
      FlockRecord record = records.get(r);
      mobOf[r] = mobs.indexOf(record.mob());
      MonthDay day = record.joiningStart().orElse(farm.mobs().get(mobOf[r]).joiningStart());
      List<Integer> grazed =
          record.grazedBefore().stream().map(paddocks::indexOf).sorted().distinct().toList();
      Alike kind = new Alike(mobOf[r], grazed, HalfMonths.dayOfYear(day));
      if (!kinds.contains(kind)) {
        kinds.add(kind);
      }
      kindOf[r] = kinds.indexOf(kind);
    }
    share = new double[kinds.size()];
    tonnes = new double[farm.feedYear().seasons().size()];
  }

  /** Reads a run that has just been set. */
  public void read(OutcomeFunction run) {
    for (int k = 0; k < share.length; k++) {
      share[k] = share(run, kinds.get(k));
    }
    for (int season = 0; season < tonnes.length; season++) {
      double bought = Arrays.stream(run.feedNow(season).boughtMjPerHa).sum();
      tonnes[season] = bought * farm.areaHa() * run.tonnesPerMj();
    }
  }

  private static double share(OutcomeFunction run, Alike kind) {
    FlockEffect mob = run.flock(kind.mob());
    if (kind.paddocks().isEmpty()) {
      return mob.shareNow(kind.joiningDay());
    }
    double taken = 0;
    double strong = 0;
    for (int i : kind.paddocks()) {
      taken += run.feedWeight(i);
      strong += run.feedWeight(i) * run.greenDose(i);
    }
    return taken > 0
        ? mob.shareNow(kind.joiningDay(), strong / taken)
        : mob.shareNow(kind.joiningDay());
  }

  /** Place of the mob of a record. */
  public int mob(int record) {
    return mobOf[record];
  }

  /** Expected share of the joined ewes in lamb, of a record. */
  public double inLamb(int record) {
    return share[kindOf[record]];
  }

  /** Supplement that the farm would buy in a season type, t as fed. */
  public double supplementTonnes(int season) {
    return tonnes[season];
  }
}
