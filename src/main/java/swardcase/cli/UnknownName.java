package swardcase.cli;

import java.util.Collection;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import swardcase.check.NearestName;

/** Says that a name on the command line is not known, with the nearest that is. */
final class UnknownName {

  private UnknownName() {}

  /** {@code There is no table 'dry-stok'; did you mean 'dry-stock'?}. */
  static ParameterException of(
      CommandSpec spec, String what, String typed, Collection<String> names) {
    String hint =
        NearestName.find(typed, names).map(near -> "; did you mean '" + near + "'?").orElse("");
    return new ParameterException(
        spec.commandLine(), "There is no " + what + " '" + typed + "'" + hint);
  }
}
