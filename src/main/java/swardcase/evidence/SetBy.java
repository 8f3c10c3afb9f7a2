package swardcase.evidence;

import com.fasterxml.jackson.annotation.JsonValue;

/** Who set a number. */
public enum SetBy {
  /** Written in the farm folder or on the command line. */
  USER("you"),
  /** Taken from the program's tables because the farm folder leaves it out. */
  DEFAULT("table default"),
  /** Taken from a row of the user's own tables, which replaces the program's row. */
  OVERRIDE("your table");

  private final String label;

  SetBy(String label) {
    this.label = label;
  }

  /** The words printed on the sheet. */
  @JsonValue
  public String label() {
    return label;
  }
}
