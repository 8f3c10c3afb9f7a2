package swardcase.farm;

import swardcase.check.Check;
import swardcase.evidence.Assumption;

/**
 * One line of an action's cost.
 *
 * @param name such as {@code seed}
 * @param phase when it falls due
 * @param ownLabour whether it is somebody's own time, which is not paid
 * @param costPerHa in the farm's currency, per ha
 */
public record CostLine(String name, Phase phase, boolean ownLabour, Assumption costPerHa) {

  /** When a cost falls due. */
  public enum Phase {
    /** Once in each run-down year. */
    RUN_DOWN("run-down year"),
    /** In the sowing year, and again if the sowing fails. */
    SOWING("sowing year"),
    /** Every year from the start. */
    YEARLY("every year");

    private final String label;

    Phase(String label) {
      this.label = label;
    }

    /** The words used in the tables. */
    public String label() {
      return label;
    }
  }

  /** The doubt that cost lines of one name share unless a table says otherwise. */
  public static String doubt(String name) {
    return "cost of " + name;
  }

  /** Checks that nothing is missing. */
  public CostLine {
    Check.notBlank(name, "name of a cost line");
    Check.notNull(phase, "phase of " + name);
    Check.notNegative(costPerHa.range().low(), "cost of " + name);
  }
}
