package swardcase.bench;

import java.nio.file.Path;
import swardcase.intake.FarmFolder;
import swardcase.intake.LoadedFarm;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** The invented farms of the demonstration folders, made ready. */
public final class DemoFarms {

  private static final Tables TABLES = TablesLoader.standard().load();

  private DemoFarms() {}

  /** The farm of a folder. */
  public static LoadedFarm farm(String name) {
    return FarmFolder.read(Path.of("demo-data", name), TABLES);
  }

  /** Its model. */
  public static FarmModel model(String name) {
    return new FarmModel(farm(name).farm(), TABLES);
  }

  static Tables tables() {
    return TABLES;
  }
}
