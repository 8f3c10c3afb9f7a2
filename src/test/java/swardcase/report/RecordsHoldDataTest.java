package swardcase.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The result is data: a text in it is a name, a key, a unit or a fixed text, never a sentence. */
class RecordsHoldDataTest {

  /** Texts that are data: what they name, not what is said of it. */
  private static final Set<String> DATA =
      Set.of(
          // what was asked, and of what
          "Report.schemaVersion",
          "Report.program",
          "FarmHead.name",
          "FarmHead.currency",
          "FarmHead.growthProfile",
          "FarmHead.supplement",
          // names of mobs, paddocks and cultivars
          "MobResult.name",
          "HardestHit.mob",
          "RecordsReport.unexplainedMobs",
          "MovedLine.mob",
          "RecordedYear.mob",
          "OtherDate.mob",
          "KeptOff.who",
          "PaddockResult.name",
          "NamedShare.name",
          "PaddockSure.name",
          "Work.paddock",
          "Choice.paddock",
          "HowFound.tooLarge",
          "FindOut.paddock",
          "FindOut.mob",
          "FindOut.settles",
          "Change.paddock",
          "ChangedCall.paddock",
          "BreakEvenLine.paddock",
          // actions: key and name
          "PaddockResult.action",
          "PaddockResult.actionName",
          "PaddockResult.sureInstead",
          "OptionResult.action",
          "OptionResult.name",
          "Step.over",
          "Step.overName",
          "TooLong.action",
          "TooLong.name",
          "WhyNot.than",
          "Change.from",
          "Change.to",
          "Reason.action",
          "Work.action",
          "Work.actionName",
          "Choice.action",
          "Choice.actionName",
          "PaddockSure.option",
          "PaddockSure.over",
          // inputs: name, unit and keys of sources
          // the currency of a price that no farm gave
          "LookFirst.costCurrency",
          "Swing.input",
          "Swing.unit",
          "Mover.input",
          "FindOut.input",
          "BreakEvenLine.input",
          "BreakEvenLine.unit",
          "Assumption.name",
          "Assumption.unit",
          "Assumption.source",
          "Assumption.doubt",
          "HeldFixed.name",
          "HeldFixed.unit",
          "HeldFixed.source",
          "HeldFixed.doubt",
          "Source.key",
          "Source.citation",
          "Source.url",
          "Source.read",
          // fixed texts, and those of the reader of the farm folder
          "Report.cautions",
          "Report.notices");

  /** The same of the other results; explanations hold names of quantities' subjects and units. */
  private static final Set<String> DATA_OF_OTHERS =
      Set.of(
          "JoiningReport.schemaVersion",
          "JoiningReport.program",
          "JoiningReport.cautions",
          "JoiningReport.notices",
          "ComparisonReport.schemaVersion",
          "ComparisonReport.program",
          "ComparisonReport.cautions",
          "ExplanationReport.currency",
          "Explanation.names",
          "Mover.name",
          "BatchResult.farm",
          "BatchResult.folder",
          "BatchResult.faults",
          "Side.folder",
          "Side.scenario",
          // names of mobs, paddocks, cultivars and other stock
          "Reason.cultivar",
          "YoungRow.paddock",
          "FarmDifference.notHeld",
          "MobRow.name",
          "MobRow.offBefore",
          "MobRow.offGreen",
          "StayRow.paddocks",
          "Shut.paddock",
          "Shut.shutTo",
          "Shut.mob",
          "SeasonRow.mob",
          "OtherRow.name",
          "Outline.paddock",
          "PaddockPair.name",
          "PaddockAnswer.name",
          // actions: key and name
          "Shut.action",
          "Shut.actionName",
          "PaddockSide.actionName",
          "PaddockAnswer.action");

  private final Set<Class<?>> seen = new LinkedHashSet<>();
  private final Set<String> texts = new TreeSet<>();

  @Test
  void texts_ofTheRecordsOfAReport_areNamesKeysUnitsAndFixedTexts() {
    walk(Report.class);

    assertThat(seen).hasSizeGreaterThan(25).contains(Reason.class, HowFound.Choice.class);
    assertThat(texts).isEqualTo(new TreeSet<>(DATA));
  }

  @Test
  void texts_ofTheOtherResults_areNamesKeysUnitsAndFixedTexts() {
    walk(Report.class);
    for (Class<?> result :
        List.of(
            JoiningReport.class,
            FarmMap.class,
            ComparisonReport.class,
            ExplanationReport.class,
            BatchResult.class)) {
      walk(result);
    }

    Set<String> all = new TreeSet<>(DATA);
    all.addAll(DATA_OF_OTHERS);
    assertThat(texts).isEqualTo(all);
  }

  private void walk(Class<?> record) {
    if (seen.add(record)) {
      for (RecordComponent part : record.getRecordComponents()) {
        walk(record.getSimpleName() + "." + part.getName(), part.getGenericType());
      }
    }
  }

  private void walk(String place, Type type) {
    if (type instanceof ParameterizedType generic) {
      for (Type argument : generic.getActualTypeArguments()) {
        walk(place, argument);
      }
    } else if (type == String.class || type == Object.class || type == CharSequence.class) {
      texts.add(place);
    } else if (type instanceof Class<?> known && known.isRecord()) {
      walk(known);
    }
  }
}
