package swardcase.intake;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Mob;
import swardcase.farm.ScanningBasis;

/** Reads the ewe mobs. */
final class MobReader {

  private static final List<String> FIGURES =
      List.of("pregnant_percent", "scanning_percent", "marking_percent");

  private static final String JOININGS = "joinings-per-ewe";

  private final Defaults defaults;

  MobReader(Defaults defaults) {
    this.defaults = defaults;
  }

  List<Mob> list(Fields farm) {
    List<Mob> mobs = new ArrayList<>();
    for (Fields fields : farm.sections("mobs")) {
      find(fields).ifPresent(mobs::add);
      fields
          .findText("name")
          .filter(name -> mobs.stream().filter(m -> m.name().equals(name)).count() > 1)
          .ifPresent(name -> fields.fault("name", "must differ from the other mobs' names", name));
    }
    return mobs;
  }

  private Optional<Mob> find(Fields mob) {
    int before = mob.faults().count();
    String name = mob.text("name");
    OptionalInt ewes = mob.findWhole("ewes", 1, 1_000_000);
    if (!mob.has("ewes")) {
      mob.fault("ewes", "must be given: the ewes joined in this mob", "");
    }
    List<Double> ages = ages(mob, ewes);
    Assumption weight = defaults.orUser("liveweight", mob.findRange("liveweight_kg", 20, 150), 1);
    Optional<MonthDay> start = joiningStart(mob);
    Assumption weeks = defaults.orUser("joining-weeks", mob.findRange("joining_weeks", 1, 30), 1);
    Assumption pregnant =
        defaults.orUser("pregnant-percent", mob.findRange("pregnant_percent", 1, 100), 1);
    Assumption scanned =
        defaults.orUser("scanning-percent", mob.findRange("scanning_percent", 1, 400), 1);
    Assumption marked =
        defaults.orUser("marking-percent", mob.findRange("marking_percent", 0, 400), 1);
    ScanningBasis basis = basis(mob);
    boolean mayMove = mob.findYesNo("may_move").orElse(true);
    mob.finish();
    if (mob.faults().count() == before) {
      compare(mob, pregnant, scanned, marked);
    }
    return mob.faults()
        .build(
            before,
            mob.place(),
            () ->
                new Mob(
                    name,
                    ewes.orElseThrow(),
                    ages,
                    mob.has("ages") ? SetBy.USER : defaults.get(JOININGS).setBy(),
                    weight,
                    start.orElseThrow(),
                    weeks,
                    pregnant,
                    scanned,
                    marked,
                    basis,
                    mayMove));
  }

  /** Shares by number of joinings, from head counts; equal shares where there are none. */
  private List<Double> ages(Fields mob, OptionalInt ewes) {
    List<Double> heads = mob.numbers("ages", 0, 1_000_000);
    if (!mob.has("ages")) {
      int joinings = (int) Math.round(defaults.get(JOININGS).likely());
      return Collections.nCopies(joinings, 1.0 / joinings);
    }
    double sum = heads.stream().mapToDouble(Double::doubleValue).sum();
    if (!heads.isEmpty() && ewes.isPresent() && Math.abs(sum - ewes.getAsInt()) > 0.5) {
      mob.fault(
          "ages", "must add up to the ewes of the mob, " + ewes.getAsInt(), NumberText.plain(sum));
    }
    return heads.stream().map(head -> head / sum).toList();
  }

  private static Optional<MonthDay> joiningStart(Fields mob) {
    Optional<String> text = mob.findText("joining_start");
    Optional<MonthDay> day = text.flatMap(CalendarText::findDay);
    if (day.isEmpty() && (text.isPresent() || !mob.has("joining_start"))) {
      mob.fault("joining_start", "must be a day such as 30 January or 2027-01-30", text.orElse(""));
    }
    return day;
  }

  /** Figures of the farm must say what they include; those of the tables are unaffected. */
  private static ScanningBasis basis(Fields mob) {
    Optional<ScanningBasis> basis =
        mob.findChoice("figures", ScanningBasis.values(), ScanningBasis::label);
    if (!mob.has("figures") && FIGURES.stream().anyMatch(mob::has)) {
      mob.fault(
          "figures",
          "must say whether these percentages are 'unaffected' or 'observed on these paddocks'",
          "");
    }
    return basis.orElse(ScanningBasis.UNAFFECTED);
  }

  private static void compare(
      Fields mob, Assumption pregnant, Assumption scanned, Assumption marked) {
    if (scanned.likely() < pregnant.likely()) {
      mob.fault(
          "scanning_percent",
          "must not be below pregnant_percent, which is " + shown(pregnant),
          shown(scanned));
    }
    if (marked.likely() > scanned.likely()) {
      mob.fault(
          "marking_percent",
          "must not be above scanning_percent, which is " + shown(scanned),
          shown(marked));
    }
  }

  private static String shown(Assumption percent) {
    return NumberText.plain(percent.likely())
        + (percent.setBy() == SetBy.USER ? "" : " by default: give your own");
  }
}
