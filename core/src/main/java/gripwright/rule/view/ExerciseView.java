package gripwright.rule.view;

import gripwright.expression.Named;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.WrittenText;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Hands;
import gripwright.plan.TestKind;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.Derivation;
import gripwright.schedule.HoldChain;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.ProgressLink;
import gripwright.strength.KnownLight;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * An exercise, as read by rules. A planned test of one setup counts as one hold at the maximum
 * whose load is not known.
 */
public final class ExerciseView implements Named, Subject {

  /** Tolerance when loads are compared, in kg. */
  private static final double TOLERANCE = 1e-9;

  private static final double MOST_EFFORT = 10;

  /** The level of a test. */
  private static final double WHOLE_MAXIMUM = 1;

  public final SessionView session;
  final Setup setup;
  final String protocol;
  final boolean test;

  /** A planned test that was logged. */
  final boolean tested;

  /** A planned test of a hold to failure. */
  private final boolean toFailure;

  /** The highest load known to be light, in kg; NaN if none is known, and for a test. */
  final double lightLoad;

  final boolean knownLight;
  final double load;
  final double timeUnderLoad;
  final double impulse;
  final double totalLoad;
  final double level;
  final double added;

  /** In seconds; a session adds exercises that follow without a rest. */
  double longestHold;

  final double edge;
  final String hands;
  final boolean hard;
  final int sets;
  final double repetitions;
  final double rest;
  final double setRest;
  final int order;
  final boolean rehabilitation;
  private final Optional<PlannedExercise> planned;
  private final ModelPath path;
  private @Nullable List<FingerView> atWork;
  private @Nullable HeldWork work;

  ExerciseView(PlannedExercise planned, SessionView session) {
    this.planned = Optional.of(planned);
    this.session = session;
    path = planned.path();
    setup = planned.setup();
    protocol = planned.protocol();
    test = false;
    tested = false;
    toFailure = false;
    load = planned.loadIndex();
    timeUnderLoad = planned.timeUnderLoadSeconds();
    impulse = planned.impulse();
    totalLoad = planned.totalLoad().kilograms();
    level = level(planned, totalLoad);
    added = totalLoad - planned.bodyMass().kilograms();
    longestHold = longestHold(planned);
    edge = setup.edge().millimetres();
    hands = setup.hands().word();
    hard = planned.hard();
    sets = planned.scheme().sets();
    repetitions = planned.scheme().repetitionsPerSet();
    rest = planned.scheme().restBetweenHolds().toNanos() / 1e9;
    setRest = planned.scheme().restBetweenSets().toNanos() / 1e9;
    order = planned.order();
    rehabilitation = planned.rehabilitation().isPresent();
    lightLoad = lightLoad();
    knownLight = totalLoad <= lightLoad + TOLERANCE; // false if lightLoad is NaN
  }

  /** Creates a view of one setup of a planned test. */
  ExerciseView(DatedRetest retest, Setup setup, SessionView session) {
    planned = Optional.empty();
    this.session = session;
    this.setup = setup;
    path = retest.path();
    protocol = SessionView.What.RETEST.toString();
    test = true;
    tested = plan().isTested(retest, setup);
    toFailure = retest.kind() instanceof TestKind.ToFailure;
    double seconds = toFailure ? Double.NaN : retest.hold().toNanos() / 1e9;
    load = Double.NaN;
    timeUnderLoad = seconds;
    impulse = Double.NaN;
    totalLoad = Double.NaN;
    level = WHOLE_MAXIMUM;
    added = Double.NaN;
    longestHold = seconds;
    edge = setup.edge().millimetres();
    hands = setup.hands().word();
    hard = true;
    sets = 1;
    repetitions = retest.kind() instanceof TestKind.Series series ? series.holds() : 1;
    rest = Double.NaN;
    setRest = Double.NaN;
    order = retest.setups().indexOf(setup) + 1;
    rehabilitation = false;
    lightLoad = Double.NaN;
    knownLight = false;
  }

  /** Rehabilitation is not restricted, because the practitioner's plan decides there. */
  private double lightLoad() {
    AthleteView who = athlete();
    boolean restricted = !rehabilitation && KnownLight.restricted(who.athlete, setup, session.date);
    return KnownLight.most(setup, Load.ofKilograms(who.bodyMass()), restricted)
        .map(Load::kilograms)
        .orElse(Double.NaN);
  }

  /** Returns the time since the athlete's previous test, in seconds; NaN if none is known. */
  double sinceTest() {
    return test ? plan().sinceTest(session.date) : Double.NaN;
  }

  /**
   * Returns the written level or the highest load as a share of the maximum, whichever is greater.
   * This way neither rounding down to the equipment nor loads written in kilograms hide a level. If
   * the maximum is unknown, a written share does not determine the level of holds written
   * differently.
   */
  private static double level(PlannedExercise planned, double totalLoad) {
    boolean shares =
        planned.scheme().written().stream().allMatch(h -> h.level() instanceof Level.OfMax);
    if (planned.maximum().isEmpty() && planned.percentOfMax().isEmpty() && !shares) {
      return Double.NaN;
    }
    double written =
        planned.percentOfMax().isPresent()
            ? planned.percentOfMax().getAsDouble() / 100
            : planned.scheme().written().stream()
                .map(Scheme.Hold::level)
                .mapToDouble(l -> l instanceof Level.OfMax share ? share.fraction() : Double.NaN)
                .filter(f -> !Double.isNaN(f))
                .max()
                .orElse(Double.NaN);
    double lifted =
        planned
            .maximum()
            .map(m -> m.used().kilograms())
            .filter(m -> m > 0)
            .map(m -> totalLoad / m)
            .orElse(Double.NaN);
    return Double.isNaN(written)
        ? lifted
        : Double.isNaN(lifted) ? written : Math.max(written, lifted);
  }

  @Override
  public ModelPath path() {
    return path;
  }

  @Override
  public ModelPath waived() {
    WeekView week = week();
    boolean ofTest = session.what == SessionView.What.RETEST;
    return ofTest && week != null ? week.path().then("date", session.date.toString()) : path;
  }

  public Grip grip() {
    return setup.grip();
  }

  FingerSet fingers() {
    return grip().fingers();
  }

  Hands handsAtWork() {
    return setup.hands();
  }

  /** Returns the fingers that hold, computed once; empty for a test, whose load is not known. */
  List<FingerView> fingersAtWork() {
    List<FingerView> known = atWork;
    if (known == null) {
      known =
          planned
              .map(p -> FingerView.of(plan().ledger.of(p.fits(), timeUnderLoad, impulse)))
              .orElse(List.of());
      atWork = known;
    }
    return known;
  }

  PlanView plan() {
    return session.plan;
  }

  /**
   * Returns the work of the holds, computed once.
   *
   * @throws java.util.NoSuchElementException if it is a test
   */
  HeldWork work() {
    HeldWork known = work;
    if (known == null) {
      known = HeldWork.of(planned.orElseThrow());
      work = known;
    }
    return known;
  }

  /**
   * Returns sets, holds and rests.
   *
   * @throws java.util.NoSuchElementException if it is a test
   */
  Scheme scheme() {
    return planned.orElseThrow().scheme();
  }

  /** Returns how its numbers were derived; empty for a test. */
  List<Derivation> why() {
    return planned.map(PlannedExercise::why).orElse(List.of());
  }

  /** Returns the share of the full load in a week that returns from time off; otherwise 1. */
  double returnShare() {
    return why().stream()
        .filter(ProgressLink.Returns.class::isInstance)
        .mapToDouble(link -> ((ProgressLink.Returns) link).share())
        .findFirst()
        .orElse(1);
  }

  /** Returns whether both have the same protocol, grip and hands, on any edge. */
  boolean isSameWork(ExerciseView other) {
    return protocol.equals(other.protocol)
        && grip().name().equals(other.grip().name())
        && setup.hands() == other.setup.hands()
        && setup.lifting() == other.setup.lifting();
  }

  /** Returns whether all holds are below a level or, without a known maximum, known to be light. */
  boolean isLighterThan(double most) {
    double greatest = work().greatest();
    return (maximum() == 0 && knownLight && !hard)
        || (greatest > 0 && !HeldWork.reaches(greatest, most));
  }

  /** Returns the maximum that levels refer to, in kg; 0 if none is known. */
  double maximum() {
    return planned.flatMap(PlannedExercise::maximum).map(m -> m.used().kilograms()).orElse(0.0);
  }

  AthleteView athlete() {
    return session.athlete();
  }

  @Nullable WeekView week() {
    return session.week;
  }

  double endReserve() {
    return planned
        .flatMap(PlannedExercise::endReserve)
        .map(PlannedExercise.EndReserve::mean)
        .orElse(Double.NaN);
  }

  /** Returns whether it is a warm-up that is light enough for one. */
  boolean warmUp() {
    return planned.filter(PlannedExercise::warmUp).isPresent();
  }

  /** Returns whether it is what the right hand does after each set of the left. */
  boolean isSecondOfTurns() {
    return setup.hands() == Hands.RIGHT && planned.filter(PlannedExercise::alternating).isPresent();
  }

  /** Returns whether a hold is written to failure or is estimated to fail. */
  boolean toFailure() {
    return toFailure
        || planned
            .filter(p -> p.isToFailure() || isWrittenToFailure(p) || isFailing(p))
            .isPresent();
  }

  private static boolean isWrittenToFailure(PlannedExercise planned) {
    return planned.scheme().written().stream()
        .map(Scheme.Hold::level)
        .anyMatch(
            level ->
                (level instanceof Level.Effort effort && effort.outOfTen() >= MOST_EFFORT)
                    || (level instanceof Level.Reserve reserve && reserve.time().isZero()));
  }

  private boolean isFailing(PlannedExercise planned) {
    double left = endReserve();
    double share = planned.maximum().map(m -> totalLoad / m.mean().kilograms()).orElse(Double.NaN);
    return left <= share; // false if either is NaN
  }

  private static double longestHold(PlannedExercise planned) {
    double longest = Double.NaN;
    HoldChain held = new HoldChain();
    for (PlannedExercise.LoadedStep step : planned.steps()) {
      held.add(step);
      if (step.isHold()) {
        longest = Double.isNaN(longest) ? held.seconds() : Math.max(longest, held.seconds());
      }
    }
    return longest;
  }

  /** Continues the chain of holds of a hand; holds without a rest between them count as one. */
  void follow(HoldChain held) {
    planned.ifPresent(
        exercise ->
            exercise
                .steps()
                .forEach(
                    step -> {
                      held.add(step);
                      longestHold = Math.max(longestHold, held.seconds());
                    }));
  }

  @Override
  public Message called() {
    return new WrittenText(grip().name());
  }

  @Override
  public LocalDate date() {
    return session.date;
  }
}
