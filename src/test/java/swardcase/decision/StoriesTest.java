package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.Answers;
import swardcase.RandomFarms;
import swardcase.chance.Sample;
import swardcase.tables.ResponseStory;

class StoriesTest {

  private static final Answers.Answer RISKY =
      Answers.of("risky-farm", RandomFarms.demo("risky-farm"), 1, 200);

  @Test
  void meanings_ofAFarm_addUpToTheGainOfThePlan() {
    HowSure sure = RISKY.howSure();
    List<StoryMeaning> stories = sure.stories();
    assertThat(stories).extracting(StoryMeaning::story).containsExactly(ResponseStory.values());
    assertThat(stories.stream().mapToInt(StoryMeaning::draws).sum()).isEqualTo(sure.draws());
    double gain =
        stories.stream().mapToDouble(of -> of.gain().mean() * of.draws()).sum() / sure.draws();
    assertThat(gain).isCloseTo(sure.gain().mean(), within(1e-6 * Math.abs(gain)));
  }

  /** Where nothing responds, ewes save nothing: the plan costs what it costs. */
  @Test
  void none_onAFarmOfOestrogen_gainsLessThanTheTrial() {
    List<StoryMeaning> stories = RISKY.howSure().stories();
    assertThat(stories.get(0).gain().mean()).isLessThan(stories.get(1).gain().mean());
  }

  /** Nothing is thrown away on this farm, so that a story has its chance among the draws. */
  @Test
  void weights_ofOtherChances_addUpAndGiveEachStoryItsChance() {
    var simulation = RISKY.decision().simulation();
    Stories stories = new Stories(simulation);
    ResponseStory[] ofDraw = simulation.stories();
    for (double[] chances : ResponseStory.otherChances(simulation.draws().model().tables())) {
      double[] weight = stories.weights(chances);
      assertThat(Sample.mean(weight)).isCloseTo(1, within(1e-12));
      double[] share = new double[3];
      for (int d = 0; d < weight.length; d++) {
        share[ofDraw[d].ordinal()] += weight[d] / weight.length;
      }
      assertThat(Arrays.stream(share).sum()).isCloseTo(1, within(1e-12));
      // Ten draws in a block leave a share of the draws within a few of its chance.
      for (int s = 0; s < share.length; s++) {
        assertThat(share[s]).isCloseTo(chances[s], within(0.03));
      }
    }
  }

  @Test
  void weights_ofTheSameChances_areOneAndChangeNoCall() {
    var decision = RISKY.decision();
    Stories stories = new Stories(decision.simulation());
    double[] same = stories.weights(ResponseStory.chances(decision.model().tables()));
    assertThat(same).containsOnly(1);
    var simulation = decision.simulation();
    PaddockStudy study =
        new PaddockStudy(decision, new Unknowns(simulation), new Enquiries(decision));
    double[] chances = ResponseStory.chances(decision.model().tables());
    assertThat(study.otherwise(RISKY.howSure().paddocks(), chances, same).changed()).isEmpty();
  }

  @Test
  void unknowns_onAFarmOfOestrogen_nameTheStoryAndNoneOfItsNumbers() {
    var inputs = RISKY.decision().model().inputs();
    List<Integer> places = RISKY.howSure().unknowns().stream().map(Unknown::place).toList();
    assertThat(places).contains(inputs.place(ResponseStory.KEY));
    ResponseStory.NUMBERS.forEach(key -> assertThat(places).doesNotContain(inputs.place(key)));
  }
}
