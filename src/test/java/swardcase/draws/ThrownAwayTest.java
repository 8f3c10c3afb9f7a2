package swardcase.draws;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.chance.CountedRandom;
import swardcase.farm.Farm;
import swardcase.intake.FarmFolder;
import swardcase.outcome.Draw;
import swardcase.outcome.FarmModel;
import swardcase.outcome.OutcomeFunction;
import swardcase.tables.ResponseStory;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Draws with which an observed figure could not have come about. */
class ThrownAwayTest {

  private static final int BLOCKS = 20;
  private static final int PER_BLOCK = 20;
  private static final Tables TABLES = TablesLoader.standard().load();

  @TempDir private Path temp;

  private static Draws draws(Farm farm, Tables tables) {
    return new Draws(new FarmModel(farm, tables), 1, BLOCKS, PER_BLOCK);
  }

  private static Farm farm(String name, Tables tables) {
    return FarmFolder.read(Path.of("demo-data", name), tables).farm();
  }

  /** Tables with these chances of the stories none and outbreaks. */
  private Tables tables(double none, double outbreaks) throws IOException {
    Files.writeString(
        temp.resolve("dose-response.csv"),
        "key,name,low,likely,high,unit,evidence,source,note\n"
            + "oestrogen.chance-none,none,%1$s,%1$s,%1$s,fraction,,,\n".formatted(none)
            + "oestrogen.chance-outbreaks,some,%1$s,%1$s,%1$s,fraction,,,\n".formatted(outbreaks));
    return TablesLoader.standard().with(temp).load();
  }

  @Test
  void set_everyDraw_isPossibleAndTheSameWhateverCameBefore() {
    Draws draws = draws(farm("mixed-farm", TABLES), TABLES);
    DrawnFarm upwards = new DrawnFarm(draws.model());
    DrawnFarm downwards = new DrawnFarm(draws.model());
    int[] thrown = new int[draws.count()];
    double[][] numbers = new double[draws.count()][];
    for (int d = 0; d < draws.count(); d++) {
      assertThat(upwards.set(draws, d).isPossible()).isTrue();
      thrown[d] = upwards.thrownAway();
      numbers[d] = upwards.draw().numbers.clone();
    }
    for (int d = draws.count() - 1; d >= 0; d--) {
      downwards.set(draws, d);
      assertThat(downwards.thrownAway()).isEqualTo(thrown[d]);
      assertThat(downwards.draw().numbers).isEqualTo(numbers[d]);
    }
    assertThat(Arrays.stream(thrown).filter(count -> count > 0).count())
        .isBetween(1L, draws.count() - 1L);
  }

  /** What bears on no figure stays as it was spread; the rest is that of a stream of its own. */
  @Test
  void fill_ofADrawThrownAway_keepsActionsMoneyAndSeasonsAndDrawsTheRestAnew() {
    Draws draws = draws(farm("mixed-farm", TABLES), TABLES);
    FarmModel model = draws.model();
    Draw first = new Draw(model);
    Draw again = new Draw(model);
    draws.fill(7, 0, new CountedRandom(0), first);
    draws.fill(7, 1, new CountedRandom(0), again);
    for (String prefix : List.of("action.", "price.", "finance.", "supplement.")) {
      assertThat(model.inputs().placesOf(prefix))
          .isNotEmpty()
          .allSatisfy(j -> assertThat(again.numbers[j]).isEqualTo(first.numbers[j]));
    }
    assertThat(again.seasons).isEqualTo(first.seasons);
    int d50 = model.inputs().place("oestrogen.d50");
    assertThat(again.numbers[d50]).isNotEqualTo(first.numbers[d50]);
  }

  @Test
  void set_whereFiguresAreUnaffected_throwsNothingAway() {
    Draws draws = draws(farm("risky-farm", TABLES), TABLES);
    DrawnFarm farm = new DrawnFarm(draws.model());
    for (int d = 0; d < draws.count(); d++) {
      farm.set(draws, d);
      assertThat(farm.thrownAway()).isZero();
    }
  }

  /** The chances move which story a draw takes and no other number. */
  @Test
  void set_withTheTrialForCertain_givesTheDrawsThatTookItUnchanged() throws IOException {
    Draws draws = draws(farm("risky-farm", TABLES), TABLES);
    Tables certain = tables(0, 0);
    Draws ofTrial = draws(farm("risky-farm", certain), certain);
    DrawnFarm farm = new DrawnFarm(draws.model());
    DrawnFarm trial = new DrawnFarm(ofTrial.model());
    int place = draws.model().inputs().place(ResponseStory.KEY);
    int same = 0;
    for (int d = 0; d < draws.count(); d++) {
      OutcomeFunction run = farm.set(draws, d);
      OutcomeFunction ofCertain = trial.set(ofTrial, d);
      double[] x = farm.draw().numbers.clone();
      assertThat(trial.draw().numbers[place]).isEqualTo(ResponseStory.TRIAL.ordinal());
      if (ResponseStory.of(x[place]) == ResponseStory.TRIAL) {
        assertThat(ofCertain.lambsLost(0)).isEqualTo(run.lambsLost(0));
        same++;
      }
      x[place] = ResponseStory.TRIAL.ordinal();
      assertThat(trial.draw().numbers).isEqualTo(x);
    }
    assertThat(same).isEqualTo((int) Math.round(0.6 * draws.count()));
  }

  /** Nine ewes in ten in lamb on clover that no ewe could stand: the figure must be wrong. */
  @Test
  void set_whereNoDrawIsPossible_countsItAsNoResponse() throws IOException {
    Tables tables = tables(0, 1);
    Path folder = Files.createDirectory(temp.resolve("farm"));
    for (String file : FarmFolder.FILES) {
      Path from = Path.of("demo-data", "risky-farm", file);
      if (Files.exists(from)) {
        Files.copy(from, folder.resolve(file));
      }
    }
    Path yaml = folder.resolve("farm.yaml");
    String text = Files.readString(yaml);
    assertThat(text).contains("    scanning_percent: 132\n");
    Files.writeString(
        yaml,
        text.replaceAll("figures: [a-z ]+", "figures: observed on these paddocks")
            .replaceAll("pregnant_percent: .*", "pregnant_percent: 98"));
    Draws draws = draws(FarmFolder.read(folder, tables).farm(), tables);
    DrawnFarm farm = new DrawnFarm(draws.model());
    OutcomeFunction run = farm.set(draws, 0);
    assertThat(farm.thrownAway()).isEqualTo(DrawnFarm.MOST);
    assertThat(run.isPossible()).isTrue();
    assertThat(run.lambsLost(0)).isZero();
  }
}
