package gripwright.planning;

import gripwright.finding.ModelPath;
import gripwright.grip.HandFits;
import gripwright.history.ExerciseMatch;
import gripwright.history.LogTimeline;
import gripwright.history.SessionMatches;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.plan.Block;
import gripwright.planning.load.Prescription;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlannedExercise;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reconciles the plan of a week with the log: sessions done, missed and still to come. */
final class WeekReconciliation {

  private final LocalDate planFrom;
  private final LogTimeline timeline;
  private final SessionExpansion expansion;
  private final WorkAsDone work;

  WeekReconciliation(
      LocalDate planFrom, LogTimeline timeline, SessionExpansion expansion, HandFits fits) {
    this.planFrom = planFrom;
    this.timeline = timeline;
    this.expansion = expansion;
    this.work = new WorkAsDone(expansion, fits);
  }

  /**
   * Reconciles a week with the log.
   *
   * @param planned its planned sessions
   * @param open sessions of the previous week without a log entry
   */
  ReconciledWeek read(WeekContext week, List<DatedSession> planned, List<DatedSession> open) {
    Log lines = timeline.ofWeek(week.first());
    LocalDate until = timeline.lastKnownDay().orElseThrow();
    List<DatedSession> candidates = new ArrayList<>(open);
    candidates.addAll(planned);
    SessionMatches matches = SessionMatches.of(candidates, planFrom, lines, until);
    List<DatedSession> done = new ArrayList<>();
    List<MissedSession> missed = new ArrayList<>();
    List<DatedSession> late = new ArrayList<>();
    List<DatedSession> ahead = new ArrayList<>(planned);
    ahead.sort(DatedSession.IN_ORDER);
    for (SessionMatches.Match match : matches.matches()) {
      ahead.remove(match.planned());
      if (open.contains(match.planned())) {
        late.add(match.planned());
      }
      if (match.logged() instanceof LogEntry.Trained trained) {
        DatedSession session = done(week, match.planned(), trained, planned);
        if (session.exercises().isEmpty()) {
          missed.add(
              new MissedSession(match.planned(), MissedSession.Kind.NOT_LOGGED, trained.note()));
        } else {
          done.add(session);
        }
      } else {
        missed.add(
            new MissedSession(match.planned(), MissedSession.Kind.SKIPPED, match.logged().note()));
      }
    }
    List<DatedSession> unlogged =
        matches.unlogged().stream().filter(s -> !open.contains(s)).toList();
    ahead.removeAll(unlogged);
    unlogged.forEach(
        s -> missed.add(new MissedSession(s, MissedSession.Kind.NOT_LOGGED, Optional.empty())));
    List<LogEntry.Trained> unplanned =
        matches.unplanned().stream()
            .filter(LogEntry.Trained.class::isInstance)
            .map(LogEntry.Trained.class::cast)
            .toList();
    for (LogEntry.Trained line : unplanned) {
      DatedSession session = unplanned(week, line, planned);
      if (!session.exercises().isEmpty()) {
        done.add(session);
      }
    }
    return new ReconciledWeek(done, missed, late, ahead, unlogged, unplanned);
  }

  private DatedSession done(
      WeekContext week, DatedSession planned, LogEntry.Trained line, List<DatedSession> ofWeek) {
    List<ExerciseMatch> matches = ExerciseMatch.of(planned, line);
    boolean full =
        matches.stream()
            .filter(m -> m.planned().isPresent())
            .allMatch(m -> sets(m) > 0 && !m.missedSets());
    Happened happened =
        new Happened(
            full ? Happened.Kind.DONE : Happened.Kind.IN_PART,
            Optional.of(planned),
            timeline.entry(line));
    PlacementReason because =
        line.date().equals(planned.date())
            ? new PlacementReason.AsPlanned()
            : new PlacementReason.OnAnotherDay(planned.date());
    return session(week, line, matches, ofWeek, happened, because);
  }

  private static int sets(ExerciseMatch match) {
    return match.setsDone().orElse(0);
  }

  private DatedSession unplanned(
      WeekContext week, LogEntry.Trained line, List<DatedSession> ofWeek) {
    List<ExerciseMatch> matches =
        line.done().stream().map(d -> new ExerciseMatch(Optional.empty(), Optional.of(d))).toList();
    Happened happened =
        new Happened(Happened.Kind.UNPLANNED, Optional.empty(), timeline.entry(line));
    return session(week, line, matches, ofWeek, happened, new PlacementReason.NotPlanned());
  }

  private DatedSession session(
      WeekContext week,
      LogEntry.Trained line,
      List<ExerciseMatch> matches,
      List<DatedSession> ofWeek,
      Happened happened,
      PlacementReason because) {
    ModelPath path = week.path(line.session(), line.date());
    Load mass = expansion.bodyMassOn(line.date());
    List<PlannedExercise> exercises = new ArrayList<>();
    for (ExerciseMatch match : matches) {
      Optional<PlannedExercise> like =
          match
              .planned()
              .or(() -> match.done().flatMap(d -> like(d, ofWeek)))
              .or(
                  () ->
                      match
                          .done()
                          .flatMap(
                              d ->
                                  expansion.unplanned(
                                      d,
                                      line.date(),
                                      path.then("exercise", exercises.size() + 1))));
      if (like.isPresent() && match.done().isPresent() && WorkAsDone.sets(match, like.get()) > 0) {
        exercises.add(
            work.of(
                like.get(),
                match,
                new Prescription.Place(
                    line.date(),
                    exercises.size() + 1,
                    place(path, line.session(), like.get(), exercises.size() + 1)),
                mass));
      } else if (match.isUnloggedWarmUp()) {
        exercises.add(
            match.planned().orElseThrow().toBuilder()
                .order(exercises.size() + 1)
                .path(place(path, line.session(), match.planned().get(), exercises.size() + 1))
                .build());
      }
    }
    if (exercises.stream().allMatch(PlannedExercise::warmUp)) {
      exercises.clear();
    }
    return DatedSession.builder(line.date(), line.session(), mass, path)
        .time(
            happened
                .planned()
                .filter(planned -> planned.date().equals(line.date()))
                .flatMap(DatedSession::time))
        .place(
            happened
                .planned()
                .filter(planned -> planned.date().equals(line.date()))
                .flatMap(DatedSession::place))
        .week(week.number())
        .block(week.block().name())
        .blockWeek(week.blockWeek())
        .minutes(
            happened
                .planned()
                .map(DatedSession::minutes)
                .orElse(minutes(week.block(), line, exercises)))
        .hard(exercises.stream().anyMatch(PlannedExercise::hard))
        .eased(week.eased())
        .placedBecause(because)
        .exercises(exercises)
        .happened(Optional.of(happened))
        .warmUpText(happened.planned().flatMap(DatedSession::warmUpText))
        .notes(happened.planned().map(DatedSession::notes).orElse(List.of()))
        .build();
  }

  /**
   * Returns the place of an exercise in a session, with its number in the plan if it is planned.
   */
  private static ModelPath place(ModelPath session, String name, PlannedExercise like, int order) {
    List<ModelPath.Step> steps = like.path().steps();
    boolean ofIt =
        steps.stream().anyMatch(s -> s.kind().equals("session") && s.name().equals(name));
    return session.then(
        "exercise", ofIt ? steps.get(steps.size() - 1).name() : Integer.toString(order));
  }

  private int minutes(Block block, LogEntry.Trained line, List<PlannedExercise> exercises) {
    return block.content().sessions().stream()
        .filter(s -> s.name().equals(line.session()))
        .findFirst()
        .map(s -> expansion.minutes(s, exercises))
        .orElseGet(
            () ->
                (int)
                    exercises.stream()
                        .mapToLong(e -> (e.scheme().duration().toSeconds() + 59) / 60)
                        .sum());
  }

  /**
   * Returns an exercise of the week with the protocol of the logged work, preferably on the same
   * grip.
   */
  private static Optional<PlannedExercise> like(Done done, List<DatedSession> ofWeek) {
    List<PlannedExercise> same =
        ofWeek.stream()
            .flatMap(s -> s.exercises().stream())
            .filter(e -> e.protocol().equals(done.protocol()))
            .toList();
    return same.stream()
        .filter(e -> e.setup().toString().equals(done.setup().toString()))
        .findFirst()
        .or(() -> done.load().isPresent() ? same.stream().findFirst() : Optional.empty());
  }
}
