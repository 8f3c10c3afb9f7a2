package swardcase.evidence;

import com.fasterxml.jackson.annotation.JsonValue;

/** How well a number is supported. */
public enum Evidence {
  /** Read in a source that is listed in {@code tables/sources.csv}. */
  PUBLISHED("published"),
  /** A trade fact in general use, with no trial behind it. */
  COMMON_PRACTICE("common practice"),
  /** Known to the authors but not seen in a source: check it before relying on it. */
  MEMORY("memory"),
  /** Our own arithmetic or judgement. */
  INFERRED("inferred"),
  /** Told by the farm: not a reference value at all. */
  FARM("farm");

  private final String label;

  Evidence(String label) {
    this.label = label;
  }

  /** The mark as printed and as written in the tables, such as {@code common practice}. */
  @JsonValue
  public String label() {
    return label;
  }
}
