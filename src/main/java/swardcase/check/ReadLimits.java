package swardcase.check;

/**
 * How much is read of what a user hands in. No farm comes near these limits; a file beyond one of
 * them is refused in words that say which, before it can fill the memory or take more than a
 * second.
 */
public final class ReadLimits {

  /** Bytes of a text file: YAML or CSV. */
  public static final int TEXT_BYTES = 1_000_000;

  /** Bytes of a workbook as it is stored. */
  public static final int WORKBOOK_BYTES = 5_000_000;

  /** Bytes of the parts of a workbook that are read, whatever their names, once unpacked. */
  public static final int UNPACKED_BYTES = 10_000_000;

  /** Parts of a workbook. */
  public static final int PARTS = 1_000;

  /** Elements in the parts of a workbook that are read: a cell is two, a text two, a style one. */
  public static final int ELEMENTS = 250_000;

  /** Elements of a workbook within each other. */
  public static final int NESTED_ELEMENTS = 64;

  /** Attributes of one element of a workbook. */
  public static final int ATTRIBUTES = 100;

  /** Characters of a number, of which seventeen can make a difference. */
  public static final int DIGITS = 100;

  /** Characters of one value: a cell, or what stands behind a key. */
  public static final int CHARACTERS = 2_000;

  /** Characters of a name that is printed: of a farm, a paddock, a mob, a key. */
  public static final int NAME_CHARACTERS = 200;

  /** Rows of a table below its headings. */
  public static final int ROWS = 10_000;

  /** Columns of a table. */
  public static final int COLUMNS = 100;

  /** Paddocks of a farm. */
  public static final int PADDOCKS = 1_000;

  /** Names of cultivars in one cell, of which the plant may be any. */
  public static final int CANDIDATES = 20;

  /** Keys below a key. */
  public static final int KEYS = 1_000;

  /** Items of a list in a YAML file. */
  public static final int ITEMS = 100;

  /** Keys and lists within each other. */
  public static final int NESTED_KEYS = 12;

  /** Scenarios of a file. */
  public static final int SCENARIOS = 20;

  /** Faults that are kept: a file with more is something else altogether. */
  public static final int FAULTS = 500;

  /** Faults for which the nearest valid name is looked for. */
  public static final int NEAREST = 100;

  private ReadLimits() {}
}
