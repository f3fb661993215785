package gripwright.planning;

import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hands;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.planning.mix.Choice;
import gripwright.protocol.Argument;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Draws a plan for a trainee: with care, or without. */
final class SeasonPlan {

  /** Of 100 plans, so many leave a choice of grips: a mix takes far longer than all the rest. */
  private static final int CHOOSING = 1;

  private final Draw draw;
  private final LocalDate from;
  private final boolean careful;
  private final Trainee trainee;
  private final boolean light;
  private final boolean choosing;

  /** Whether loads rise faster than a finger that was hurt should. */
  private final boolean fast;

  SeasonPlan(Draw draw, LocalDate from, boolean careful, Trainee trainee) {
    this.draw = draw;
    this.from = from;
    this.careful = careful;
    this.trainee = trainee;
    this.light = careful && (trainee.youth(from) || trainee.recovering(from));
    this.choosing = draw.chance(CHOOSING);
    this.fast = !careful && trainee.back(from);
  }

  Plan write() {
    Plan.Builder plan = Plan.named("season").athlete("ylva").from(from);
    int blocks = draw.of(1, 1, 2);
    for (int i = 1; i <= blocks; i++) {
      plan.block(block("block-" + i, draw.between(2, 8 / blocks)));
    }
    if (draw.chance(35)) {
      // Three fingers too: what is near a test may share some of its fingers and not all.
      Grip tested = draw.of(StandardGrips.HALF_CRIMP, StandardGrips.THREE_FINGER_DRAG);
      plan.retest(
          PlannedTest.every(
              List.of(Setup.of(tested, Trainee.EDGE)), Duration.ofSeconds(7), draw.between(2, 4)));
    }
    if (draw.chance(20)) {
      plan.weeklyRise(draw.of(0.05, 0.15, 0.25));
    }
    if (draw.chance(20)) {
      plan.warmUp(Duration.ofMinutes(draw.between(5, 20)));
    }
    if (draw.chance(40)) {
      plan.demand(StandardGrips.HALF_CRIMP, 0.6);
      plan.demand(draw.of(StandardGrips.OPEN_FOUR, StandardGrips.FRONT_THREE), 0.4);
    }
    return plan.build();
  }

  private Block block(String name, int weeks) {
    Block.Builder block = Block.named(name, weeks);
    int perWeek = draw.between(1, trainee.perWeek());
    int gap = careful ? draw.of(24, 48, 48) : draw.of(24, 48, 72, 96);
    List<Exercise> all = new ArrayList<>(exercises());
    block.session(
        SessionPlan.of("strength", perWeek, all.toArray(new Exercise[0]))
            .atLeastApart(Duration.ofHours(gap))
            .preferring(draw.chance(20) ? draw.of(DAYS) : new DayOfWeek[0])
            .onlyOn(perWeek == 1 && draw.chance(15) ? draw.of(DAYS) : new DayOfWeek[0]));
    if (perWeek < trainee.perWeek() && draw.chance(40)) {
      List<Exercise> more = exercises();
      all.addAll(more);
      block.session(SessionPlan.of("second", 1, more.toArray(new Exercise[0])));
    }
    List<Grip> grips = grips(all);
    advances(block, grips);
    if (draw.chance(50)) {
      block.ease(draw.between(2, weeks), draw.of(40, 50, 60, 70, 80) / 100.0);
    }
    if (draw.chance(25)) {
      block.introduce(
          draw.of(grips), draw.between(0.2, light ? 0.3 : 0.5, 0.05), draw.between(2, 4));
    }
    return block.build();
  }

  private static final DayOfWeek[][] DAYS = {
    {DayOfWeek.THURSDAY}, {DayOfWeek.SATURDAY, DayOfWeek.MONDAY}
  };

  private static List<Grip> grips(List<Exercise> exercises) {
    Set<Grip> grips = new LinkedHashSet<>();
    exercises.forEach(e -> grips.addAll(Choice.grips(e)));
    return List.copyOf(grips);
  }

  /** One advance for all, or one for each of some grips: two on one exercise are a mistake. */
  private void advances(Block.Builder block, List<Grip> grips) {
    if (draw.chance(50)) {
      advance().ifPresent(block::advance);
    } else {
      for (Grip grip : draw.some(2, grips)) {
        advance().map(a -> a.on(grip.name())).ifPresent(block::advance);
      }
    }
  }

  private Optional<Advance> advance() {
    Advance.Change load =
        fast || draw.chance(60)
            ? new Advance.LoadByShare(
                fast ? draw.of(0.06, 0.08, 0.1, 0.12) : draw.of(0.01, 0.02, light ? 0.02 : 0.03))
            : new Advance.LoadBy(Load.ofKilograms(draw.of(0.5, 1.0, careful ? 0.5 : 2.5)));
    Advance.Change sets = new Advance.SetsTo(draw.between(5, 7), 1);
    Advance.Change hold =
        new Advance.HoldTo(Duration.ofSeconds(draw.between(9, 13)), Duration.ofSeconds(1));
    Advance.Change edge =
        new Advance.EdgeTo(Length.ofMillimetres(18), Length.ofMillimetres(careful ? 2 : 1));
    int weeks = draw.of(1, 1, 2);
    Advance advance =
        switch (fast ? 0 : draw.between(0, 7)) {
          case 0, 1 -> Advance.every(weeks, load);
          case 2 -> Advance.every(weeks, sets);
          case 3 -> Advance.every(weeks, hold);
          case 4 -> Advance.every(careful ? 4 : 1, edge);
          case 5 -> Advance.every(weeks, sets).then(load);
          case 6 -> Advance.every(weeks, hold).then(load);
          default -> null;
        };
    if (advance == null || fast || !draw.chance(25)) {
      return Optional.ofNullable(advance);
    }
    Advance.Pace logged =
        new Advance.WhenLogged(
            draw.chance(70),
            OptionalDouble.of(8),
            draw.chance(50) ? OptionalDouble.of(2) : OptionalDouble.empty(),
            draw.between(1, 2));
    return Optional.of(
        new Advance(
            new Advance.Progress(advance.first().change(), logged),
            advance.then().map(t -> new Advance.Progress(t.change(), logged)),
            advance.on()));
  }

  private List<Exercise> exercises() {
    List<Exercise> exercises = new ArrayList<>();
    int count = draw.of(1, 1, 2);
    for (int i = 0; i < count; i++) {
      exercises.add(exercise());
    }
    if (draw.chance(15)) {
      exercises.add(0, warmUp(Choice.grips(exercises.get(0)).get(0)));
    }
    return exercises;
  }

  /** A light warm-up on the first grip of a session, or one that is too hard for a warm-up. */
  private Exercise warmUp(Grip grip) {
    int percent = careful || draw.chance(70) ? draw.between(20, 40) : draw.between(60, 100);
    return Exercise.builder(StandardProtocols.FIRST_TENS, new Exercise.On(grip), Trainee.EDGE)
        .with("level", Level.ofMax(percent))
        .with("sets", draw.between(1, 3))
        .warmUp(!trainee.hurt(grip, from))
        .build();
  }

  private Exercise exercise() {
    Grip grip = draw.of(trainee.grips());
    Hands hands =
        grip.family() != GripFamily.SINGLE && draw.chance(12)
            ? draw.of(Hands.LEFT, Hands.RIGHT)
            : Hands.BOTH;
    Length edge = draw.chance(75) ? Trainee.EDGE : draw.of(trainee.athlete().equipment().edges());
    if (careful && (light || edge.millimetres() != 18)) {
      edge = Trainee.EDGE;
    }
    double max = trainee.tested(grip) * (hands == Hands.BOTH ? 1 : 0.55);
    Protocol protocol = protocol();
    Map<String, Argument> with = new LinkedHashMap<>();
    boolean choice = hands == Hands.BOTH && !light && choosing && draw.chance(60);
    if (protocol.parameters().containsKey("level")
        && (choice || light || capped(grip) || protocol != StandardProtocols.SHORT_HOLDS)) {
      with.put("level", Argument.of(level(protocol, grip, max, choice)));
    }
    if (protocol.parameters().containsKey("sets")) {
      with.put("sets", Argument.of(draw.between(1, careful ? 4 : 6)));
    }
    boolean hurt = trainee.hurt(grip, from);
    return Exercise.builder(protocol, choice ? bestOf() : new Exercise.On(grip), edge)
        .with(with)
        .hands(hands)
        .rehabilitation(
            hurt && (careful || draw.chance(50))
                ? Optional.of("plan of Hedda Lund, hand therapist")
                : Optional.empty())
        .build();
  }

  private Exercise.Target bestOf() {
    Set<Grip> grips = new LinkedHashSet<>(List.of(StandardGrips.HALF_CRIMP));
    grips.addAll(draw.some(2, trainee.grips()));
    grips.add(StandardGrips.OPEN_FOUR);
    return new Exercise.BestOf(List.copyOf(grips), Optional.empty());
  }

  private Protocol protocol() {
    if (draw.chance(15)) {
      Protocol bound = draw.of(StandardProtocols.MAX_HOLDS, StandardProtocols.CALM_HOLDS);
      return draw.chance(50)
          ? asBounds(bound, "-to-failure", Extent.TO_FAILURE)
          : asBounds(bound, "-at-most", Extent.UP_TO);
    }
    return draw.of(
        StandardProtocols.MAX_HOLDS,
        StandardProtocols.MAX_HOLDS,
        StandardProtocols.MAX_HOLDS,
        StandardProtocols.SHORT_HOLDS,
        StandardProtocols.REPEATERS,
        StandardProtocols.CALM_HOLDS,
        StandardProtocols.FIRST_TENS);
  }

  /** Returns a protocol whose sets and hold times are bounds. */
  private static Protocol asBounds(Protocol protocol, String suffix, Extent extent) {
    return Protocol.named(protocol.name() + suffix)
        .parameters(protocol.parameters())
        .steps(protocol.steps().stream().map(part -> part.accept(new Bounds(extent))).toList())
        .build();
  }

  private record Bounds(Extent extent) implements Protocol.Part.Visitor<Protocol.Part> {
    @Override
    public Protocol.Part repeat(Protocol.Part.Repeat part) {
      List<Protocol.Part> steps = part.steps().stream().map(p -> p.accept(this)).toList();
      return new Protocol.Part.Repeat(part.times(), part.resting(), steps, true);
    }

    @Override
    public Protocol.Part hold(Protocol.Part.Hold part) {
      return new Protocol.Part.Hold(part.time(), part.level(), extent);
    }

    @Override
    public Protocol.Part rest(Protocol.Part.Rest part) {
      return part;
    }
  }

  private Level level(Protocol protocol, Grip grip, double max, boolean choice) {
    boolean strong =
        protocol == StandardProtocols.MAX_HOLDS || protocol == StandardProtocols.SHORT_HOLDS;
    boolean capped = capped(grip);
    int most = light ? 45 : capped ? 65 : strong ? 85 : 40;
    if (!careful) {
      return anyLevel(max);
    }
    if (choice || light || !strong || draw.chance(50)) {
      return Level.ofMax(draw.between(light || !strong ? 25 : 55, most));
    }
    double kilograms = Math.round(max * draw.between(0.4, 0.65, 0.05));
    return switch (draw.between(0, 3)) {
      case 0 -> Level.total(Load.ofKilograms(kilograms));
      case 1 ->
          Level.bodyMassPlus(
              Load.ofKilograms(kilograms - Math.round(trainee.athlete().bodyMass().kilograms())));
      case 2 -> capped ? Level.ofMax(50) : Level.reserve(seconds(4, 9));
      default -> capped ? Level.ofMax(60) : Level.effort(draw.between(4, 7));
    };
  }

  private static boolean capped(Grip grip) {
    return grip.family() == GripFamily.SINGLE || grip == StandardGrips.FULL_CRIMP;
  }

  private Level anyLevel(double max) {
    return switch (draw.between(0, 4)) {
      case 0, 1 -> Level.ofMax(draw.between(25, 100));
      case 2 -> Level.total(Load.ofKilograms(Math.round(max * draw.between(0.4, 1.1, 0.1))));
      case 3 -> Level.reserve(seconds(0, 9));
      default -> Level.effort(draw.between(3, 10));
    };
  }

  private Duration seconds(int low, int high) {
    return Duration.ofSeconds(draw.between(low, high));
  }
}
