package gripwright.rule;

import gripwright.finding.Finding;
import gripwright.finding.Topic;
import gripwright.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The waivers of a plan, and which of them were used. Not thread-safe. */
final class WaiverBook {

  private final Plan plan;
  private final WaiverIndex index;

  /** Whether the waivers of a place were used, by the number of the place. */
  private final boolean[] used;

  WaiverBook(Plan plan) {
    this.plan = plan;
    index = WaiverIndex.of(plan);
    used = new boolean[plan.waivers().size()];
  }

  /**
   * Returns the reason of the first waiver that covers a breach; marks all such waivers as used.
   */
  Optional<String> reason(Breach breach) {
    int first = Integer.MAX_VALUE;
    for (WaiverIndex.Entry entry : index.covering(breach)) {
      used[entry.number()] = true;
      first = Math.min(first, entry.first());
    }
    return first < used.length
        ? Optional.of(plan.waivers().get(first).because())
        : Optional.empty();
  }

  /**
   * Returns the findings about the waivers themselves; call it last.
   *
   * @param neverWaived names of the rules that can't be waived
   */
  List<Finding> findings(Set<String> neverWaived) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < used.length; i++) {
      String rule = plan.waivers().get(i).rule();
      if (neverWaived.contains(rule)) {
        findings.add(
            Finding.error("plan.waiver-refused", plan.path().then("waiver", i + 1))
                .about(Topic.REFUSED_WAIVER)
                .with("rule", rule));
      } else if (!used[index.place(i)]) {
        findings.add(
            Finding.warning("plan.waiver-unused", plan.path().then("waiver", i + 1))
                .about(Topic.UNUSED_WAIVER)
                .with("rule", rule));
      }
    }
    return findings;
  }
}
