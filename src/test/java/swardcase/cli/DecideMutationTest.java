package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swardcase.Damage;
import swardcase.intake.FarmFolder;

/** Damages a farm folder at random places: the command answers or says what is wrong. */
class DecideMutationTest {

  private static final int MUTANTS = 40;
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])\\d+(\\.\\d+)?(?![\\w.])");
  private static final String[] EXTREMES = {
    "0", "0.001", "1", "7", "50", "99", "100", "250", "1000", "99999", "1000000"
  };

  @TempDir private Path folder;

  private Path farm;
  private Path old;

  @BeforeEach
  void writeFarm() throws IOException {
    farm = SmallFarm.write(folder.resolve("farm"));
    old = Files.createDirectory(folder.resolve("out")).resolve("old.json");
    Files.writeString(old, "old");
  }

  @Test
  void decide_damagedFolder_answersOrRefusesAndLeavesNothingHalfWritten() throws IOException {
    SplittableRandom random = new SplittableRandom(20260301);
    List<String> files =
        FarmFolder.FILES.stream().filter(name -> Files.exists(farm.resolve(name))).toList();
    int refused = 0;
    for (int mutant = 0; mutant < MUTANTS; mutant++) {
      String file = files.get(random.nextInt(files.size()));
      byte[] sound = Files.readAllBytes(farm.resolve(file));
      refused += decide(file, Damage.to(sound, random)) ? 0 : 1;
      Files.write(farm.resolve(file), sound);
    }
    assertThat(refused).isBetween(MUTANTS / 4, MUTANTS - 1);
  }

  @Test
  void decide_oneNumberMadeExtreme_answersOrRefuses() throws IOException {
    SplittableRandom random = new SplittableRandom(20260302);
    Files.copy(
        Path.of("demo-data/current-farm/farm.yaml"),
        farm.resolve("farm.yaml"),
        StandardCopyOption.REPLACE_EXISTING);
    int refused = 0;
    for (int mutant = 0; mutant < MUTANTS; mutant++) {
      String file = random.nextInt(3) == 0 ? "paddocks.csv" : "farm.yaml";
      String sound = Files.readString(farm.resolve(file));
      List<MatchResult> numbers = NUMBER.matcher(sound).results().toList();
      MatchResult number = numbers.get(random.nextInt(numbers.size()));
      String changed =
          sound.substring(0, number.start())
              + EXTREMES[random.nextInt(EXTREMES.length)]
              + sound.substring(number.end());
      refused += decide(file, changed.getBytes(StandardCharsets.UTF_8)) ? 0 : 1;
      Files.writeString(farm.resolve(file), sound);
    }
    assertThat(refused).isBetween(1, MUTANTS - MUTANTS / 4);
  }

  /** Whether the command answers with this file in the place of the sound one. */
  private boolean decide(String file, byte[] damaged) throws IOException {
    Files.write(farm.resolve(file), damaged);

    Ran ran = Ran.command("decide", farm, "--date=2026-03-01", "--draws=100", "--json", old);

    String which = file + ":\n" + new String(damaged, StandardCharsets.UTF_8) + ran.err();
    assertThat(ran.code()).as(which).isIn(ExitCodes.DONE, ExitCodes.BAD_INPUT);
    assertThat(ran.out() + ran.err())
        .as(which)
        .doesNotContain("Exception", "\tat ", "fault of its own");
    assertThat((ran.out() + ran.err()).replaceAll("\\R", ""))
        .as(which)
        .doesNotContainPattern("\\p{Cntrl}");
    assertThat(Ran.below(old.getParent())).as(which).containsExactly("old.json");
    if (ran.code() == ExitCodes.BAD_INPUT) {
      assertThat(ran.err()).as(which).contains("Nothing was written.");
      assertThat(old).as(which).hasContent("old");
      return false;
    }
    assertThat(new ObjectMapper().readTree(old.toFile()).at("/paddocks")).as(which).isNotEmpty();
    Files.writeString(old, "old");
    return true;
  }
}
