package swardcase;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.ActionNumber;
import swardcase.farm.CostLine;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Management;
import swardcase.farm.Prices;
import swardcase.farm.Supplement;
import swardcase.outcome.FarmModel;

/** The same farm with all its money, and that of the tables it uses, in another unit. */
public final class OtherCurrency {

  private final double times;

  /** A currency in which everything costs so many times as much. */
  public OtherCurrency(double times) {
    this.times = times;
  }

  /** The farm told in it. */
  public FarmModel model(Farm farm) {
    return new FarmModel(of(farm), RandomFarms.TABLES);
  }

  private Farm of(Farm farm) {
    Management management = farm.management();
    return FarmCopy.of(farm)
        .supplement(of(farm.supplement()))
        .prices(of(farm.prices()))
        .finance(of(farm.finance()))
        .management(
            new Management(
                management.conditionDeficit(),
                management.mostEweIncrease(),
                management.weaningWeeks(),
                of(management.lossLimit()),
                of(management.useRule()),
                of(management.scanPerEwe()),
                of(management.grazingInOrder())))
        .actions(farm.actions().stream().map(this::of).toList())
        .build();
  }

  private Assumption of(Assumption money) {
    return new Assumption(
        money.name(),
        money.range().times(times),
        money.unit(),
        money.evidence(),
        money.source(),
        money.setBy(),
        money.doubt());
  }

  private Supplement of(Supplement supplement) {
    return new Supplement(
        supplement.name(),
        of(supplement.pricePerTonne()),
        supplement.energyMjPerKgDm(),
        supplement.dryMatterFraction(),
        supplement.wasteFraction());
  }

  private Prices of(Prices prices) {
    return new Prices(
        of(prices.netValuePerLamb()),
        of(prices.costPerDryEwe()),
        of(prices.replacementEwe()),
        of(prices.spareFeedPerTonneDm()),
        of(prices.grossMarginPerEwe()),
        of(prices.nitrogenPerKg()),
        of(prices.leafTest()),
        of(prices.plantIdentification()),
        prices.priceCorrelation());
  }

  private Finance of(Finance finance) {
    OptionalDouble budget =
        finance.budgetPerYear().isPresent()
            ? OptionalDouble.of(times * finance.budgetPerYear().getAsDouble())
            : OptionalDouble.empty();
    return new Finance(
        finance.discountRate(),
        finance.horizonYears(),
        budget,
        finance.mostOutOfGrazing(),
        finance.mostCropHa(),
        of(finance.endValuePerHa()),
        of(finance.riskTolerance()),
        finance.loan());
  }

  private Action of(Action action) {
    List<CostLine> costs =
        action.costs().stream()
            .map(
                line ->
                    new CostLine(line.name(), line.phase(), line.ownLabour(), of(line.costPerHa())))
            .toList();
    Map<ActionNumber, Assumption> numbers = new EnumMap<>(action.numbers());
    numbers.computeIfPresent(ActionNumber.CROP_MARGIN, (number, margin) -> of(margin));
    return new Action(
        action.key(),
        action.name(),
        action.kind(),
        action.needsArable(),
        action.runDownYears(),
        action.cropped(),
        action.monthsUngrazed(),
        numbers,
        costs,
        action.use());
  }
}
