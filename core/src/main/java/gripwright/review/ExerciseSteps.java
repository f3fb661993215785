package gripwright.review;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Derives the next step for an exercise from the last two times it was done. */
final class ExerciseSteps {

  private static final double TOO_HARD = 9;
  private static final double EARNED_EFFORT = 8;
  private static final int TWICE = 2;

  private final ModelPath place;
  private final Map<Message, List<Done>> exercises;

  /** An exercise as it was done on a day. */
  private record Done(LocalDate date, ExerciseMatch match) {

    LogEntry.Done line() {
      return match.done().orElseThrow();
    }
  }

  /**
   * Prepares the next steps from trained sessions.
   *
   * @param place place of the findings in the model
   * @param trained sessions, oldest first
   */
  ExerciseSteps(ModelPath place, List<ReviewedSession> trained) {
    this.place = place;
    this.exercises = exercises(trained);
  }

  /** Returns each exercise as it was done, oldest first. */
  private static Map<Message, List<Done>> exercises(List<ReviewedSession> sessions) {
    Map<Message, List<Done>> exercises = new LinkedHashMap<>();
    for (ReviewedSession session : sessions) {
      for (ReviewedSession.Work work : session.work()) {
        work.match()
            .done()
            .ifPresent(
                done ->
                    exercises
                        .computeIfAbsent(exercise(done), name -> new ArrayList<>())
                        .add(new Done(session.date(), work.match())));
      }
    }
    return exercises;
  }

  private static Message exercise(LogEntry.Done done) {
    return new Clause(
        "review.exercise", Map.of("protocol", done.protocol(), "setup", done.setup()));
  }

  /**
   * Returns exercises that were too much twice: sets were missed, or the effort was too high. If
   * the load was above the planned one, going back to that comes first, as {@link #heavier} says.
   *
   * @param stopped tells whether pain stops a setup, so that a lower load comes after the stop
   */
  List<Finding> tooMuch(Predicate<Setup> stopped) {
    List<Finding> steps = new ArrayList<>();
    exercises.forEach(
        (name, all) -> {
          Done last = all.get(all.size() - 1);
          if (all.size() >= TWICE
              && (!last.match().heavier() || stopped.test(last.line().setup()))) {
            Done one = all.get(all.size() - 2);
            Done other = last;
            Finding step = Finding.advice("review.lighter", place);
            Finding about =
                (stopped.test(other.line().setup()) ? step.with("stopped", "") : step)
                    .with("exercise", name)
                    .with("first", one.date())
                    .with("second", other.date())
                    .with("easier", easier(all, one, other));
            if (missed(one) && missed(other)) {
              steps.add(
                  about.with(
                      "missed", Listing.of(Listing.Style.AND, List.of(sets(one), sets(other)))));
            } else if (one.line().effort().orElse(0) >= TOO_HARD
                && other.line().effort().orElse(0) >= TOO_HARD) {
              steps.add(
                  about.with(
                      "effort",
                      Listing.of(
                          Listing.Style.AND,
                          List.of(
                              Numbers.plain(one.line().effort().orElse(0), 1),
                              Numbers.plain(other.line().effort().orElse(0), 1)))));
            }
          }
        });
    return steps;
  }

  /** Returns how much easier: the last lower load that was done in full, if there is one. */
  private static Message easier(List<Done> all, Done one, Done other) {
    Optional<Load> tooMuch =
        Stream.of(one, other).flatMap(done -> done.line().load().stream()).min(Load::compareTo);
    return all.stream()
        .filter(done -> done.match().inFull() && done.line().effort().orElse(0) < TOO_HARD)
        .filter(
            done ->
                tooMuch.isPresent()
                    && done.line().load().filter(l -> l.compareTo(tooMuch.get()) < 0).isPresent())
        .reduce((earlier, later) -> later)
        .map(
            done ->
                new Clause(
                    "review.easier-load",
                    Map.of(
                        "load",
                        NextSteps.rounded(done.line().load().orElseThrow()),
                        "date",
                        done.date())))
        .orElseGet(() -> Clause.of("review.easier-step"));
  }

  private static boolean missed(Done done) {
    return done.match().setsPlanned().isPresent() && done.match().missedSets();
  }

  private static Message sets(Done done) {
    Map<String, Object> facts = new TreeMap<>();
    facts.put("sets", done.match().setsDone().orElse(0));
    done.match().setsPlanned().ifPresent(asked -> facts.put("asked", asked));
    done.line().load().ifPresent(load -> facts.put("load", NextSteps.rounded(load)));
    return new Clause(
        "review.sets"
            + (facts.containsKey("asked") ? "-of" : "")
            + (facts.containsKey("load") ? "-at" : ""),
        facts);
  }

  /**
   * Returns exercises that were last done with more load than planned.
   *
   * @param stopped tells whether pain stops a setup, so that no load applies to it
   */
  List<Finding> heavier(Predicate<Setup> stopped) {
    List<Finding> steps = new ArrayList<>();
    exercises.forEach(
        (name, all) -> {
          Done last = all.get(all.size() - 1);
          if (last.match().heavier() && !stopped.test(last.line().setup())) {
            steps.add(
                Finding.advice("review.heavier", place)
                    .with("exercise", name)
                    .with("date", last.date())
                    .with("load", NextSteps.rounded(last.line().load().orElseThrow()))
                    .with(
                        "planned",
                        NextSteps.rounded(last.match().planned().orElseThrow().totalLoad())));
          }
        });
    return steps;
  }

  /**
   * Returns exercises that may get harder, since they were easy twice.
   *
   * @param forbidden tells whether an exercise must not get harder
   */
  List<Finding> earned(Predicate<LogEntry.Done> forbidden) {
    List<Finding> steps = new ArrayList<>();
    exercises.forEach(
        (name, all) -> {
          if (all.size() >= TWICE) {
            Done one = all.get(all.size() - 2);
            Done other = all.get(all.size() - 1);
            if (easy(one) && easy(other) && !forbidden.test(other.line())) {
              steps.add(
                  Finding.advice("review.earned", place)
                      .with("exercise", name)
                      .with("first", one.date())
                      .with("second", other.date())
                      .with(
                          "effort",
                          Numbers.plain(
                              Math.max(
                                  one.line().effort().orElse(0), other.line().effort().orElse(0)),
                              1)));
            }
          }
        });
    return steps;
  }

  private static boolean easy(Done done) {
    return done.match().inFull()
        && !done.match().heavier()
        && done.line().effort().isPresent()
        && done.line().effort().getAsDouble() <= EARNED_EFFORT
        && done.line().pain().orElse(0) <= PainCourse.MILD;
  }
}
