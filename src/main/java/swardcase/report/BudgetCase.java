package swardcase.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.chance.Sample;
import swardcase.decision.Decision;
import swardcase.decision.FarmMeasures.OfPaddock;
import swardcase.decision.PriceGains;
import swardcase.draws.Draws;
import swardcase.evidence.SetBy;
import swardcase.farm.Action;
import swardcase.farm.CostLine;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;

/**
 * What a budget case shows beside the report: its costs item by item, the plan's gain at other
 * prices, and a mark of what it rests on.
 *
 * @param fingerprint first {@value #DIGITS} digits of the SHA-256 of the farm, the tables, the
 *     draws and the date: the same inputs have the same on every machine
 * @param costs of the paddocks, means over the draws, not discounted; together with the farm-wide
 *     rules they are the cost of the plan
 * @param prices gain of the plan at other prices
 */
public record BudgetCase(String fingerprint, List<CostItem> costs, PriceTable prices) {

  private static final int DIGITS = 16;

  /** What an item of cost is. */
  public enum Kind {
    /** A cost line of the action. */
    LINE,
    /** Own time for keeping ewes off. */
    OWN_TIME,
    /** Sowing again where it fails, by its chance, and own time for a rule before it. */
    SOWN_AGAIN
  }

  /**
   * An item of the cost of a paddock.
   *
   * @param paddock its name
   * @param kind what it is
   * @param line name of the cost line; empty for another kind
   * @param times how many years it falls due; 0 for another kind
   * @param perHa money a hectare and time; 0 for another kind
   * @param total money for the paddock
   * @param setBy who set the line; empty for another kind
   */
  public record CostItem(
      String paddock,
      Kind kind,
      Optional<String> line,
      int times,
      double perHa,
      double total,
      Optional<SetBy> setBy) {}

  /**
   * The mean gain of the plan in hand with two prices held and all else as it was drawn; the plan
   * is not sought anew.
   *
   * @param lambPrices low, likely and high net value of a lamb
   * @param supplementPrices low, likely and high price of supplement, a tonne as fed
   * @param gains for each lamb price one for each supplement price
   */
  public record PriceTable(
      List<Double> lambPrices, List<Double> supplementPrices, List<List<Double>> gains) {}

  /** The case of a decision. */
  public static BudgetCase of(Decision decision, Report report) {
    List<CostItem> costs = new ArrayList<>();
    for (int i = 0; i < report.paddocks().size(); i++) {
      if (decision.isActedOn(i)) {
        addCosts(decision, i, costs);
      }
    }
    PriceGains gains = PriceGains.of(decision);
    return new BudgetCase(
        fingerprint(decision, report),
        costs,
        new PriceTable(
            ends(gains.lamb()),
            ends(gains.supplement()),
            Arrays.stream(gains.gains()).map(row -> Arrays.stream(row).boxed().toList()).toList()));
  }

  private static List<Double> ends(Range range) {
    return List.of(range.low(), range.likely(), range.high());
  }

  private static void addCosts(Decision decision, int i, List<CostItem> costs) {
    FarmModel model = decision.model();
    Paddock paddock = model.farm().paddocks().get(i);
    int planned = decision.plan().action(i);
    Action action = model.actions().get(planned);
    int years = model.years() - decision.plan().start(i);
    double rest = decision.of(i, OfPaddock.PLAN_COST).mean();
    boolean sows = action.sows() || action.kind().seeds();
    for (CostLine line : action.costs()) {
      int times =
          switch (line.phase()) {
            case RUN_DOWN -> Math.min(years, action.runDownYears());
            case SOWING -> sows && action.runDownYears() < years ? 1 : 0;
            case YEARLY -> years;
          };
      if (times > 0) {
        double perHa = Sample.mean(decision.simulation().drawn(model.costInput(planned, line)));
        double total = times * perHa * paddock.areaHa();
        rest -= total;
        costs.add(
            new CostItem(
                paddock.name(),
                Kind.LINE,
                Optional.of(line.name()),
                times,
                perHa,
                total,
                Optional.of(line.costPerHa().setBy())));
      }
    }
    if (Math.abs(rest) >= 0.5) {
      costs.add(
          new CostItem(
              paddock.name(),
              sows ? Kind.SOWN_AGAIN : Kind.OWN_TIME,
              Optional.empty(),
              0,
              0,
              rest,
              Optional.empty()));
    }
  }

  /** Records print what they hold and nothing of the machine. */
  private static String fingerprint(Decision decision, Report report) {
    Draws draws = decision.simulation().draws();
    String inputs =
        String.join(
            "\n",
            report.program(),
            report.farm().date().toString(),
            decision.model().farm().toString(),
            decision.model().tables().toString(),
            draws.seed() + " " + draws.count(),
            decision.fixed().toString());
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(inputs.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash).substring(0, DIGITS);
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }
}
