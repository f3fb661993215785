package gripwright.rule.view;

import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.log.FeltPain;
import gripwright.log.LogEntry.Pain;
import gripwright.log.RisingPain;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The pain of an athlete, indexed for rules: fingers that must stop on a day, fingers that returned
 * after pain, and fingers too painful for rehabilitation. {@link FeltPain} decides the stops.
 */
final class PainHistory {

  /** Number of days of scores that are read, up to and including the last one. */
  private static final int DAYS = 14;

  /** The score of sharp or sudden pain in rehabilitation. */
  private static final double TOO_MUCH = Pain.LIMIT + 1;

  /**
   * The fingers of a hand that one pain report covers.
   *
   * @param named true if the report names the finger but not the hand
   */
  private record Place(FingerSet fingers, Side side, boolean named) {

    static Place of(FeltPain pain, Side side) {
      return new Place(
          pain.fingers(), side, pain.finger().isPresent() && pain.hands() == Hands.BOTH);
    }

    boolean isOf(ExerciseView exercise) {
      return fingers.overlaps(exercise.fingers()) && exercise.handsAtWork().sides().contains(side);
    }

    boolean isOf(Injury injury) {
      return fingers.has(injury.finger())
          && injury.side().filter(hurt -> hurt != side && !named).isEmpty();
    }
  }

  /** A finger of a hand; empty for unspecified pain while climbing. */
  private record Spot(Optional<Finger> finger, Side side) {}

  /** The worst scores by day; those reported with training count from the next day on. */
  private record Scores(TreeMap<LocalDate, Double> reported, TreeMap<LocalDate, Double> trained) {

    /** Returns whether the scores up to a day rule out rehabilitation. */
    boolean areTooMuchOn(LocalDate day) {
      TreeMap<LocalDate, Double> late = new TreeMap<>();
      Optional<LocalDate> last =
          Optional.ofNullable(reported.floorKey(day))
              .map(one -> later(one, trained.lowerKey(day)))
              .or(() -> Optional.ofNullable(trained.lowerKey(day)));
      last.ifPresent(
          end -> {
            LocalDate begin = end.minusDays(DAYS - 1);
            reported.subMap(begin, true, end, true).forEach((d, s) -> late.merge(d, s, Math::max));
            trained
                .subMap(begin, true, end, !end.equals(day))
                .forEach((d, s) -> late.merge(d, s, Math::max));
          });
      return RisingPain.isTooMuch(late, Pain.LIMIT);
    }

    private static LocalDate later(LocalDate one, @Nullable LocalDate other) {
      return other != null && other.isAfter(one) ? other : one;
    }
  }

  private final List<FeltPain> pains;

  /** Injuries that can explain pain, which excludes those of the skin. */
  private final List<Injury> injuries;

  /** Earliest start of all stops that end on or after a day, by that day. */
  private final Map<Place, TreeMap<LocalDate, LocalDate>> stops = new HashMap<>();

  /** Fingers that returned when a stop ended, by day. */
  private final Map<Place, TreeMap<LocalDate, FingerReturn>> returns = new HashMap<>();

  /** Scores by the state of all injuries. */
  private final Map<List<Integer>, Map<Spot, Scores>> scores = new HashMap<>();

  PainHistory(List<FeltPain> pains, List<Injury> injuries) {
    this.pains = pains;
    this.injuries = List.copyOf(injuries);
    for (FeltPain pain : pains) {
      if (pain.stops()) {
        pain.hands().sides().forEach(side -> keep(pain, side));
      }
    }
    stops.values().forEach(PainHistory::beginAtTheEarliest);
  }

  private void keep(FeltPain pain, Side side) {
    Place place = Place.of(pain, side);
    Hands hand = side == Side.LEFT ? Hands.LEFT : Hands.RIGHT;
    Optional<LocalDate> until = pain.until(hand);
    stops
        .computeIfAbsent(place, p -> new TreeMap<>())
        .merge(until.orElse(LocalDate.MAX), begin(pain), PainHistory::earlier);
    until
        .filter(end -> injuries.stream().noneMatch(i -> isCleared(i, end)))
        .ifPresent(
            end ->
                returns
                    .computeIfAbsent(place, p -> new TreeMap<>())
                    .computeIfAbsent(end, on -> new FingerReturn(pain.fingers(), hand, on)));
  }

  private static boolean isCleared(Injury injury, LocalDate on) {
    return injury.cleared().filter(on::equals).isPresent();
  }

  /** Pain during a session stops the finger from the next day on, because that session is over. */
  private static LocalDate begin(FeltPain pain) {
    return pain.done().isPresent() ? pain.date().plusDays(1) : pain.date();
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  private static void beginAtTheEarliest(NavigableMap<LocalDate, LocalDate> byEnd) {
    LocalDate earliest = LocalDate.MAX;
    for (Map.Entry<LocalDate, LocalDate> each : byEnd.descendingMap().entrySet()) {
      earliest = earlier(earliest, each.getValue());
      each.setValue(earliest);
    }
  }

  /** Returns whether pain stops a finger in use on the day, see {@link FeltPain#stopsOn}. */
  boolean stops(ExerciseView exercise) {
    if (stops.isEmpty()) {
      return false;
    }
    LocalDate day = exercise.session.date;
    exercise.plan().evaluation.take(stops.size());
    return stops.entrySet().stream()
        .filter(each -> each.getKey().isOf(exercise))
        .filter(
            each -> {
              Map.Entry<LocalDate, LocalDate> next = each.getValue().higherEntry(day);
              return next != null && !day.isBefore(next.getValue());
            })
        .anyMatch(each -> injuries.stream().noneMatch(i -> i.openOn(day) && each.getKey().isOf(i)));
  }

  /** Records the level of an exercise, or of a logged exercise with the same setup. */
  void note(ExerciseView exercise, LocalDate day, long week, double level) {
    if (returns.isEmpty()) {
      return;
    }
    exercise.plan().evaluation.take(returns.size());
    returns.values().stream()
        .map(byDay -> byDay.floorEntry(day))
        .filter(last -> last != null && last.getValue().isOf(exercise))
        .forEach(last -> last.getValue().note(day, week, level));
  }

  /** Returns whether any finger returned after pain. */
  boolean hasReturns() {
    return !returns.isEmpty();
  }

  /** Returns the last return of a finger in use. */
  Optional<FingerReturn> lastReturn(ExerciseView exercise) {
    if (returns.isEmpty()) {
      return Optional.empty();
    }
    exercise.plan().evaluation.take(returns.size());
    return returns.values().stream()
        .flatMap(byDay -> Optional.ofNullable(byDay.floorEntry(exercise.session.date)).stream())
        .map(Map.Entry::getValue)
        .filter(back -> back.isOf(exercise))
        .max(Comparator.comparing(back -> back.on));
  }

  /**
   * Returns whether pain in a finger in use rules out rehabilitation on a day: if it is above 5,
   * sharp or sudden, or above 2 and rising from week to week, in the seven days up to its last
   * score. Pain up to the day of an injury belongs to the injury and ends with its clearance.
   */
  boolean isTooMuch(ExerciseView exercise) {
    if (pains.isEmpty()) {
      return false;
    }
    LocalDate day = exercise.session.date;
    Map<Spot, Scores> known =
        scores.computeIfAbsent(
            injuryStates(day),
            standing -> {
              exercise.plan().evaluation.take(pains.size());
              return spots(day);
            });
    exercise.plan().evaluation.take(known.size());
    return known.entrySet().stream()
        .filter(each -> each.getKey().finger().map(exercise.fingers()::has).orElse(true))
        .filter(each -> exercise.handsAtWork().sides().contains(each.getKey().side()))
        .anyMatch(each -> each.getValue().areTooMuchOn(day));
  }

  /** Returns the state of each injury: not yet happened, open or cleared. */
  private List<Integer> injuryStates(LocalDate day) {
    List<Integer> all = new ArrayList<>();
    for (Injury injury : injuries) {
      all.add(day.isBefore(injury.from()) ? 0 : injury.openOn(day) ? 1 : 2);
    }
    return all;
  }

  /** Returns the scores by finger, without those that injuries explain on a day. */
  private Map<Spot, Scores> spots(LocalDate day) {
    Map<Spot, Scores> all = new HashMap<>();
    for (FeltPain pain : pains) {
      if (pain.ofSkin()) {
        continue;
      }
      double score = pain.isStrong() ? Math.max(pain.score(), TOO_MUCH) : pain.score();
      List<Optional<Finger>> fingers =
          pain.whileClimbing()
              ? List.of(Optional.empty())
              : pain.fingers().fingers().stream().map(Optional::of).toList();
      for (Optional<Finger> finger : fingers) {
        for (Side side : pain.hands().sides()) {
          if (isOfInjury(pain, side, day)) {
            continue;
          }
          Scores of =
              all.computeIfAbsent(
                  new Spot(finger, side), spot -> new Scores(new TreeMap<>(), new TreeMap<>()));
          (pain.done().isPresent() ? of.trained() : of.reported())
              .merge(pain.date(), score, Math::max);
        }
      }
    }
    return all;
  }

  private boolean isOfInjury(FeltPain pain, Side side, LocalDate day) {
    return injuries.stream()
        .filter(injury -> !day.isBefore(injury.from()) && pain.explains(injury, side))
        .anyMatch(
            injury ->
                !pain.date().isAfter(injury.from())
                    || injury
                        .cleared()
                        .filter(on -> on.isAfter(pain.date()) && !on.isAfter(day))
                        .isPresent());
  }
}
