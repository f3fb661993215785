package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.quantity.Length;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The places at which something can be trained: those named for it that have its edges.
 *
 * @param candidates the places that it may be at; the empty name is no place. Empty if there is but
 *     one equipment and nothing is named
 * @param fitting those of them that have all edges
 */
record SlotPlaces(Set<String> candidates, List<String> fitting) {

  /** The name of a time without a place. */
  private static final String NOWHERE = "";

  /** Copies what may change. */
  SlotPlaces {
    candidates = Set.copyOf(candidates);
    fitting = List.copyOf(fitting);
  }

  /**
   * Returns the places for something.
   *
   * @param onlyAt the places that it may be at; empty for any
   * @param edges the edges that it needs
   */
  static SlotPlaces of(Athlete athlete, Collection<String> onlyAt, Collection<Length> edges) {
    if (athlete.equipmentAt().isEmpty() && onlyAt.isEmpty()) {
      return new SlotPlaces(Set.of(), List.of(NOWHERE));
    }
    TreeSet<String> candidates = new TreeSet<>(onlyAt);
    if (candidates.isEmpty()) {
      athlete.available().forEach(slot -> candidates.add(slot.place().orElse(NOWHERE)));
    }
    return new SlotPlaces(
        candidates,
        candidates.stream()
            .filter(place -> edges.stream().allMatch(athlete.equipmentAt(named(place))::has))
            .toList());
  }

  /** Returns the places that a day is looked for at; empty for any. */
  Set<String> open() {
    return fitting.isEmpty() || candidates.isEmpty() ? candidates : Set.copyOf(fitting);
  }

  /** Returns the places that loads may be built at, at least one. */
  List<Optional<String>> built() {
    return fitting.isEmpty()
        ? List.of(named(new TreeSet<>(candidates).first()))
        : fitting.stream().map(SlotPlaces::named).toList();
  }

  private static Optional<String> named(String place) {
    return place.isEmpty() ? Optional.empty() : Optional.of(place);
  }
}
