package swardcase.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swardcase.decision.Decision;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.view.SamplingView;

/** Says what the plants looked at so far tell, and how many more to look at. */
@Command(
    name = "sampling",
    description =
        "Says for each paddock what the plants looked at so far tell, how easily that is wrong, and"
            + " how many more are worth looking at.")
final class SamplingCommand extends FarmTask {

  @Mixin private SheetOptions sheet;

  @Override
  public Integer call() {
    Tables tables = tables();
    LoadedFarm loaded = load(tables);
    FarmModel model = new FarmModel(sheet.signed(loaded.farm()), tables);
    Decision decision = sheet.decide(model, List.of());
    print(SamplingView.of(sheet.decided("", Optional.empty(), loaded, decision).report(), width()));
    return ExitCodes.DONE;
  }
}
