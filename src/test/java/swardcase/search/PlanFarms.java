package swardcase.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import swardcase.FarmCopy;
import swardcase.RandomFarms;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Identification;
import swardcase.farm.Mob;
import swardcase.farm.Paddock;
import swardcase.farm.PaddockUse;
import swardcase.farm.Prices;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;

/** Farms to plan: those of the demonstration folders, and small invented ones drawn from a seed. */
public final class PlanFarms {

  public static final Tables TABLES = RandomFarms.TABLES;

  private static final List<String> CULTIVARS =
      List.of("Yarloop", "Dinninup", "Geraldton", "Dwalganup", "Coolamon", "Seaton Park");

  private PlanFarms() {}

  public static Farm demo(String name) {
    return RandomFarms.demo(name);
  }

  public static FarmModel model(Farm farm) {
    return new FarmModel(farm, TABLES);
  }

  /** Few paddocks, few years and dear lambs, so that much is worth doing and limits bite. */
  public static Farm small(SplittableRandom random, int paddocks) {
    Farm base = demo("mixed-farm");
    List<Paddock> list = new ArrayList<>();
    for (int i = 0; i < paddocks; i++) {
      list.add(paddock(random, "P" + i));
    }
    List<Action> actions =
        base.actions().stream()
            .filter(a -> List.of("keep", "spray-fallow").contains(a.key()))
            .toList();
    double budget = 3000 + random.nextInt(15000);
    Finance finance =
        new Finance(
            exactly(base.finance().discountRate(), 0.07),
            5,
            random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(budget),
            exactly(base.finance().mostOutOfGrazing(), 0.4),
            OptionalDouble.empty(),
            exactly(base.finance().endValuePerHa(), random.nextInt(400)),
            exactly(
                base.finance().riskTolerance(),
                600 * list.stream().mapToDouble(Paddock::areaHa).sum()),
            Optional.empty());
    Prices prices =
        new Prices(
            exactly(base.prices().netValuePerLamb(), 100 + random.nextInt(900)),
            base.prices().costPerDryEwe(),
            base.prices().replacementEwe(),
            base.prices().spareFeedPerTonneDm(),
            base.prices().grossMarginPerEwe(),
            base.prices().nitrogenPerKg(),
            base.prices().leafTest(),
            base.prices().plantIdentification(),
            base.prices().priceCorrelation());
    List<Mob> mobs =
        base.mobs().stream()
            .map(mob -> FarmCopy.mob(mob, 60 + random.nextInt(40 * paddocks)))
            .toList();
    return FarmCopy.of(base)
        .paddocks(list)
        .mobs(mobs)
        .prices(prices)
        .finance(finance)
        .actions(actions)
        .build();
  }

  private static Paddock paddock(SplittableRandom random, String name) {
    double clover = 0.2 + 0.5 * random.nextDouble();
    List<Identification> plants = new ArrayList<>();
    int from = random.nextInt(CULTIVARS.size());
    for (int k = 0; k < 2; k++) {
      String cultivar = CULTIVARS.get((from + k) % CULTIVARS.size());
      plants.add(new Identification(List.of(cultivar), 5 + random.nextInt(40)));
    }
    return new Paddock(
        name,
        10 + random.nextInt(40),
        Assumption.ofFarm("clover share of green feed", Range.exactly(clover), "-"),
        Assumption.ofFarm("growth index of the paddock", Range.exactly(1), "-"),
        random.nextInt(4) == 0,
        random.nextInt(5) > 0,
        Optional.empty(),
        PaddockUse.EWES,
        Optional.empty(),
        OptionalDouble.empty(),
        RandomFarms.NO_SIGNS,
        plants);
  }

  static Assumption exactly(Assumption of, double value) {
    return Assumption.ofFarm(of.name(), Range.exactly(value), of.unit());
  }

  static Farm withPaddocks(Farm farm, List<Paddock> paddocks) {
    return FarmCopy.of(farm).paddocks(paddocks).build();
  }

  /** The table of any farm at likely values. */
  static PlanTable anyTable(SplittableRandom random) {
    FarmModel model = model(RandomFarms.any(random));
    return new PlanTable(model, model.newRun(), List.of());
  }

  /** Any choice for each paddock. */
  static int[] anyPick(PlanTable table, SplittableRandom random) {
    int[] pick = new int[table.places()];
    for (int i = 0; i < pick.length; i++) {
      pick[i] = random.nextInt(table.first(i), table.first(i + 1));
    }
    return pick;
  }
}
