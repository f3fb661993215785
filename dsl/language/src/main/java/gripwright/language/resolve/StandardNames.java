package gripwright.language.resolve;

import java.util.Set;

/**
 * Names in the catalogue.
 *
 * @param grips names of grips, which a file may replace
 * @param protocols names of protocols, which a file may replace
 * @param ruleSets names of rule sets, which a file may not replace
 */
public record StandardNames(Set<String> grips, Set<String> protocols, Set<String> ruleSets) {

  /** Copies the names. */
  public StandardNames {
    grips = Set.copyOf(grips);
    protocols = Set.copyOf(protocols);
    ruleSets = Set.copyOf(ruleSets);
  }
}
