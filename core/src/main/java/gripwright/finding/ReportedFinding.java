package gripwright.finding;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A finding as it is shown: with its sentences, and with its place in a file if there is one. Every
 * document uses this form.
 *
 * @param code dotted and stable
 * @param severity the severity
 * @param message one sentence on the mistake
 * @param hint one sentence on the correction, or null
 * @param file path relative to the project root, with {@code /}; null if there is no text
 * @param line first line, from 1; 0 if there is no text
 * @param column first column in characters, from 1
 * @param endLine last line
 * @param endColumn the column after the last character
 * @param rule name of the broken rule, or null
 * @param waivedBecause the coach's reason, or null
 * @param place path in the model, or null
 * @param athletes names of the athletes it concerns
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
    @Nullable String place,
    List<String> athletes) {

  /** Copies the names. */
  public ReportedFinding {
    athletes = List.copyOf(athletes);
  }

  /** Returns whether the finding counts for a failed check: an unwaived error. */
  public boolean blocks() {
    return severity == Severity.ERROR && waivedBecause == null;
  }
}
