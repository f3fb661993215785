package gripwright.language.syntax;

/** A statement of a rule. */
public sealed interface RuleItem extends Syntax {

  /** Calls the visitor's method for this kind. */
  void accept(Visitor visitor);

  /** One method for each kind of statement of a rule. */
  interface Visitor {
    /** Visits the severity. */
    void severityItem(SeverityItem item);

    /** Visits the scope. */
    void scopeItem(ScopeItem item);

    /** Visits the condition. */
    void whenItem(WhenItem item);

    /** Visits the requirement. */
    void requireItem(RequireItem item);

    /** Visits the message. */
    void messageItem(MessageItem item);

    /** Visits the source. */
    void sourceItem(SourceItem item);

    /** Visits {@code never waived}. */
    void neverWaived(NeverWaived item);
  }

  /** Returns the word that the statement begins with. */
  String keyword();

  /** {@code severity error}. */
  record SeverityItem(int id, Word severity) implements RuleItem {
    @Override
    public String keyword() {
      return "severity";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.severityItem(this);
    }
  }

  /** {@code for exercise}; {@code pair of sessions} is stored as {@code pair}. */
  record ScopeItem(int id, Word scope) implements RuleItem {
    @Override
    public String keyword() {
      return "for";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.scopeItem(this);
    }
  }

  /** {@code when ...}: where the rule applies. */
  record WhenItem(int id, Expr condition) implements RuleItem {
    @Override
    public String keyword() {
      return "when";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.whenItem(this);
    }
  }

  /** {@code require ...}: the requirement. */
  record RequireItem(int id, Expr condition) implements RuleItem {
    @Override
    public String keyword() {
      return "require";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.requireItem(this);
    }
  }

  /** {@code message "..."}: what a coach reads. */
  record MessageItem(int id, Text text) implements RuleItem {
    @Override
    public String keyword() {
      return "message";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.messageItem(this);
    }
  }

  /** {@code source "..."}: where the rule comes from. */
  record SourceItem(int id, Text text) implements RuleItem {
    @Override
    public String keyword() {
      return "source";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.sourceItem(this);
    }
  }

  /** {@code never waived}: nobody may accept a breach. */
  record NeverWaived(int id) implements RuleItem {
    @Override
    public String keyword() {
      return "never waived";
    }

    @Override
    public void accept(Visitor visitor) {
      visitor.neverWaived(this);
    }
  }
}
