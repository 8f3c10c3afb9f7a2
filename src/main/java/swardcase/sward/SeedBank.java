package swardcase.sward;

import swardcase.check.Check;

/**
 * The seed in the ground under one paddock, by cultivar and age, and the plants it gives year by
 * year after something is done.
 *
 * <p>Each autumn, of the seed of cultivar c that has been through a − 1 summers before the last
 * one, the share r_c,a is still hard and stays; the rest softens, and the share e of it comes up,
 * G_c = e Σ_a (1 − r_c,a) S_c,a. In the sowing year the seedlings standing are killed to the stated
 * share, then the sown seed comes up. The plants' shares, and with them the shares of the year's
 * seed, follow a de Wit replacement series (de Wit 1960, "On competition", from memory; used for
 * binary clover swards by Rossiter, Maller and Pakes 1985, Australian Journal of Agricultural
 * Research 36, 119-143):
 *
 * <pre>
 * z_c = k_c G_c / Σ k G,   seed set = z_c × yield × (seed set while running down, or sowing-year share)
 * </pre>
 *
 * <p>At the start each cultivar's seed has the ages that steady seed set leaves, 1 : r1 : r1 r2 :
 * r1 r2 r3/(1 − r4), and so much of it that the first autumn's plants stand in the shares counted.
 * An old stand's bank is in balance with the seed it sets ({@link #balanceKgPerHa}).
 *
 * <p>Buried seed lies out of reach: it neither germinates nor softens, and only a small share dies
 * in a year (Taylor and Ewing 1988, Australian Journal of Experimental Agriculture 28, 77-81).
 *
 * <p>An object is a workspace for one thread; {@link #run} allocates nothing.
 */
public final class SeedBank {

  /** Summers told apart: the first, second and third of a seed's life, and all later ones. */
  public static final int AGES = 4;

  private final int species;
  private final int years;
  private final double[] bank;
  private final double[] buried;
  private final double[] seedlings;
  private final double[] steadyYears;
  private final double[] bankByYear;
  private final double[] seedlingsByYear;
  private double initialKgPerHa;
  private double sownKgPerHa;
  private double setKgPerHa;
  private double germinatedKgPerHa;
  private double diedKgPerHa;

  /** A workspace for so many cultivars, the sown one among them, over so many years. */
  public SeedBank(int species, int years) {
    Check.that(species >= 1, "there must be at least one cultivar, but were %s", species);
    Check.that(years >= 1, "there must be at least one year, but were %s", years);
    this.species = species;
    this.years = years;
    this.bank = new double[species * AGES];
    this.buried = new double[species];
    this.seedlings = new double[species];
    this.steadyYears = new double[species];
    this.bankByYear = new double[years * species];
    this.seedlingsByYear = new double[years];
  }

  /**
   * Runs the years and writes the share of each cultivar in the clover's growth. Year 0 is the
   * first year of the action: run-down years come first, then the sowing year. The shares of a year
   * add up to 1, or are all 0 if no plant is left.
   *
   * @param settings what is there and what is done; not changed
   * @param plantShareByYear written at [year × species + cultivar]
   */
  public void run(SeedBankSettings settings, double[] plantShareByYear) {
    settings.refuseBad(species);
    start(settings);
    for (int year = 0; year < years; year++) {
      germinate(settings, year);
      double seed = settings.seedYieldKgPerHa;
      if (year < settings.runDownYears) {
        seed *= settings.seedSet;
      } else if (year == settings.runDownYears) {
        killSeedlings(settings.seedlingKill);
        if (settings.sownKgPerHa > 0) {
          sow(settings);
          seed *= settings.sowingYearYield;
        }
      }
      setSeed(settings, seed, plantShareByYear, year * species);
    }
  }

  /**
   * Seed in the ground under a stand that sets as much as it loses, kg/ha: yield × Σ w (1 + r1 + r1
   * r2 + r1 r2 r3/(1 − r4)) / Σ w, w = z/k. 270 kg/ha a year and retentions 0.40, 0.33, 0.73, 0.77
   * make 270 × 1.95 = 527 kg/ha; surveys found 275 to 740 (docs/method/seed-fit.md). Nothing under
   * bare ground.
   */
  public static double balanceKgPerHa(SeedBankSettings settings) {
    double weight = 0;
    double lying = 0;
    for (int c = 0; c < settings.initialShare.length; c++) {
      double youngest = settings.initialShare[c] / settings.crowding[c];
      weight += youngest;
      lying += youngest * steadyYears(settings, c);
    }
    return weight > 0 ? settings.seedYieldKgPerHa * lying / weight : 0;
  }

  private void start(SeedBankSettings settings) {
    double weight = 0;
    for (int c = 0; c < species; c++) {
      steadyYears[c] = steadyYears(settings, c);
      weight += settings.initialShare[c] / settings.crowding[c] * steadyYears[c];
    }
    double perWeight = weight > 0 ? settings.initialBankKgPerHa / weight : 0;
    initialKgPerHa = 0;
    for (int c = 0; c < species; c++) {
      double youngest = perWeight * settings.initialShare[c] / settings.crowding[c];
      double all = youngest * steadyYears[c];
      double[] retention = settings.retention;
      int first = c * AGES;
      bank[first] = youngest;
      bank[first + 1] = bank[first] * retention[first];
      bank[first + 2] = bank[first + 1] * retention[first + 1];
      bank[first + 3] = bank[first + 2] * retention[first + 2] / (1 - retention[first + 3]);
      for (int age = 0; age < AGES; age++) {
        bank[first + age] *= 1 - settings.buriedShare;
      }
      buried[c] = all * settings.buriedShare;
      initialKgPerHa += all;
    }
    sownKgPerHa = 0;
    setKgPerHa = 0;
    germinatedKgPerHa = 0;
    diedKgPerHa = 0;
  }

  /** Seed in the ground under a steady stand, in years of seed set. */
  private static double steadyYears(SeedBankSettings settings, int c) {
    double[] r = settings.retention;
    int first = c * AGES;
    return 1 + r[first] * (1 + r[first + 1] * (1 + r[first + 2] / (1 - r[first + 3])));
  }

  private void germinate(SeedBankSettings settings, int year) {
    double[] r = settings.retention;
    double germinated = 0;
    double died = 0;
    for (int c = 0; c < species; c++) {
      int first = c * AGES;
      double youngest = bank[first];
      double second = youngest * r[first];
      double third = bank[first + 1] * r[first + 1];
      double later = bank[first + 3] * r[first + 3] + bank[first + 2] * r[first + 2];
      double older = bank[first + 1] + bank[first + 2] + bank[first + 3];
      bankByYear[year * species + c] = youngest + older + buried[c];
      bank[first] = 0;
      bank[first + 1] = second;
      bank[first + 2] = third;
      bank[first + 3] = later;
      double softened = youngest - second + (older - third - later);
      seedlings[c] = settings.emergence * softened;
      germinated += seedlings[c];
      died += softened - seedlings[c] + buried[c] * (1 - settings.buriedRetention);
      buried[c] *= settings.buriedRetention;
    }
    germinatedKgPerHa += germinated;
    diedKgPerHa += died;
  }

  private void killSeedlings(double share) {
    for (int c = 0; c < species; c++) {
      seedlings[c] *= 1 - share;
    }
  }

  private void sow(SeedBankSettings settings) {
    double good = settings.sownKgPerHa * settings.goodSeedShare;
    seedlings[settings.sownSpecies] += good;
    sownKgPerHa += settings.sownKgPerHa;
    germinatedKgPerHa += good;
    diedKgPerHa += settings.sownKgPerHa - good;
  }

  private void setSeed(SeedBankSettings settings, double seed, double[] shares, int offset) {
    double crowd = 0;
    double all = 0;
    for (int c = 0; c < species; c++) {
      crowd += settings.crowding[c] * seedlings[c];
      all += seedlings[c];
    }
    seedlingsByYear[offset / species] = all;
    double sharePer = crowd > 0 ? 1 / crowd : 0;
    double seedPer = crowd > 0 ? seed / crowd : 0;
    double set = 0;
    for (int c = 0; c < species; c++) {
      double crowding = settings.crowding[c] * seedlings[c];
      shares[offset + c] = crowding * sharePer;
      bank[c * AGES] = crowding * seedPer;
      set += bank[c * AGES];
    }
    setKgPerHa += set;
  }

  /** Seed of a cultivar in the ground in the autumn of a year, before it germinates, kg/ha. */
  public double bankKgPerHa(int year, int cultivar) {
    return bankByYear[year * species + cultivar];
  }

  /** Seedlings that stand in a year after killing and sowing, as kg/ha of seed. */
  public double seedlingsKgPerHa(int year) {
    return seedlingsByYear[year];
  }

  /** Seed in the ground after the last run, buried seed included, kg/ha. */
  public double finalKgPerHa() {
    double sum = 0;
    for (double seed : bank) {
      sum += seed;
    }
    for (double seed : buried) {
      sum += seed;
    }
    return sum;
  }

  /** Seed in the ground at the start of the last run, kg/ha. */
  public double initialKgPerHa() {
    return initialKgPerHa;
  }

  /** Seed sown in the last run, kg/ha. */
  public double sownKgPerHa() {
    return sownKgPerHa;
  }

  /** Seed set over the last run, kg/ha. */
  public double setKgPerHa() {
    return setKgPerHa;
  }

  /** Seed that came up over the last run, killed seedlings included, kg/ha. */
  public double germinatedKgPerHa() {
    return germinatedKgPerHa;
  }

  /**
   * Seed that gave no seedling over the last run: lost as it softened, buried, or no good, kg/ha.
   */
  public double diedKgPerHa() {
    return diedKgPerHa;
  }
}
