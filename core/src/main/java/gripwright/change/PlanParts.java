package gripwright.change;

import gripwright.change.PlanChange.Part;
import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.WrittenText;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.quantity.Numbers;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The parts of a plan or a block as written, for comparison. */
final class PlanParts {

  private PlanParts() {}

  /** Returns the parts of the plan as a whole, without those that are not written. */
  static Map<Part, Message> of(Plan plan) {
    Map<Part, Message> parts = new EnumMap<>(Part.class);
    plan.title().ifPresent(title -> parts.put(Part.TITLE, new WrittenText(title)));
    Map<String, Double> demand = new TreeMap<>();
    plan.demand().forEach((grip, share) -> demand.put(grip.name(), share));
    if (!demand.isEmpty()) {
      parts.put(
          Part.DEMAND,
          listed(
              demand.entrySet().stream()
                  .map(share -> share(share.getKey(), share.getValue()))
                  .toList()));
    }
    if (!plan.ruleSets().isEmpty()) {
      parts.put(Part.RULES, listed(plan.ruleSets().stream().sorted().toList()));
    }
    plan.weeklyRise()
        .ifPresent(
            rise ->
                parts.put(Part.WEEKLY_RISE, Clause.of("diff.percent", "percent", percent(rise))));
    if (!plan.weights().equals(Exercise.Weights.STANDARD)) {
      parts.put(
          Part.WEIGHTS,
          new Clause(
              "diff.weights",
              Map.of(
                  "match",
                  percent(plan.weights().match()),
                  "margin",
                  percent(plan.weights().margin()),
                  "transfer",
                  percent(plan.weights().carryOver()))));
    }
    plan.supervisedBy().ifPresent(who -> parts.put(Part.SUPERVISION, new WrittenText(who)));
    return parts;
  }

  /** Returns the goal of a plan. */
  static Optional<Message> goal(Plan plan) {
    return plan.towards()
        .map(
            goal ->
                goal.title()
                    .<Message>map(
                        title ->
                            new Clause(
                                "diff.goal-titled", Map.of("day", goal.date(), "title", title)))
                    .orElseGet(() -> Clause.of("diff.goal", "day", goal.date())));
  }

  private static Message listed(List<?> parts) {
    return Listing.of(Listing.Style.COMMAS, parts);
  }

  private static Message share(String grip, double share) {
    return new Clause("diff.share", Map.of("grip", grip, "percent", percent(share)));
  }

  private static BigDecimal percent(double share) {
    return Numbers.rounded(share * 100, 3);
  }

  /** Returns whether two blocks have the same content in any order. */
  static boolean sameContent(Block.Content one, Block.Content other) {
    return sameParts(withoutTexts(one.sessions()), withoutTexts(other.sessions()))
        && sameParts(one.advances(), other.advances())
        && sameParts(one.eases(), other.eases())
        && sameParts(one.introductions(), other.introductions());
  }

  /** Returns sessions without the words for people, which change no training. */
  private static List<SessionPlan> withoutTexts(List<SessionPlan> sessions) {
    return sessions.stream()
        .map(
            session -> {
              Map<String, SessionPlan.Content> only = new HashMap<>();
              session.only().forEach((who, content) -> only.put(who, withoutTexts(content)));
              return session.toBuilder()
                  .content(withoutTexts(session.content()))
                  .only(only)
                  .build();
            })
        .toList();
  }

  private static SessionPlan.Content withoutTexts(SessionPlan.Content content) {
    return new SessionPlan.Content(
        content.exercises().stream()
            .map(exercise -> exercise.toBuilder().note(Optional.empty()).build())
            .toList(),
        content.warmUp(),
        content.restBetween());
  }

  private static boolean sameParts(List<?> one, List<?> other) {
    return one.size() == other.size() && new HashSet<>(one).equals(new HashSet<>(other));
  }
}
