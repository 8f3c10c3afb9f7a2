package swardcase.cli;

/** What the exit codes mean, in one place for the program and its help. */
final class ExitCodes {

  static final int DONE = 0;
  static final int INTERNAL_FAULT = 1;
  static final int BAD_INPUT = 2;

  static final String FAULT_LINE = "1:a fault of the program itself: please report it";

  private ExitCodes() {}
}
