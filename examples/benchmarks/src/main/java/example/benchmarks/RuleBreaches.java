package example.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Collects the breaches that other rule engines find. Public for generated classes. */
public final class RuleBreaches {

  private record Breach(String rule, Object fact) {}

  private final List<Breach> all = new ArrayList<>();

  /** Records that a fact breaks a rule. */
  public void add(String rule, Object fact) {
    all.add(new Breach(rule, fact));
  }

  /** Returns how many there are. */
  public int size() {
    return all.size();
  }

  SortedMap<String, Integer> byRule() {
    SortedMap<String, Integer> counts = new TreeMap<>();
    all.forEach(breach -> counts.merge(breach.rule(), 1, Integer::sum));
    return counts;
  }
}
