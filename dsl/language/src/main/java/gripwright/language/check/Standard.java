package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.language.resolve.StandardNames;
import gripwright.protocol.Protocol;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The catalogue as core objects, which every file may use without declaring them.
 *
 * @param grips grips by name
 * @param protocols protocols by name
 * @param ruleSets the built-in rules
 */
public record Standard(
    SortedMap<String, Grip> grips, SortedMap<String, Protocol> protocols, List<RuleSet> ruleSets) {

  /** No catalogue, for reading the catalogue's own files. */
  public static final Standard NONE =
      new Standard(Collections.emptySortedMap(), Collections.emptySortedMap(), List.of());

  /** Copies the maps and the list. */
  public Standard {
    grips = Collections.unmodifiableSortedMap(new TreeMap<>(grips));
    protocols = Collections.unmodifiableSortedMap(new TreeMap<>(protocols));
    ruleSets = List.copyOf(ruleSets);
  }

  /** Returns the names of the catalogue. */
  public StandardNames names() {
    return new StandardNames(
        grips.keySet(),
        protocols.keySet(),
        ruleSets.stream().map(RuleSet::name).collect(Collectors.toSet()));
  }

  /** Returns the names of the built-in rules. */
  Set<String> rules() {
    return ruleSets.stream()
        .flatMap(set -> set.rules().stream())
        .map(Rule::name)
        .collect(Collectors.toSet());
  }
}
