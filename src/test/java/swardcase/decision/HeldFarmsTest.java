package swardcase.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import swardcase.intake.FarmFolder;
import swardcase.outcome.FarmModel;
import swardcase.tables.Tables;
import swardcase.tables.TablesLoader;

/** Threads outlive the farms they work on, and may keep none. */
class HeldFarmsTest {

  private static final int MOST_COLLECTIONS = 20;

  @Test
  void farm_answeredOnThreadsThatStay_isHeldByNoneOfThem() throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(1);
    try {
      WeakReference<FarmModel> farm = pool.submit(HeldFarmsTest::answer).get();

      for (int i = 0; i < MOST_COLLECTIONS && farm.get() != null; i++) {
        System.gc();
      }

      assertThat(farm.get()).isNull();
    } finally {
      pool.shutdown();
    }
  }

  /** All the work on one farm; every part of it runs on the threads of the common pool as well. */
  private static WeakReference<FarmModel> answer() {
    Tables tables = TablesLoader.standard().load();
    Path folder = Path.of("demo-data", "mixed-farm");
    FarmModel model = new FarmModel(FarmFolder.read(folder, tables).farm(), tables);
    HowSure howSure =
        HowSure.of(Decision.rough(Decision.draws(model, 1, 100), List.of(), done -> {}));
    assertThat(howSure.breakEvens()).isNotEmpty();
    return new WeakReference<>(model);
  }
}
