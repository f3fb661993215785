package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.language.syntax.OnlyAt;
import gripwright.language.syntax.Word;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The places that a plan can name: those of its athletes.
 *
 * @param names their names
 * @param complete false if an athlete has a mistake, so that there may be more
 */
record PlanPlaces(Set<String> names, boolean complete) {

  /** Returns the places of some athletes. */
  static PlanPlaces of(Tables tables, Collection<String> athletes, boolean athletesKnown) {
    Set<String> names = new TreeSet<>();
    boolean complete = athletesKnown;
    for (String name : athletes) {
      Athlete athlete = tables.athletes().made().get(name);
      if (athlete != null) {
        names.addAll(athlete.equipmentAt().keySet());
      }
      complete &= athlete != null || tables.cohorts().made().containsKey(name);
    }
    return new PlanPlaces(names, complete);
  }

  /** Returns the places that statements name; empty if one of them is wrong, which is reported. */
  Optional<Set<String>> read(List<OnlyAt> parts, Diagnostics diagnostics) {
    Once once = new Once(diagnostics);
    Set<String> found = new TreeSet<>();
    boolean sound = true;
    for (OnlyAt part : parts) {
      for (Word place : part.places()) {
        sound &= once.first(place, "place", place.text()) && isKnown(place, diagnostics);
        found.add(place.text());
      }
    }
    return sound ? Optional.of(found) : Optional.empty();
  }

  private boolean isKnown(Word place, Diagnostics diagnostics) {
    if (names.contains(place.text())) {
      return true;
    }
    if (complete) {
      diagnostics.unknown(place, "place", names);
    } else {
      diagnostics.markInvalid();
    }
    return false;
  }
}
