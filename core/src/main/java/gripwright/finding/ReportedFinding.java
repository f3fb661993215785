package gripwright.finding;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A finding as it is shown: with its sentences, and with its place in a file if there is one. Every
 * document uses this form. Immutable.
 */
public final class ReportedFinding {

  /** The components; lists are copied. */
  private record Parts(
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
    Parts {
      athletes = List.copyOf(athletes);
    }
  }

  private final Parts parts;

  private ReportedFinding(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns a builder for a finding without a hint and a place.
   *
   * @param code dotted and stable
   * @param severity the severity
   * @param message one sentence on the mistake
   */
  public static Builder builder(String code, Severity severity, String message) {
    return new Builder(code, severity, message);
  }

  /** Returns a builder with these components. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /** Returns the code: dotted and stable. */
  public String code() {
    return parts.code;
  }

  /** Returns the severity. */
  public Severity severity() {
    return parts.severity;
  }

  /** Returns one sentence on the mistake. */
  public String message() {
    return parts.message;
  }

  /** Returns one sentence on the correction, or null. */
  public @Nullable String hint() {
    return parts.hint;
  }

  /**
   * Returns the path of the file relative to the project root, with {@code /}; null if there is no
   * text.
   */
  public @Nullable String file() {
    return parts.file;
  }

  /** Returns the first line, from 1; 0 if there is no text. */
  public int line() {
    return parts.line;
  }

  /** Returns the first column in characters, from 1; 0 if there is no text. */
  public int column() {
    return parts.column;
  }

  /** Returns the last line; 0 if there is no text. */
  public int endLine() {
    return parts.endLine;
  }

  /** Returns the column after the last character; 0 if there is no text. */
  public int endColumn() {
    return parts.endColumn;
  }

  /** Returns the name of the broken rule, or null. */
  public @Nullable String rule() {
    return parts.rule;
  }

  /** Returns the coach's reason, or null. */
  public @Nullable String waivedBecause() {
    return parts.waivedBecause;
  }

  /** Returns the path in the model, or null. */
  public @Nullable String place() {
    return parts.place;
  }

  /** Returns the names of the athletes it concerns. */
  public List<String> athletes() {
    return parts.athletes;
  }

  /** Returns whether the finding counts for a failed check: an unwaived error. */
  public boolean blocks() {
    return parts.severity == Severity.ERROR && parts.waivedBecause == null;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ReportedFinding that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "ReportedFinding" + parts.toString().substring("Parts".length());
  }

  /** Collects the components. Not thread-safe. */
  public static final class Builder {
    private String code;
    private Severity severity;
    private String message;
    private @Nullable String hint;
    private @Nullable String file;
    private int line;
    private int column;
    private int endLine;
    private int endColumn;
    private @Nullable String rule;
    private @Nullable String waivedBecause;
    private @Nullable String place;
    private List<String> athletes = List.of();

    private Builder(String code, Severity severity, String message) {
      this.code = Objects.requireNonNull(code, "code");
      this.severity = Objects.requireNonNull(severity, "severity");
      this.message = Objects.requireNonNull(message, "message");
    }

    private Builder(Parts copied) {
      code = copied.code;
      severity = copied.severity;
      message = copied.message;
      hint = copied.hint;
      file = copied.file;
      line = copied.line;
      column = copied.column;
      endLine = copied.endLine;
      endColumn = copied.endColumn;
      rule = copied.rule;
      waivedBecause = copied.waivedBecause;
      place = copied.place;
      athletes = copied.athletes;
    }

    /** Sets the code: dotted and stable. */
    public Builder code(String value) {
      Objects.requireNonNull(value, "value");
      code = value;
      return this;
    }

    /** Sets the severity. */
    public Builder severity(Severity value) {
      Objects.requireNonNull(value, "value");
      severity = value;
      return this;
    }

    /** Sets one sentence on the mistake. */
    public Builder message(String value) {
      Objects.requireNonNull(value, "value");
      message = value;
      return this;
    }

    /** Sets one sentence on the correction, or null. */
    public Builder hint(@Nullable String value) {
      hint = value;
      return this;
    }

    /**
     * Sets the path of the file relative to the project root, with {@code /}; null if there is no
     * text.
     */
    public Builder file(@Nullable String value) {
      file = value;
      return this;
    }

    /** Sets the first line, from 1; 0 if there is no text. */
    public Builder line(int value) {
      line = value;
      return this;
    }

    /** Sets the first column in characters, from 1; 0 if there is no text. */
    public Builder column(int value) {
      column = value;
      return this;
    }

    /** Sets the last line; 0 if there is no text. */
    public Builder endLine(int value) {
      endLine = value;
      return this;
    }

    /** Sets the column after the last character; 0 if there is no text. */
    public Builder endColumn(int value) {
      endColumn = value;
      return this;
    }

    /** Sets the name of the broken rule, or null. */
    public Builder rule(@Nullable String value) {
      rule = value;
      return this;
    }

    /** Sets the coach's reason, or null. */
    public Builder waivedBecause(@Nullable String value) {
      waivedBecause = value;
      return this;
    }

    /** Sets the path in the model, or null. */
    public Builder place(@Nullable String value) {
      place = value;
      return this;
    }

    /** Sets the names of the athletes it concerns. */
    public Builder athletes(List<String> value) {
      Objects.requireNonNull(value, "value");
      athletes = List.copyOf(value);
      return this;
    }

    /** Returns the finding. */
    public ReportedFinding build() {
      return new ReportedFinding(
          new Parts(
              code,
              severity,
              message,
              hint,
              file,
              line,
              column,
              endLine,
              endColumn,
              rule,
              waivedBecause,
              place,
              athletes));
    }
  }
}
