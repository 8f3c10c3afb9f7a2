package swardcase.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import swardcase.check.Fault;
import swardcase.check.FaultsException;
import swardcase.check.NearestName;
import swardcase.farm.Action;
import swardcase.farm.Paddock;
import swardcase.outcome.FarmModel;

/** Reads choices made beforehand, as they are typed: {@code Long=spray-fallow@2028}. */
public final class FixedChoices {

  /** What faults call the place of such a choice. */
  public static final String FIX = "--fix";

  private FixedChoices() {}

  /**
   * The choices.
   *
   * @param typed each {@code PADDOCK=ACTION} or {@code PADDOCK=ACTION@YEAR}
   * @param firstYear calendar year of the coming one
   * @throws FaultsException with all faults at once; also if no plan with these choices keeps
   *     within the limits of the farm
   */
  public static List<FixedChoice> read(List<String> typed, FarmModel model, int firstYear) {
    List<Fault> faults = new ArrayList<>();
    List<FixedChoice> choices = new ArrayList<>();
    for (String fix : typed) {
      read(fix, model, firstYear, faults, choices);
    }
    if (faults.isEmpty() && !choices.isEmpty() && new LikelySearch(model, choices).isImpossible()) {
      faults.add(
          fault(
              "must leave a plan within the money per year, the share out of grazing, the hectares in"
                  + " crop and the feed at joining",
              String.join(" ", typed),
              ""));
    }
    if (!faults.isEmpty()) {
      throw new FaultsException(faults);
    }
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
}
