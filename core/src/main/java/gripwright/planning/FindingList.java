package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Collects findings so that one line of a plan that fails the same way twice is one finding; a line
 * with several grips may fail once for each.
 */
final class FindingList {

  private record Key(String code, ModelPath line, Object grip) {}

  private final Map<Key, Finding> findings = new LinkedHashMap<>();
  private final Map<Key, Double> most = new HashMap<>();

  void add(Finding finding) {
    add(finding, 0);
  }

  /**
   * Adds a finding.
   *
   * @param by how bad it is: of several on one line the facts of the worst are told, of those alike
   *     the first
   */
  void add(Finding finding, double by) {
    Key key =
        new Key(
            finding.code(), line(finding.place()), finding.arguments().getOrDefault("grip", ""));
    List<ModelPath> places =
        finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
    Finding known = findings.getOrDefault(key, finding);
    for (ModelPath place : places) {
      known = known.places().contains(place) ? known : known.alsoAt(place);
    }
    boolean worse = by > most.getOrDefault(key, Double.NEGATIVE_INFINITY);
    if (worse) {
      most.put(key, by);
    }
    findings.put(key, worse ? known.withFactsOf(finding) : known);
  }

  /** Leaves out what is doubtful on a line that is told as certain. */
  void settle(String doubtful, String certain) {
    Set<Key> told =
        findings.keySet().stream()
            .filter(key -> key.code().equals(certain))
            .map(key -> new Key(doubtful, key.line(), key.grip()))
            .collect(Collectors.toSet());
    findings.keySet().removeAll(told);
  }

  /** Returns the path of the line in the plan: without the week and day on which it is trained. */
  static ModelPath line(ModelPath place) {
    return place.without("week").without("date");
  }

  List<Finding> all() {
    return new ArrayList<>(findings.values());
  }
}
