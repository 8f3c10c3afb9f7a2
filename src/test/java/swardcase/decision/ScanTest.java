package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.chance.BetaBinomial;
import swardcase.chance.DrawnInformation;
import swardcase.chance.Payoffs;
import swardcase.chance.Sample;
import swardcase.decision.Enquiry.Kind;
import swardcase.decision.FarmMeasures.OfMob;
import swardcase.draws.Alternatives;
import swardcase.draws.RecordsFit;
import swardcase.draws.Simulation;
import swardcase.farm.Mob;

/** One more year of scanning, by itself. */
class ScanTest {

  private static final int DRAWS = 1000;
  private static final int CELLS = 500;
  private static final String FARM = "one-mob-farm";
  private static final Answers.Answer ANSWER = Answers.of(FARM, RandomFarms.demo(FARM), 1, DRAWS);
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /**
   * A choice that pays 1,000 for each ewe in a hundred above the mean share in lamb, against one
   * that pays nothing. What a scan is worth is worked from the chances of every result in every
   * draw; the sixteen cells and the halves of the draws may miss a tenth of it.
   */
  @Test
  void scan_beforeAChoiceThatHangsOnTheShareInLamb_isWorthWhatAllResultsSay() {
    Decision decision = ANSWER.decision();
    Enquiries enquiries = new Enquiries(decision);
    for (int g = 0; g < decision.model().farm().mobs().size(); g++) {
      double[] inLamb = decision.drawn(g, OfMob.PREGNANT_PERCENT);
      double mean = Sample.mean(inLamb);
      double[] pays = Arrays.stream(inLamb).map(share -> 1000 * (share - mean)).toArray();
      double brute = brute(decision, g, inLamb, pays);
      Payoffs payoffs = new Payoffs(new double[][] {new double[DRAWS], pays});
      DrawnInformation worth = payoffs.learnt(enquiries.scan(g)).worth();

      double error = 3 * worth.standardError();
      assertThat(worth.value()).isBetween(0.9 * brute - error, brute + error);
      // A scan tells something, and less than the share itself.
      assertThat(brute).isPositive().isLessThan(payoffs.perfect().value());
    }
  }

  /** Mean over the results of the better choice after each, none of the two being ahead before. */
  private static double brute(Decision decision, int mob, double[] inLamb, double[] pays) {
    RecordsFit fit = new RecordsFit(decision.model());
    int ewes = decision.model().farm().mobs().get(mob).ewes();
    double[] paid = new double[CELLS];
    for (int d = 0; d < pays.length; d++) {
      for (int k = 0; k < RecordsFit.correlations(); k++) {
        double share = inLamb[d] / 100;
        double deviation = Math.sqrt(BetaBinomial.varianceOfShare(ewes, share, fit.correlation(k)));
        double below = 0;
        for (int cell = 0; cell < CELLS; cell++) {
          double end = ((cell + 1.0) / CELLS - share) / deviation;
          double upTo = cell == CELLS - 1 ? 1 : NORMAL.cumulativeProbability(end);
          paid[cell] += RecordsFit.part(k) * (upTo - below) * pays[d] / pays.length;
          below = upTo;
        }
      }
    }
    return Arrays.stream(paid).map(each -> Math.max(0, each)).sum();
  }

  /** The row of the list is the same worth, for the plans that the farm can follow. */
  @Test
  void scans_inTheList_areWorthWhatTheyTellOfThePlans() {
    Simulation simulation = ANSWER.decision().simulation();
    Alternatives alternatives = simulation.alternatives();
    Payoffs payoffs =
        new Payoffs(
            IntStream.range(0, alternatives.size())
                .filter(alternatives::fits)
                .mapToObj(simulation::npv)
                .toArray(double[][]::new));
    List<Mob> mobs = ANSWER.model().farm().mobs();
    List<Enquiry> scans =
        ANSWER.howSure().enquiries().stream().filter(each -> each.kind() == Kind.SCAN).toList();
    assertThat(scans).hasSameSizeAs(mobs);
    for (Enquiry scan : scans) {
      int mob = scan.mob().orElseThrow();
      double each = ANSWER.model().farm().management().scanPerEwe().likely();
      assertThat(scan.price().orElseThrow()).isCloseTo(mobs.get(mob).ewes() * each, within(1e-9));
      assertThat(scan.worth())
          .isEqualTo(payoffs.learnt(new Enquiries(ANSWER.decision()).scan(mob)).worth());
    }
  }
}
