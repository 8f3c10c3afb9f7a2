package swardcase.serve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import swardcase.chance.Range;
import swardcase.evidence.Assumption;
import swardcase.evidence.SetBy;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Mob;
import swardcase.folder.Typed;
import swardcase.page.Lever;

/**
 * The numbers of a farm that can be moved on the page, and what a scenario file says of those that
 * were. A lever moves the whole range, for a single number in its place would make the answer look
 * surer than it is.
 */
final class Levers {

  private static final double BUDGET_STEP = 1000;

  private final Asked asked;
  private final List<Lever> levers = new ArrayList<>();

  /** Lines of the scenario below a key of the farm, in the order of the levers. */
  private final Map<String, List<String>> lines = new LinkedHashMap<>();

  private Levers(Farm farm, Asked asked) {
    this.asked = asked;
    SetBy fedSetBy = farm.supplement().pricePerTonne().setBy();
    if (asked.levers().containsKey("supplement.price_per_tonne") && fedSetBy != SetBy.USER) {
      String name = Typed.quoted(farm.supplement().name());
      line("supplement", "name: " + name); // it may stand nowhere yet
    }
    Keys.prices(farm).forEach((key, price) -> percent(key, price, 1, price.unit()));
    Finance finance = farm.finance();
    percent("finance.discount_rate_percent", finance.discountRate(), 100, "% a year");
    budget(finance.budgetPerYear(), farm.currency());
    Optional<Range> years = Optional.of(Range.exactly(finance.horizonYears()));
    add("finance.horizon_years", "", "years", years, false, 1, 40, 1)
        .ifPresent(to -> line("finance", "horizon_years: " + Math.round(to)));
    farm.mobs().forEach(this::ewes);
    farm.otherStock().stream()
        .filter(stock -> stock.head() > 0)
        .forEach(stock -> head("other_stock", stock.name(), "head", stock.head()));
  }

  /** The levers of a farm as its files have it, where the user has moved them. */
  static List<Lever> of(Farm farm, Asked asked) {
    return List.copyOf(new Levers(farm, asked).levers);
  }

  /**
   * The changes as the text of a scenario file with one scenario; empty if no number was moved. A
   * lever that the farm has no more moves nothing; how far is too far, the reader of farms says.
   */
  static Optional<String> scenario(Farm farm, Asked asked) {
    Levers levers = new Levers(farm, asked);
    if (levers.lines.isEmpty()) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder("scenarios:\n  from the page:\n");
    levers.lines.forEach(
        (section, lines) -> {
          text.append("    ").append(section).append(":\n");
          lines.forEach(line -> text.append("      ").append(line).append('\n'));
        });
    return Optional.of(text.toString());
  }

  /** A number that moves by per cent; {@code times} makes it the number the file would hold. */
  private void percent(String key, Assumption now, double times, String unit) {
    Range range = now.range().times(times);
    if (range.high() == 0) {
      return; // nothing times anything is nothing
    }
    Optional<Double> to = lever(key, "", unit, range);
    String[] path = key.split("\\.");
    to.ifPresent(percent -> line(path[0], path[1] + ": " + moved(range, now.setBy(), percent)));
  }

  /** A change that the file's own number takes, or the default's numbers moved. */
  private static String moved(Range range, SetBy by, double percent) {
    if (by == SetBy.USER) {
      return (percent < 0 ? "" : "+") + plain(percent) + " %";
    }
    return DoubleStream.of(range.low(), range.likely(), range.high())
        .mapToObj(value -> plain(value * (100 + percent) / 100))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** A lever that moves the whole range by per cent. */
  private Optional<Double> lever(String key, String name, String unit, Range now) {
    return add(key, name, unit, Optional.of(now), true, -60, 100, 5);
  }

  /** Adds a lever; where the user has moved it, if so. */
  private Optional<Double> add(
      String key,
      String name,
      String unit,
      Optional<Range> now,
      boolean inPercent,
      double low,
      double high,
      double step) {
    Optional<Double> to = Optional.ofNullable(asked.levers().get(key));
    levers.add(new Lever(key, name, unit, now, inPercent, low, high, step, to));
    return to;
  }

  private void budget(OptionalDouble now, String currency) {
    Optional<Range> range = now.stream().mapToObj(Range::exactly).findFirst();
    double most = Math.max(100_000, 3 * now.orElse(0));
    double high = Math.ceil(most / BUDGET_STEP) * BUDGET_STEP;
    add("finance.budget_per_year", "", currency, range, false, 0, high, BUDGET_STEP)
        .ifPresent(to -> line("finance", "budget_per_year: " + plain(to)));
  }

  private void ewes(Mob mob) {
    Optional<Long> ewes = head("mobs", mob.name(), "ewes", mob.ewes());
    if (mob.agesSetBy() == SetBy.USER) {
      ewes.ifPresent(moved -> line("mobs", "  ages: " + ages(mob, moved)));
    }
  }

  /** Ewes by number of joinings, in the shares the mob has; they add up to the ewes. */
  private static String ages(Mob mob, long ewes) {
    return mob.ageShares().stream()
        .map(share -> plain(share * ewes))
        .collect(Collectors.joining(", ", "[", "]"));
  }

  /** A lever for the animals of an entry of a list; how many they are where it was moved. */
  private Optional<Long> head(String list, String name, String key, int now) {
    Optional<Long> head =
        lever(list + "." + name + "." + key, name, "head", Range.exactly(now))
            .map(percent -> Math.max(1, Math.round(now * (100 + percent) / 100)));
    head.ifPresent(
        moved -> {
          line(list, "- name: " + Typed.quoted(name));
          line(list, "  " + key + ": " + moved);
        });
    return head;
  }

  private void line(String section, String line) {
    lines.computeIfAbsent(section, none -> new ArrayList<>()).add(line);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(Math.rint(value * 1e6) / 1e6).stripTrailingZeros().toPlainString();
  }
}
