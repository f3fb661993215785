package gripwright.planning;

import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.plan.Block;
import gripwright.plan.DatedSession;
import gripwright.plan.ExerciseMatch;
import gripwright.plan.Happened;
import gripwright.plan.MissedSession;
import gripwright.plan.PlannedExercise;
import gripwright.plan.PlannedExercise.Derivation;
import gripwright.plan.PlannedExercise.LoadedStep;
import gripwright.plan.SessionMatches;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What became of a week of which a log tells: done, missed, and what still lies ahead. */
final class WeekAsDone {

  private final Heard heard;
  private final SessionExpansion expansion;
  private final HandFits fits;
  private final LocalDate planFrom;
  private List<DatedSession> open = List.of();

  WeekAsDone(Heard heard, SessionExpansion expansion, HandFits fits, LocalDate planFrom) {
    this.heard = heard;
    this.expansion = expansion;
    this.fits = fits;
    this.planFrom = planFrom;
  }

  /**
   * A week after its log was read.
   *
   * @param done what was trained in it, by date
   * @param missed what was planned in it up to the last day that is known, and not trained
   * @param late sessions of the week before that were trained or skipped in this one
   * @param ahead what is planned after that day and not done yet
   * @param unplanned lines that no planned session stands for
   */
  record Told(
      List<DatedSession> done,
      List<MissedSession> missed,
      List<DatedSession> late,
      List<DatedSession> ahead,
      List<LogEntry.Trained> unplanned) {}

  /**
   * Reads the log of a week; to be called week after week.
   *
   * @param planned its sessions as they were planned
   */
  Told read(Block block, PlanRun.WeekOfBlock week, List<DatedSession> planned) {
    Log lines = heard.ofWeek(week.first());
    LocalDate until = heard.until().orElseThrow();
    List<DatedSession> candidates = new ArrayList<>(open);
    candidates.addAll(planned);
    SessionMatches matches = SessionMatches.of(candidates, planFrom, lines, until);
    List<DatedSession> done = new ArrayList<>();
    List<MissedSession> missed = new ArrayList<>();
    List<DatedSession> late = new ArrayList<>();
    List<DatedSession> ahead = new ArrayList<>(planned);
    ahead.sort(Comparator.comparing(DatedSession::date));
    for (SessionMatches.Match match : matches.matches()) {
      ahead.remove(match.planned());
      if (open.contains(match.planned())) {
        late.add(match.planned());
      }
      if (match.logged() instanceof LogEntry.Trained trained) {
        DatedSession session = done(block, week, match.planned(), trained, planned);
        if (session.exercises().isEmpty()) {
          missed.add(
              new MissedSession(match.planned(), MissedSession.Kind.NOT_LOGGED, trained.note()));
        } else {
          done.add(session);
        }
      } else if (match.logged() instanceof LogEntry.Skipped skipped) {
        missed.add(new MissedSession(match.planned(), MissedSession.Kind.SKIPPED, skipped.note()));
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
      DatedSession session = unplanned(block, week, line, planned);
      if (!session.exercises().isEmpty()) {
        done.add(session);
      }
    }
    open = unlogged;
    return new Told(done, missed, late, ahead, unplanned);
  }

  private DatedSession done(
      Block block,
      PlanRun.WeekOfBlock week,
      DatedSession planned,
      LogEntry.Trained line,
      List<DatedSession> ofWeek) {
    List<ExerciseMatch> matches = ExerciseMatch.of(planned, line);
    boolean full =
        matches.stream()
            .filter(m -> m.asked().isPresent())
            .allMatch(m -> m.done().isPresent() && sets(m) >= m.setsAsked().orElse(1));
    Happened happened =
        new Happened(full ? Happened.Kind.DONE : Happened.Kind.IN_PART, Optional.of(planned), line);
    String because =
        line.date().equals(planned.date())
            ? "trained as planned, as logged"
            : "trained on this day, as logged; planned for " + planned.date();
    return session(block, week, line, matches, ofWeek, happened, because);
  }

  private static int sets(ExerciseMatch match) {
    return match.setsDone().orElse(0);
  }

  private DatedSession unplanned(
      Block block, PlanRun.WeekOfBlock week, LogEntry.Trained line, List<DatedSession> ofWeek) {
    List<ExerciseMatch> matches =
        line.done().stream().map(d -> new ExerciseMatch(Optional.empty(), Optional.of(d))).toList();
    Happened happened = new Happened(Happened.Kind.UNPLANNED, Optional.empty(), line);
    return session(
        block, week, line, matches, ofWeek, happened, "trained without being planned, as logged");
  }

  private DatedSession session(
      Block block,
      PlanRun.WeekOfBlock week,
      LogEntry.Trained line,
      List<ExerciseMatch> matches,
      List<DatedSession> ofWeek,
      Happened happened,
      String because) {
    ModelPath path = expansion.path(block, week, line.session(), line.date());
    Load mass = expansion.bodyMassOn(line.date());
    List<PlannedExercise> exercises = new ArrayList<>();
    for (ExerciseMatch match : matches) {
      Optional<PlannedExercise> like =
          match
              .asked()
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
      if (like.isPresent() && match.done().isPresent() && setsOf(match, like.get()) > 0) {
        exercises.add(
            done(
                like.get(),
                match.done().get(),
                setsOf(match, like.get()),
                mass,
                match.asked().isPresent(),
                exercises.size() + 1,
                place(path, line.session(), like.get(), exercises.size() + 1)));
      }
    }
    return new DatedSession(
        line.date(),
        week.number(),
        block.name(),
        week.blockWeek(),
        line.session(),
        happened.planned().map(DatedSession::minutes).orElse(minutes(block, line, exercises)),
        exercises.stream().anyMatch(PlannedExercise::hard),
        week.eased(),
        mass,
        because,
        exercises,
        path,
        Optional.of(happened));
  }

  /** Returns where an exercise stands in a session: with its number in the plan if it is of it. */
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

  private static int setsOf(ExerciseMatch match, PlannedExercise like) {
    return match
        .done()
        .map(d -> d.sets().orElse(d.setsAsked().orElse(like.scheme().sets())))
        .orElse(0);
  }

  /**
   * Returns an exercise of the week that a line is like: the same protocol, the same grip first.
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

  private PlannedExercise done(
      PlannedExercise like,
      Done done,
      int sets,
      Load bodyMass,
      boolean asked,
      int order,
      ModelPath place) {
    Setup setup = done.setup();
    Load load = done.load().orElse(like.totalLoad());
    boolean asPlanned = load.compareTo(like.totalLoad()) == 0;
    double share = load.kilograms() / like.totalLoad().kilograms();
    Scheme scheme = sets == like.scheme().sets() ? like.scheme() : like.scheme().withSets(sets);
    List<Load> loads =
        like.steps().stream().filter(LoadedStep::isHold).flatMap(s -> s.load().stream()).toList();
    List<LoadedStep> steps = new ArrayList<>();
    int hold = 0;
    for (Scheme.Step step : scheme.flat()) {
      if (step instanceof Scheme.Hold held) {
        Load one = loads.get(hold++ % loads.size());
        boolean greatest = one.compareTo(like.totalLoad()) == 0;
        Load lifted = asPlanned ? one : greatest ? load : Load.ofKilograms(one.kilograms() * share);
        steps.add(new LoadedStep(held.seconds(), Optional.of(lifted)));
      } else if (step instanceof Scheme.Rest rest) {
        steps.add(new LoadedStep(rest.time().toNanos() / 1e9, Optional.empty()));
      }
    }
    boolean sameSetup = setup.toString().equals(like.setup().toString());
    boolean hard =
        like.hard()
            || done.effort().orElse(0) >= Prescription.HARD_EFFORT
            || (sameSetup
                && like.maximum()
                    .map(m -> load.compareTo(m.used().times(Prescription.HARD_SHARE)) >= 0)
                    .orElse(true));
    return new PlannedExercise(
        order,
        like.protocol(),
        setup,
        fits.of(setup),
        asPlanned ? scheme : scheme.mapHolds(h -> new Scheme.Hold(h.time(), new Level.Total(load))),
        steps,
        asPlanned && sameSetup ? like.percentOfMax() : OptionalDouble.empty(),
        sameSetup ? like.maximum() : Optional.empty(),
        setup.lifting() ? Load.ZERO : bodyMass,
        hard,
        Optional.empty(),
        like.rehabilitation(),
        Optional.empty(),
        why(like, done, sets, load, asked),
        place);
  }

  private static List<Derivation> why(
      PlannedExercise like, Done done, int sets, Load load, boolean asked) {
    List<Derivation> why = new ArrayList<>();
    if (asked) {
      why.add(
          new Derivation("asked", like.totalLoad().kilograms(), "kg", sets(like.scheme().sets())));
    }
    String felt =
        (done.effort().isPresent()
                ? ", effort " + Numbers.plain(done.effort().getAsDouble(), 1)
                : "")
            + (done.pain().isPresent()
                ? ", pain " + Numbers.plain(done.pain().getAsDouble(), 1)
                : "");
    why.add(new Derivation("done", load.kilograms(), "kg", sets(sets) + felt + ", as logged"));
    return why;
  }

  private static String sets(int sets) {
    return sets + (sets == 1 ? " set" : " sets");
  }
}
