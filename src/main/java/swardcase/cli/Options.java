package swardcase.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** Options that several commands take, and may refuse. */
abstract class Options {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  final PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** A use of these options that is refused. */
  final ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
