package gripwright.review;

import gripwright.history.ExerciseMatch;
import gripwright.history.SessionMatches;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.log.LogEntry.Trained;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Unit;
import gripwright.review.ReviewedSession.Outcome;
import gripwright.review.ReviewedSession.Work;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Matches plans with the log and calculates minutes, time under tension and impulse. */
final class SessionReviewer {

  /** Warm-up of a session that was not planned, as in a plan without a warm-up line. */
  private static final double WARM_UP_MINUTES = 12;

  /** Minutes between exercises of a session that was not planned, as in a plan. */
  private static final double BETWEEN_MINUTES = 3;

  private final Map<String, Protocol> protocols;

  SessionReviewer(Map<String, Protocol> protocols) {
    this.protocols = protocols;
  }

  /** Returns all sessions up to a day, by date and name. */
  List<ReviewedSession> review(List<CompiledPlan> plans, Log log, LocalDate day) {
    List<ReviewedSession> sessions = new ArrayList<>();
    Log left = log;
    List<CompiledPlan> byDate =
        plans.stream()
            .sorted(
                Comparator.comparing((CompiledPlan plan) -> plan.plan().from())
                    .thenComparing(plan -> plan.plan().name()))
            .toList();
    for (CompiledPlan plan : byDate) {
      SessionMatches matches =
          SessionMatches.of(plan.schedule().planned(), plan.plan().from(), left, day);
      matches.matches().forEach(m -> sessions.add(matched(m)));
      matches.unlogged().forEach(s -> sessions.add(unlogged(s)));
      left = new Log(log.athlete(), matches.unplanned());
    }
    for (LogEntry entry : left.entries()) {
      if (entry instanceof Trained trained && !trained.date().isAfter(day)) {
        sessions.add(unplanned(trained));
      } else if (entry instanceof LogEntry.Skipped skipped && !skipped.date().isAfter(day)) {
        sessions.add(
            new ReviewedSession(
                Outcome.SKIPPED,
                Optional.empty(),
                Optional.of(skipped),
                List.of(),
                0,
                OptionalDouble.empty()));
      }
    }
    sessions.sort(
        Comparator.comparing(ReviewedSession::date)
            .thenComparing(ReviewedSession::name)
            .thenComparing(ReviewedSession::outcome)
            .thenComparing(session -> session.logged().map(Object::toString).orElse("")));
    return sessions;
  }

  private static ReviewedSession unlogged(DatedSession session) {
    return new ReviewedSession(
        Outcome.UNLOGGED,
        Optional.of(session),
        Optional.empty(),
        List.of(),
        0,
        OptionalDouble.empty());
  }

  private ReviewedSession matched(SessionMatches.Match match) {
    DatedSession planned = match.planned();
    if (!(match.logged() instanceof Trained trained)) {
      return new ReviewedSession(
          Outcome.SKIPPED,
          Optional.of(planned),
          Optional.of(match.logged()),
          List.of(),
          0,
          OptionalDouble.empty());
    }
    List<ExerciseMatch> exercises =
        ExerciseMatch.of(planned, trained).stream()
            .filter(each -> !(trained.done().isEmpty() && each.isUnloggedWarmUp()))
            .toList();
    double minutes = planned.minutes();
    for (ExerciseMatch exercise : exercises) {
      minutes +=
          minutes(exercise)
              - exercise.planned().map(a -> a.scheme().duration().toSeconds() / 60.0).orElse(0.0);
    }
    boolean whole =
        exercises.stream()
            .filter(e -> e.planned().isPresent())
            .allMatch(e -> e.asPlanned() && !e.heavier());
    return new ReviewedSession(
        whole ? Outcome.DONE : Outcome.PARTLY,
        Optional.of(planned),
        Optional.of(trained),
        exercises.stream().map(this::work).toList(),
        Math.max(0, minutes),
        effort(exercises));
  }

  private ReviewedSession unplanned(Trained trained) {
    List<ExerciseMatch> exercises =
        trained.done().stream()
            .map(done -> new ExerciseMatch(Optional.empty(), Optional.of(done)))
            .toList();
    double minutes = WARM_UP_MINUTES + BETWEEN_MINUTES * Math.max(0, exercises.size() - 1);
    for (ExerciseMatch exercise : exercises) {
      minutes += minutes(exercise);
    }
    return new ReviewedSession(
        Outcome.UNPLANNED,
        Optional.empty(),
        Optional.of(trained),
        exercises.stream().map(this::work).toList(),
        Math.ceil(minutes),
        effort(exercises));
  }

  /** Returns the scheme as it was done; empty if nothing was done, or the protocol is unknown. */
  private Optional<Scheme> done(ExerciseMatch match) {
    if (match.done().isEmpty()) {
      return match.isUnloggedWarmUp()
          ? match.planned().map(PlannedExercise::scheme)
          : Optional.empty();
    }
    Optional<Scheme> scheme =
        match
            .planned()
            .map(PlannedExercise::scheme)
            .or(
                () ->
                    Optional.ofNullable(protocols.get(match.done().get().protocol()))
                        .map(protocol -> protocol.bind(Map.of())));
    Optional<Integer> sets = match.done().get().sets().stream().boxed().findFirst();
    if (sets.isPresent() && sets.get() == 0) {
      return Optional.empty();
    }
    return scheme.map(s -> sets.map(s::withSets).orElse(s));
  }

  /** Returns holds and rests of an exercise as it was done, in minutes. */
  private double minutes(ExerciseMatch match) {
    return done(match).map(scheme -> scheme.duration().toSeconds() / 60.0).orElse(0.0);
  }

  private Work work(ExerciseMatch match) {
    double seconds = done(match).map(s -> s.timeUnderLoad().toNanos() / 1e9).orElse(0.0);
    if (seconds == 0) {
      return new Work(match, 0, OptionalDouble.of(0));
    }
    Optional<Load> written = match.done().flatMap(Done::load);
    if (match.planned().isPresent()) {
      PlannedExercise asked = match.planned().get();
      double total = asked.totalLoad().kilograms();
      double ratio = written.isPresent() && total > 0 ? written.get().kilograms() / total : 1;
      double mean = asked.loadIndex() / asked.timeUnderLoadSeconds();
      return new Work(
          match, seconds, OptionalDouble.of(mean * ratio * seconds * Unit.NEWTONS_PER_KILOGRAM));
    }
    return new Work(
        match,
        seconds,
        written
            .map(load -> OptionalDouble.of(load.newtons() * seconds))
            .orElseGet(OptionalDouble::empty));
  }

  private OptionalDouble effort(List<ExerciseMatch> exercises) {
    double weights = 0;
    double sum = 0;
    for (ExerciseMatch exercise : exercises) {
      OptionalDouble effort = exercise.done().map(Done::effort).orElseGet(OptionalDouble::empty);
      if (effort.isPresent()) {
        // Never zero: an exercise of almost no time still has an effort.
        double weight = Math.max(1, minutes(exercise));
        weights += weight;
        sum += weight * effort.getAsDouble();
      }
    }
    return weights > 0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
  }
}
