package swardcase.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import picocli.CommandLine.Option;
import swardcase.chance.Range;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.NearestName;
import swardcase.evidence.Assumption;
import swardcase.farm.Action;
import swardcase.farm.Farm;
import swardcase.farm.Finance;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;
import swardcase.search.FixedChoice;

/** What may be changed for one run without touching the farm folder. */
final class FarmChanges {

  private static final String FIX = "--fix";

  /** Below it a rate is probably a fraction written where per cent is meant (inferred). */
  private static final double LEAST_RATE = 0.5;

  @Option(
      names = "--budget",
      paramLabel = "SUM",
      description = "Most money for resowing in one year, instead of the farm's own.")
  private Double budget;

  @Option(
      names = "--horizon",
      paramLabel = "YEARS",
      description = "Years counted, 1 to 40, instead of the farm's own.")
  private Integer horizon;

  @Option(
      names = "--rate",
      paramLabel = "PERCENT",
      description = "Discount rate, real, per cent a year, instead of the farm's own.")
  private Double rate;

  @Option(
      names = FIX,
      paramLabel = "PADDOCK=ACTION[@YEAR]",
      description =
          "Make this choice beforehand and see what it costs; may be given several times. The action"
              + " is a name or key of the action table, the year a calendar year.")
  private List<String> fixes = List.of();

  /** The farm with another budget, horizon or rate. */
  Farm change(Farm farm) {
    List<Fault> faults = new ArrayList<>();
    Finance finance = farm.finance();
    if (budget != null && accepts(budget, 0, 1e9, "--budget", faults)) {
      finance = finance.withBudgetPerYear(budget);
    }
    if (horizon != null && accepts(horizon, 1, 40, "--horizon", faults)) {
      finance = finance.withHorizonYears(horizon);
    }
    if (rate != null && rate > 0 && rate < LEAST_RATE) {
      faults.add(fraction(rate));
    } else if (rate != null && accepts(rate, 0, 100, "--rate", faults)) {
      Assumption was = finance.discountRate();
      finance =
          finance.withDiscountRate(
              Assumption.ofFarm(was.name(), Range.exactly(rate / 100), was.unit()));
    }
    throwIfAny(faults);
    return farm.withFinance(finance);
  }

  private static Fault fraction(double rate) {
    String rule = "must be in per cent a year: 0, or from %s to 100".formatted(LEAST_RATE);
    String percent =
        BigDecimal.valueOf(rate).movePointRight(2).stripTrailingZeros().toPlainString();
    return new Fault("--rate", 0, "", rule, BigDecimal.valueOf(rate).toPlainString(), percent);
  }

  private static boolean accepts(
      double value, double low, double high, String option, List<Fault> faults) {
    boolean accepted = value >= low && value <= high;
    if (!accepted) {
      String rule = String.format(Locale.ROOT, "must be from %.0f to %.0f", low, high);
      faults.add(new Fault(option, 0, "", rule, Double.toString(value), ""));
    }
    return accepted;
  }

  /** The choices made beforehand; {@code firstYear} is the calendar year of the coming one. */
  List<FixedChoice> fixed(FarmModel model, int firstYear) {
    List<Fault> faults = new ArrayList<>();
    List<FixedChoice> choices = new ArrayList<>();
    for (String fix : fixes) {
      read(fix, model, firstYear, faults, choices);
    }
    throwIfAny(faults);
    return choices;
  }

  private static void read(
      String fix, FarmModel model, int firstYear, List<Fault> faults, List<FixedChoice> choices) {
    int equals = fix.lastIndexOf('=');
    if (equals < 0) {
      faults.add(fault("must be PADDOCK=ACTION or PADDOCK=ACTION@YEAR", fix, ""));
      return;
    }
    int at = fix.indexOf('@', equals);
    String action = fix.substring(equals + 1, at < 0 ? fix.length() : at);
    List<Paddock> paddocks = model.farm().paddocks();
    int i = place(fix.substring(0, equals), paddocks.stream().map(Paddock::name).toList(), faults);
    int a = action(action, model.actions(), faults);
    int starts = a < 0 ? Math.min(FarmModel.START_YEARS, model.years()) : model.startYears(a);
    if (starts == 0) {
      String rule =
          String.format(
              Locale.ROOT,
              "must be an action that can be seen through in the years counted, %d; it takes %d",
              model.years(),
              model.lastChange(a) + 1);
      faults.add(fault(rule, fix, ""));
      return;
    }
    OptionalInt start =
        at < 0 ? OptionalInt.empty() : start(fix.substring(at + 1), starts, firstYear, faults);
    if (i < 0 || a < 0) {
      return;
    }
    if (!model.farm().allows(paddocks.get(i), model.actions().get(a))) {
      String rule =
          paddocks.get(i).arable()
              ? "is for ground that cannot be drilled, which the paddock can"
              : "needs arable ground, which the paddock is not";
      faults.add(fault(rule, fix, ""));
    } else if (choices.stream().anyMatch(other -> other.paddock() == i)) {
      faults.add(fault("must be given once for a paddock", fix, ""));
    } else {
      choices.add(new FixedChoice(i, a, start));
    }
  }

  private static int place(String typed, List<String> names, List<Fault> faults) {
    int at =
        IntStream.range(0, names.size())
            .filter(i -> names.get(i).equalsIgnoreCase(typed.strip()))
            .findFirst()
            .orElse(-1);
    if (at < 0) {
      faults.add(
          fault(
              "must name a paddock of the farm", typed, NearestName.find(typed, names).orElse("")));
    }
    return at;
  }

  private static int action(String typed, List<Action> actions, List<Fault> faults) {
    List<String> known = new ArrayList<>();
    for (int a = 0; a < actions.size(); a++) {
      Action action = actions.get(a);
      if (typed.strip().equalsIgnoreCase(action.key())
          || typed.strip().equalsIgnoreCase(action.name())) {
        return a;
      }
      known.add(action.key());
    }
    String rule = "must name an action: " + String.join(", ", known);
    faults.add(fault(rule, typed, NearestName.find(typed, known).orElse("")));
    return -1;
  }

  private static OptionalInt start(String typed, int starts, int firstYear, List<Fault> faults) {
    int last = firstYear + starts - 1;
    if (typed.matches("\\d{4}")) {
      int year = Integer.parseInt(typed);
      if (year >= firstYear && year <= last) {
        return OptionalInt.of(year - firstYear);
      }
    }
    faults.add(fault("must start in a year from " + firstYear + " to " + last, typed, ""));
    return OptionalInt.empty();
  }

  private static Fault fault(String rule, String found, String nearest) {
    return new Fault(FIX, 0, "", rule, found, nearest);
  }

  private static void throwIfAny(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new FaultsException(faults);
    }
  }

  /** The refusal where no plan with the choices made beforehand keeps within the limits. */
  FaultsException beyondLimits() {
    return new FaultsException(
        List.of(
            fault(
                "must leave a plan within the money per year, the share out of grazing, the hectares in"
                    + " crop and the feed at joining",
                String.join(" ", fixes),
                "")));
  }
}
