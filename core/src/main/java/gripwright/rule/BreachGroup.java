package gripwright.rule;

import gripwright.budget.Limit;
import gripwright.budget.OverBudget;
import gripwright.expression.EvaluationContext;
import gripwright.expression.Shortfall;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.finding.Topic;
import gripwright.rule.view.WeekView;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All places where one line of a plan breaks one rule.
 *
 * @param breaches by date, at least one
 */
record BreachGroup(List<Breach> breaches) {

  /**
   * The key of breaches that count as one mistake: the rule, and the line of the plan in any week.
   */
  private record Key(Rule rule, ModelPath line) {}

  /** Groups breaches; groups are in order of their first date, then of the rules. */
  static List<BreachGroup> of(List<Breach> breaches) {
    Map<Key, List<Breach>> byKey = new LinkedHashMap<>();
    for (Breach breach : breaches) {
      Key key = new Key(breach.rule(), line(breach.path()));
      byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(breach);
    }
    byKey.values().forEach(group -> group.sort(Comparator.comparing(Breach::date)));
    return byKey.values().stream()
        .map(BreachGroup::new)
        .sorted(
            Comparator.comparing((BreachGroup g) -> g.first().date())
                .thenComparing(g -> g.first().rank())
                .thenComparing(g -> g.first().rule().name())
                .thenComparing(g -> g.first().path().toString()))
        .toList();
  }

  private static ModelPath line(ModelPath path) {
    return path.without("for", "week", "date");
  }

  private Breach first() {
    return breaches.get(0);
  }

  /** Returns one finding for the places that are not waived and one for each reason of a waiver. */
  List<Finding> findings(WaiverBook waivers, Worst worst) {
    try {
      return inWords(waivers, worst);
    } catch (OverBudget stop) {
      throw stop.in(first().rule().name());
    }
  }

  private List<Finding> inWords(WaiverBook waivers, Worst worst) {
    Map<Optional<String>, List<Breach>> byReason = new LinkedHashMap<>();
    for (Breach breach : breaches) {
      byReason.computeIfAbsent(waivers.reason(breach), reason -> new ArrayList<>()).add(breach);
    }
    List<Finding> findings = new ArrayList<>();
    byReason.forEach(
        (reason, some) -> {
          some.get(0).plan().meter.take(Limit.FINDINGS, Limit.A_FINDING);
          Finding finding = finding(some, worst.of(reason.isEmpty() ? ahead(some) : some));
          findings.add(reason.map(finding::waived).orElse(finding));
        });
    return findings;
  }

  /**
   * Returns whether the places need to be listed, because they have weeks or dates that the line of
   * the plan doesn't show.
   */
  private static boolean tellsMore(List<ModelPath> places) {
    ModelPath first = places.get(0);
    return places.size() > 1 || !first.equals(first.without("week", "date"));
  }

  /**
   * Returns the breaches on days ahead, so that the numbers of an error are not those of past days.
   */
  private static List<Breach> ahead(List<Breach> breaches) {
    Breach first = breaches.get(0);
    if (first.rule().severity() != Severity.ERROR) {
      return breaches;
    }
    List<Breach> ahead = breaches.stream().filter(b -> !b.plan().isPast(b.path())).toList();
    return ahead.isEmpty() ? breaches : ahead;
  }

  private static Finding finding(List<Breach> breaches, Breach worst) {
    Breach first = breaches.get(0);
    Rule rule = first.rule();
    List<ModelPath> places = breaches.stream().map(Breach::path).distinct().toList();
    Finding finding =
        Finding.of("rule." + rule.name(), rule.severity(), first.path())
            .withPlaces(first.path(), tellsMore(places) ? places : List.of())
            .with("message", rule.message());
    if (rule.topic().isPresent()) {
      finding = finding.about(rule.topic().get());
    }
    if (rule.source().isPresent()) {
      finding = finding.with("source", rule.source().get());
    }
    if (finding.isAbout(Topic.SUPERVISION)) {
      Optional<Message> who = Supervision.of(first.plan().schedule);
      finding = who.isPresent() ? finding.with("supervised", who.get()) : finding;
    }
    if (finding.isAbout(Topic.JOIN) && worst.subject() instanceof WeekView week) {
      Optional<Message> exercise = week.steepestAtJoin();
      finding = exercise.isPresent() ? finding.with("exercise", exercise.get()) : finding;
    }
    List<Shortfall> missing = missing(worst);
    if (missing.isEmpty()) {
      return finding;
    }
    Finding numbered =
        finding
            .with("was", missing.get(0).was())
            .with("limit", missing.get(0).limit())
            .with("missing", missing);
    return missing.equals(missing(first))
        ? numbered
        : numbered.with("worst", worst.path().without("for"));
  }

  private static List<Shortfall> missing(Breach breach) {
    Rule rule = breach.rule();
    return EvaluationContext.at(rule.scope().kind(), breach.subject(), breach.plan().evaluation)
        .shortfalls(rule.require());
  }
}
