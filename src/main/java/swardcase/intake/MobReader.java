package swardcase.intake;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import swardcase.check.NumberText;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Mob;
import swardcase.farm.ScanningBasis;
import swardcase.reading.CalendarText;
import swardcase.reading.Fields;

/** Reads the ewe mobs. */
final class MobReader {

  private static final Map<String, ScanningBasis> BASES =
      Fields.words(ScanningBasis.values(), ScanningBasis::label);

  private static final int MOST_EWES = 1_000_000;
  private static final String JOININGS = "joinings-per-ewe";

  private final Defaults defaults;

  MobReader(Defaults defaults) {
    this.defaults = defaults;
  }

  List<Mob> list(Fields farm) {
    List<Mob> mobs = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Fields mob : farm.sections("mobs", "'- name: Ewes'")) {
      mob.make(() -> read(mob)).ifPresent(mobs::add);
      if (mob.has("name") && !names.add(mob.text("name"))) {
        mob.fault("name", "must differ from the other mobs' names");
      }
    }
    return mobs;
  }

  private Mob read(Fields mob) {
    int before = mob.faults().count();
    Assumption pregnant = figure(mob, "pregnant_percent", 1, 100);
    Assumption scanned = figure(mob, "scanning_percent", 1, 400);
    Assumption marked = figure(mob, "marking_percent", 0, 400);
    ScanningBasis basis = basis(mob);
    if (mob.faults().count() == before) {
      compare(mob, pregnant, scanned, marked);
    }
    return new Mob(
        mob.text("name"),
        mob.whole("ewes", 1, MOST_EWES),
        ages(mob),
        mob.has("ages") ? SetBy.USER : defaults.get(JOININGS).setBy(),
        defaults.orUser("liveweight", mob.findRange("liveweight_kg", 20, 150)),
        joiningStart(mob),
        defaults.orUser("joining-weeks", mob.findRange("joining_weeks", 1, 30)),
        pregnant,
        scanned,
        marked,
        basis,
        mob.findYesNo("may_move").orElse(true));
  }

  private Assumption figure(Fields mob, String key, double least, double most) {
    return defaults.orUser(key.replace('_', '-'), mob.findRange(key, least, most));
  }

  /** Shares by number of joinings, from head counts; equal shares where there are none. */
  private List<Double> ages(Fields mob) {
    if (!mob.has("ages")) {
      int joinings = (int) Math.round(defaults.get(JOININGS).likely());
      return Collections.nCopies(joinings, 1.0 / joinings);
    }
    List<Double> heads = mob.numbers("ages", 0, MOST_EWES);
    OptionalInt ewes = mob.findWhole("ewes", 1, MOST_EWES);
    double sum = heads.stream().mapToDouble(Double::doubleValue).sum();
    if (!heads.isEmpty() && ewes.isPresent() && Math.abs(sum - ewes.getAsInt()) > 0.5) {
      String rule = "must add up to the ewes of the mob, " + ewes.getAsInt();
      mob.found("ages", rule, NumberText.plain(sum));
    }
    return heads.stream().map(head -> head / sum).toList();
  }

  /** The day the rams go in; null after a fault. */
  private static MonthDay joiningStart(Fields mob) {
    Optional<MonthDay> day = mob.findText("joining_start").flatMap(CalendarText::findDay);
    if (day.isEmpty()) {
      mob.fault("joining_start", "must be a day such as 30 January or 2027-01-30");
    }
    return day.orElse(null);
  }

  /** Figures of the farm must say what they include; those of the tables are unaffected. */
  private static ScanningBasis basis(Fields mob) {
    Optional<ScanningBasis> basis = mob.findChoice("figures", BASES);
    boolean told =
        Stream.of("pregnant_percent", "scanning_percent", "marking_percent").anyMatch(mob::has);
    if (told && !mob.has("figures")) {
      mob.fault(
          "figures",
          "must say whether these percentages are 'unaffected' or 'observed on these paddocks'");
    }
    return basis.orElse(ScanningBasis.UNAFFECTED);
  }

  private static void compare(
      Fields mob, Assumption pregnant, Assumption scanned, Assumption marked) {
    if (scanned.likely() < pregnant.likely()) {
      String rule = "must not be below pregnant_percent, which is " + shown(pregnant);
      mob.found("scanning_percent", rule, shown(scanned));
    }
    if (marked.likely() > scanned.likely()) {
      String rule = "must not be above scanning_percent, which is " + shown(scanned);
      mob.found("marking_percent", rule, shown(marked));
    }
  }

  private static String shown(Assumption percent) {
    return NumberText.plain(percent.likely())
        + (percent.setBy() == SetBy.USER ? "" : " by default: give your own");
  }
}
