package gripwright.change;

import gripwright.change.PlanChange.Part;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.quantity.Numbers;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a coach wrote for a plan or a block, so that two of them can be held beside each other. */
final class PlanParts {

  private PlanParts() {}

  /** Returns what is written for the plan as a whole, in words; empty where nothing is. */
  static Map<Part, String> of(Plan plan) {
    Map<Part, String> parts = new EnumMap<>(Part.class);
    parts.put(Part.TITLE, plan.title().orElse(""));
    Map<String, Double> demand = new TreeMap<>();
    plan.demand().forEach((grip, share) -> demand.put(grip.name(), share));
    parts.put(
        Part.DEMAND,
        demand.entrySet().stream()
            .map(share -> share.getKey() + " " + percent(share.getValue()))
            .collect(Collectors.joining(", ")));
    parts.put(Part.RULES, plan.ruleSets().stream().sorted().collect(Collectors.joining(", ")));
    parts.put(
        Part.WEEKLY_RISE,
        plan.weeklyRise().isPresent() ? percent(plan.weeklyRise().getAsDouble()) : "");
    parts.put(
        Part.WEIGHTS,
        plan.weights().equals(Exercise.Weights.STANDARD)
            ? ""
            : "match "
                + percent(plan.weights().match())
                + ", margin "
                + percent(plan.weights().margin())
                + ", carry-over "
                + percent(plan.weights().carryOver()));
    return parts;
  }

  private static String percent(double share) {
    return Numbers.plain(share * 100, 3) + " %";
  }

  /** Tells whether two blocks say the same, in whatever order. */
  static boolean sameContent(Block.Content one, Block.Content other) {
    return alike(one.sessions(), other.sessions())
        && alike(one.advances(), other.advances())
        && alike(one.eases(), other.eases())
        && alike(one.introductions(), other.introductions());
  }

  private static boolean alike(List<?> one, List<?> other) {
    return one.size() == other.size() && new HashSet<>(one).equals(new HashSet<>(other));
  }
}
