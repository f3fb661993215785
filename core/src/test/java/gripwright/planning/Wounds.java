package gripwright.planning;

import gripwright.athlete.Injury;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What injuries and pain ask for, calculated apart from the rules. */
final class Wounds {

  private Wounds() {}

  /** Returns whether a finger in use has an injury that is not cleared on a day. */
  static boolean injured(Season season, PlannedExercise exercise, LocalDate day) {
    return season.athlete().injuries().stream()
        .anyMatch(i -> open(i, day) && SecondLook.uses(exercise, i.finger(), i.side()));
  }

  private static boolean open(Injury injury, LocalDate day) {
    return !injury.from().isAfter(day)
        && injury.cleared().map(cleared -> cleared.isAfter(day)).orElse(true);
  }

  /**
   * Returns whether a finger in use had sharp, sudden, strong or rising pain in the 14 days up to a
   * day, but for pain of an injury that is written down.
   */
  static boolean painful(Season season, PlannedExercise exercise, LocalDate day) {
    for (LogEntry.Pain pain : season.log().of(LogEntry.Pain.class)) {
      boolean stops =
          pain.score() > 5
              || pain.kind() != LogEntry.Pain.Kind.DULL
              || rises(season, pain.date(), entry -> score(entry, pain));
      boolean recent = !pain.date().isAfter(day) && pain.date().plusDays(14).isAfter(day);
      boolean written =
          season.athlete().injuries().stream()
              .anyMatch(
                  i ->
                      i.finger() == pain.finger()
                          && open(i, pain.date())
                          && (i.side().isEmpty()
                              || pain.side().isEmpty()
                              || i.side().equals(pain.side())));
      if (stops && recent && !written && SecondLook.uses(exercise, pain.finger(), pain.side())) {
        return true;
      }
    }
    return hurtAtWork(season, exercise, day);
  }

  private static double score(LogEntry entry, LogEntry.Pain like) {
    return entry instanceof LogEntry.Pain pain
            && pain.finger() == like.finger()
            && pain.structure().equals(like.structure())
            && pain.side().equals(like.side())
        ? pain.score()
        : -1;
  }

  private static double score(LogEntry entry, Grip grip) {
    return entry instanceof LogEntry.Trained trained
        ? trained.done().stream()
            .filter(d -> d.pain().isPresent() && d.setup().grip().name().equals(grip.name()))
            .mapToDouble(d -> d.pain().getAsDouble())
            .max()
            .orElse(-1)
        : -1;
  }

  /**
   * Returns whether the worst of seven days is above that of the seven before: above 2, or for the
   * second time.
   *
   * @param scores the score of a line; below 0 for a line that has nothing to do with it
   */
  private static boolean rises(Season season, LocalDate day, ToDoubleFunction<LogEntry> scores) {
    double[] worst = {-1, -1, -1};
    for (LogEntry entry : season.log().entries()) {
      long ago = ChronoUnit.DAYS.between(entry.date(), day);
      if (ago >= 0 && ago < 21) {
        int week = (int) (ago / 7);
        worst[week] = Math.max(worst[week], scores.applyAsDouble(entry));
      }
    }
    boolean again = worst[2] >= 0 && worst[1] > worst[2];
    return worst[1] >= 0 && worst[0] > worst[1] && (worst[0] > 2 || again);
  }

  /** Returns the same of pain on the line of an exercise, or of climbing. */
  private static boolean hurtAtWork(Season season, PlannedExercise exercise, LocalDate day) {
    for (LogEntry entry : season.log().entries()) {
      if (entry.date().isAfter(day) || !entry.date().plusDays(14).isAfter(day)) {
        continue;
      }
      if (entry instanceof LogEntry.Climbed climbed
          && climbed.pain().isPresent()
          && (climbed.pain().getAsDouble() > 5
              || rises(
                  season,
                  climbed.date(),
                  e -> e instanceof LogEntry.Climbed c ? c.pain().orElse(-1) : -1))
          && season.athlete().injuries().stream().noneMatch(i -> open(i, climbed.date()))) {
        return true;
      }
      if (entry instanceof LogEntry.Trained trained && trained.date().isBefore(day)) {
        for (LogEntry.Done done : trained.done()) {
          boolean written =
              season.athlete().injuries().stream()
                  .filter(i -> open(i, trained.date()))
                  .anyMatch(i -> uses(done, i.finger(), i.side()));
          boolean stops =
              done.pain().isPresent()
                  && (done.pain().getAsDouble() > 5
                      || rises(season, trained.date(), e -> score(e, done.setup().grip())));
          if (stops
              && !written
              && done.setup().grip().fingers().fingers().stream()
                  .anyMatch(f -> shares(exercise, done, f))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean uses(LogEntry.Done done, Finger finger, Optional<Side> side) {
    return done.setup().grip().fingers().has(finger)
        && (side.isEmpty() || done.setup().hands().sides().contains(side.get()));
  }

  private static boolean shares(PlannedExercise exercise, LogEntry.Done done, Finger finger) {
    return done.setup().hands().sides().stream()
        .anyMatch(side -> SecondLook.uses(exercise, finger, Optional.of(side)));
  }

  /** Returns the last day up to a day on which an injury of a finger in use was cleared. */
  static Optional<LocalDate> lastCleared(Season season, PlannedExercise exercise, LocalDate day) {
    return last(season, exercise, day).flatMap(Injury::cleared);
  }

  private static Optional<Injury> last(Season season, PlannedExercise exercise, LocalDate day) {
    return season.athlete().injuries().stream()
        .filter(i -> i.cleared().map(c -> !c.isAfter(day)).orElse(false))
        .filter(i -> SecondLook.uses(exercise, i.finger(), i.side()))
        .max(Comparator.comparing(i -> i.cleared().orElseThrow()));
  }

  /**
   * Returns the greatest level, in the nearest earlier week since its clearance, on the finger in
   * use that was cleared last.
   */
  static Optional<Double> levelBefore(
      SecondLook look, PlannedExercise exercise, DatedSession session) {
    Injury injury = last(look.season, exercise, session.date()).orElseThrow();
    LocalDate cleared = injury.cleared().orElseThrow();
    Optional<Double> level = Optional.empty();
    int week = 0;
    for (DatedSession earlier : look.plan.sessions()) {
      if (earlier.week() >= session.week() || earlier.date().isBefore(cleared)) {
        continue;
      }
      for (PlannedExercise other : earlier.exercises()) {
        Optional<Double> its = SecondLook.level(other);
        if (its.isPresent() && SecondLook.uses(other, injury.finger(), injury.side())) {
          double same = week == earlier.week() ? level.orElse(0.0) : 0;
          level = Optional.of(Math.max(same, its.get()));
          week = earlier.week();
        }
      }
    }
    return level;
  }
}
