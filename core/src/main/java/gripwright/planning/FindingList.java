package gripwright.planning;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects findings so that one line of a plan that fails the same way twice is one finding. */
final class FindingList {

  private record Key(String code, ModelPath line) {}

  private final Map<Key, Finding> findings = new LinkedHashMap<>();

  void add(Finding finding) {
    Key key = new Key(finding.code(), line(finding.place()));
    Finding first = findings.get(key);
    if (first == null) {
      findings.put(key, finding.alsoAt(finding.place()));
    } else if (!first.places().contains(finding.place())) {
      findings.put(key, first.alsoAt(finding.place()));
    }
  }

  /** Returns the path of the line in the plan: without the week and day on which it is trained. */
  static ModelPath line(ModelPath place) {
    return place.without("week").without("date");
  }

  List<Finding> all() {
    return new ArrayList<>(findings.values());
  }
}
