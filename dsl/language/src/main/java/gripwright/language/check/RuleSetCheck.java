package gripwright.language.check;

import gripwright.expression.Expression;
import gripwright.expression.Scope;
import gripwright.finding.Severity;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.RuleDecl;
import gripwright.language.syntax.RuleItem;
import gripwright.language.syntax.Word;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Checks a rule set and makes rules of it. */
final class RuleSetCheck {

  private static final List<String> SEVERITIES =
      Arrays.stream(Severity.values()).map(Severity::word).toList();
  private static final List<String> SCOPES =
      Arrays.stream(Scope.values()).map(Scope::words).toList();

  private final RuleNames names;

  /**
   * Returns a check.
   *
   * @param names the names of the project; the same for all its rule sets
   */
  RuleSetCheck(RuleNames names) {
    this.names = names;
  }

  /** Returns the rules, or nothing if there is a mistake in any of them, which was reported. */
  Optional<RuleSet> check(Declared<Declaration.Rules> declared, Ledger ledger) {
    Declaration.Rules declaration = declared.declaration();
    ledger.spoilIf(declaration.damaged());
    List<Rule> rules = new ArrayList<>();
    for (RuleDecl rule : declaration.rules()) {
      names.take(ledger, rule.name());
      new OneRule(declared, rule, ledger).make().ifPresent(rules::add);
    }
    Optional<String> title =
        Optional.ofNullable(declaration.title()).map(gripwright.language.syntax.Text::value);
    return ledger.sound()
        ? Optional.of(new RuleSet(declaration.name().text(), title, rules))
        : Optional.empty();
  }

  /** One rule while it is read. */
  private final class OneRule {
    private final Declared<Declaration.Rules> declared;
    private final RuleDecl declaration;
    private final Ledger ledger;
    private Optional<Severity> severity = Optional.empty();
    private Optional<Scope> scope = Optional.empty();
    private Optional<RuleItem.WhenItem> when = Optional.empty();
    private Optional<RuleItem.RequireItem> require = Optional.empty();
    private Optional<String> message = Optional.empty();
    private Optional<String> source = Optional.empty();
    private boolean neverWaived;

    OneRule(Declared<Declaration.Rules> declared, RuleDecl declaration, Ledger ledger) {
      this.declared = declared;
      this.declaration = declaration;
      this.ledger = ledger;
    }

    Optional<Rule> make() {
      ledger.spoilIf(declaration.damaged());
      Once once = new Once(ledger);
      for (RuleItem item : declaration.items()) {
        if (once.first(item, item.keyword())) {
          take(item);
        }
      }
      once.require(
          declaration.name(),
          "rule",
          declaration.damaged(),
          "severity",
          "for",
          "require",
          "message");
      return scope.flatMap(this::compiled);
    }

    private void take(RuleItem item) {
      if (item instanceof RuleItem.SeverityItem written) {
        severity = ledger.word(written.severity(), "severity", Severity::parse, SEVERITIES);
      } else if (item instanceof RuleItem.ScopeItem written) {
        Word word = written.scope();
        scope = ledger.word(word, "scope-of-a-rule", Scope::parse, SCOPES);
      } else if (item instanceof RuleItem.WhenItem written) {
        when = Optional.of(written);
      } else if (item instanceof RuleItem.RequireItem written) {
        require = Optional.of(written);
      } else if (item instanceof RuleItem.MessageItem written) {
        message = Optional.of(written.text().value());
      } else if (item instanceof RuleItem.SourceItem written) {
        source = Optional.of(written.text().value());
      } else {
        neverWaived = true;
      }
    }

    /** Conditions are only looked at where the scope is known: names mean nothing without it. */
    private Optional<Rule> compiled(Scope known) {
      ExpressionCheck expressions =
          new ExpressionCheck(declared.file(), ledger, names, known.kind());
      Optional<Expression> condition = when.flatMap(item -> expressions.truth(item.condition()));
      Optional<Expression> requirement =
          require.flatMap(item -> expressions.truth(item.condition()));
      boolean conditionFailed = condition.isPresent() != when.isPresent();
      if (severity.isEmpty() || conditionFailed || requirement.isEmpty() || message.isEmpty()) {
        ledger.spoil();
        return Optional.empty();
      }
      return Optional.of(
          new Rule(
              declaration.name().text(),
              severity.get(),
              known,
              condition,
              requirement.get(),
              message.get(),
              source,
              neverWaived,
              Optional.empty()));
    }
  }
}
