package gripwright.rule;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The waivers of a plan, and which of them waived something. Not thread-safe. */
final class WaiverBook {

  private static final String UNUSED = "plan.waiver-unused";
  private static final String REFUSED = "plan.waiver-refused";

  /** What a waiver names of a place; empty where it covers all. */
  private record Place(
      String rule,
      Optional<String> block,
      Optional<String> week,
      Optional<String> session,
      Optional<String> exercise) {}

  private static final List<String> KINDS = List.of("block", "week", "session", "exercise");

  private final Plan plan;
  private final boolean[] used;

  /** The waivers of each place, by their position in the plan. */
  private final Map<Place, List<Integer>> byPlace = new HashMap<>();

  WaiverBook(Plan plan) {
    this.plan = plan;
    used = new boolean[plan.waivers().size()];
    for (int i = 0; i < used.length; i++) {
      Plan.Waiver waiver = plan.waivers().get(i);
      Place place =
          new Place(
              waiver.rule(),
              waiver.block(),
              word(waiver.week()),
              waiver.session(),
              word(waiver.exercise()));
      byPlace.computeIfAbsent(place, p -> new ArrayList<>()).add(i);
    }
  }

  private static Optional<String> word(OptionalInt number) {
    return number.isPresent() ? Optional.of(Integer.toString(number.getAsInt())) : Optional.empty();
  }

  /** Tells whether a finding is about a waiver itself. */
  static boolean isAboutWaiver(Finding finding) {
    return finding.code().equals(UNUSED) || finding.code().equals(REFUSED);
  }

  /**
   * Returns why a breach is accepted, by the first waiver that covers it; marks all that do. Each
   * part of the place is named by a waiver or left open, so sixteen kinds of waiver can cover it,
   * however many there are.
   */
  Optional<String> reason(Breach breach) {
    if (breach.rule().neverWaived() || byPlace.isEmpty()) {
      return Optional.empty();
    }
    List<Optional<String>> parts = KINDS.stream().map(kind -> part(breach.path(), kind)).toList();
    int first = Integer.MAX_VALUE;
    for (int open = 0; open < 1 << KINDS.size(); open++) {
      Place place =
          new Place(
              breach.rule().name(),
              named(parts, 0, open),
              named(parts, 1, open),
              named(parts, 2, open),
              named(parts, 3, open));
      for (int waiver : byPlace.getOrDefault(place, List.of())) {
        breach.plan().evaluation.take(1);
        used[waiver] = true;
        first = Math.min(first, waiver);
      }
    }
    return first < used.length
        ? Optional.of(plan.waivers().get(first).because())
        : Optional.empty();
  }

  private static Optional<String> named(List<Optional<String>> parts, int part, int open) {
    return (open & 1 << part) == 0 ? parts.get(part) : Optional.empty();
  }

  private static Optional<String> part(ModelPath path, String kind) {
    return path.steps().stream()
        .filter(step -> step.kind().equals(kind))
        .map(ModelPath.Step::name)
        .findFirst();
  }

  /**
   * Returns what is wrong with the waivers themselves; to be called last.
   *
   * @param neverWaived names of the rules that can't be waived
   */
  List<Finding> findings(Set<String> neverWaived) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < used.length; i++) {
      String rule = plan.waivers().get(i).rule();
      if (neverWaived.contains(rule)) {
        findings.add(Finding.error(REFUSED, plan.path().then("waiver", i + 1)).with("rule", rule));
      } else if (!used[i]) {
        findings.add(Finding.warning(UNUSED, plan.path().then("waiver", i + 1)).with("rule", rule));
      }
    }
    return findings;
  }
}
