package gripwright.planning;

import gripwright.finding.ModelPath;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.planning.load.HandFindings;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.strength.OutlierTests;
import gripwright.strength.Posture;
import gripwright.strength.StrengthMap;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Calculates again, from dates, loads and seconds alone, what a compiled plan claims. */
final class SecondLook {

  static final double SLACK = 1e-6;

  final GeneratedSeason season;
  final CompiledPlan plan;
  private final HandFindings hands;
  private final Map<LocalDate, StrengthMap> strength = new HashMap<>();

  SecondLook(GeneratedSeason season) {
    this.season = season;
    this.plan = season.compile();
    this.hands = new HandFindings(season.athlete());
  }

  /** Returns whether a finding of this code, waived or not, names a place. */
  boolean says(String code, ModelPath place) {
    return plan.findings().stream()
        .filter(f -> f.code().equals(code))
        .anyMatch(f -> f.place().equals(place) || f.places().contains(place));
  }

  /** Returns whether an error that nobody waived names a place. */
  boolean refuses(String code, ModelPath place) {
    return plan.findings().stream()
        .filter(f -> f.code().equals(code) && f.blocks())
        .anyMatch(f -> f.place().equals(place) || f.places().contains(place));
  }

  /** Returns the sessions that are planned: the others are as logged. */
  List<DatedSession> planned() {
    return plan.sessions().stream().filter(s -> s.happened().isEmpty()).toList();
  }

  /** Returns whether a log covers a week. */
  boolean past(PlanWeek week) {
    return plan.sessions().stream()
        .anyMatch(s -> s.week() == week.number() && s.happened().isPresent());
  }

  List<PlanWeek> weeksOf(Block block) {
    return plan.weeks().stream().filter(w -> w.block().equals(block.name())).toList();
  }

  boolean trained(PlanWeek week) {
    return plan.sessions().stream().anyMatch(s -> s.week() == week.number());
  }

  /** Returns how many weeks of a session's block before it have a session. */
  int trainedBefore(DatedSession session) {
    return (int)
        plan.sessions().stream()
            .filter(s -> s.block().equals(session.block()) && s.week() < session.week())
            .mapToInt(DatedSession::week)
            .distinct()
            .count();
  }

  /** Returns the number of the block's last uneased week with a session before one; 0 if none. */
  int lastFullWeekBefore(DatedSession session) {
    return plan.sessions().stream()
        .filter(s -> s.block().equals(session.block()) && s.week() < session.week())
        .filter(s -> !s.eased())
        .mapToInt(DatedSession::week)
        .max()
        .orElse(0);
  }

  Block block(DatedSession session) {
    return plan.plan().blocks().stream()
        .filter(b -> b.name().equals(session.block()))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the line of the plan that an exercise stands on. */
  static ModelPath line(PlannedExercise exercise) {
    return exercise.path().without("week").without("date");
  }

  static List<PlannedExercise> on(ModelPath line, DatedSession session) {
    return session.exercises().stream().filter(e -> line(e).equals(line)).toList();
  }

  /** Returns the load of a hold, counted from 0, in kg. */
  static double hold(PlannedExercise exercise, int place) {
    return exercise.steps().stream()
        .flatMap(s -> s.load().stream())
        .skip(place)
        .findFirst()
        .orElseThrow()
        .kilograms();
  }

  static double loadIndex(List<DatedSession> sessions) {
    double sum = 0;
    for (DatedSession session : sessions) {
      for (PlannedExercise exercise : session.exercises()) {
        for (PlannedExercise.LoadedStep step : exercise.steps()) {
          sum += step.load().map(Load::kilograms).orElse(0.0) * step.seconds();
        }
      }
    }
    return sum;
  }

  static double seconds(List<PlannedExercise> exercises) {
    return exercises.stream()
        .flatMap(e -> e.steps().stream())
        .filter(s -> s.load().isPresent())
        .mapToDouble(PlannedExercise.LoadedStep::seconds)
        .sum();
  }

  /** Returns whether the log brings a test or a body mass after one day and up to another. */
  boolean news(LocalDate after, LocalDate upTo) {
    return season.log().entries().stream()
        .filter(e -> e instanceof LogEntry.Tested || e instanceof LogEntry.BodyMass)
        .anyMatch(e -> e.date().isAfter(after) && !e.date().isAfter(upTo));
  }

  Load bodyMass(LocalDate day) {
    Load mass = season.athlete().bodyMass();
    for (LogEntry entry : season.log().entries()) {
      if (entry instanceof LogEntry.BodyMass weighed && !weighed.date().isAfter(day)) {
        mass = weighed.mass();
      }
    }
    return mass;
  }

  /** Returns what tests tell of the athlete's strength, as it is known on a day of the plan. */
  StrengthMap strength(LocalDate day) {
    LocalDate known = plan.plan().from();
    for (StrengthTest test : season.log().tests()) {
      known = test.date().isAfter(known) && !test.date().isAfter(day) ? test.date() : known;
    }
    return strength.computeIfAbsent(
        known,
        date ->
            StrengthMap.of(
                new OutlierTests(this::posture)
                    .supported(
                        season.log().tests().stream()
                            .filter(t -> !t.date().isAfter(date))
                            .toList()),
                this::posture,
                date));
  }

  private Posture posture(Setup setup) {
    return Posture.of(hands.fits().of(setup).values());
  }

  /** Returns the load that a hold is written to have, before anything advances it, in kg. */
  Optional<Double> written(Scheme.Hold hold, PlannedExercise exercise, DatedSession session) {
    Level level = hold.level();
    Load mass = exercise.setup().lifting() ? Load.ZERO : bodyMass(session.date());
    if (level instanceof Level.Total total) {
      return Optional.of(total.load().kilograms());
    }
    if (level instanceof Level.BodyMass body) {
      return Optional.of(mass.kilograms() + body.added().kilograms());
    }
    StrengthMap map = strength(session.date());
    if (level instanceof Level.OfMax share) {
      return map.maximum(exercise.setup()).map(m -> m.load().low().kilograms() * share.fraction());
    }
    double seconds =
        level instanceof Level.Reserve reserve
            ? hold.seconds() + reserve.time().toMillis() / 1000.0
            : hold.seconds() * 10 / ((Level.Effort) level).outOfTen();
    return map.curve(exercise.setup()).map(c -> c.load(seconds).low().kilograms());
  }

  /** Returns the most that advancing can make of a load by the week of a session, in kg. */
  double advanced(double written, PlannedExercise exercise, DatedSession session) {
    String grip = exercise.setup().grip().name();
    List<Advance> advances = block(session).content().advances();
    Optional<Advance> advance =
        advances.stream()
            .filter(a -> a.on().isPresent() && a.on().get().equals(grip))
            .findFirst()
            .or(() -> advances.stream().filter(a -> a.on().isEmpty()).findFirst());
    if (advance.isEmpty()) {
      return written;
    }
    Advance.Progress load = advance.get().then().orElse(advance.get().first());
    int steps =
        load.when() instanceof Advance.EveryWeeks every
            ? trainedBefore(session) / every.weeks()
            : done(exercise, session);
    if (load.change() instanceof Advance.LoadByShare share) {
      return written * Math.pow(1 + share.fraction(), steps);
    }
    return load.change() instanceof Advance.LoadBy by
        ? written + by.step().kilograms() * steps
        : written;
  }

  private int done(PlannedExercise exercise, DatedSession session) {
    int done = 0;
    for (LogEntry.Trained trained : season.log().of(LogEntry.Trained.class)) {
      if (!trained.date().isBefore(plan.plan().from()) && trained.date().isBefore(session.date())) {
        done +=
            (int)
                trained.done().stream()
                    .filter(d -> d.protocol().equals(exercise.protocol()))
                    .count();
      }
    }
    return done;
  }

  /** Returns the greatest level of an exercise: as advanced, or what its load is of the maximum. */
  static Optional<Double> level(PlannedExercise exercise) {
    List<Double> levels = new ArrayList<>();
    exercise.percentOfMax().ifPresent(p -> levels.add(p / 100));
    exercise
        .maximum()
        .ifPresent(m -> levels.add(exercise.totalLoad().kilograms() / m.used().kilograms()));
    for (Scheme.Hold hold : exercise.scheme().holds()) {
      if (exercise.percentOfMax().isEmpty() && hold.level() instanceof Level.OfMax share) {
        levels.add(share.fraction());
      }
    }
    return levels.stream().max(Double::compare);
  }

  /** Returns whether an exercise uses a finger of a side, or of either where no side is said. */
  static boolean uses(PlannedExercise exercise, Finger finger, Optional<Side> side) {
    Hands hands = exercise.setup().hands();
    boolean thatHand =
        hands == Hands.BOTH
            || side.isEmpty()
            || hands == (side.get() == Side.LEFT ? Hands.LEFT : Hands.RIGHT);
    return thatHand && exercise.setup().grip().fingers().has(finger);
  }
}
