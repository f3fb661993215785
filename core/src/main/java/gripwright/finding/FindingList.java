package gripwright.finding;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Collects findings so that the same mistake of one line of a plan gives one finding; a line with
 * several grips may have one for each. Not thread-safe.
 */
public final class FindingList {

  private record Line(ModelPath line, Object grip) {}

  private record Key(String code, Line line) {}

  /** A finding and the magnitude at the place of its arguments. */
  private record Entry(Finding finding, double most, Certainty certainty) {}

  /** The basis of a finding. */
  private enum Certainty {
    FACT,
    CERTAIN_ESTIMATE,
    DOUBTFUL_ESTIMATE
  }

  private final Map<Key, Entry> entries = new LinkedHashMap<>();

  /** Creates an empty list. */
  public FindingList() {}

  /** Adds a finding. */
  public void add(Finding finding) {
    add(finding, 0);
  }

  /**
   * Adds a finding.
   *
   * @param by its magnitude: of several on one line, the arguments of the worst are kept, of equal
   *     ones those of the first
   */
  public void add(Finding finding, double by) {
    add(finding, by, Certainty.FACT);
  }

  /**
   * Adds a finding based on an estimate. If a line has a certain finding, a doubtful one is left
   * out.
   *
   * @param by its magnitude
   * @param certain true if no likely error of the estimate changes it
   */
  public void addEstimate(Finding finding, double by, boolean certain) {
    add(finding, by, certain ? Certainty.CERTAIN_ESTIMATE : Certainty.DOUBTFUL_ESTIMATE);
  }

  /** Returns a list of these findings and others, in this order. */
  public FindingList plus(FindingList others) {
    FindingList both = new FindingList();
    both.entries.putAll(entries);
    others.entries.values().forEach(e -> both.add(e.finding(), e.most(), e.certainty()));
    return both;
  }

  private void add(Finding finding, double by, Certainty certainty) {
    Object grip = finding.arguments().getOrDefault("grip", "");
    Key key = new Key(finding.code(), new Line(line(finding.place()), grip));
    List<ModelPath> places =
        finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
    Entry before = entries.getOrDefault(key, new Entry(finding, by, certainty));
    Finding known = before.finding();
    for (ModelPath place : places) {
      known = known.places().contains(place) ? known : known.alsoAt(place);
    }
    boolean worse = by > before.most();
    entries.put(
        key,
        new Entry(
            worse ? known.withFactsOf(finding) : known, worse ? by : before.most(), certainty));
  }

  /** Returns the path of the line in the plan: without the week and day on which it is trained. */
  public static ModelPath line(ModelPath place) {
    return place.without("week").without("date");
  }

  /** Returns the findings, in the order in which the first of each was added. */
  public List<Finding> all() {
    Set<Line> certain = new HashSet<>();
    entries.forEach(
        (key, entry) -> {
          if (entry.certainty() == Certainty.CERTAIN_ESTIMATE) {
            certain.add(key.line());
          }
        });
    List<Finding> all = new ArrayList<>();
    entries.forEach(
        (key, entry) -> {
          if (entry.certainty() != Certainty.DOUBTFUL_ESTIMATE || !certain.contains(key.line())) {
            all.add(entry.finding());
          }
        });
    return all;
  }
}
