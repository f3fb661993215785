package gripwright.planning;

import gripwright.athlete.Injury;
import gripwright.grip.FingerSet;
import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What injuries and pain ask for, calculated apart from the rules. */
final class Wounds {

  private Wounds() {}

  /** Returns whether a finger in use has an injury that is not cleared on a day. */
  static boolean injured(GeneratedSeason season, PlannedExercise exercise, LocalDate day) {
    return season.athlete().injuries().stream()
        .anyMatch(i -> open(i, day) && SecondLook.uses(exercise, i.finger(), i.side()));
  }

  private static boolean open(Injury injury, LocalDate day) {
    return !injury.from().isAfter(day)
        && injury.cleared().map(cleared -> cleared.isAfter(day)).orElse(true);
  }

  /**
   * A score of a log: of the fingers that may hurt, in the hands that may hurt.
   *
   * @param named true if the line names its finger
   */
  private record Score(
      LocalDate day,
      Set<Finger> fingers,
      Set<Side> sides,
      Optional<Structure> structure,
      double worst,
      boolean sharp,
      boolean named,
      boolean climbing) {

    boolean skin() {
      return structure.filter(Structure.SKIN::equals).isPresent();
    }
  }

  private static List<Score> scores(GeneratedSeason season) {
    List<Score> all = new ArrayList<>();
    Set<Side> both = Set.of(Side.values());
    for (LogEntry entry : season.log().entries()) {
      if (entry instanceof LogEntry.Pain pain) {
        all.add(
            new Score(
                pain.date(),
                Set.of(pain.finger()),
                pain.side().map(Set::of).orElse(both),
                pain.structure(),
                pain.score(),
                pain.kind() != LogEntry.Pain.Kind.DULL,
                true,
                false));
      } else if (entry instanceof LogEntry.Climbed climbed && climbed.pain().isPresent()) {
        all.add(
            new Score(
                climbed.date(),
                Set.copyOf(FingerSet.FOUR.fingers()),
                both,
                Optional.empty(),
                climbed.pain().getAsDouble(),
                false,
                false,
                true));
      } else if (entry instanceof LogEntry.Trained trained) {
        for (LogEntry.Done done : trained.done()) {
          if (done.pain().isPresent()) {
            all.add(
                new Score(
                    trained.date(),
                    Set.copyOf(done.setup().grip().fingers().fingers()),
                    Set.copyOf(done.setup().hands().sides()),
                    Optional.empty(),
                    done.pain().getAsDouble(),
                    false,
                    false,
                    false));
          }
        }
      }
    }
    return all;
  }

  /**
   * Returns whether a finger in use is stopped by pain on a day: a score above 5, sharp or sudden,
   * or a second rise in a row to above 2, and since then no two days of 2 or less with two days
   * between, nor a cleared injury. An open injury is another matter.
   */
  static boolean painful(GeneratedSeason season, PlannedExercise exercise, LocalDate day) {
    List<Score> all = scores(season);
    for (Score score : all) {
      boolean trainedToday = !score.named() && !score.climbing() && score.day().equals(day);
      List<Side> inUse =
          score.sides().stream()
              .filter(
                  s ->
                      score.fingers().stream()
                          .anyMatch(f -> SecondLook.uses(exercise, f, Optional.of(s))))
              .toList();
      if (score.skin() || score.day().isAfter(day) || trainedToday || inUse.isEmpty()) {
        continue;
      }
      boolean stops = score.worst() > 5 || score.sharp() || rises(all, score);
      boolean injury = inUse.stream().allMatch(side -> isExplained(season, score, side, day));
      if (stops && !injury && !isOver(all, score, day)) {
        return true;
      }
    }
    return false;
  }

  /** Tells whether an injury, open or cleared since, explains a score of a hand. */
  private static boolean isExplained(
      GeneratedSeason season, Score score, Side hand, LocalDate day) {
    return season.athlete().injuries().stream()
        .filter(i -> i.structure() != Structure.SKIN && score.fingers().contains(i.finger()))
        .filter(
            i ->
                i.side()
                    .map(side -> score.named() ? score.sides().contains(side) : side == hand)
                    .orElse(true))
        .anyMatch(
            i ->
                open(i, day)
                    || i.cleared()
                        .map(c -> c.isAfter(score.day()) && !c.isAfter(day))
                        .orElse(false));
  }

  private static boolean isOver(List<Score> all, Score score, LocalDate day) {
    if (score.named()) {
      return score.sides().stream()
          .allMatch(
              side ->
                  isOver(
                      all.stream().filter(o -> isOf(o, score, side)).toList(), score.day(), day));
    }
    return isOver(all.stream().filter(o -> saysHowItIs(o, score)).toList(), score.day(), day);
  }

  private static boolean isOf(Score other, Score finger, Side side) {
    boolean same =
        other.structure().isEmpty()
            || finger.structure().isEmpty()
            || other.structure().equals(finger.structure());
    return same
        && !other.skin()
        && !other.climbing()
        && other.sides().contains(side)
        && other.fingers().containsAll(finger.fingers());
  }

  private static boolean saysHowItIs(Score other, Score hurt) {
    boolean meets =
        other.fingers().stream().anyMatch(hurt.fingers()::contains)
            && other.sides().stream().anyMatch(hurt.sides()::contains);
    boolean covers =
        other.fingers().containsAll(hurt.fingers()) && other.sides().containsAll(hurt.sides());
    return !other.skin()
        && (other.climbing()
            ? hurt.climbing()
            : meets && (other.named() || other.worst() > 2 || covers));
  }

  private static boolean isOver(List<Score> relevant, LocalDate from, LocalDate day) {
    for (LocalDate first = from.plusDays(1); !first.isAfter(day); first = first.plusDays(1)) {
      for (LocalDate last = first.plusDays(2); !last.isAfter(day); last = last.plusDays(1)) {
        LocalDate begin = first;
        LocalDate end = last;
        List<Score> between =
            relevant.stream()
                .filter(o -> !o.day().isBefore(begin) && !o.day().isAfter(end))
                .toList();
        if (between.stream().allMatch(o -> o.worst() <= 2 && !o.sharp())
            && between.stream().anyMatch(o -> o.day().equals(begin))
            && between.stream().anyMatch(o -> o.day().equals(end))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean rises(List<Score> all, Score score) {
    if (score.worst() <= 2) {
      return false;
    }
    if (score.climbing()) {
      return rises(all.stream().filter(Score::climbing).toList(), score.day(), score.worst());
    }
    for (Finger finger : score.fingers()) {
      for (Side side : score.sides()) {
        Score one =
            new Score(
                score.day(),
                Set.of(finger),
                Set.of(side),
                score.structure(),
                score.worst(),
                false,
                true,
                false);
        List<Score> same = all.stream().filter(o -> isOf(o, one, side)).toList();
        if (rises(same, score.day(), score.worst())) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean rises(List<Score> same, LocalDate day, double score) {
    double[] worst = {-1, -1, -1};
    for (Score other : same) {
      long ago = ChronoUnit.DAYS.between(other.day(), day);
      if (ago >= 0 && ago < 21) {
        int week = (int) (ago / 7);
        worst[week] = Math.max(worst[week], other.worst());
      }
    }
    return worst[2] >= 0 && worst[1] > worst[2] && score > worst[1];
  }

  /** Returns the last day up to a day on which an injury of a finger in use was cleared. */
  static Optional<LocalDate> lastCleared(
      GeneratedSeason season, PlannedExercise exercise, LocalDate day) {
    return last(season, exercise, day).flatMap(Injury::cleared);
  }

  private static Optional<Injury> last(
      GeneratedSeason season, PlannedExercise exercise, LocalDate day) {
    return season.athlete().injuries().stream()
        .filter(i -> i.structure() != Structure.SKIN)
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
