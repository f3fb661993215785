package gripwright.language;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.athlete.Injury;
import gripwright.athlete.Slot;
import gripwright.athlete.SlotDay;
import gripwright.athlete.Span;
import gripwright.finding.WrittenReason;
import gripwright.grip.Band;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.plan.TestTime;
import gripwright.protocol.Argument;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.protocol.Term;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Athletes, grips, protocols and plans as a program might build them, with everything that the
 * language can express.
 */
final class Inventions {

  private static final List<String> TEXTS =
      List.of("a", "with \"quotes\" and \\", "# no comment { }", "\u00e5se, 2 %", "");
  static final LocalDate DAY = LocalDate.of(2027, 1, 11);

  private final Random random;

  Inventions(Random random) {
    this.random = random;
  }

  boolean sometimes() {
    return random.nextInt(3) == 0;
  }

  double tenths(int low, int high) {
    return (low * 10 + random.nextInt((high - low) * 10)) / 10.0;
  }

  double anyOf(double low, double high) {
    return sometimes() ? low + (high - low) * random.nextDouble() : tenths((int) low, (int) high);
  }

  private double share() {
    return (1 + random.nextInt(95)) / 100.0;
  }

  private <T> T one(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  <T extends Enum<T>> T one(T[] all) {
    return all[random.nextInt(all.length)];
  }

  Optional<String> text() {
    return sometimes() ? Optional.of(one(TEXTS)) : Optional.empty();
  }

  /** Returns none, one or two notes. */
  private List<String> notes() {
    return Stream.concat(text().stream(), text().stream()).toList();
  }

  /** Returns the notes of everybody, and some of their own. */
  private List<String> notesAfter(List<String> all) {
    return Stream.concat(all.stream(), notes().stream()).toList();
  }

  Duration time(int low, int high) {
    return Duration.ofMillis(
        sometimes() ? 1000L * low + random.nextInt(1000 * (high - low)) : 1000L * high);
  }

  private LocalDate day() {
    return DAY.minusDays(random.nextInt(400));
  }

  /** Adds times of day, times in force for a while and single days. */
  private void calendar(Athlete.Builder athlete) {
    LocalTime evening = LocalTime.of(17 + random.nextInt(3), random.nextInt(60));
    DayOfWeek weekday = one(DayOfWeek.values());
    Span span =
        new Span(
            DAY.plusDays(random.nextInt(100)),
            sometimes() ? Optional.of(DAY.plusDays(100 + random.nextInt(200))) : Optional.empty(),
            1 + random.nextInt(3));
    SlotDay inForce = new SlotDay.Weekly(weekday, Optional.of(span));
    athlete
        .available(
            List.of(
                Slot.on(DayOfWeek.TUESDAY, LocalTime.of(7, 0), Duration.ofMinutes(30)),
                Slot.on(DayOfWeek.TUESDAY, evening, Duration.ofMinutes(75)),
                Slot.on(DayOfWeek.THURSDAY, Duration.ofMinutes(90))))
        .available(new Slot(inForce, Optional.of(evening), Duration.ofMinutes(45)).atPlace("loft"))
        .equipmentAt(
            "loft",
            new Equipment(
                List.of(Length.ofMillimetres(20), Length.ofMillimetres(tenths(21, 30))),
                sometimes()
                    ? Optional.of(new Equipment.Steps(Load.ofKilograms(1.25), Load.ofKilograms(60)))
                    : Optional.empty(),
                Optional.empty()))
        .available(
            Slot.on(
                DAY.plusDays(random.nextInt(200)),
                sometimes() ? Optional.of(evening) : Optional.empty(),
                Duration.ofMinutes(60)));
  }

  Athlete athlete(String name) {
    Athlete.Builder athlete =
        Athlete.named(name)
            .title(sometimes() ? name : "T \"O\" Ve")
            .born(LocalDate.of(1990, 1, 1).plusDays(random.nextInt(4000)))
            .bodyMass(Load.ofKilograms(anyOf(45, 95)))
            .trained(
                new Athlete.Experience(
                    random.nextInt(200), sometimes() ? Optional.of(day()) : Optional.empty()))
            .ability(ability())
            .edge(Length.ofMillimetres(20))
            .edge(Length.ofMillimetres(tenths(8, 19)))
            .available(DayOfWeek.MONDAY, Duration.ofMinutes(60))
            .available(one(DayOfWeek.values()), Duration.ofMinutes(30 + random.nextInt(90)));
    if (sometimes()) {
      calendar(athlete);
    }
    Hand hand = hand();
    athlete.hand(hand);
    if (sometimes()) {
      athlete.hand(one(Side.values()), measured(hand));
    }
    if (sometimes()) {
      athlete.sex(one(Sex.values()));
      athlete.added(Load.ofKilograms(1.25), Load.ofKilograms(tenths(20, 60)));
      athlete.assist(Load.ofKilograms(0.45359237), Load.ofKilograms(40));
      athlete.familiar("half-crimp", random.nextInt(100));
      athlete.familiar(
          new Athlete.Familiarity("open-four", new Athlete.Experience(3, Optional.of(day()))));
    }
    if (sometimes()) {
      LocalDate from = day();
      athlete.injury(
          Injury.builder(one(Finger.values()), one(Structure.values()), from)
              .side(sometimes() ? Optional.of(one(Side.values())) : Optional.empty())
              .cleared(from.plusDays(60))
              .clearedBy(sometimes() ? Optional.of("a \"hand\" therapist") : Optional.empty())
              .note(text())
              .build());
      athlete.injury(
          Injury.builder(one(Finger.values()), one(Structure.values()), from).note(text()).build());
      athlete.away(new Athlete.Absence(from, from.plusDays(random.nextInt(9)), text()));
      athlete.climbing(
          new Athlete.ClimbingDay(DayOfWeek.SUNDAY, true, "hard", Duration.ofMinutes(120)));
      athlete.climbing(
          new Athlete.ClimbingDay(DayOfWeek.WEDNESDAY, false, "easy", Duration.ofMinutes(90)));
    }
    return athlete.build();
  }

  private Ability ability() {
    GradeScale scale = one(GradeScale.values());
    List<String> grades = Ability.grades(scale);
    return Ability.of(scale, grades.get(grades.size() / 2 + random.nextInt(4)));
  }

  private Hand hand() {
    Hand hand = Hand.ofLength(Length.ofMillimetres(anyOf(165, 200)));
    return sometimes() ? measured(hand.withBreadth(Length.ofMillimetres(tenths(75, 90)))) : hand;
  }

  private Hand measured(Hand hand) {
    Finger finger = one(Finger.values());
    Hand more = hand.withBone(finger, one(Segment.values()), Length.ofMillimetres(tenths(20, 30)));
    more = more.withKnuckle(Finger.RING, Length.ofMillimetres(tenths(5, 9)));
    double low = tenths(0, 20);
    return sometimes()
        ? more.withLimit(finger, Joint.PIP, FlexionRange.degrees(low, low + 70))
        : more;
  }

  Grip grip() {
    boolean four = random.nextBoolean();
    Grip.Builder grip =
        Grip.named(sometimes() ? "half-crimp" : "own-grip")
            .family(four ? GripFamily.FOUR : GripFamily.SPLIT)
            .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, four ? Finger.LITTLE : Finger.RING);
    text().ifPresent(grip::title);
    for (Finger finger : List.of(Finger.INDEX, Finger.MIDDLE, Finger.RING)) {
      double low = tenths(40, 80);
      if (random.nextBoolean()) {
        grip.band(finger, Joint.PIP, Band.degrees(low, low + random.nextInt(20)));
      }
      if (sometimes()) {
        grip.band(finger, Joint.DIP, Band.degrees(-20, random.nextInt(20)));
      }
    }
    if (sometimes()) {
      grip.needs(
          new Prerequisites(
              random.nextInt(50),
              sometimes() ? Optional.of(ability()) : Optional.empty(),
              sometimes() ? Map.of("open-four", 12.0) : Map.of()));
      grip.caution("a \"caution\"").caution("another");
    }
    notes().forEach(grip::note);
    return grip.build();
  }

  Protocol protocol(String name) {
    Protocol.Builder protocol =
        Protocol.named(name)
            .given("sets", 1 + random.nextInt(8))
            .given("pause", time(1, 240))
            .given("level", level());
    text().ifPresent(protocol::title);
    notes().forEach(protocol::note);
    if (sometimes()) {
      protocol.aim("strength");
      protocol.given("work", time(3, 12));
    }
    Protocol.Part.Hold hold =
        new Protocol.Part.Hold(
            Term.of(time(3, 12)),
            sometimes() ? Term.of(level()) : Term.given("level"),
            one(Extent.values()));
    List<Protocol.Part> steps = new ArrayList<>(List.of(hold));
    if (sometimes()) {
      steps.add(new Protocol.Part.Rest(Term.of(time(5, 200)), text()));
      steps.add(
          new Protocol.Part.Repeat(Term.of(3), Term.of(Duration.ZERO), List.of(hold), sometimes()));
    }
    protocol.step(
        new Protocol.Part.Repeat(Term.given("sets"), Term.given("pause"), steps, sometimes()));
    return protocol.build();
  }

  private Level level() {
    return switch (random.nextInt(5)) {
      case 0 -> new Level.OfMax(share());
      case 1 -> Level.total(Load.ofKilograms(anyOf(20, 90)));
      case 2 -> Level.bodyMassPlus(Load.ofKilograms(tenths(-30, 30)));
      case 3 -> Level.reserve(time(1, 20));
      default -> Level.effort(tenths(1, 10));
    };
  }

  Setup setup(Grip grip) {
    return new Setup(grip, Length.ofMillimetres(20), one(Hands.values()), sometimes());
  }

  Plan plan() {
    Plan.Builder plan = Plan.named("p").athlete("tove").athlete("liv").from(DAY);
    text().ifPresent(plan::title);
    notes().forEach(plan::note);
    if (sometimes()) {
      plan.supervisedBy("the \"trainer\"");
    }
    if (sometimes()) {
      plan.towards(new Plan.Goal(DAY.plusDays(100), text()));
      plan.taper(2, share());
      plan.demand(StandardGrips.HALF_CRIMP, 0.57).demand(StandardGrips.OPEN_FOUR, 0.43);
      plan.weeklyRise((1 + random.nextInt(30)) / 100.0);
    }
    if (sometimes()) {
      plan.warmUp(time(300, 900)).warmUpText(text()).restBetween(time(60, 240)).weights(weights());
      plan.retest(
          PlannedTest.every(
              List.of(Setup.of(StandardGrips.HALF_CRIMP, Length.ofMillimetres(20))),
              Duration.ofSeconds(7),
              1 + random.nextInt(8)));
      plan.retest(test());
      plan.waive(
          new Plan.Waiver(
              "split-grip-gate",
              Optional.of("b0"),
              sometimes() ? OptionalInt.of(1) : OptionalInt.empty(),
              sometimes() ? Optional.of("s") : Optional.empty(),
              OptionalInt.empty(),
              "for \"good\" reasons"));
    }
    int blocks = 1 + random.nextInt(3);
    Protocol own = protocol("own");
    for (int i = 0; i < blocks; i++) {
      plan.block(block("b" + i, own));
    }
    return plan.build();
  }

  private PlannedTest test() {
    PlannedTest.Builder test =
        PlannedTest.of(
            List.of(Setup.of(StandardGrips.OPEN_FOUR, Length.ofMillimetres(20))),
            switch (random.nextInt(3)) {
              case 0 -> new TestKind.Hold(Duration.ofSeconds(7));
              case 1 -> new TestKind.ToFailure(Level.ofMax(60));
              default ->
                  new TestKind.Series(
                      1 + random.nextInt(40), Duration.ofSeconds(7), Duration.ofSeconds(3));
            });
    test.time(new TestTime.After()).time(new TestTime.Later(1 + random.nextInt(8)));
    if (sometimes()) {
      test.time(new TestTime.Before()).time(new TestTime.InWeek(1));
    }
    if (sometimes()) {
      test.time(new TestTime.Every(2)).attempts(3, time(120, 300)).counts(TestCount.MEAN);
    }
    if (sometimes()) {
      test.rested(Duration.ofHours(72)).onlyOn(DayOfWeek.TUESDAY).warmUp(time(300, 900));
      test.warmUpText(text()).note("\"as\" usual");
    }
    if (sometimes()) {
      test.exercise(before()).exercise(before());
    }
    return test.build();
  }

  private Exercise before() {
    return Exercise.builder(
            StandardProtocols.MAX_HOLDS,
            new Exercise.On(StandardGrips.HALF_CRIMP),
            Length.ofMillimetres(20))
        .with("level", Level.ofMax(40 + random.nextInt(20)))
        .warmUp(true)
        .note(text())
        .build();
  }

  private static Exercise.Weights weights() {
    return new Exercise.Weights(0.5, 0.29, 0.21);
  }

  private Block block(String name, Protocol own) {
    Block.Builder block = Block.named(name, 4);
    SessionPlan session = session("s", own);
    block.session(session);
    notes().forEach(block::note);
    if (sometimes()) {
      block.session(session("t", own));
    }
    if (sometimes()) {
      block.advance(advance()).ease(3, share()).ease(4, share());
      block.introduce(StandardGrips.HALF_CRIMP, share(), 2);
    }
    Block all = block.build();
    if (sometimes()) {
      SessionPlan other = session("u", own);
      Block.Content content = all.content();
      block.onlyFor(
          "liv",
          new Block.Content(
              List.of(other),
              content.advances().isEmpty() ? List.of() : List.of(advance()),
              content.eases(),
              content.introductions(),
              notesAfter(content.notes())));
    }
    return block.build();
  }

  private SessionPlan session(String name, Protocol own) {
    Optional<Exercise.Weights> weights = sometimes() ? Optional.of(weights()) : Optional.empty();
    SessionPlan.Content content = content(own, weights);
    SessionPlan session =
        SessionPlan.builder(name, 1 + random.nextInt(3), content)
            .gap(
                sometimes()
                    ? Duration.ofHours(24L * (1 + random.nextInt(4)))
                    : Duration.ofHours(48))
            .prefer(sometimes() ? List.of(DayOfWeek.TUESDAY, DayOfWeek.MONDAY) : List.of())
            .onlyOn(
                sometimes()
                    ? List.of(DayOfWeek.FRIDAY, DayOfWeek.TUESDAY, DayOfWeek.MONDAY)
                    : List.of())
            .share(sometimes() ? Optional.of(Duration.ofHours(6)) : Optional.empty())
            .supervisedBy(sometimes() ? Optional.of("somebody") : Optional.empty())
            .build();
    if (!sometimes()) {
      return session;
    }
    SessionPlan.Content other = content(own, weights);
    return session.onlyFor(
        sometimes() ? "tove" : "liv",
        new SessionPlan.Content(
            other.exercises(),
            other.warmUp().or(content::warmUp),
            other.restBetween().or(content::restBetween),
            other.warmUp().isPresent() ? other.warmUpText() : content.warmUpText(),
            notesAfter(content.notes())));
  }

  private SessionPlan.Content content(Protocol own, Optional<Exercise.Weights> weights) {
    List<Exercise> exercises = new ArrayList<>();
    if (sometimes()) {
      exercises.add(
          Exercise.builder(own, new Exercise.On(StandardGrips.OPEN_FOUR), Length.ofMillimetres(20))
              .hands(one(Hands.values()))
              .warmUp(true)
              .note(text())
              .build());
    }
    exercises.add(
        Exercise.builder(own, new Exercise.On(StandardGrips.HALF_CRIMP), Length.ofMillimetres(20))
            .note(text())
            .with(sometimes() ? Map.of("level", Argument.of(level())) : Map.of())
            .hands(one(Hands.values()))
            .lifting(sometimes())
            .rehabilitation(text().filter(WrittenReason::hasWord))
            .build());
    exercises.add(
        Exercise.builder(own, new Exercise.On(StandardGrips.HALF_CRIMP), Length.ofMillimetres(20))
            .alternating(sometimes())
            .lifting(sometimes())
            .note(text())
            .build());
    exercises.add(
        Exercise.of(
            StandardProtocols.MAX_HOLDS, StandardGrips.OPEN_FOUR, Length.ofMillimetres(20)));
    exercises.add(
        Exercise.builder(
                own,
                new Exercise.BestOf(
                    List.of(StandardGrips.HALF_CRIMP, StandardGrips.FRONT_THREE), weights),
                Length.ofMillimetres(20))
            .with(Map.of("sets", Argument.of(3)))
            .build());
    Optional<Duration> warmUp = sometimes() ? Optional.of(time(300, 900)) : Optional.empty();
    return new SessionPlan.Content(
        exercises,
        warmUp,
        sometimes() ? Optional.of(time(60, 300)) : Optional.empty(),
        warmUp.flatMap(time -> text()),
        notes());
  }

  private Advance advance() {
    Advance.Pace pace =
        sometimes()
            ? new Advance.WhenLogged(
                true,
                sometimes() ? OptionalDouble.of(8) : OptionalDouble.empty(),
                sometimes() ? OptionalDouble.of(2.5) : OptionalDouble.empty(),
                1 + random.nextInt(2))
            : new Advance.EveryWeeks(1 + random.nextInt(3));
    Advance.Change first =
        switch (random.nextInt(4)) {
          case 0 -> Advance.loadByPercent(7);
          case 1 -> new Advance.LoadBy(Load.ofKilograms(0.5));
          case 2 -> new Advance.SetsTo(6, 1);
          default -> new Advance.EdgeTo(Length.ofMillimetres(14), Length.ofMillimetres(2));
        };
    Advance advance =
        new Advance(new Advance.Progress(first, pace), Optional.empty(), Optional.empty());
    if (sometimes()) {
      advance = advance.then(new Advance.HoldTo(Duration.ofSeconds(12), Duration.ofMillis(500)));
    }
    return sometimes() ? advance.on("half-crimp") : advance;
  }
}
