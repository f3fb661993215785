package gripwright.rule.view;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.hand.Hands;
import gripwright.log.Log;
import gripwright.log.StrongPain;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What fingers have been through: injuries, strong pain, and what they did since clearance. */
final class FingerHistory {

  /** How long logged strong pain counts like an open injury, from its day on. */
  private static final int PAIN_DAYS = 14;

  /** An injury that was cleared, and the greatest level of each plan week since. */
  private record Cleared(Injury injury, LocalDate on, TreeMap<Integer, Double> levels) {}

  private final List<Injury> injuries;

  /** By date. */
  private final List<StrongPain> pains;

  private final List<Cleared> cleared = new ArrayList<>();

  FingerHistory(Athlete athlete, Log log) {
    injuries = athlete.injuries();
    for (Injury injury : injuries) {
      injury.cleared().ifPresent(on -> cleared.add(new Cleared(injury, on, new TreeMap<>())));
    }
    pains =
        StrongPain.of(log).stream()
            .filter(p -> injuries.stream().noneMatch(i -> covers(i, p)))
            .toList();
  }

  private static boolean covers(Injury injury, StrongPain pain) {
    return injury.openOn(pain.date())
        && pain.fingers().has(injury.finger())
        && injury.side().map(pain.hands().sides()::contains).orElse(true);
  }

  /** Notes an exercise; to be called for every exercise before the questions below are asked. */
  void record(ExerciseView exercise) {
    WeekView week = exercise.week();
    if (week == null || Double.isNaN(exercise.level)) {
      return;
    }
    exercise.plan().evaluation.take(cleared.size());
    for (Cleared each : cleared) {
      if (uses(exercise, each.injury()) && !exercise.session.date.isBefore(each.on())) {
        each.levels().merge(week.number(), exercise.level, Math::max);
      }
    }
  }

  boolean usesOpenInjury(ExerciseView exercise) {
    exercise.plan().evaluation.take(injuries.size());
    for (Injury injury : injuries) {
      if (injury.openOn(exercise.session.date) && uses(exercise, injury)) {
        return true;
      }
    }
    return false;
  }

  boolean usesPainfulFinger(ExerciseView exercise) {
    LocalDate day = exercise.session.date;
    Hands hands = exercise.planned.setup().hands();
    for (int i = firstPainFrom(day.minusDays(PAIN_DAYS - 1)); i < pains.size(); i++) {
      StrongPain pain = pains.get(i);
      exercise.plan().evaluation.take(1);
      if (pain.date().isAfter(day)) {
        break;
      }
      boolean sameSession = pain.inTraining() && pain.date().equals(day);
      if (!sameSession && pain.touches(exercise.fingers(), hands)) {
        return true;
      }
    }
    return false;
  }

  /** Returns the place of the first pain on or after a day. */
  private int firstPainFrom(LocalDate day) {
    int low = 0;
    int high = pains.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (pains.get(middle).date().isBefore(day)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Returns the time since a finger in use was last cleared, in seconds; NaN if none was. */
  double sinceClearance(ExerciseView exercise) {
    double least = Double.NaN;
    for (Cleared each : cleared) {
      long days = ChronoUnit.DAYS.between(each.on(), exercise.session.date);
      if (days >= 0 && uses(exercise, each.injury())) {
        double time = Unit.DAY.toBase((double) days);
        least = Double.isNaN(least) ? time : Math.min(least, time);
      }
    }
    return least;
  }

  /**
   * Returns the greatest level of the nearest earlier week in which the finger that was cleared
   * last was used since; NaN in the first such week.
   */
  double levelBefore(ExerciseView exercise) {
    WeekView week = exercise.week();
    Optional<Cleared> last =
        cleared.stream()
            .filter(c -> !exercise.session.date.isBefore(c.on()))
            .filter(c -> uses(exercise, c.injury()))
            .max((a, b) -> a.on().compareTo(b.on()));
    if (week == null || last.isEmpty()) {
      return Double.NaN;
    }
    Map.Entry<Integer, Double> before = last.get().levels().lowerEntry(week.number());
    return before == null ? Double.NaN : before.getValue();
  }

  /** Two hands hang together; one hand alone spares the other. */
  private static boolean uses(ExerciseView exercise, Injury injury) {
    Hands hands = exercise.planned.setup().hands();
    return exercise.fingers().has(injury.finger())
        && injury.side().map(hands.sides()::contains).orElse(true);
  }
}
