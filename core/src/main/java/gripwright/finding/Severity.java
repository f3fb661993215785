package gripwright.finding;

import java.util.Locale;
import java.util.Optional;

/** How grave a finding is, most severe first. */
public enum Severity {
  /** The plan must not be trained. */
  ERROR,
  /** The plan can be trained; a coach should look at this first. */
  WARNING,
  /** Worth knowing. */
  ADVICE;

  /** Returns the word written in a plan and in JSON, such as {@code warning}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the severity for a word. */
  public static Optional<Severity> parse(String word) {
    for (Severity severity : values()) {
      if (severity.word().equals(word)) {
        return Optional.of(severity);
      }
    }
    return Optional.empty();
  }
}
