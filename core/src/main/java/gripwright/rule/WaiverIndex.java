package gripwright.rule;

import gripwright.finding.ModelPath;
import gripwright.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The waivers of a plan by the places they cover, for a fast lookup even if there are many.
 * Immutable.
 */
public final class WaiverIndex {

  private static final List<String> KINDS = List.of("block", "week", "session", "exercise");

  /** The parts of a place that a waiver names; an empty part covers all. */
  private record Place(
      String rule,
      Optional<String> block,
      Optional<String> week,
      Optional<String> session,
      Optional<String> exercise) {}

  /**
   * The waivers of one place.
   *
   * @param first the position of the first in the plan, from 0
   * @param number among the places of the plan, from 0
   */
  record Entry(int first, int number) {}

  private final Map<Place, Entry> byPlace = new HashMap<>();

  /** For each waiver the number of its place. */
  private final int[] places;

  private WaiverIndex(Plan plan) {
    places = new int[plan.waivers().size()];
    for (int i = 0; i < places.length; i++) {
      int position = i;
      Place place = place(plan.waivers().get(i));
      places[i] = byPlace.computeIfAbsent(place, p -> new Entry(position, byPlace.size())).number();
    }
  }

  /** Returns the waivers of a plan. */
  public static WaiverIndex of(Plan plan) {
    return new WaiverIndex(plan);
  }

  private static Place place(Plan.Waiver waiver) {
    return new Place(
        waiver.rule(),
        waiver.block(),
        word(waiver.week()),
        waiver.session(),
        word(waiver.exercise()));
  }

  private static Optional<String> word(OptionalInt number) {
    return number.isPresent() ? Optional.of(Integer.toString(number.getAsInt())) : Optional.empty();
  }

  /** Returns the number of a waiver's place, by the waiver's position in the plan. */
  int place(int waiver) {
    return places[waiver];
  }

  /**
   * Returns the waivers that cover a breach. A waiver names each part of the place or leaves it
   * open, so that sixteen places can cover it.
   */
  List<Entry> covering(Breach breach) {
    if (breach.rule().neverWaived() || byPlace.isEmpty()) {
      return List.of();
    }
    ModelPath place = breach.subject().waived();
    List<Optional<String>> parts = KINDS.stream().map(kind -> part(place, kind)).toList();
    List<Entry> covering = new ArrayList<>();
    for (int open = 0; open < 1 << KINDS.size(); open++) {
      Place covered =
          new Place(
              breach.rule().name(),
              named(parts, 0, open),
              named(parts, 1, open),
              named(parts, 2, open),
              named(parts, 3, open));
      Entry entry = byPlace.get(covered);
      if (entry != null) {
        breach.plan().evaluation.take(1);
        covering.add(entry);
      }
    }
    return covering;
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
}
