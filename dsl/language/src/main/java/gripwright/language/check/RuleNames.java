package gripwright.language.check;

import gripwright.language.syntax.Word;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.rule.StandardRules;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * The names that rules refer to, and the rule names in use. One instance serves all rule sets of a
 * project. Not thread-safe.
 */
final class RuleNames {

  private final BiPredicate<Diagnostics, Word> grips;
  private final BiPredicate<Diagnostics, Word> protocols;
  private final Set<String> taken = new HashSet<>();

  /**
   * Returns names for a project.
   *
   * @param grips returns whether there is a grip of this name; reports it if not
   * @param protocols the same for protocols
   * @param builtIn the rule sets whose rule names no file may use again; empty when the catalogue
   *     itself is read
   */
  RuleNames(
      BiPredicate<Diagnostics, Word> grips,
      BiPredicate<Diagnostics, Word> protocols,
      List<RuleSet> builtIn) {
    this.grips = grips;
    this.protocols = protocols;
    builtIn.stream().flatMap(s -> s.rules().stream()).map(Rule::name).forEach(taken::add);
  }

  /** Returns names for a project that has the built-in rules. */
  static RuleNames of(
      BiPredicate<Diagnostics, Word> grips, BiPredicate<Diagnostics, Word> protocols) {
    return new RuleNames(grips, protocols, StandardRules.sets());
  }

  boolean isGrip(Diagnostics diagnostics, Word name) {
    return grips.test(diagnostics, name);
  }

  boolean isProtocol(Diagnostics diagnostics, Word name) {
    return protocols.test(diagnostics, name);
  }

  /**
   * Reserves a name for a rule; reports it if a rule of this project or a built-in rule already has
   * it.
   */
  void take(Diagnostics diagnostics, Word name) {
    if (!taken.add(name.text())) {
      diagnostics.error(name, "name.doubled", "kind", Terms.kind("rule"), "name", name.text());
    }
  }
}
