package gripwright.language.syntax;

/** A statement of a rule. */
public sealed interface RuleItem extends Syntax {

  /** {@code severity error}. */
  record SeverityItem(int id, Word severity) implements RuleItem {}

  /** {@code for exercise}; {@code pair of sessions} stands as {@code pair}. */
  record ScopeItem(int id, Word scope) implements RuleItem {}

  /** {@code when ...}: where the rule applies. */
  record WhenItem(int id, Expr condition) implements RuleItem {}

  /** {@code require ...}: what must be so. */
  record RequireItem(int id, Expr condition) implements RuleItem {}

  /** {@code message "..."}: what a coach is told. */
  record MessageItem(int id, Text text) implements RuleItem {}

  /** {@code source "..."}: where the rule comes from. */
  record SourceItem(int id, Text text) implements RuleItem {}

  /** {@code never waived}: nobody may accept a breach. */
  record NeverWaived(int id) implements RuleItem {}
}
