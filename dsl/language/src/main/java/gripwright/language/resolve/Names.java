package gripwright.language.resolve;

import gripwright.language.syntax.Declaration;
import java.util.List;

/**
 * Every declaration of a project by kind, each kind in the order of its names, so that results
 * depend neither on the order of declarations nor on the order of files.
 *
 * @param athletes athletes
 * @param grips grips, without those of the catalogue
 * @param protocols protocols, without those of the catalogue
 * @param ruleSets rule sets
 * @param plans plans
 * @param cohorts cohorts
 * @param comparisons comparisons
 * @param logs logs; several may belong to one athlete
 */
public record Names(
    List<Declared<Declaration.Athlete>> athletes,
    List<Declared<Declaration.Grip>> grips,
    List<Declared<Declaration.Protocol>> protocols,
    List<Declared<Declaration.Rules>> ruleSets,
    List<Declared<Declaration.Plan>> plans,
    List<Declared<Declaration.Cohort>> cohorts,
    List<Declared<Declaration.Compare>> comparisons,
    List<Declared<Declaration.Log>> logs) {

  /** Copies the lists. */
  public Names {
    athletes = List.copyOf(athletes);
    grips = List.copyOf(grips);
    protocols = List.copyOf(protocols);
    ruleSets = List.copyOf(ruleSets);
    plans = List.copyOf(plans);
    cohorts = List.copyOf(cohorts);
    comparisons = List.copyOf(comparisons);
    logs = List.copyOf(logs);
  }
}
