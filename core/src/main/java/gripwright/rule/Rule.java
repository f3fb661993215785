package gripwright.rule;

import gripwright.expression.Expression;
import gripwright.expression.ExpressionCompiler;
import gripwright.expression.ExpressionKeys;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A condition that a compiled plan must meet. Immutable. */
public final class Rule {

  /** The components, checked. */
  private record Parts(
      String name,
      Severity severity,
      Scope scope,
      Optional<Expression> when,
      Expression require,
      String message,
      Optional<String> source,
      boolean neverWaived,
      Optional<Topic> topic) {
    Parts {
      when.ifPresent(condition -> ExpressionCompiler.check(condition, scope.kind()));
      ExpressionCompiler.check(require, scope.kind());
    }
  }

  private final Parts parts;
  private final ExpressionKeys keys;
  private final boolean readsTests;

  private Rule(Parts parts) {
    this.parts = parts;
    this.keys = ExpressionKeys.of(parts.require, parts.when);
    this.readsTests =
        parts.require.reads(Kind.EXERCISE, "test")
            || parts.when.filter(condition -> condition.reads(Kind.EXERCISE, "test")).isPresent();
  }

  /** Returns the name: kebab-case, unique in a project. */
  public String name() {
    return parts.name;
  }

  /** Returns the severity of a breach. */
  public Severity severity() {
    return parts.severity;
  }

  /** Returns the subjects it checks. */
  public Scope scope() {
    return parts.scope;
  }

  /** Returns where it applies; empty means everywhere. */
  public Optional<Expression> when() {
    return parts.when;
  }

  /** Returns the condition that must be met there. */
  public Expression require() {
    return parts.require;
  }

  /** Returns what a coach reads when it is broken. */
  public String message() {
    return parts.message;
  }

  /** Returns where the rule comes from. */
  public Optional<String> source() {
    return parts.source;
  }

  /** Returns whether it can't be waived. */
  public boolean neverWaived() {
    return parts.neverWaived;
  }

  /** Returns the topic of a breach, for built-in rules. */
  public Optional<Topic> topic() {
    return parts.topic;
  }

  /**
   * Returns whether the rule reads the property that distinguishes planned tests from exercises.
   */
  boolean readsTests() {
    return readsTests;
  }

  /** Returns the keys of its conditions and all their parts. */
  ExpressionKeys keys() {
    return keys;
  }

  /** Returns a builder with all parts of this rule. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns a builder for a rule.
   *
   * @param name kebab-case, unique in a project
   * @param severity severity of a breach
   * @param scope the subjects it checks
   */
  public static Builder named(String name, Severity severity, Scope scope) {
    return new Builder(name, severity, scope);
  }

  /** Returns a builder for a rule whose breach is an error. */
  public static Builder error(String name, Scope scope) {
    return new Builder(name, Severity.ERROR, scope);
  }

  /** Returns a builder for a rule whose breach is a warning. */
  public static Builder warning(String name, Scope scope) {
    return new Builder(name, Severity.WARNING, scope);
  }

  /** Returns a builder for a rule whose breach is advice. */
  public static Builder advice(String name, Scope scope) {
    return new Builder(name, Severity.ADVICE, scope);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Rule that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Rule" + parts.toString().substring("Parts".length());
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

    private Builder(Parts copied) {
      this(copied.name, copied.severity, copied.scope);
      when = copied.when;
      require = Optional.of(copied.require);
      message = Optional.of(copied.message);
      source = copied.source;
      neverWaived = copied.neverWaived;
      topic = copied.topic;
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

    /** Sets the topic of a breach; built-in rules have one, by which other code knows them. */
    public Builder about(Topic what) {
      topic = Optional.of(what);
      return this;
    }

    /** Makes the rule impossible to waive. */
    public Builder neverWaived() {
      return neverWaived(true);
    }

    /** Sets whether the rule is impossible to waive. */
    public Builder neverWaived(boolean never) {
      neverWaived = never;
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
          new Parts(
              name,
              severity,
              scope,
              when,
              require.orElseThrow(() -> new IllegalStateException(name + " requires nothing")),
              message.orElseThrow(() -> new IllegalStateException(name + " has no message")),
              source,
              neverWaived,
              topic));
    }
  }
}
