package swardcase.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import swardcase.RandomFarms;
import swardcase.evidence.UncertainNumbers;
import swardcase.farm.Action;
import swardcase.farm.ActionNumber;
import swardcase.farm.Farm;
import swardcase.sward.SeedBank;
import swardcase.sward.SeedBankSettings;
import swardcase.sward.SeedKeys;
import swardcase.sward.StandingClover;
import swardcase.tables.Cultivar;
import swardcase.tables.Tables;

/** The seed bank of each paddock and action, filled by hand from the tables and the action. */
class SeedPathsTest {

  private static final Tables TABLES = RandomFarms.TABLES;

  @Test
  void run_ofEverySowing_isTheSeedBankWithTheNumbersOfTableAndAction() {
    for (String name : new String[] {"mixed-farm", "northern-farm"}) {
      Farm farm = RandomFarms.demo(name);
      UncertainNumbers inputs = new FarmModel(farm, TABLES).inputs();
      StandingClover stands =
          new StandingClover(farm, TABLES, inputs, StandingClover.compositions(farm, TABLES));
      int years = farm.finance().horizonYears();
      SeedPaths paths = new SeedPaths(farm, inputs, stands, years);
      for (Action action : farm.actions()) {
        if (!action.sows()) {
          continue;
        }
        ActionInputs ofAction = new ActionInputs(action, inputs);
        double[] x = inputs.likely();
        stands.set(x);
        for (int i = 0; i < stands.size(); i++) {
          paths.set(x, i);
          int species = stands.species(i);
          double[] shares = new double[years * species];
          double[] expected = shares.clone();
          paths.run(x, i, ofAction, shares);
          new SeedBank(species, years).run(settings(farm, stands, i, action), expected);
          assertThat(shares).containsExactly(expected, within(1e-12));
        }
      }
    }
  }

  private static SeedBankSettings settings(Farm farm, StandingClover stands, int i, Action action) {
    int species = stands.species(i);
    SeedBankSettings s = new SeedBankSettings(species);
    for (int c = 0; c < species; c++) {
      Cultivar cultivar = stands.cultivar(i, c);
      s.initialShare[c] = stands.shares(i)[c];
      for (int age = 1; age <= SeedBank.AGES; age++) {
        s.retention[c * SeedBank.AGES + age - 1] =
            likely(SeedKeys.retention(farm.climate(), cultivar.hardSeed(), age));
      }
      boolean atHome =
          farm.paddocks().get(i).waterlogged() && cultivar.subspecies().equals("yanninicum");
      s.crowding[c] =
          SeedKeys.crowding(cultivar, TABLES).likely()
              * (atHome ? likely(SeedKeys.CROWDING_OF_YANNINICUM_WET) : 1);
    }
    s.seedYieldKgPerHa = likely(SeedKeys.yield(farm.climate()));
    s.initialBankKgPerHa = SeedBank.balanceKgPerHa(s);
    s.emergence = likely(SeedKeys.EMERGENCE);
    s.sowingYearYield = likely(SeedKeys.SOWING_YEAR_YIELD);
    s.goodSeedShare = likely(SeedKeys.GOOD_SEED_SHARE);
    s.sownSpecies = species - 1;
    s.runDownYears = action.runDownYears();
    s.seedSet = action.runDownYears() > 0 ? action.number(ActionNumber.SEED_SET).likely() : 1;
    s.seedlingKill = action.number(ActionNumber.SEEDLING_KILL).likely();
    s.sownKgPerHa = action.number(ActionNumber.SOWN_SEED).likely();
    return s;
  }

  private static double likely(String key) {
    return TABLES.parameter(key).likely();
  }
}
