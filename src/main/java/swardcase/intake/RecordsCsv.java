package swardcase.intake;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.Mob;
import swardcase.farm.SeasonType;
import swardcase.tables.CsvRow;
import swardcase.tables.CsvTable;

/**
 * Reads the table of records, {@code records.csv} or a sheet: what the farm wrote down in past
 * years, one row a mob and year.
 */
final class RecordsCsv {

  static final String TABLE = "records";

  private static final List<String> REQUIRED = List.of("year", "mob", "ewes_joined");
  private static final List<String> FIGURES =
      List.of("in_lamb", "dry", "lambs_marked", "supplement_t");
  private static final List<String> OPTIONAL =
      List.of(
          "in_lamb",
          "dry",
          "lambs_marked",
          "joining_start",
          "grazed_before_joining",
          "supplement_t",
          "season");

  private static final Map<String, SeasonType> SEASONS =
      Arrays.stream(SeasonType.values())
          .collect(Collectors.toMap(SeasonType::label, Function.identity()));

  private static final int FIRST_YEAR = 1950;
  private static final int LAST_YEAR = 2200;
  private static final int MOST_EWES = 1_000_000;
  private static final double MOST_TONNES = 100_000;

  /** No mob marks more lambs for a ewe joined. */
  private static final int MOST_LAMBS = 4;

  private final Optional<List<Mob>> mobs;
  private final List<String> paddocks;
  private final List<FlockRecord> records = new ArrayList<>();
  private final Map<String, Integer> lines = new HashMap<>();
  private final Map<Integer, CsvRow> supplementOf = new HashMap<>();
  private final Map<Integer, CsvRow> seasonOf = new HashMap<>();
  private final Set<String> twice = new HashSet<>();
  private final Map<String, CsvRow> onlyMarked = new LinkedHashMap<>();
  private final Set<String> scannedMobs = new HashSet<>();

  private RecordsCsv(Optional<List<Mob>> mobs, List<String> paddocks) {
    this.mobs = mobs;
    this.paddocks = paddocks;
  }

  /**
   * What stands in the table.
   *
   * @param mobs of the farm; empty if they are at fault, and then no name is looked for among them
   * @param paddocks their names as written
   */
  static RecordsCsv read(CsvTable table, Optional<List<Mob>> mobs, List<String> paddocks) {
    RecordsCsv read = new RecordsCsv(mobs, paddocks);
    if (table.demand(REQUIRED, OPTIONAL)) {
      table.rows().forEach(row -> read.find(row).ifPresent(read.records::add));
      read.demandScanning();
    }
    return read;
  }

  /** The farm with its records, in an order of their own. */
  Farm with(Farm farm) {
    List<String> order = farm.mobs().stream().map(Mob::name).toList();
    List<FlockRecord> sorted =
        records.stream()
            .sorted(
                Comparator.comparing(FlockRecord::year)
                    .thenComparing(record -> order.indexOf(record.mob())))
            .toList();
    return farm.withRecords(farm.mobs().stream().map(this::beside).toList(), sorted);
  }

  private Mob beside(Mob mob) {
    List<FlockRecord> told =
        records.stream()
            .filter(record -> record.mob().equals(mob.name()) && record.inLamb().isPresent())
            .toList();
    double joined = told.stream().mapToDouble(FlockRecord::ewesJoined).sum();
    double inLamb = told.stream().mapToDouble(record -> record.inLamb().getAsInt()).sum();
    return inLamb > 0 ? mob.besideRecords(100 * inLamb / joined) : mob;
  }

  private Optional<FlockRecord> find(CsvRow row) {
    int year = row.whole("year", FIRST_YEAR, LAST_YEAR);
    Optional<Mob> mob = mob(row);
    once(row);
    int joined = row.whole("ewes_joined", 1, MOST_EWES);
    OptionalInt inLamb = inLamb(row, joined);
    OptionalInt marked = row.findWhole("lambs_marked", 0, MOST_LAMBS * joined);
    Optional<MonthDay> start = joiningStart(row);
    List<String> grazed = grazed(row);
    OptionalDouble tonnes = row.findNumber("supplement_t", 0, MOST_TONNES);
    alike(row, year, "supplement_t", supplementOf);
    Optional<SeasonType> season = row.findChoice("season", SEASONS);
    alike(row, year, "season", seasonOf);
    if (FIGURES.stream().allMatch(column -> row.findText(column).isEmpty())) {
      row.fault("in_lamb", "must be given, or one of dry, lambs_marked and supplement_t");
    }
    mob.ifPresent(of -> entersOnce(row, of));
    return row.make(
        () ->
            new FlockRecord(
                year,
                mob.map(Mob::name).orElse(row.text("mob")),
                joined,
                inLamb,
                marked,
                start,
                grazed,
                tonnes,
                season));
  }

  private Optional<Mob> mob(CsvRow row) {
    List<Mob> known = mobs.orElse(List.of());
    List<String> names = known.stream().map(Mob::name).toList();
    Optional<String> name = Names.find(row.text("mob"), names);
    if (mobs.isPresent() && name.isEmpty() && row.findText("mob").isPresent()) {
      row.faultName("mob", "must be a mob of " + Fields.FILE, names);
    }
    return name.map(found -> known.get(names.indexOf(found)));
  }

  private void once(CsvRow row) {
    String key = row.text("year") + " " + Names.key(row.text("mob"));
    Integer first = lines.putIfAbsent(key, row.line());
    if (first != null) {
      row.fault("mob", "must be in one row for a year; line " + first + " has it already");
    }
  }

  private static OptionalInt inLamb(CsvRow row, int joined) {
    OptionalInt inLamb = row.findWhole("in_lamb", 0, joined);
    OptionalInt dry = row.findWhole("dry", 0, joined);
    if (row.findText("in_lamb").isPresent() && row.findText("dry").isPresent()) {
      row.fault("dry", "must not stand beside in_lamb: the rest of the ewes joined are the others");
    }
    return inLamb.isPresent() || dry.isEmpty() ? inLamb : OptionalInt.of(joined - dry.getAsInt());
  }

  private static Optional<MonthDay> joiningStart(CsvRow row) {
    Optional<String> text = row.findText("joining_start");
    Optional<MonthDay> day = text.flatMap(CalendarText::findDay);
    if (text.isPresent() && day.isEmpty()) {
      row.fault("joining_start", "must be a day such as 30 January or 2024-01-30");
    }
    return day;
  }

  private List<String> grazed(CsvRow row) {
    List<String> grazed = new ArrayList<>();
    for (String name : row.list("grazed_before_joining")) {
      Optional<String> known = Names.find(name, paddocks);
      known.map(Names::tidy).ifPresent(grazed::add);
      if (known.isEmpty() && !paddocks.isEmpty()) {
        row.faultName(
            "grazed_before_joining",
            "must be paddocks of the farm, with semicolons between",
            paddocks);
      }
    }
    return grazed;
  }

  /** What belongs to the whole farm may stand in one row of a year, or alike in several. */
  private static void alike(CsvRow row, int year, String column, Map<Integer, CsvRow> rows) {
    Optional<String> told = row.findText(column);
    if (told.isEmpty()) {
      return;
    }
    CsvRow first = rows.putIfAbsent(year, row);
    if (first != null && !first.text(column).equalsIgnoreCase(told.get())) {
      row.fault(
          column,
          "must be that of the whole farm, the same in all rows of a year; line "
              + first.line()
              + " has "
              + first.text(column));
    }
  }

  /** What was seen in a mob is a record or a figure of {@code farm.yaml}, never both. */
  private void entersOnce(CsvRow row, Mob mob) {
    boolean scanned = row.findText("in_lamb").isPresent() || row.findText("dry").isPresent();
    boolean marked = row.findText("lambs_marked").isPresent();
    boolean told = mob.pregnantPercent().setBy() == SetBy.USER;
    if ((scanned || marked) && told && twice.add(mob.name())) {
      row.fault(
          scanned ? row.findText("in_lamb").isPresent() ? "in_lamb" : "dry" : "lambs_marked",
          "must not stand beside pregnant_percent of this mob in "
              + Fields.FILE
              + ": a figure enters once, so delete one of them");
    } else if (marked && !scanned && mob.markingPercent().setBy() == SetBy.USER) {
      onlyMarked.computeIfAbsent(mob.name(), name -> row);
    }
    scannedMobs.addAll(scanned ? List.of(mob.name()) : List.of());
  }

  /** Without one scanning, the lambs of a ewe in lamb cannot be told from a figure of lambs. */
  private void demandScanning() {
    onlyMarked.forEach(
        (mob, row) -> {
          if (!scannedMobs.contains(mob)) {
            row.fault(
                "lambs_marked",
                "must come with in_lamb or dry in a year at least, or without marking_percent of"
                    + " this mob in "
                    + Fields.FILE
                    + ": a figure enters once");
          }
        });
  }
}
