package swardcase.wording;

import java.util.ArrayList;
import java.util.List;
import swardcase.report.PlanResult.FarmRule;
import swardcase.report.Report;

/**
 * A row below those of the paddocks, by which they add up to the plan: a rule for the whole farm,
 * what is shared between the changes, the plan.
 *
 * @param what its name
 * @param cost as printed; blank if it has none of its own
 * @param gain as printed
 */
public record PlanSum(String what, String cost, String gain) {

  /** The rows in their order; none of a plan that keeps everything. */
  public static List<PlanSum> of(Report report, MoneyFaces faces) {
    List<PlanSum> sums = new ArrayList<>();
    if (report.plan().keepsAll()) {
      return sums;
    }
    List<FarmRule> rules = report.plan().farmWide();
    for (int k = 0; k < rules.size(); k++) {
      sums.add(
          new PlanSum(
              PlanWords.shortRule(rules.get(k).what()),
              faces.number(faces.farmWideCost(k)),
              faces.number(faces.farmWide(k))));
    }
    sums.add(new PlanSum(PlanWords.shared(faces.shared()), "", faces.number(faces.shared())));
    sums.add(
        new PlanSum(
            Texts.get("decision.plan"), faces.number(faces.cost()), faces.number(faces.gain())));
    return sums;
  }
}
