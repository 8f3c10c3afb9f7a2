package swardcase;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Climate;
import swardcase.farm.ExtraFeedUse;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Identification;
import swardcase.farm.Management;
import swardcase.farm.Mob;
import swardcase.farm.OtherStock;
import swardcase.farm.Paddock;
import swardcase.farm.PastureYear;
import swardcase.farm.Prices;
import swardcase.farm.SeasonGrowth;
import swardcase.farm.Supplement;

/** A farm with some of its parts changed: {@code FarmCopy.of(farm).mobs(List.of()).build()}. */
public final class FarmCopy {

  private final Farm farm;
  private Climate climate;
  private PastureYear feedYear;
  private List<Paddock> paddocks;
  private List<Mob> mobs;
  private List<OtherStock> otherStock;
  private Supplement supplement;
  private Prices prices;
  private Finance finance;
  private ExtraFeedUse extraFeedUse;
  private Management management;
  private List<Action> actions;
  private String sownCultivar;

  private FarmCopy(Farm farm) {
    this.farm = farm;
    climate = farm.climate();
    feedYear = farm.feedYear();
    paddocks = farm.paddocks();
    mobs = farm.mobs();
    otherStock = farm.otherStock();
    supplement = farm.supplement();
    prices = farm.prices();
    finance = farm.finance();
    extraFeedUse = farm.extraFeedUse();
    management = farm.management();
    actions = farm.actions();
    sownCultivar = farm.sownCultivar();
  }

  /** A copy of this farm, nothing changed yet. */
  public static FarmCopy of(Farm farm) {
    return new FarmCopy(farm);
  }

  public FarmCopy climate(Climate other) {
    climate = other;
    return this;
  }

  public FarmCopy feedYear(PastureYear other) {
    feedYear = other;
    return this;
  }

  public FarmCopy paddocks(List<Paddock> others) {
    paddocks = others;
    return this;
  }

  public FarmCopy mobs(List<Mob> others) {
    mobs = others;
    return this;
  }

  public FarmCopy otherStock(List<OtherStock> others) {
    otherStock = others;
    return this;
  }

  public FarmCopy supplement(Supplement other) {
    supplement = other;
    return this;
  }

  public FarmCopy prices(Prices other) {
    prices = other;
    return this;
  }

  /** The farm with lambs of another worth. */
  public FarmCopy netValuePerLamb(Assumption other) {
    return prices(
        new Prices(
            other,
            prices.costPerDryEwe(),
            prices.replacementEwe(),
            prices.spareFeedPerTonneDm(),
            prices.grossMarginPerEwe(),
            prices.nitrogenPerKg(),
            prices.leafTest(),
            prices.plantIdentification(),
            prices.priceCorrelation()));
  }

  public FarmCopy finance(Finance other) {
    finance = other;
    return this;
  }

  public FarmCopy extraFeedUse(ExtraFeedUse other) {
    extraFeedUse = other;
    return this;
  }

  public FarmCopy management(Management other) {
    management = other;
    return this;
  }

  public FarmCopy actions(List<Action> others) {
    actions = others;
    return this;
  }

  public FarmCopy sownCultivar(String name) {
    sownCultivar = name;
    return this;
  }

  /** The changed farm. */
  public Farm build() {
    return new Farm(
        farm.name(),
        farm.currency(),
        climate,
        feedYear,
        paddocks,
        mobs,
        otherStock,
        supplement,
        prices,
        finance,
        extraFeedUse,
        management,
        actions,
        sownCultivar,
        farm.records());
  }

  /** A paddock under another name and of another area. */
  public static Paddock paddock(Paddock of, String name, double areaHa) {
    return paddock(of, name, areaHa, of.identifications());
  }

  /** A paddock in which other plants were found. */
  public static Paddock paddock(Paddock of, List<Identification> plants) {
    return paddock(of, of.name(), of.areaHa(), plants);
  }

  /** A paddock that any mob of the farm grazes. */
  public static Paddock ofNoMob(Paddock of) {
    return paddock(of, of.name(), of.areaHa(), of.identifications(), Optional.empty());
  }

  private static Paddock paddock(
      Paddock of, String name, double areaHa, List<Identification> plants) {
    return paddock(of, name, areaHa, plants, of.mob());
  }

  private static Paddock paddock(
      Paddock of, String name, double areaHa, List<Identification> plants, Optional<String> mob) {
    return new Paddock(
        name,
        areaHa,
        of.cloverShare(),
        of.growthIndex(),
        of.waterlogged(),
        of.arable(),
        of.leafTest(),
        of.use(),
        mob,
        of.seedlingsPerM2(),
        of.signs(),
        plants);
  }

  /** A mob of so many ewes. */
  public static Mob mob(Mob of, int ewes) {
    return mob(of, of.name(), ewes);
  }

  /** The same mob, which may not be put on other paddocks than it uses. */
  public static Mob staying(Mob of) {
    return mob(of, of.name(), of.ewes(), false);
  }

  /** A mob of the same ewes under another name. */
  public static Mob named(Mob of, String name) {
    return mob(of, name, of.ewes());
  }

  private static Mob mob(Mob of, String name, int ewes) {
    return mob(of, name, ewes, of.mayMove());
  }

  private static Mob mob(Mob of, String name, int ewes, boolean mayMove) {
    return new Mob(
        name,
        ewes,
        of.ageShares(),
        of.agesSetBy(),
        of.liveweightKg(),
        of.joiningStart(),
        of.joiningWeeks(),
        of.pregnantPercent(),
        of.scanningPercent(),
        of.markingPercent(),
        of.scanningBasis(),
        mayMove);
  }

  /** So many head of the same stock. */
  public static OtherStock stock(OtherStock of, int head) {
    return new OtherStock(
        of.name(), head, of.dsePerHead(), of.mostRiskyDays(), of.months(), of.mayMove());
  }

  /** A farm whose seasons are changed, one by one. */
  public static Farm withSeasons(Farm farm, UnaryOperator<SeasonGrowth> change) {
    PastureYear was = farm.feedYear();
    PastureYear year =
        new PastureYear(
            was.growthName(),
            was.seasons().stream().map(change).toList(),
            was.winterMonths(),
            was.quality());
    return of(farm).feedYear(year).build();
  }
}
