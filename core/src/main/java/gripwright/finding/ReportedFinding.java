package gripwright.finding;

import org.jspecify.annotations.Nullable;

/**
 * A finding as it is shown: worded, and with its place in a file where there is one. This is the
 * shape that every document carries.
 *
 * @param code dotted and stable
 * @param severity how grave it is
 * @param message one sentence that says what is wrong
 * @param hint one sentence that says what would be right, or null
 * @param file path relative to the project root, with {@code /}; null where there is no text
 * @param line first line, from 1; 0 where there is no text
 * @param column first column in characters, from 1
 * @param endLine last line
 * @param endColumn the column after the last character
 * @param rule name of the broken rule, or null
 * @param waivedBecause the coach's reason, or null
 * @param place path in the model, or null
 */
public record ReportedFinding(
    String code,
    Severity severity,
    String message,
    @Nullable String hint,
    @Nullable String file,
    int line,
    int column,
    int endLine,
    int endColumn,
    @Nullable String rule,
    @Nullable String waivedBecause,
    @Nullable String place) {

  /** Tells whether the finding counts for a failed check: an error that nobody waived. */
  public boolean blocks() {
    return severity == Severity.ERROR && waivedBecause == null;
  }
}
