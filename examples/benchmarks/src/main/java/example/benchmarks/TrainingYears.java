package example.benchmarks;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.finding.ModelPath;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hand;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * A compiled plan of any length, built in code: an invented athlete, five sessions a week, two
 * lines each, in blocks of twelve weeks. The same number of sessions gives the same plan.
 */
final class TrainingYears {

  private static final int SESSIONS_A_WEEK = 5;
  private static final int BLOCK_WEEKS = 12;
  private static final LocalDate FROM = LocalDate.of(2027, 1, 4);
  private static final double BODY_MASS = 62;
  private static final Hand HAND = Hand.ofLength(Length.ofMillimetres(184));
  private static final List<Grip> GRIPS =
      List.of(
          StandardGrips.HALF_CRIMP,
          StandardGrips.OPEN_FOUR,
          StandardGrips.HALF_CRIMP,
          StandardGrips.THREE_FINGER_DRAG,
          StandardGrips.FULL_CRIMP,
          StandardGrips.FRONT_TWO,
          StandardGrips.HALF_CRIMP,
          StandardGrips.MIDDLE_TWO);
  private static final int[] EDGES = {20, 20, 18, 15, 25, 20, 12, 20};

  private final SplittableRandom random = new SplittableRandom(20270104);
  private final Map<Setup, Map<Side, GripFit>> fits = new HashMap<>();

  private TrainingYears() {}

  /**
   * Returns the plan.
   *
   * @param sessions how many sessions; 260 are a year
   * @param ruleSet a rule set that applies in addition to the built-in rules
   */
  static CompiledPlan ofSessions(int sessions, String ruleSet) {
    return new TrainingYears().plan(sessions, ruleSet);
  }

  private CompiledPlan plan(int count, String ruleSet) {
    int weekCount = (count + SESSIONS_A_WEEK - 1) / SESSIONS_A_WEEK;
    Exercise line =
        Exercise.of(
            StandardProtocols.all().get(0), StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));
    Block.Content content =
        new Block.Content(
            List.of(SessionPlan.of("strength", 1, line)), List.of(), List.of(), List.of());
    Plan.Builder plan = Plan.named("years").athlete("tove").from(FROM).rules(ruleSet);
    for (int from = 0; from < weekCount; from += BLOCK_WEEKS) {
      plan.block(
          Block.named(block(from), Math.min(BLOCK_WEEKS, weekCount - from))
              .content(content)
              .build());
    }
    List<DatedSession> sessions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      sessions.add(session(i / SESSIONS_A_WEEK, i % SESSIONS_A_WEEK));
    }
    List<PlanWeek> weeks = new ArrayList<>();
    for (int week = 0; week < weekCount; week++) {
      LocalDate from = FROM.plusWeeks(week);
      weeks.add(PlanWeek.builder(week + 1, block(week), inBlock(week), from, path(week)).build());
    }
    Plan built = plan.build();
    Athlete tove = athlete();
    return CompiledPlan.of(
        Schedule.builder(built, tove).sessions(sessions).weeks(weeks).build(),
        LogTimeline.of(built, tove, Log.empty("tove")));
  }

  private static Athlete athlete() {
    return Athlete.named("tove")
        .born(LocalDate.of(2000, 5, 17))
        .bodyMass(Load.ofKilograms(BODY_MASS))
        .trained(12)
        .ability(Ability.of(GradeScale.IRCRA, "26"))
        .hand(HAND)
        .familiar("half-crimp", 60)
        .available(DayOfWeek.MONDAY, Duration.ofMinutes(90))
        .edge(Length.ofMillimetres(20))
        .build();
  }

  private static String block(int week) {
    return "block-" + (week / BLOCK_WEEKS + 1);
  }

  private static int inBlock(int week) {
    return week % BLOCK_WEEKS + 1;
  }

  private static ModelPath path(int week) {
    return ModelPath.of("plan", "years")
        .then("for", "tove")
        .then("block", block(week))
        .then("week", inBlock(week));
  }

  private DatedSession session(int week, int ofWeek) {
    // Monday, Tuesday, Thursday, Friday, Saturday.
    LocalDate date = FROM.plusWeeks(week).plusDays(ofWeek < 2 ? ofWeek : ofWeek + 1L);
    boolean strong = ofWeek % 2 == 0 || random.nextInt(8) == 0;
    String name = strong ? "strength" : "endurance";
    ModelPath path = path(week).then("session", name).then("date", date.toString());
    List<PlannedExercise> exercises = List.of(exercise(1, path, strong), exercise(2, path, strong));
    return DatedSession.builder(date, name, Load.ofKilograms(BODY_MASS), path)
        .week(week + 1)
        .block(block(week))
        .blockWeek(inBlock(week))
        .minutes(45 + random.nextInt(43))
        .hard(exercises.stream().anyMatch(PlannedExercise::hard))
        .placedBecause(new PlacementReason.AsPlanned())
        .exercises(exercises)
        .build();
  }

  private PlannedExercise exercise(int order, ModelPath session, boolean strong) {
    Setup setup =
        new Setup(
            GRIPS.get(random.nextInt(GRIPS.size())),
            Length.ofMillimetres(EDGES[random.nextInt(EDGES.length)]),
            random.nextInt(20) == 0 ? Hands.LEFT : Hands.BOTH,
            false);
    int fingers = setup.grip().fingers().count();
    int percent = (strong ? 70 : 45) + random.nextInt(strong ? 27 : 25);
    int sets = 3 + random.nextInt(strong ? 3 : 4);
    int seconds = 4 + random.nextInt(5) + (random.nextInt(40) == 0 ? 6 : 0);
    int repetitions = strong ? 2 : 3;
    double maximum = BODY_MASS * (0.8 + 0.2 * fingers) / (setup.hands() == Hands.BOTH ? 1 : 1.8);
    Load known = Load.ofKilograms(maximum);
    double kilograms = maximum * percent / 100;
    Duration setRest = Duration.ofSeconds(random.nextInt(30) == 0 ? 100 : 180);
    Duration rest = Duration.ofSeconds(random.nextInt(25) == 0 ? 2 : 5);
    List<PlannedExercise.LoadedStep> steps = new ArrayList<>();
    for (int i = 0; i < sets * repetitions; i++) {
      steps.add(new PlannedExercise.LoadedStep(seconds, Optional.of(Load.ofKilograms(kilograms))));
      steps.add(new PlannedExercise.LoadedStep(rest.toSeconds(), Optional.empty()));
    }
    return PlannedExercise.builder(
            "holds",
            setup,
            scheme(sets, repetitions, seconds, percent, rest, setRest),
            steps,
            Load.ofKilograms(BODY_MASS),
            session.then("exercise", order))
        .order(order)
        .fits(fits.computeIfAbsent(setup, TrainingYears::fits))
        .percentOfMax(OptionalDouble.of(percent))
        .maximum(Optional.of(new PlannedExercise.Maximum(known, known, known)))
        .hard(percent >= 80)
        .build();
  }

  private static Scheme scheme(
      int sets, int repetitions, int seconds, int percent, Duration rest, Duration setRest) {
    Scheme.Hold hold = new Scheme.Hold(Duration.ofSeconds(seconds), Level.ofMax(percent));
    return new Scheme(
        List.of(
            new Scheme.Repeat(
                sets, setRest, List.of(new Scheme.Repeat(repetitions, rest, List.of(hold))))));
  }

  private static Map<Side, GripFit> fits(Setup setup) {
    GripFit fit = GripFit.of(setup.grip(), HAND, setup.edge());
    Map<Side, GripFit> bySide = new EnumMap<>(Side.class);
    setup.hands().sides().forEach(side -> bySide.put(side, fit));
    return bySide;
  }
}
