package gripwright.budget;

import java.util.Locale;

/**
 * The limits of a budget, each with its default. The defaults are several times what a squad of 30
 * athletes needs for a year of daily sessions, and keep a compile within 256 MB of memory.
 */
public enum Limit {
  /** Characters of a file that is read, in UTF-16 units. */
  CHARACTERS(4 << 20),
  /** Words, numbers and signs of a file that is read. */
  TOKENS(1_000_000),
  /** Nesting depth of braces and brackets. */
  NESTING(200),
  /** Operators of one expression. */
  OPERATORS(500),
  /** Weeks of a plan; ten years. */
  WEEKS(520),
  /** Athletes of a plan. */
  ATHLETES(1_000),
  /** Sessions of one week of a plan. */
  WEEKLY(100),
  /** Holds and rests of one exercise, written out. */
  EXERCISE(10_000),
  /**
   * Holds and rests of all plans of a compile, for all their athletes, in all their weeks. Other
   * parts that take memory count as several: see {@code gripwright.plan.PlanSize}.
   */
  HOLDS(4_000_000),
  /** Dated sessions of all plans of a compile, for all their athletes. */
  SESSIONS(100_000),
  /** Places listed in findings of a compile; a finding itself counts as {@link #A_FINDING}. */
  FINDINGS(1_000_000),
  /** Evaluation steps of rules: things visited. */
  WORK(200_000_000),
  /** Values that rules keep while a plan is checked: values read, and pairs of sessions. */
  VALUES(10_000_000),
  /** Steps of the search for training days. */
  PLACEMENT(500_000_000);

  /** The count of a finding in {@link #FINDINGS}, besides its places. */
  public static final int A_FINDING = 10;

  private final long standard;

  Limit(long standard) {
    this.standard = standard;
  }

  /** Returns the default. */
  public long standard() {
    return standard;
  }

  /** Returns its word in findings, such as {@code weeks}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
