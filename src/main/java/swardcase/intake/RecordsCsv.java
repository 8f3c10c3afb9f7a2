package swardcase.intake;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.FlockRecord;
import swardcase.farm.Mob;
import swardcase.farm.SeasonType;
import swardcase.reading.CalendarText;
import swardcase.reading.Fields;
import swardcase.reading.Names;
import swardcase.reading.Node.Scalar;
import swardcase.reading.Table;

/**
 * Reads the table of records, {@code records.csv} or a sheet: what the farm wrote down in past
 * years, one row a mob and year.
 */
final class RecordsCsv {

  static final String TABLE = "records";

  private static final Map<String, SeasonType> SEASONS =
      Fields.words(SeasonType.values(), SeasonType::label);

  private static final int FIRST_YEAR = 1950;
  private static final int LAST_YEAR = 2200;
  private static final int MOST_EWES = 1_000_000;
  private static final double MOST_TONNES = 100_000;

  /** No mob marks more lambs for a ewe joined. */
  private static final int MOST_LAMBS = 4;

  private final Optional<List<Mob>> mobs;
  private final List<String> paddocks;
  private final List<FlockRecord> records = new ArrayList<>();
  private final Map<String, Fields> ofYears = new HashMap<>();
  private final Set<String> twice = new HashSet<>();
  private final Map<String, Fields> onlyMarked = new LinkedHashMap<>();
  private final Set<String> scannedMobs = new HashSet<>();

  /**
   * What stands in the table.
   *
   * @param mobs of the farm; empty if they are at fault, and then no name is looked for among them
   * @param paddocks their names as written
   */
  RecordsCsv(Table table, Optional<List<Mob>> mobs, List<String> paddocks) {
    this.mobs = mobs;
    this.paddocks = paddocks;
    table.demandUnique(List.of("year", "mob"));
    table.rows().forEach(row -> row.make(() -> read(row)).ifPresent(records::add));
    demandScanning();
    table.finish();
  }

  /** The farm with its records, in an order of their own. */
  Farm with(Farm farm) {
    List<String> order = farm.mobs().stream().map(Mob::name).toList();
    Comparator<FlockRecord> byMob = Comparator.comparing(record -> order.indexOf(record.mob()));
    List<FlockRecord> sorted =
        records.stream()
            .sorted(Comparator.comparing(FlockRecord::year).thenComparing(byMob))
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

  private FlockRecord read(Fields row) {
    Optional<Mob> mob = mob(row);
    int joined = row.whole("ewes_joined", 1, MOST_EWES);
    alike(row, "supplement_t");
    alike(row, "season");
    if (Stream.of("in_lamb", "dry", "lambs_marked", "supplement_t").noneMatch(row::has)) {
      row.fault("in_lamb", "must be given, or one of dry, lambs_marked and supplement_t");
    }
    mob.ifPresent(of -> entersOnce(row, of));
    return new FlockRecord(
        row.whole("year", FIRST_YEAR, LAST_YEAR),
        mob.map(Mob::name).orElse(row.text("mob")),
        joined,
        inLamb(row, joined),
        row.findWhole("lambs_marked", 0, MOST_LAMBS * joined),
        joiningStart(row),
        grazed(row),
        row.findNumber("supplement_t", 0, MOST_TONNES),
        row.findChoice("season", SEASONS));
  }

  private Optional<Mob> mob(Fields row) {
    List<Mob> known = mobs.orElse(List.of());
    List<String> names = known.stream().map(Mob::name).toList();
    Optional<String> name = Names.find(row.text("mob"), names);
    if (mobs.isPresent() && name.isEmpty() && row.has("mob")) {
      row.fault("mob", "must be a mob of " + FarmReader.FILE, names);
    }
    return name.map(found -> known.get(names.indexOf(found)));
  }

  private static OptionalInt inLamb(Fields row, int joined) {
    OptionalInt inLamb = row.findWhole("in_lamb", 0, joined);
    OptionalInt dry = row.findWhole("dry", 0, joined);
    if (row.has("in_lamb") && row.has("dry")) {
      row.fault("dry", "must not stand beside in_lamb: the rest of the ewes joined are the others");
    }
    return inLamb.isPresent() || dry.isEmpty() ? inLamb : OptionalInt.of(joined - dry.getAsInt());
  }

  private static Optional<MonthDay> joiningStart(Fields row) {
    Optional<MonthDay> day = row.findText("joining_start").flatMap(CalendarText::findDay);
    if (row.has("joining_start") && day.isEmpty()) {
      row.fault("joining_start", "must be a day such as 30 January or 2024-01-30");
    }
    return day;
  }

  private List<String> grazed(Fields row) {
    String column = "grazed_before_joining";
    List<String> grazed = new ArrayList<>();
    for (Scalar name : row.words(column)) {
      Optional<String> known = Names.find(name.text(), paddocks);
      known.map(Names::tidy).ifPresent(grazed::add);
      if (known.isEmpty() && !paddocks.isEmpty()) {
        String rule = "must be paddocks of the farm, with semicolons between";
        row.fault(column, rule, paddocks);
      }
    }
    return grazed;
  }

  /** What belongs to the whole farm may stand in one row of a year, or alike in several. */
  private void alike(Fields row, String column) {
    if (!row.has(column)) {
      return;
    }
    Fields first = ofYears.putIfAbsent(column + " of " + row.text("year"), row);
    if (first != null && !first.text(column).equalsIgnoreCase(row.text(column))) {
      String rule = "must be that of the whole farm, the same in all rows of a year; line ";
      row.fault(column, rule + first.at().line() + " has " + first.text(column));
    }
  }

  /** What was seen in a mob is a record or a figure of {@code farm.yaml}, never both. */
  private void entersOnce(Fields row, Mob mob) {
    boolean scanned = row.has("in_lamb") || row.has("dry");
    boolean marked = row.has("lambs_marked");
    boolean told = mob.pregnantPercent().setBy() == SetBy.USER;
    if ((scanned || marked) && told && twice.add(mob.name())) {
      row.fault(
          scanned ? row.has("in_lamb") ? "in_lamb" : "dry" : "lambs_marked",
          "must not stand beside pregnant_percent of this mob in "
              + FarmReader.FILE
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
                    + FarmReader.FILE
                    + ": a figure enters once");
          }
        });
  }
}
