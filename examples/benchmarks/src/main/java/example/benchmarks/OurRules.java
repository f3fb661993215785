package example.benchmarks;

import gripwright.finding.Finding;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.rule.PreparedPlan;
import gripwright.rule.RuleCheck;
import gripwright.rule.RuleSet;
import gripwright.season.CompiledPlan;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/** The rules of {@code rules.grip}, checked the way any plan is: built-in rules and all. */
final class OurRules {

  static final String CLUB = "club";

  private final RuleSet club;

  OurRules() {
    Reading reading = Gripwright.read("rules.grip", Resource.text("rules.grip")).orThrow();
    club = Objects.requireNonNull(reading.ruleSets().get(CLUB), CLUB);
  }

  List<Finding> check(CompiledPlan plan) {
    return RuleCheck.check(plan.schedule(), plan.timeline(), List.of(club));
  }

  /** Returns how many places of a plan break any rule of the club, without creating findings. */
  int breaches(PreparedPlan plan) {
    return plan.breaches(club.rules());
  }

  /** Returns how many places break each rule of the club. */
  SortedMap<String, Integer> breaches(CompiledPlan plan) {
    SortedMap<String, Integer> counts = new TreeMap<>();
    club.rules().forEach(rule -> counts.put(rule.name(), 0));
    for (Finding finding : check(plan)) {
      String rule = finding.code().substring("rule.".length());
      counts.computeIfPresent(rule, (r, count) -> count + Math.max(1, finding.places().size()));
    }
    return counts;
  }
}
