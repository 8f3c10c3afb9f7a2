package swardcase.intake;

import swardcase.check.Check;

/**
 * Something in a farm folder that is allowed but odd.
 *
 * @param what what is odd, in a sentence
 * @param consequence what follows for the answer, in a sentence
 */
public record Doubt(String what, String consequence) {

  /** Checks that both are given. */
  public Doubt {
    Check.notBlank(what, "what is doubted");
    Check.notBlank(consequence, "what follows from a doubt");
  }

  /** Both sentences. */
  public String sentence() {
    return what + " " + consequence;
  }
}
