package gripwright.language.syntax;

/** A statement of a rule. */
public sealed interface RuleItem extends Syntax {

  /** Returns the word that the statement begins with. */
  String keyword();

  /** {@code severity error}. */
  record SeverityItem(int id, Word severity) implements RuleItem {
    @Override
    public String keyword() {
      return "severity";
    }
  }

  /** {@code for exercise}; {@code pair of sessions} stands as {@code pair}. */
  record ScopeItem(int id, Word scope) implements RuleItem {
    @Override
    public String keyword() {
      return "for";
    }
  }

  /** {@code when ...}: where the rule applies. */
  record WhenItem(int id, Expr condition) implements RuleItem {
    @Override
    public String keyword() {
      return "when";
    }
  }

  /** {@code require ...}: what must be so. */
  record RequireItem(int id, Expr condition) implements RuleItem {
    @Override
    public String keyword() {
      return "require";
    }
  }

  /** {@code message "..."}: what a coach is told. */
  record MessageItem(int id, Text text) implements RuleItem {
    @Override
    public String keyword() {
      return "message";
    }
  }

  /** {@code source "..."}: where the rule comes from. */
  record SourceItem(int id, Text text) implements RuleItem {
    @Override
    public String keyword() {
      return "source";
    }
  }

  /** {@code never waived}: nobody may accept a breach. */
  record NeverWaived(int id) implements RuleItem {
    @Override
    public String keyword() {
      return "never waived";
    }
  }
}
