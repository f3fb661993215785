package gripwright.rule;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.Severity;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A compiled plan built by hand: Tove of the Skarvdal club, two blocks of four weeks from a Monday
 * on. Each test adds its own sessions.
 */
public final class Winter {

  public static final LocalDate MONDAY = LocalDate.of(2027, 1, 4);
  public static final int BLOCK_WEEKS = 4;

  public static final Grip HALF_CRIMP =
      grip("half-crimp", GripFamily.FOUR, Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE);

  /** Own names without prerequisites, so that only rules about their fingers apply. */
  public static final Grip FULL_CRIMP =
      Grip.named("closed-crimp")
          .family(GripFamily.FOUR)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(80, 110))
          .band(Finger.INDEX, Joint.DIP, Band.degrees(-40, -5))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(80, 110))
          .band(Finger.MIDDLE, Joint.DIP, Band.degrees(-40, -5))
          .build();

  public static final Grip FRONT_TWO =
      grip("first-two", GripFamily.SPLIT, Finger.INDEX, Finger.MIDDLE);
  public static final Grip BACK_TWO =
      grip("last-two", GripFamily.SPLIT, Finger.RING, Finger.LITTLE);
  public static final Grip MIDDLE_ONE = grip("middle-one", GripFamily.SINGLE, Finger.MIDDLE);

  private static final Hand HAND = Hand.ofLength(Length.ofMillimetres(180));

  private final Athlete.Builder athlete =
      Athlete.named("tove")
          .born(LocalDate.of(1995, 5, 17))
          .bodyMass(Load.ofKilograms(60))
          .trained(80)
          .ability(Ability.of(GradeScale.IRCRA, "26"))
          .hand(HAND)
          .available(DayOfWeek.MONDAY, Duration.ofMinutes(90))
          .edge(Length.ofMillimetres(20));

  private final List<Plan.Waiver> waivers = new ArrayList<>();
  private final Set<String> ruleSets = new LinkedHashSet<>();
  private final List<DatedSession> sessions = new ArrayList<>();
  private final List<DatedRetest> retests = new ArrayList<>();
  private final List<LocalDate> climbing = new ArrayList<>();
  private final Set<Integer> eased = new HashSet<>();
  private OptionalDouble weeklyRise = OptionalDouble.empty();
  private Log log = Log.empty("tove");

  public static Grip grip(String name, GripFamily family, Finger first, Finger... others) {
    return Grip.named(name).family(family).fingers(first, others).build();
  }

  /** One exercise: three holds of 10 s. Its maximum is 100 kg, so that per cent are kilograms. */
  public static final class Line {
    private final Grip grip;
    private final double percent;
    private double edge = 20;
    private int sets = 3;
    private double bodyMass = 60;
    private Hands hands = Hands.BOTH;
    private Optional<String> rehabilitation = Optional.empty();
    private boolean inKilograms;
    private boolean oneLevel = true;
    private boolean tested = true;
    private boolean fails;
    private double lifted;

    Line(Grip grip, double percent) {
      this.grip = grip;
      this.percent = percent;
      lifted = percent;
    }

    /** Written as a load, not as a share of the maximum. */
    public Line inKilograms() {
      inKilograms = true;
      oneLevel = false;
      return this;
    }

    /** An exercise without one common level. */
    public Line mixed() {
      oneLevel = false;
      return this;
    }

    /** Without a maximum. */
    public Line untested() {
      tested = false;
      return this;
    }

    /** An exercise with another load than that of its level. */
    public Line lifted(double kilograms) {
      lifted = kilograms;
      return this;
    }

    /** With a bound that is never reached. */
    public Line toFailure() {
      fails = true;
      return this;
    }

    public Line edge(double millimetres) {
      edge = millimetres;
      return this;
    }

    public Line sets(int count) {
      sets = count;
      return this;
    }

    public Line hands(Hands which) {
      hands = which;
      return this;
    }

    public Line bodyMass(double kilograms) {
      bodyMass = kilograms;
      return this;
    }

    public Line rehabilitation(String whose) {
      rehabilitation = Optional.of(whose);
      return this;
    }

    private PlannedExercise planned(int order, ModelPath session) {
      List<PlannedExercise.LoadedStep> steps = new ArrayList<>();
      for (int i = 0; i < sets; i++) {
        if (i > 0) {
          steps.add(new PlannedExercise.LoadedStep(180, Optional.empty()));
        }
        steps.add(new PlannedExercise.LoadedStep(10, Optional.of(Load.ofKilograms(lifted))));
      }
      Level level = inKilograms ? Level.total(Load.ofKilograms(lifted)) : Level.ofMax(percent);
      Scheme.Hold hold = new Scheme.Hold(Duration.ofSeconds(10), level);
      Load maximum = Load.ofKilograms(100);
      Setup setup = new Setup(grip, Length.ofMillimetres(edge), hands, false);
      GripFit fit = GripFit.of(grip, HAND, setup.edge());
      PlannedExercise planned =
          PlannedExercise.builder(
                  "single-holds",
                  setup,
                  new Scheme(
                      List.of(new Scheme.Repeat(sets, Duration.ofMinutes(3), List.of(hold)))),
                  steps,
                  Load.ofKilograms(bodyMass),
                  session.then("exercise", order))
              .order(order)
              .fits(hands.sides().stream().collect(Collectors.toMap(side -> side, side -> fit)))
              .percentOfMax(oneLevel ? OptionalDouble.of(percent) : OptionalDouble.empty())
              .maximum(
                  tested
                      ? Optional.of(new PlannedExercise.Maximum(maximum, maximum, maximum))
                      : Optional.empty())
              .hard(percent >= 80)
              .rehabilitation(rehabilitation)
              .build();
      return fails ? planned.toFailure() : planned;
    }
  }

  public static Line line(Grip grip, double percent) {
    return new Line(grip, percent);
  }

  public Winter athlete(UnaryOperator<Athlete.Builder> change) {
    change.apply(athlete);
    return this;
  }

  public Winter log(LogEntry entry) {
    log = log.with(entry);
    return this;
  }

  public Winter rules(String name) {
    ruleSets.add(name);
    return this;
  }

  public Winter weeklyRise(double fraction) {
    weeklyRise = OptionalDouble.of(fraction);
    return this;
  }

  public Winter eased(int week) {
    eased.add(week);
    return this;
  }

  public Winter climbing(int day) {
    climbing.add(MONDAY.plusDays(day));
    return this;
  }

  public Winter retest(int day, Grip grip) {
    LocalDate date = MONDAY.plusDays(day);
    retests.add(
        DatedRetest.builder(
                date,
                week(date),
                block(week(date)),
                List.of(Setup.of(grip, Length.ofMillimetres(20))),
                Duration.ofSeconds(7),
                ModelPath.of("plan", "winter").then("retest", 1).then("date", date.toString()))
            .build());
    return this;
  }

  /** Adds a session {@code strength}, this many days after the first day. */
  public Winter session(int day, Line... lines) {
    return session("strength", day, lines);
  }

  public Winter session(String name, int day, Line... lines) {
    LocalDate date = MONDAY.plusDays(day);
    int week = week(date);
    ModelPath path = weekPath(week).then("session", name).then("date", date.toString());
    List<PlannedExercise> exercises = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      exercises.add(lines[i].planned(i + 1, path));
    }
    sessions.add(
        DatedSession.builder(date, name, Load.ofKilograms(60), path)
            .week(week)
            .block(block(week))
            .blockWeek(blockWeek(week))
            .minutes(40)
            .hard(exercises.stream().anyMatch(PlannedExercise::hard))
            .eased(eased.contains(week))
            .exercises(exercises)
            .build());
    return this;
  }

  public Winter waive(String rule) {
    waivers.add(
        new Plan.Waiver(
            rule,
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            "watched by the coach"));
    return this;
  }

  public Winter waive(String rule, String block, int blockWeek) {
    waivers.add(
        new Plan.Waiver(
            rule,
            Optional.of(block),
            OptionalInt.of(blockWeek),
            Optional.empty(),
            OptionalInt.empty(),
            "watched by the coach"));
    return this;
  }

  private static int week(LocalDate date) {
    return (int) (ChronoUnit.DAYS.between(MONDAY, date) / 7) + 1;
  }

  private static String block(int week) {
    return week <= BLOCK_WEEKS ? "base" : "build";
  }

  private static int blockWeek(int week) {
    return (week - 1) % BLOCK_WEEKS + 1;
  }

  public static ModelPath weekPath(int week) {
    return ModelPath.of("plan", "winter")
        .then("for", "tove")
        .then("block", block(week))
        .then("week", blockWeek(week));
  }

  /** A minimal block; the tests use only the dated sessions. */
  static Block.Content content() {
    Exercise line =
        Exercise.of(
            StandardProtocols.all().get(0), StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));
    return new Block.Content(
        List.of(SessionPlan.of("strength", 1, line)), List.of(), List.of(), List.of());
  }

  public CompiledPlan compiled() {
    Block.Content content = content();
    Plan.Builder plan =
        Plan.named("winter")
            .athlete("tove")
            .from(MONDAY)
            .block(
                Block.named("base", BLOCK_WEEKS).content(content).only(java.util.Map.of()).build())
            .block(
                Block.named("build", BLOCK_WEEKS)
                    .content(content)
                    .only(java.util.Map.of())
                    .build());
    waivers.forEach(plan::waive);
    ruleSets.forEach(plan::rules);
    weeklyRise.ifPresent(plan::weeklyRise);
    List<PlanWeek> weeks = new ArrayList<>();
    for (int week = 1; week <= 2 * BLOCK_WEEKS; week++) {
      int number = week;
      weeks.add(
          PlanWeek.builder(
                  week, block(week), blockWeek(week), MONDAY.plusWeeks(week - 1L), weekPath(week))
              .eased(eased.contains(week))
              .timeUnderLoadSeconds(sum(number, DatedSession::timeUnderLoadSeconds))
              .loadIndex(sum(number, DatedSession::loadIndex))
              .build());
    }
    Plan built = plan.build();
    Athlete tove = athlete.build();
    Schedule schedule =
        Schedule.builder(built, tove)
            .sessions(sessions)
            .weeks(weeks)
            .retests(retests)
            .climbing(climbing)
            .build();
    return CompiledPlan.of(schedule, LogTimeline.of(built, tove, log));
  }

  private double sum(int week, java.util.function.ToDoubleFunction<DatedSession> of) {
    return sessions.stream().filter(s -> s.week() == week).mapToDouble(of).sum();
  }

  List<Finding> check(RuleSet... sets) {
    CompiledPlan compiled = compiled();
    return RuleCheck.check(compiled.schedule(), compiled.timeline(), List.of(sets));
  }

  /** Returns severity and code of every finding, with a mark on those that were waived. */
  public List<String> codes(RuleSet... sets) {
    return check(sets).stream().map(Winter::code).toList();
  }

  public static String code(Finding finding) {
    return (finding.waivedBecause().isPresent() ? "waived " : "")
        + (finding.severity() == Severity.ERROR ? "" : finding.severity().word() + " ")
        + finding.code();
  }
}
