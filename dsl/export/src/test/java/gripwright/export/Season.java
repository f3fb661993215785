package gripwright.export;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.protocol.Level;
import gripwright.protocol.Scheme;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.LoadLink;
import gripwright.schedule.PlacementReason;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.schedule.Schedule;
import gripwright.season.CompiledPlan;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** A short season built by hand, so that these tests depend on the records only. */
public final class Season {

  public static final LocalDate FROM = LocalDate.of(2027, 1, 11);

  public static final Grip HALF =
      Grip.named("half-crimp")
          .family(GripFamily.FOUR)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(75, 105))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(75, 105))
          .band(Finger.RING, Joint.PIP, Band.degrees(75, 105))
          .build();

  public static final Grip DRAG =
      Grip.named("three-finger-drag")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(40.25, 70))
          .build();

  public static final Athlete SUNNIVA = herself().build();

  private static final SessionPlan STRENGTH =
      SessionPlan.of(
          "strength",
          2,
          Exercise.of(StandardProtocols.all().get(0), DRAG, Length.ofMillimetres(20)));

  public static final Plan THAW =
      Plan.named("thaw")
          .title("Before the thaw")
          .athlete("sunniva")
          .from(FROM)
          .towards(LocalDate.of(2027, 2, 20), "granite at the fjord")
          .block(Block.named("base", 4).session(STRENGTH).build())
          .build();

  private Season() {}

  private static Athlete.Builder herself() {
    return Athlete.named("sunniva")
        .title("Sunniva of Skarvdal")
        .born(LocalDate.of(1996, 5, 4))
        .bodyMass(Load.ofKilograms(68.5))
        .trained(40)
        .ability(Ability.of(GradeScale.FRENCH, "7c"))
        .hand(Hand.ofLength(Length.ofMillimetres(182)))
        .available(DayOfWeek.TUESDAY, Duration.ofMinutes(90))
        .available(DayOfWeek.FRIDAY, Duration.ofMinutes(90))
        .climbing(new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofMinutes(150)))
        .away(
            new Athlete.Absence(
                LocalDate.of(2027, 1, 30),
                LocalDate.of(2027, 2, 8),
                Optional.of("a hut without a board")))
        .edge(Length.ofMillimetres(20))
        .edge(Length.ofMillimetres(15))
        .added(Load.ofKilograms(1.25), Load.ofKilograms(40))
        .assist(Load.ofKilograms(2), Load.ofKilograms(30));
  }

  /** Returns her with a left ring finger shorter than the right one. */
  public static Athlete unlike() {
    return withLeft(
        SUNNIVA.left().withBone(Finger.RING, Segment.PROXIMAL, Length.ofMillimetres(40)));
  }

  /** Returns her with another left hand. */
  public static Athlete withLeft(Hand left) {
    return herself().hand(Side.LEFT, left).build();
  }

  private static ModelPath week(int week) {
    return THAW.path().then("for", "sunniva").then("block", "base").then("week", week);
  }

  private static LocalDate day(int week, int day) {
    return FROM.plusDays(7L * (week - 1) + day - 1);
  }

  /** Single hangs with added load. */
  static PlannedExercise hangs(
      int order, Grip grip, int sets, double total, double percent, ModelPath path) {
    return exercise(
        order,
        "near-max",
        Setup.of(grip, Length.ofMillimetres(20)),
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    sets,
                    Duration.ofMinutes(3),
                    List.of(new Scheme.Hold(Duration.ofSeconds(10), Level.ofMax(percent)))))),
        total,
        OptionalDouble.of(percent),
        path);
  }

  /** Repeaters on the drag with reduced load. */
  static PlannedExercise repeaters(int order, ModelPath path) {
    return exercise(
        order,
        "repeaters",
        Setup.of(DRAG, Length.ofMillimetres(15)),
        new Scheme(
            List.of(
                new Scheme.Repeat(
                    3,
                    Duration.ofSeconds(150),
                    List.of(
                        new Scheme.Repeat(
                            6,
                            Duration.ofSeconds(3),
                            List.of(
                                new Scheme.Hold(
                                    Duration.ofSeconds(7),
                                    Level.reserve(Duration.ofSeconds(5))))))))),
        54.5,
        OptionalDouble.empty(),
        path);
  }

  /** One-handed lifts from the floor. */
  static PlannedExercise lifts(int order, ModelPath path) {
    return exercise(
        order,
        "lift",
        new Setup(HALF, Length.ofMillimetres(20), Hands.LEFT, true),
        new Scheme(
            List.of(new Scheme.Hold(Duration.ofMillis(2500), Level.total(Load.ofKilograms(30))))),
        30,
        OptionalDouble.empty(),
        path);
  }

  private static PlannedExercise exercise(
      int order,
      String protocol,
      Setup setup,
      Scheme scheme,
      double total,
      OptionalDouble percent,
      ModelPath path) {
    List<LoadedStep> steps = new ArrayList<>();
    for (Scheme.Step step : scheme.flat()) {
      steps.add(
          step instanceof Scheme.Hold hold
              ? new LoadedStep(hold.seconds(), Optional.of(Load.ofKilograms(total)))
              : new LoadedStep(((Scheme.Rest) step).time().toSeconds(), Optional.empty()));
    }
    return PlannedExercise.builder(
            protocol,
            setup,
            scheme,
            steps,
            setup.lifting() ? Load.ZERO : SUNNIVA.bodyMass(),
            path.then("exercise", order))
        .order(order)
        .fits(fits(SUNNIVA, setup))
        .percentOfMax(percent)
        .maximum(
            percent.isPresent()
                ? Optional.of(
                    new Maximum(
                        Load.ofKilograms(96.7301234),
                        Load.ofKilograms(101.2),
                        Load.ofKilograms(105.9)))
                : Optional.empty())
        .hard(percent.orElse(0) >= 80)
        .endReserve(
            percent.isPresent()
                ? Optional.of(new EndReserve(0.7812345, 0.53, 0.9))
                : Optional.empty())
        .why(List.of(new LoadLink.Total(Load.ofKilograms(total))))
        .build();
  }

  private static Map<Side, GripFit> fits(Athlete athlete, Setup setup) {
    Map<Side, GripFit> fits = new EnumMap<>(Side.class);
    for (Side side : setup.hands().sides()) {
      fits.put(side, GripFit.of(setup.grip(), athlete.shape(side), setup.edge()));
    }
    return fits;
  }

  private static DatedSession session(int week, LocalDate date, boolean eased) {
    String name = date.getDayOfWeek() == DayOfWeek.TUESDAY ? "strength" : "capacity";
    ModelPath path = week(week).then("session", name).then("date", date.toString());
    boolean tuesday = date.getDayOfWeek() == DayOfWeek.TUESDAY;
    double percent = 84 + week * 0.5;
    List<PlannedExercise> exercises =
        tuesday
            ? List.of(
                hangs(1, HALF, eased ? 3 : 5, 80.0 + 1.25 * week, percent, path),
                hangs(2, DRAG, eased ? 2 : 3, 65.5 + 1.25 * week, percent - 9, path))
            : List.of(repeaters(1, path), lifts(2, path));
    return DatedSession.builder(date, name, SUNNIVA.bodyMass(), path)
        .week(week)
        .block("base")
        .blockWeek(week)
        .minutes(tuesday ? 62 : 34)
        .hard(tuesday)
        .eased(eased)
        .placedBecause(new PlacementReason.Rested(90))
        .exercises(exercises)
        .build();
  }

  /** Four weeks: two trained, one partly away, one eased; a test, climbing, findings. */
  public static CompiledPlan thaw() {
    List<DatedSession> sessions =
        List.of(
            session(1, day(1, 2), false),
            session(1, day(1, 5), false),
            session(2, day(2, 2), false),
            session(3, day(3, 2), false),
            session(3, day(3, 5), false),
            session(4, day(5, 5).minusDays(7), true));
    List<PlanWeek> weeks = new ArrayList<>();
    for (int w = 1; w <= 4; w++) {
      int number = w;
      List<DatedSession> ofWeek = sessions.stream().filter(s -> s.week() == number).toList();
      weeks.add(
          PlanWeek.builder(w, "base", w, day(w, 1), week(w))
              .eased(w == 4)
              .timeUnderLoadSeconds(
                  ofWeek.stream().mapToDouble(DatedSession::timeUnderLoadSeconds).sum())
              .loadIndex(ofWeek.stream().mapToDouble(DatedSession::loadIndex).sum())
              .build());
    }
    DatedRetest retest =
        DatedRetest.builder(
                day(2, 5),
                2,
                "base",
                List.of(
                    Setup.of(HALF, Length.ofMillimetres(20)),
                    Setup.of(DRAG, Length.ofMillimetres(15))),
                Duration.ofSeconds(7),
                THAW.path().then("retest", 1).then("week", 2))
            .insteadOf("strength")
            .placedBecause(new PlacementReason.InsteadOfHardest(2))
            .build();
    return compiled(
        Schedule.builder(THAW, SUNNIVA)
            .sessions(sessions)
            .weeks(weeks)
            .retests(List.of(retest))
            .climbing(List.of(day(1, 7), day(2, 7)))
            .build(),
        Log.empty("sunniva"),
        findings());
  }

  private static CompiledPlan compiled(Schedule schedule, Log log, List<Finding> findings) {
    return CompiledPlan.of(schedule, LogTimeline.of(schedule.plan(), schedule.athlete(), log))
        .withFindings(findings);
  }

  /** The same with tests of every kind, some of them before and after the plan. */
  public static CompiledPlan tested() {
    CompiledPlan thaw = thaw();
    DatedRetest hold = thaw.retests().get(0);
    DatedRetest.Attempts three =
        new DatedRetest.Attempts(3, Duration.ofMinutes(5), Optional.of(TestCount.MEAN));
    return compiled(
        thaw.schedule().toBuilder()
            .retests(
                List.of(
                    hold.toBuilder()
                        .kind(new TestKind.Series(24, Duration.ofSeconds(7), Duration.ofSeconds(3)))
                        .build(),
                    hold.toBuilder()
                        .kind(new TestKind.ToFailure(Level.ofMax(60)))
                        .attempts(three)
                        .notes(List.of("in the usual shoes"))
                        .build(),
                    hold.toBuilder().week(0).block("").date(day(0, 2)).build()))
            .build(),
        thaw.log(),
        thaw.findings());
  }

  /** The same with another athlete's hands. */
  public static CompiledPlan thaw(Athlete athlete) {
    return thaw(athlete, exercise -> of(athlete, exercise));
  }

  /** The same with other exercises. */
  public static CompiledPlan thaw(Athlete athlete, UnaryOperator<PlannedExercise> change) {
    CompiledPlan thaw = thaw();
    return compiled(
        thaw.schedule().toBuilder()
            .athlete(athlete)
            .sessions(thaw.sessions().stream().map(session -> of(session, change)).toList())
            .notMadeUp(List.of())
            .beside(List.of())
            .withoutLog(Optional.empty())
            .build(),
        thaw.log(),
        thaw.findings());
  }

  private static DatedSession of(DatedSession session, UnaryOperator<PlannedExercise> change) {
    return session.toBuilder()
        .exercises(session.exercises().stream().map(change).toList())
        .happened(Optional.empty())
        .build();
  }

  private static PlannedExercise of(Athlete athlete, PlannedExercise exercise) {
    return exercise.toBuilder().fits(fits(athlete, exercise.setup())).build();
  }

  private static List<Finding> findings() {
    return List.of(
        Finding.advice("plan.retest-displaces", THAW.path().then("retest", 1).then("week", 2))
            .with("week", 2)
            .with("session", "strength"),
        Finding.error("rule.weekly-rise", week(1))
            .with(
                "message", "the load of a week rises by more than the plan allows, which is a lot")
            .alsoAt(week(2))
            .alsoAt(week(3).then("date", day(3, 2).toString()))
            .waived("she comes from harder weeks elsewhere"),
        Finding.warning("plan.waiver-unused", THAW.path().then("waiver", 1))
            .with("rule", "short-rest-48"));
  }

  /** A plan of one week without sessions. */
  public static CompiledPlan empty() {
    Plan plan =
        Plan.named("pause")
            .athlete("sunniva")
            .from(FROM)
            .block(Block.named("rest", 1).session(STRENGTH).build())
            .build();
    PlanWeek week =
        PlanWeek.builder(1, "rest", 1, FROM, plan.path().then("week", 1)).away(true).build();
    return compiled(
        Schedule.builder(plan, SUNNIVA).weeks(List.of(week)).build(),
        Log.empty("sunniva"),
        List.of());
  }

  /** Puts a finding into very short words. */
  public static ReportedFinding worded(Finding finding) {
    return ReportedFinding.builder(
            finding.code(),
            finding.severity(),
            "the words of "
                + finding.code()
                + ", a sentence that may well be longer than one line is")
        .file("club/thaw.grip")
        .line(12)
        .column(3)
        .endLine(12)
        .endColumn(9)
        .rule(finding.rule().orElse(null))
        .waivedBecause(finding.waivedBecause().orElse(null))
        .place(finding.place().toString())
        .athletes(finding.athletes())
        .build();
  }
}
