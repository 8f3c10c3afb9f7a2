package swardcase.intake;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.reading.Fields;
import swardcase.tables.Tables;

/**
 * Fills in what the farm folder leaves out from the rows {@code default.*} of the tables, and keeps
 * a list of what was filled in.
 */
final class Defaults {

  private final Tables tables;
  private final Map<String, Assumption> taken = new LinkedHashMap<>();

  Defaults(Tables tables) {
    this.tables = tables;
  }

  /** The default with this key, which the tables must hold; its unit is that of the record. */
  Assumption get(String key) {
    Assumption row = unsaid(key);
    taken.putIfAbsent(key, row);
    return row;
  }

  /** The same for a default of which more is said than that it was taken. */
  Assumption unsaid(String key) {
    return tables.parameter("default." + key);
  }

  /** What the user wrote, or the row itself. */
  Assumption orUser(String key, Optional<Range> user) {
    return user.isPresent() ? ofFarm(unsaid(key), user.get()) : get(key);
  }

  /** What the user wrote in per cent of the row's unit, or the row itself. */
  Assumption orPercent(String key, Optional<Range> user) {
    return orUser(key, user.map(Fields::fractions));
  }

  /** A number of the farm under the name, unit and doubt of a table row. */
  static Assumption ofFarm(Assumption row, Range user) {
    return Assumption.ofFarm(row.name(), user, row.unit()).withDoubt(row.doubt());
  }

  /** Every default taken, in the order it was asked for. */
  List<Assumption> taken() {
    return List.copyOf(taken.values());
  }
}
