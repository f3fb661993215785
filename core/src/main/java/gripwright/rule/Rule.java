package gripwright.rule;

import gripwright.expression.Expression;
import gripwright.expression.ExpressionCompiler;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import java.util.Optional;

/**
 * A condition that a compiled plan must meet. Immutable.
 *
 * @param name kebab-case, unique in a project
 * @param severity severity of a breach
 * @param scope the subjects it checks
 * @param when where it applies; empty means everywhere
 * @param require the condition that must be met there
 * @param message what a coach reads when it is broken
 * @param source where the rule comes from
 * @param neverWaived true if it can't be waived
 * @param topic the topic of a breach, for built-in rules
 */
public record Rule(
    String name,
    Severity severity,
    Scope scope,
    Optional<Expression> when,
    Expression require,
    String message,
    Optional<String> source,
    boolean neverWaived,
    Optional<Topic> topic) {

  /**
   * Checks that condition and requirement are conditions on the scope.
   *
   * @throws IllegalArgumentException if one is not, or its subjects are not those of the scope
   */
  public Rule {
    when.ifPresent(condition -> ExpressionCompiler.check(condition, scope.kind()));
    ExpressionCompiler.check(require, scope.kind());
  }

  /**
   * Returns whether the rule reads the property that distinguishes planned tests from exercises.
   */
  boolean readsTests() {
    return require.reads(Kind.EXERCISE, "test")
        || when.filter(condition -> condition.reads(Kind.EXERCISE, "test")).isPresent();
  }

  /** Starts a rule whose breach is an error. */
  public static Builder error(String name, Scope scope) {
    return new Builder(name, Severity.ERROR, scope);
  }

  /** Starts a rule whose breach is a warning. */
  public static Builder warning(String name, Scope scope) {
    return new Builder(name, Severity.WARNING, scope);
  }

  /** Starts a rule whose breach is advice. */
  public static Builder advice(String name, Scope scope) {
    return new Builder(name, Severity.ADVICE, scope);
  }

  /** Collects the parts of a rule. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private final Severity severity;
    private final Scope scope;
    private Optional<Expression> when = Optional.empty();
    private Optional<Expression> require = Optional.empty();
    private Optional<String> message = Optional.empty();
    private Optional<String> source = Optional.empty();
    private boolean neverWaived;
    private Optional<Topic> topic = Optional.empty();

    private Builder(String name, Severity severity, Scope scope) {
      this.name = name;
      this.severity = severity;
      this.scope = scope;
    }

    /** Sets where the rule applies. */
    public Builder when(Expression condition) {
      when = Optional.of(condition);
      return this;
    }

    /** Sets the requirement. */
    public Builder require(Expression condition) {
      require = Optional.of(condition);
      return this;
    }

    /** Sets what a coach reads when the rule is broken. */
    public Builder message(String sentence) {
      message = Optional.of(sentence);
      return this;
    }

    /** Sets where the rule comes from. */
    public Builder source(String text) {
      source = Optional.of(text);
      return this;
    }

    /** Sets the topic of a breach, for other code. */
    Builder about(Topic what) {
      topic = Optional.of(what);
      return this;
    }

    /** Makes the rule impossible to waive. */
    public Builder neverWaived() {
      neverWaived = true;
      return this;
    }

    /**
     * Returns the rule.
     *
     * @throws IllegalStateException if requirement or message are missing
     * @throws IllegalArgumentException if the conditions do not refer to the scope
     */
    public Rule build() {
      return new Rule(
          name,
          severity,
          scope,
          when,
          require.orElseThrow(() -> new IllegalStateException(name + " requires nothing")),
          message.orElseThrow(() -> new IllegalStateException(name + " has no message")),
          source,
          neverWaived,
          topic);
    }
  }
}
