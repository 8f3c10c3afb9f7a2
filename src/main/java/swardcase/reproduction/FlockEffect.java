package swardcase.reproduction;

import java.util.Arrays;
import java.util.List;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Farm;
import swardcase.farm.HalfMonths;
import swardcase.farm.Mob;
import swardcase.farm.ScanningBasis;
import swardcase.tables.ResponseStory;
import swardcase.tables.Tables;

/**
 * Ewes in lamb of one mob, year by year, from the strength of the clover it grazes.
 *
 * <p>The dose of a half-month is the strength of the paddocks (formononetin as a per cent of green
 * intake) times the share of intake that is green then. Strength may be lower in the weeks before
 * and during joining, when paddocks are held free of ewes. Green seasons before the coming year are
 * taken to have been like now, so that the ewes in the flock carry their past with them.
 *
 * <p>What a year does to ewes depends on the two strengths alone and is read from a {@link
 * StrengthGrid}.
 */
public final class FlockEffect {

  /** Weeks before joining from which held paddocks are free of ewes. */
  static final int WEEKS_BEFORE_JOINING = 8;

  private final Mob mob;
  private final double[] ageShare;
  private final int joiningDay;
  private final double joiningWeeks;
  private final boolean[] heldWindow = new boolean[HalfMonths.COUNT];
  private final JoiningWalk walk;
  private final StrengthGrid grid;
  private JoiningWalk otherWalk;
  private final double[] multiplier;
  private final double[] spared;
  private final double[] sparedKept;
  private final int story;
  private final int d50;
  private final int d50Outbreaks;
  private final int steepness;
  private final int rampDays;
  private final int lagDays;
  private final int halfLifeDays;
  private final int sterilityQ;
  private final int sterilityQOutbreaks;
  private final int referenceDose;
  private final int pregnantPercent;

  private double[] x;
  private double[] greenShare;
  private double halvingDose;
  private boolean possible;
  private double strengthNow;
  private double perCycle;
  private double unaffected;
  private double sparedNow;
  private double sterileNow;
  private double shareNow;

  /** Enters the uncertain numbers of a mob's joining. */
  public static void enter(UncertainNumbers.Builder numbers, Mob mob, Tables tables) {
    numbers.add(ResponseStory.KEY, tables.parameter(ResponseStory.KEY));
    ResponseStory.NUMBERS.forEach(key -> numbers.add(key, tables.parameter(key)));
    for (String key :
        List.of(
            "oestrogen.ramp-days",
            "oestrogen.lag-days",
            "oestrogen.half-life-days",
            "oestrogen.sterility-reference-dose")) {
      numbers.add(key, tables.parameter(key));
    }
    numbers.add(
        key(mob), mob.pregnantPercent().named("ewes in lamb per 100 joined: " + mob.name()));
  }

  private static String key(Mob mob) {
    return "mob." + mob.name() + ".pregnant-percent";
  }

  /** A mob of a farm, whose numbers stand in the register. */
  public FlockEffect(Farm farm, Mob mob, UncertainNumbers numbers) {
    this.mob = mob;
    ageShare = mob.ageShares().stream().mapToDouble(Double::doubleValue).toArray();
    joiningDay = HalfMonths.dayOfYear(mob.joiningStart());
    joiningWeeks = mob.joiningWeeks().likely();
    int first = joiningDay - 7 * WEEKS_BEFORE_JOINING;
    int last = joiningDay + (int) Math.ceil(7 * joiningWeeks);
    for (int day = first; day <= last; day++) {
      heldWindow[HalfMonths.ofDay(day)] = true;
    }
    walk = new JoiningWalk(joiningDay, joiningWeeks, HalfMonths.COUNT);
    multiplier = new double[JoiningWalk.cycles(joiningWeeks)];
    grid = new StrengthGrid(walk, joiningWeeks, multiplier.length, heldWindow);
    spared = new double[farm.finance().horizonYears()];
    sparedKept = new double[spared.length];
    story = numbers.place(ResponseStory.KEY);
    d50 = numbers.place("oestrogen.d50");
    d50Outbreaks = numbers.place("oestrogen.d50-outbreaks");
    steepness = numbers.place("oestrogen.steepness");
    rampDays = numbers.place("oestrogen.ramp-days");
    lagDays = numbers.place("oestrogen.lag-days");
    halfLifeDays = numbers.place("oestrogen.half-life-days");
    sterilityQ = numbers.place("oestrogen.sterility-q");
    sterilityQOutbreaks = numbers.place("oestrogen.sterility-q-outbreaks");
    referenceDose = numbers.place("oestrogen.sterility-reference-dose");
    pregnantPercent = numbers.place(key(mob));
  }

  /**
   * Takes the assumptions of a run.
   *
   * @param assumptions the flat array
   * @param green strength of intake in each half-month relative to green feed
   * @param now strength of the paddocks as they are grazed now
   * @param strongest no strength asked for later is above this
   */
  public void set(double[] assumptions, double[] green, double now, double strongest) {
    x = assumptions;
    greenShare = green;
    strengthNow = now;
    walk.set(x[rampDays], x[lagDays], x[halfLifeDays]);
    otherWalk = null;
    ResponseStory told = ResponseStory.of(x[story]);
    boolean outbreaks = told == ResponseStory.OUTBREAKS;
    halvingDose =
        told == ResponseStory.NONE ? Double.POSITIVE_INFINITY : x[outbreaks ? d50Outbreaks : d50];
    double q = x[outbreaks ? sterilityQOutbreaks : sterilityQ];
    grid.set(green, halvingDose, x[steepness], x[referenceDose], q, strongest);
    double figure = x[pregnantPercent] / 100;
    double powerNow = power(now);
    double[] multiplierNow = grid.multipliersAt(powerNow);
    sparedNow = grid.soundAt(powerNow);
    sterileNow = 1 - wholeShareNow();
    boolean observed = mob.scanningBasis() == ScanningBasis.OBSERVED;
    possible = !observed || Pregnancy.canBeSeen(figure, joiningWeeks, multiplierNow, sterileNow);
    unaffected =
        observed
            ? Pregnancy.unaffectedShare(figure, joiningWeeks, multiplierNow, sterileNow)
            : figure;
    perCycle = Pregnancy.perCycleConception(unaffected, joiningWeeks);
    grid.setPerCycle(perCycle);
    // Read from the grid like every other year, so that keeping everything changes nothing.
    grid.find(now, now);
    sparedNow = grid.sound();
    sterileNow = 1 - wholeShareNow();
    shareNow = wholeShareNow() * grid.fertile();
  }

  /**
   * Whether the figure seen on these paddocks could have come about: no flock need have been better
   * than good flocks are. {@link #unaffectedShare} is that of the best where it could not.
   */
  public boolean isPossible() {
    return possible;
  }

  /** Half-months in which held paddocks are free of this mob. */
  public boolean isHeld(int halfMonth) {
    return heldWindow[halfMonth];
  }

  /** The mob. */
  public Mob mob() {
    return mob;
  }

  /** Ewes in lamb as a share of those joined, without oestrogen. */
  public double unaffectedShare() {
    return unaffected;
  }

  /** Ewes in lamb as the farm gives them, share of those joined: with or without oestrogen. */
  public double statedShare(double[] assumptions) {
    return assumptions[pregnantPercent] / 100;
  }

  /** Whether the figure given is one without oestrogen. */
  public boolean isStatedUnaffected() {
    return mob.scanningBasis() != ScanningBasis.OBSERVED;
  }

  /** The share as paddocks are grazed now, every year alike. */
  public double shareNow() {
    return shareNow;
  }

  /** The same had the rams gone in on another day of the year, from 0. */
  public double shareNow(int day) {
    return shareNow(day, strengthNow);
  }

  /**
   * The same in a year in which the mob grazed clover of another strength in the weeks before and
   * during joining; ewes made barren earlier are those of grazing as now.
   *
   * @param day the day of the year the rams go in, from 0
   */
  public double shareNow(int day, double strengthBefore) {
    if (day == joiningDay) {
      return wholeShareNow() * fertile(strengthNow, strengthBefore);
    }
    double[] doses = new double[HalfMonths.COUNT];
    Arrays.setAll(doses, p -> greenShare[p] * strengthNow);
    int last = day + (int) Math.ceil(7 * joiningWeeks);
    for (int d = day - 7 * WEEKS_BEFORE_JOINING; d <= last; d++) {
      int p = HalfMonths.ofDay(d);
      doses[p] = greenShare[p] * strengthBefore;
    }
    return (1 - sterileNow) * unaffected - lossOfJoining(doses, day);
  }

  /** Share of the joined ewes that are sterile as paddocks are grazed now. */
  public double sterileNow() {
    return sterileNow;
  }

  /**
   * Ewes not in lamb for the time being because of these doses, as a share of those joined; ewes
   * barren for good are left out of it.
   *
   * @param doses % of dry matter eaten, by half-month or by day
   * @param day the day of the year the rams go in, from 0
   */
  public double lossOfJoining(double[] doses, int day) {
    walkOf(day, doses.length).multipliers(doses, halvingDose, x[steepness], multiplier);
    double inLamb = Pregnancy.pregnantShare(perCycle, joiningWeeks, multiplier, 0);
    return (1 - sterileNow) * Math.max(0, unaffected - inLamb);
  }

  /** The walk of this joining, or of another day; the last other one is kept. */
  private JoiningWalk walkOf(int day, int places) {
    if (walk.isOf(day, places)) {
      return walk;
    }
    if (otherWalk == null || !otherWalk.isOf(day, places)) {
      otherWalk = new JoiningWalk(day, joiningWeeks, places);
      otherWalk.set(x[rampDays], x[lagDays], x[halfLifeDays]);
    }
    return otherWalk;
  }

  /** Strength of clover over the dose that halves conception, to the power of the steepness. */
  public double power(double strength) {
    return grid.power(strength);
  }

  /** Ewes barren for good after a year on clover of one strength, share of sound ewes. */
  public double barrenAfterYearOn(double power) {
    return 1 - grid.soundAt(power);
  }

  /** Mean dose over joining, % of dry matter eaten, as paddocks are grazed now. */
  public double doseAtJoining() {
    double sum = 0;
    int days = (int) Math.ceil(7 * joiningWeeks);
    for (int day = 0; day < days; day++) {
      sum += greenShare[HalfMonths.ofDay(joiningDay + day)] * strengthNow;
    }
    return sum / days;
  }

  /** Dose of a half-month as paddocks are grazed now, % of dry matter eaten. */
  public double doseNow(int halfMonth) {
    return greenShare[halfMonth] * strengthNow;
  }

  /**
   * The share in a year of a plan; years must be asked for in rising order from 0.
   *
   * @param strength strength of the paddocks outside the held weeks
   * @param strengthHeld strength of those the mob grazes in the held weeks
   */
  public double share(int year, double strength, double strengthHeld) {
    grid.find(strength, strengthHeld);
    spared[year] = grid.sound();
    double whole = 0;
    double product = 1;
    for (int age = 0; age < ageShare.length; age++) {
      int before = year - 1 - age;
      product *= before >= 0 ? spared[before] : sparedNow;
      whole += ageShare[age] * product;
    }
    return whole * grid.fertile();
  }

  /**
   * The same in a mob whose dry ewes are sold by a rule from the coming year on; {@code sale} must
   * have been set with {@link #sparedNow} and be asked in the same years.
   */
  public double share(
      int year, double strength, double strengthHeld, DryEweSale sale, DryEweSale.Rule rule) {
    grid.find(strength, strengthHeld);
    spared[year] = grid.sound();
    return sale.share(year, rule, year == 0 ? sparedNow : spared[year - 1], grid.fertile());
  }

  /** Keeps the years asked for last, to go on from them. */
  public void keepYears() {
    System.arraycopy(spared, 0, sparedKept, 0, spared.length);
  }

  /** Puts the years kept in place before {@code year}, which is asked for next. */
  public void resumeFrom(int year) {
    System.arraycopy(sparedKept, 0, spared, 0, year);
  }

  private double wholeShareNow() {
    double whole = 0;
    double product = 1;
    for (double share : ageShare) {
      product *= sparedNow;
      whole += share * product;
    }
    return whole;
  }

  /** Share in lamb before sterility, at two strengths. */
  double fertile(double strength, double strengthHeld) {
    grid.find(strength, strengthHeld);
    return grid.fertile();
  }

  /** Of a season at two strengths, -ln of the share of ewes it leaves sound. */
  double decay(double strength, double strengthHeld) {
    grid.find(strength, strengthHeld);
    return grid.decay();
  }

  /** Strengths lie this far apart on the grid, the first at 0. */
  double spacing() {
    return grid.spacing();
  }

  /** Share of ewes that a season as paddocks are grazed now leaves whole. */
  public double sparedNow() {
    return sparedNow;
  }
}
