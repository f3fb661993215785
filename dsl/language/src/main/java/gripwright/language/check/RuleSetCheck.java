package gripwright.language.check;

import gripwright.expression.Expression;
import gripwright.expression.Scope;
import gripwright.finding.Severity;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.RuleDecl;
import gripwright.language.syntax.RuleItem;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Checks a rule set and builds its rules. */
final class RuleSetCheck {

  private static final List<String> SEVERITIES =
      Arrays.stream(Severity.values()).map(Severity::word).toList();
  private static final List<String> SCOPES =
      Arrays.stream(Scope.values()).map(Scope::words).toList();

  private final RuleNames names;

  /**
   * Returns a check.
   *
   * @param names the names of the project, shared by all its rule sets
   */
  RuleSetCheck(RuleNames names) {
    this.names = names;
  }

  /** Returns the rules; empty if any of them has a mistake, which is reported. */
  Optional<RuleSet> check(Declared<Declaration.Rules> declared, Diagnostics diagnostics) {
    Declaration.Rules declaration = declared.declaration();
    diagnostics.markInvalidIf(declaration.damaged());
    List<Rule> rules = new ArrayList<>();
    for (RuleDecl rule : declaration.rules()) {
      names.take(diagnostics, rule.name());
      new OneRule(declared, rule, diagnostics).make().ifPresent(rules::add);
    }
    Optional<String> title =
        Optional.ofNullable(declaration.title()).map(gripwright.language.syntax.Text::value);
    return diagnostics.sound()
        ? Optional.of(new RuleSet(declaration.name().text(), title, rules))
        : Optional.empty();
  }

  /** A rule that is being read. */
  private final class OneRule implements RuleItem.Visitor {
    private final Declared<Declaration.Rules> declared;
    private final RuleDecl declaration;
    private final Diagnostics diagnostics;
    private Optional<Severity> severity = Optional.empty();
    private Optional<Scope> scope = Optional.empty();
    private Optional<RuleItem.WhenItem> when = Optional.empty();
    private Optional<RuleItem.RequireItem> require = Optional.empty();
    private Optional<String> message = Optional.empty();
    private Optional<String> source = Optional.empty();
    private boolean neverWaived;

    OneRule(Declared<Declaration.Rules> declared, RuleDecl declaration, Diagnostics diagnostics) {
      this.declared = declared;
      this.declaration = declaration;
      this.diagnostics = diagnostics;
    }

    Optional<Rule> make() {
      diagnostics.markInvalidIf(declaration.damaged());
      Once once = new Once(diagnostics);
      for (RuleItem item : declaration.items()) {
        if (once.first(item, item.keyword())) {
          item.accept(this);
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

    @Override
    public void severityItem(RuleItem.SeverityItem written) {
      severity = diagnostics.word(written.severity(), "severity", Severity::parse, SEVERITIES);
    }

    @Override
    public void scopeItem(RuleItem.ScopeItem written) {
      scope = diagnostics.word(written.scope(), "scope-of-a-rule", Scope::parse, SCOPES);
    }

    @Override
    public void whenItem(RuleItem.WhenItem written) {
      when = Optional.of(written);
    }

    @Override
    public void requireItem(RuleItem.RequireItem written) {
      require = Optional.of(written);
    }

    @Override
    public void messageItem(RuleItem.MessageItem written) {
      message = Optional.of(written.text().value());
    }

    @Override
    public void sourceItem(RuleItem.SourceItem written) {
      source = Optional.of(written.text().value());
    }

    @Override
    public void neverWaived(RuleItem.NeverWaived written) {
      neverWaived = true;
    }

    /**
     * Conditions are checked only if the scope is known, since names have no meaning without it.
     */
    private Optional<Rule> compiled(Scope known) {
      ExpressionCheck expressions =
          new ExpressionCheck(declared.file(), diagnostics, names, known.kind());
      Optional<Expression> condition = when.flatMap(item -> expressions.truth(item.condition()));
      Optional<Expression> requirement =
          require.flatMap(item -> expressions.truth(item.condition()));
      boolean conditionFailed = condition.isPresent() != when.isPresent();
      if (severity.isEmpty() || conditionFailed || requirement.isEmpty() || message.isEmpty()) {
        diagnostics.markInvalid();
        return Optional.empty();
      }
      Rule.Builder rule =
          Rule.named(declaration.name().text(), severity.get(), known)
              .require(requirement.get())
              .message(message.get())
              .neverWaived(neverWaived);
      condition.ifPresent(rule::when);
      source.ifPresent(rule::source);
      return Optional.of(rule.build());
    }
  }
}
