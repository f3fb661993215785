package gripwright.schedule;

import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Planned and completed work, and the capacity left, as links of a derivation. */
public sealed interface DoneLink extends Derivation {

  private static Clause sets(int sets) {
    return Clause.of(sets == 1 ? "derivation.one-set" : "derivation.many-sets", "count", sets);
  }

  /**
   * The planned work of a past session.
   *
   * @param load total load
   * @param sets sets
   */
  record Planned(Load load, int sets) implements DoneLink {
    @Override
    public String key() {
      return "derivation.planned";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("sets", DoneLink.sets(sets));
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The completed work.
   *
   * @param load total load
   * @param sets sets
   * @param effort 0 to 10, if it was logged
   * @param pain 0 to 10, if it was logged
   */
  record Done(Load load, int sets, OptionalDouble effort, OptionalDouble pain) implements DoneLink {
    @Override
    public String key() {
      return "derivation.done";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of(
          "facts",
          Listing.of(
              Listing.Style.COMMAS,
              Stream.of(
                      Stream.of(DoneLink.sets(sets)),
                      effort.stream().mapToObj(e -> score("derivation.effort", e)),
                      pain.stream().mapToObj(p -> score("derivation.pain", p)))
                  .flatMap(each -> each)
                  .toList()));
    }

    @Override
    public double value() {
      return load.kilograms();
    }

    @Override
    public String unit() {
      return "kg";
    }

    private static Clause score(String key, double score) {
      return Clause.of(key, "score", Numbers.plain(score, 1));
    }
  }

  /**
   * The share of the capacity of fresh fingers left after the exercise.
   *
   * @param reserve after the last hold
   */
  record CapacityLeft(PlannedExercise.EndReserve reserve) implements DoneLink {
    @Override
    public String key() {
      return "derivation.capacity-left";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("low", percent(reserve.low()), "high", percent(reserve.high()));
    }

    @Override
    public double value() {
      return percent(reserve.mean());
    }

    @Override
    public String unit() {
      return "%";
    }

    private static int percent(double share) {
      return (int) Math.rint(share * 100);
    }
  }
}
