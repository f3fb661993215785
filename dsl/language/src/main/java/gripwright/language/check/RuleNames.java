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
 * The names that rules speak of, and the names of rules that are taken. One serves all rule sets of
 * a project. Not thread-safe.
 */
final class RuleNames {

  private final BiPredicate<Ledger, Word> grips;
  private final BiPredicate<Ledger, Word> protocols;
  private final Set<String> taken = new HashSet<>();

  /**
   * Returns names for a project.
   *
   * @param grips tells whether there is a grip of a name, and reports it if there is none
   * @param protocols the same for protocols
   * @param builtIn the rule sets whose rules no file may name anew; none where the catalogue itself
   *     is read
   */
  RuleNames(
      BiPredicate<Ledger, Word> grips, BiPredicate<Ledger, Word> protocols, List<RuleSet> builtIn) {
    this.grips = grips;
    this.protocols = protocols;
    builtIn.stream().flatMap(s -> s.rules().stream()).map(Rule::name).forEach(taken::add);
  }

  /** Returns names for a project that has the built-in rules. */
  static RuleNames of(BiPredicate<Ledger, Word> grips, BiPredicate<Ledger, Word> protocols) {
    return new RuleNames(grips, protocols, StandardRules.sets());
  }

  boolean isGrip(Ledger ledger, Word name) {
    return grips.test(ledger, name);
  }

  boolean isProtocol(Ledger ledger, Word name) {
    return protocols.test(ledger, name);
  }

  /** Takes a name for a rule; reports it if a rule of this project or a built-in one has it. */
  void take(Ledger ledger, Word name) {
    if (!taken.add(name.text())) {
      ledger.error(name, "name.doubled", "kind", Terms.kind("rule"), "name", name.text());
    }
  }
}
