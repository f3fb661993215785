package gripwright.language;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Span;
import gripwright.compare.Arm;
import gripwright.compare.Cohort;
import gripwright.compare.Comparison;
import gripwright.compare.Measure;
import gripwright.compare.Spread;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.plan.TestKind;
import gripwright.plan.TestTime;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.protocol.StandardProtocols;
import gripwright.protocol.Term;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import gripwright.strength.StrengthTest;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** A constructor of core that takes a value of a range; its other arguments are valid. */
record RangedJava(String what, DoubleFunction<?> of, boolean takesDoubles) {

  private static final Grip GRIP = StandardGrips.HALF_CRIMP;
  private static final Length EDGE = Length.ofMillimetres(20);
  private static final Setup SETUP = Setup.of(GRIP, EDGE);
  private static final Load LOAD = Load.ofKilograms(60);
  private static final Duration SEVEN = Duration.ofSeconds(7);
  private static final LocalDate DAY = LocalDate.of(2027, 1, 4);
  private static final Hand HAND = Hand.ofLength(Length.ofMillimetres(178));
  private static final Protocol PROTOCOL = StandardProtocols.all().get(0);
  private static final Exercise LINE = Exercise.of(PROTOCOL, GRIP, EDGE);
  private static final Level LIGHT = Level.ofMax(30);

  void build(double base) {
    of.apply(base);
  }

  private static Duration time(double seconds) {
    return Duration.ofNanos(Math.round(seconds * 1e9));
  }

  private static Length length(double millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Load load(double kilograms) {
    return Load.ofKilograms(kilograms);
  }

  private static int weeks(double seconds) {
    return (int) Math.rint(Unit.WEEK.fromBase(seconds));
  }

  private static double months(double seconds) {
    return Unit.MONTH.fromBase(seconds);
  }

  private static Advance weekly(Advance.Change change) {
    return Advance.weekly(change);
  }

  private static SessionPlan session(int perWeek, Duration gap) {
    return SessionPlan.of("strength", perWeek, LINE).atLeastApart(gap);
  }

  private static Block.Builder block(int weeks) {
    return Block.named("base", weeks).session(SessionPlan.of("strength", 2, LINE));
  }

  private static Plan.Builder plan() {
    return Plan.named("spring")
        .athlete("runa")
        .from(DAY)
        .towards(DAY.plusWeeks(60), "rock")
        .block(block(520).build());
  }

  private static Plan.Builder bare() {
    return Plan.named("spring").athlete("runa").from(DAY);
  }

  private static Athlete.Builder athlete() {
    return Athlete.named("runa")
        .born(LocalDate.of(1998, 3, 14))
        .bodyMass(load(61))
        .trained(30)
        .ability(Ability.of(GradeScale.FRENCH, "7b"))
        .hand(HAND)
        .available(DayOfWeek.MONDAY, Duration.ofMinutes(90))
        .edge(EDGE);
  }

  private static LogEntry.Done done(
      OptionalInt sets, OptionalInt asked, Optional<Load> load, OptionalDouble effort) {
    return LogEntry.Done.builder("own", SETUP)
        .sets(sets)
        .setsPlanned(asked)
        .load(load)
        .effort(effort)
        .build();
  }

  private static LogEntry.Done felt(OptionalDouble effort, OptionalDouble pain) {
    return LogEntry.Done.builder("own", SETUP).effort(effort).pain(pain).build();
  }

  private static LogEntry.Climbed climbed(
      Duration time, OptionalDouble effort, OptionalDouble pain) {
    return LogEntry.Climbed.builder(DAY, true, "hard", time).effort(effort).pain(pain).build();
  }

  private static LogEntry.Pain pain(LocalDate day, double score) {
    return LogEntry.Pain.builder(day, Finger.RING, score).build();
  }

  private static Comparison comparison(int perWeek, int weeks) {
    return compared().perWeek(perWeek).weeks(weeks).build();
  }

  private static Comparison.Builder compared() {
    Comparison.Builder builder =
        Comparison.builder("two", "runa").measures(List.of(Measure.values()[0]));
    for (Protocol protocol : StandardProtocols.all().subList(0, 2)) {
      builder.arm(Arm.of(protocol.name(), Exercise.of(protocol, SETUP.grip(), SETUP.edge())));
    }
    return builder;
  }

  private static Cohort.Builder cohort(int size) {
    return Cohort.builder("adults", size, cohortMaximum(100));
  }

  private static Cohort.Maximum cohortMaximum(double kilograms) {
    return new Cohort.Maximum(Spread.relative(kilograms, 0.15, "our own"), SETUP);
  }

  private static Grip grip(Joint joint, Band band) {
    return Grip.named("own")
        .family(GripFamily.FOUR)
        .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
        .band(Finger.INDEX, joint, band)
        .build();
  }

  private static Object centre(Joint joint, double degrees) {
    return grip(joint, Band.degrees(degrees, degrees));
  }

  private static Object limit(Joint joint, double degrees) {
    return HAND.withLimit(Finger.INDEX, joint, FlexionRange.degrees(degrees, degrees));
  }

  private static Exercise.BestOf best(int count) {
    List<Grip> grips =
        IntStream.range(0, count)
            .mapToObj(
                i ->
                    Grip.named("g" + i)
                        .family(GripFamily.FOUR)
                        .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
                        .build())
            .toList();
    return new Exercise.BestOf(grips, Optional.empty());
  }

  private static Protocol steps(int count) {
    Protocol.Part hold = new Protocol.Part.Hold(Term.of(SEVEN), Term.of(LIGHT));
    Protocol.Builder builder = Protocol.named("own");
    if (count >= 10) {
      builder.step(
          new Protocol.Part.Repeat(
              Term.of(count / 10), Term.of(Duration.ofSeconds(1)), Collections.nCopies(9, hold)));
    }
    Collections.nCopies(count % 10, hold).forEach(builder::step);
    return builder.build();
  }

  private static Object planOf(int weeks) {
    Plan.Builder plan = bare();
    if (weeks > 0) {
      plan.block(block(Math.min(520, weeks)).build());
    }
    if (weeks > 520) {
      plan.block(
          Block.named("more", weeks - 520).session(SessionPlan.of("strength", 2, LINE)).build());
    }
    return plan.build();
  }

  private static Object athletes(int count) {
    Plan.Builder plan = Plan.named("spring").from(DAY).block(block(1).build());
    IntStream.range(0, count).forEach(i -> plan.athlete("a" + i));
    return plan.build();
  }

  private static Object waived(int exercise) {
    SessionPlan session =
        SessionPlan.of(
            "strength",
            1,
            Collections.nCopies((int) Range.EXERCISES.high(), LINE).toArray(new Exercise[0]));
    Plan.Waiver waiver =
        new Plan.Waiver(
            "full-crimp-ceiling",
            Optional.of("base"),
            OptionalInt.empty(),
            Optional.of("strength"),
            OptionalInt.of(exercise),
            "as agreed");
    return bare().block(Block.named("base", 1).session(session).build()).waive(waiver).build();
  }

  private static Object dated(double year, boolean asPlan) {
    LocalDate day = LocalDate.of((int) year, 6, 1);
    return asPlan
        ? Plan.named("spring").athlete("runa").from(day).block(block(1).build()).build()
        : new LogEntry.Skipped(day, "strength", Optional.empty());
  }

  private static final class Cases {
    final List<RangedJava> all = new ArrayList<>();

    Cases wide(String what, DoubleFunction<?> of) {
      all.add(new RangedJava(what, of, true));
      return this;
    }

    Cases whole(String what, DoubleFunction<?> of) {
      all.add(new RangedJava(what, of, false));
      return this;
    }
  }

  private static OptionalDouble some(double value) {
    return OptionalDouble.of(value);
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final OptionalInt NO_COUNT = OptionalInt.empty();
  private static final Optional<Load> NO_LOAD = Optional.empty();

  private static PlannedTest.Builder test() {
    return PlannedTest.of(List.of(SETUP), new TestKind.Hold(SEVEN)).time(new TestTime.Every(4));
  }

  /** Returns every constructor with a value of a range. */
  static List<RangedJava> of(Range range) {
    Cases cases = new Cases();
    switch (range) {
      case HOLD ->
          cases
              .whole("hold", v -> new Scheme.Hold(time(v), LIGHT))
              .whole("retest", v -> PlannedTest.every(List.of(SETUP), time(v), 4))
              .whole("held", v -> new StrengthTest.Held(time(v), LOAD))
              .whole("series", v -> new StrengthTest.Series(time(v), SEVEN, List.of(LOAD)))
              .whole("longest hold", v -> new Advance.HoldTo(time(v), SEVEN))
              .whole("step of holds", v -> new Advance.HoldTo(SEVEN, time(v)));
      case REST ->
          cases
              .whole("rest", v -> new Scheme.Rest(time(v)))
              .whole("resting", v -> new Scheme.Repeat(2, time(v), steps(1).bind(Map.of()).steps()))
              .whole("argument", v -> Argument.of(time(v)))
              .whole("series", v -> new StrengthTest.Series(SEVEN, time(v), List.of(LOAD)));
      case RESERVE -> cases.whole("reserve", v -> Level.reserve(time(v)));
      case FAILURE -> cases.whole("to failure", v -> new StrengthTest.ToFailure(LOAD, time(v)));
      case WARM_UP ->
          cases
              .whole("plan", v -> plan().warmUp(time(v)).build())
              .whole(
                  "session",
                  v ->
                      new SessionPlan.Content(
                          List.of(LINE), Optional.of(time(v)), Optional.empty()));
      case REST_BETWEEN ->
          cases
              .whole("plan", v -> plan().restBetween(time(v)).build())
              .whole(
                  "session",
                  v ->
                      new SessionPlan.Content(
                          List.of(LINE), Optional.empty(), Optional.of(time(v))));
      case AVAILABLE ->
          cases.whole("available", v -> athlete().available(DayOfWeek.FRIDAY, time(v)).build());
      case CLIMBING ->
          cases
              .whole(
                  "athlete", v -> new Athlete.ClimbingDay(DayOfWeek.FRIDAY, false, "easy", time(v)))
              .whole("log", v -> climbed(time(v), NONE, NONE));
      case GAP -> cases.whole("gap", v -> session(2, time(v)));
      case DAY_GAP ->
          cases.whole("share", v -> SessionPlan.of("strength", 2, LINE).sharingDays(time(v)));
      case RECURRENCE -> cases.whole("span", v -> new Span(DAY, Optional.empty(), weeks(v)));
      case BLOCK -> cases.whole("block", v -> block(weeks(v)).build());
      case EVERY -> cases.whole("every", v -> new Advance.EveryWeeks(weeks(v)));
      case RETEST ->
          cases
              .whole("retest", v -> PlannedTest.every(List.of(SETUP), SEVEN, weeks(v)))
              .whole("later", v -> new TestTime.Later(weeks(v)));
      case ATTEMPTS -> cases.whole("test", v -> test().attempts((int) v, SEVEN).build());
      case RESTED -> cases.whole("test", v -> test().rested(time(v)).build());
      case TAPER -> cases.whole("taper", v -> new Plan.Taper(weeks(v), 0.5));
      case RAMP -> cases.whole("ramp", v -> new Block.Introduction(GRIP, 0.5, weeks(v)));
      case COMPARISON -> cases.whole("comparison", v -> comparison(2, weeks(v)));
      case TRAINED ->
          cases
              .wide("trained", v -> athlete().trained(months(v)).build())
              .wide("needs", v -> new Prerequisites(months(v), Optional.empty(), Map.of()));
      case FAMILIAR ->
          cases
              .wide("familiar", v -> familiar(months(v)))
              .wide(
                  "needs",
                  v -> new Prerequisites(0, Optional.empty(), Map.of("half-crimp", months(v))));
      case BODY_MASS ->
          cases
              .wide("athlete", v -> athlete().bodyMass(load(v)).build())
              .wide("log", v -> new LogEntry.BodyMass(DAY, load(v)));
      case LOAD ->
          cases
              .wide("level", v -> Level.total(load(v)))
              .wide("held", v -> new StrengthTest.Held(SEVEN, load(v)))
              .wide("to failure", v -> new StrengthTest.ToFailure(load(v), SEVEN))
              .wide("series", v -> new StrengthTest.Series(SEVEN, SEVEN, List.of(LOAD, load(v))))
              .wide("done", v -> done(NO_COUNT, NO_COUNT, Optional.of(load(v)), NONE));
      case ADDED -> cases.wide("level", v -> Level.bodyMassPlus(load(v)));
      case FORCE -> cases.wide("force", v -> StrengthTest.ofForce(DAY, SETUP, SEVEN, v));
      case LOAD_STEP ->
          cases
              .wide("equipment", v -> new Equipment.Steps(load(v), load(1_000)))
              .wide("advance", v -> weekly(new Advance.LoadBy(load(v))));
      case LOAD_LIMIT -> cases.wide("equipment", v -> new Equipment.Steps(load(0.001), load(v)));
      case EDGE ->
          cases
              .wide("equipment", v -> athlete().edge(length(v)).build())
              .wide("exercise", v -> Exercise.of(PROTOCOL, GRIP, length(v)))
              .wide("setup", v -> Setup.of(GRIP, length(v)))
              .wide("advance", v -> new Advance.EdgeTo(length(v), length(1)));
      case EDGE_STEP -> cases.wide("advance", v -> new Advance.EdgeTo(EDGE, length(v)));
      case HAND_LENGTH -> cases.wide("hand", v -> Hand.ofLength(length(v)));
      case HAND_BREADTH -> cases.wide("hand", v -> HAND.withBreadth(length(v)));
      case BONE ->
          cases.wide("hand", v -> HAND.withBone(Finger.INDEX, Segment.PROXIMAL, length(v)));
      case KNUCKLE -> cases.wide("hand", v -> HAND.withKnuckle(Finger.RING, length(v)));
      case ANGLE ->
          cases
              .wide("angle", Angle::ofDegrees)
              .wide("band", v -> grip(Joint.MCP, Band.degrees(-Math.abs(v), Math.abs(v))));
      case ANGLE_WITHIN -> {}
      case MCP_CENTRE ->
          cases.whole("band", v -> centre(Joint.MCP, v)).whole("limit", v -> limit(Joint.MCP, v));
      case PIP_CENTRE ->
          cases
              .whole("band", v -> grip(Joint.PIP, Band.degrees(v - 60, v + 60)))
              .whole("limit", v -> limit(Joint.PIP, v));
      case DIP_CENTRE ->
          cases.whole("band", v -> centre(Joint.DIP, v)).whole("limit", v -> limit(Joint.DIP, v));
      case PIP_HIGH -> cases.wide("band", v -> grip(Joint.PIP, Band.degrees(Math.min(v, 0), v)));
      case SHARE ->
          cases
              .wide(
                  "demand",
                  v -> plan().demand(GRIP, v).demand(StandardGrips.OPEN_FOUR, 1 - v).build())
              .wide("weights", v -> new Exercise.Weights(v, 1 - v, 0));
      case OF_MAX ->
          cases
              .wide("level", Level.OfMax::new)
              .wide("ramp", v -> new Block.Introduction(GRIP, v, 3));
      case EASE ->
          cases.wide("ease", v -> new Block.Ease(2, v)).wide("taper", v -> new Plan.Taper(2, v));
      case LOAD_PERCENT -> cases.wide("advance", Advance.LoadByShare::new);
      case WEEKLY_RISE -> cases.wide("plan", v -> plan().weeklyRise(v).build());
      case REPEATS ->
          cases
              .whole("argument", v -> Argument.of((int) v))
              .whole(
                  "repeat", v -> new Scheme.Repeat((int) v, SEVEN, steps(1).bind(Map.of()).steps()))
              .whole("planned", v -> done(NO_COUNT, OptionalInt.of((int) v), NO_LOAD, NONE));
      case SETS -> cases.whole("done", v -> done(OptionalInt.of((int) v), NO_COUNT, NO_LOAD, NONE));
      case SETS_LIMIT ->
          cases
              .whole("limit", v -> new Advance.SetsTo((int) v, 1))
              .whole("step", v -> new Advance.SetsTo(6, (int) v));
      case PER_WEEK ->
          cases
              .whole("session", v -> session((int) v, SEVEN))
              .whole("comparison", v -> comparison((int) v, 8));
      case IN_A_ROW ->
          cases.whole("advance", v -> new Advance.WhenLogged(true, NONE, NONE, (int) v));
      case WEEK -> cases.whole("ease", v -> block(520).ease((int) v, 0.6).build());
      case EXERCISE -> cases.whole("waiver", v -> waived((int) v));
      case REPETITIONS ->
          cases.whole(
              "series",
              v -> new StrengthTest.Series(SEVEN, SEVEN, Collections.nCopies((int) v, LOAD)));
      case OF_TEST -> cases.wide("level", Level.OfTest::new);
      case SPREAD -> cases.wide("spread", v -> Spread.relative(60, v, "our own"));
      case CRITICAL_FORCE ->
          cases.wide(
              "cohort",
              v -> cohort(10).criticalForce(new Spread(v, 0.1, true, Optional.empty())).build());
      case WITHIN ->
          cases.wide(
              "match", v -> new Comparison.Match(Measure.IMPULSE, "a", "b", "sets", some(v)));
      case COHORT -> cases.whole("cohort", v -> cohort((int) v).build());
      case DRAWS -> cases.whole("comparison", v -> compared().draws((int) v).build());
      case STREAM -> cases.whole("comparison", v -> compared().stream((long) v).build());
      case CORRELATION ->
          cases.wide(
              "correlation",
              v ->
                  new Cohort.Correlation(
                      Cohort.Trait.MAXIMUM, Cohort.Trait.BODY_MASS, v, Optional.empty()));
      case EFFORT ->
          cases
              .wide("done", v -> felt(some(v), NONE))
              .wide("climbed", v -> climbed(SEVEN, some(v), NONE))
              .wide("advance", v -> new Advance.WhenLogged(true, some(v), NONE, 1));
      case LEVEL_EFFORT -> cases.wide("level", Level.Effort::new);
      case PAIN ->
          cases
              .wide("done", v -> felt(NONE, some(v)))
              .wide("climbed", v -> climbed(SEVEN, NONE, some(v)))
              .wide("pain", v -> pain(DAY, v))
              .wide("advance", v -> new Advance.WhenLogged(true, NONE, some(v), 1));
      case STEPS -> cases.whole("protocol", v -> steps((int) v));
      case EXERCISES ->
          cases.whole(
              "session",
              v ->
                  new SessionPlan.Content(
                      Collections.nCopies((int) v, LINE), Optional.empty(), Optional.empty()));
      case GRIPS -> cases.whole("best of", v -> best((int) v));
      case PLAN_WEEKS -> cases.whole("plan", v -> planOf((int) v));
      case ATHLETES -> cases.whole("plan", v -> athletes((int) v));
      case YEAR ->
          cases
              .whole("log", v -> dated(v, false))
              .whole("plan", v -> dated(v, true))
              .whole("pain", v -> pain(LocalDate.of((int) v, 6, 1), 3))
              .whole("goal", v -> new Plan.Goal(LocalDate.of((int) v, 6, 1), Optional.empty()))
              .whole(
                  "born",
                  v ->
                      new Athlete.Absence(
                          LocalDate.of((int) v, 6, 1),
                          LocalDate.of((int) v, 6, 1),
                          Optional.empty()));
      case BIRTH ->
          cases.whole("athlete", v -> athlete().born(LocalDate.of((int) v, 6, 1)).build());
    }
    return cases.all;
  }

  private static Object familiar(double months) {
    return athlete().familiar("half-crimp", months).build();
  }
}
