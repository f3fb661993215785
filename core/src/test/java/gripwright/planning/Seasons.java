package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.grip.Grip;
import gripwright.grip.PractisedGrips;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Hands;
import gripwright.hand.Segment;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Argument;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.providers.ArbitraryProvider;
import net.jqwik.api.providers.TypeUsage;

/** Generates whole seasons: an athlete, what is known of them, and a plan. */
public final class Seasons implements ArbitraryProvider {

  /**
   * An athlete, a log and a plan that belong together.
   *
   * @param athlete for whom
   * @param log what is known
   * @param plan what the coach wrote
   */
  public record Season(Athlete athlete, Log log, Plan plan) {

    CompiledPlan compile() {
      return Planner.compile(plan, athlete, log, List.of());
    }

    /** Returns the season with every date moved by whole weeks. */
    Season later(int weeks) {
      Athlete.Builder moved = copy(athlete, athlete.born().plusWeeks(weeks));
      athlete
          .away()
          .forEach(
              a ->
                  moved.away(
                      new Athlete.Absence(
                          a.from().plusWeeks(weeks), a.to().plusWeeks(weeks), a.note())));
      Log later = Log.empty(log.athlete());
      for (LogEntry entry : log.entries()) {
        gripwright.strength.StrengthTest test = ((LogEntry.Tested) entry).test();
        later =
            later.with(
                new LogEntry.Tested(
                    new gripwright.strength.StrengthTest(
                        test.date().plusWeeks(weeks), test.setup(), test.result()),
                    Optional.empty()));
      }
      Plan.Builder plan2 = Plan.named(plan.name()).from(plan.from().plusWeeks(weeks));
      plan.athletes().forEach(plan2::athlete);
      plan.blocks().forEach(plan2::block);
      plan.retests().forEach(plan2::retest);
      return new Season(moved.build(), later, plan2.build());
    }

    /** Returns the season with every tested load multiplied. */
    Season stronger(double factor) {
      Log stronger = Log.empty(log.athlete());
      for (LogEntry entry : log.entries()) {
        gripwright.strength.StrengthTest test = ((LogEntry.Tested) entry).test();
        gripwright.strength.StrengthTest.Held held =
            (gripwright.strength.StrengthTest.Held) test.result();
        stronger =
            stronger.with(
                new LogEntry.Tested(
                    new gripwright.strength.StrengthTest(
                        test.date(),
                        test.setup(),
                        new gripwright.strength.StrengthTest.Held(
                            held.hold(), held.load().times(factor))),
                    Optional.empty()));
      }
      return new Season(athlete, stronger, plan);
    }

    /** Returns the season of an athlete whose left hand is this one's right, and the other way. */
    Season mirrored() {
      Athlete.Builder mirror =
          copy(athlete, athlete.born())
              .hand(Side.LEFT, athlete.right())
              .hand(Side.RIGHT, athlete.left());
      athlete.away().forEach(mirror::away);
      return new Season(mirror.build(), log, plan);
    }

    private static Athlete.Builder copy(Athlete athlete, LocalDate born) {
      Athlete.Builder copy =
          Athlete.named(athlete.name())
              .born(born)
              .bodyMass(athlete.bodyMass())
              .trained(athlete.trained())
              .ability(athlete.ability())
              .hand(athlete.left())
              .hand(Side.RIGHT, athlete.right());
      athlete.sex().ifPresent(copy::sex);
      athlete.available().forEach(copy::available);
      athlete.climbing().forEach(copy::climbing);
      athlete.equipment().edges().forEach(copy::edge);
      athlete.equipment().added().ifPresent(s -> copy.added(s.step(), s.limit()));
      athlete.equipment().assist().ifPresent(s -> copy.assist(s.step(), s.limit()));
      return copy;
    }
  }

  @Override
  public boolean canProvideFor(TypeUsage type) {
    return type.isOfType(Season.class);
  }

  @Override
  public Set<Arbitrary<?>> provideFor(TypeUsage type, SubtypeProvider subtypes) {
    return Set.of(seasons());
  }

  static Arbitrary<Season> seasons() {
    Arbitrary<LocalDate> from =
        Arbitraries.integers().between(0, 1500).map(d -> LocalDate.of(2026, 12, 20).plusDays(d));
    return from.flatMap(
        day -> Combinators.combine(athletes(day), logs(day), plans(day)).as(Season::new));
  }

  private static Arbitrary<Athlete> athletes(LocalDate from) {
    Arbitrary<Map<DayOfWeek, Integer>> available =
        Arbitraries.maps(
                Arbitraries.of(DayOfWeek.class),
                Arbitraries.frequencyOf(
                    net.jqwik.api.Tuple.of(6, Arbitraries.of(60, 75, 90, 120)),
                    net.jqwik.api.Tuple.of(1, Arbitraries.integers().between(5, 240))))
            .ofMinSize(1)
            .ofMaxSize(6);
    Arbitrary<List<DayOfWeek>> climbing =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(2, Arbitraries.just(List.<DayOfWeek>of())),
            net.jqwik.api.Tuple.of(
                2,
                Arbitraries.of(DayOfWeek.class).list().ofMinSize(1).ofMaxSize(2).uniqueElements()));
    Arbitrary<List<Athlete.Absence>> away =
        Combinators.combine(
                Arbitraries.integers().between(0, 50), Arbitraries.of(0, 1, 3, 6, 8, 13, 14, 20))
            .as(
                (start, days) ->
                    new Athlete.Absence(
                        from.plusDays(start), from.plusDays(start + days), Optional.empty()))
            .list()
            .ofMaxSize(2);
    Arbitrary<Double> step = Arbitraries.of(0.5, 1.0, 1.25, 2.5, 5.0, 0.45359237);
    Arbitrary<Integer> limit = Arbitraries.of(0, 20, 40, 60, 60, 100);
    return Combinators.combine(available, climbing, away, bodies(), step, step, limit, limit)
        .as(
            (days, hard, absences, body, add, assist, most, least) -> {
              Athlete.Builder built =
                  Athlete.named("ylva")
                      .born(LocalDate.of(1990, 2, 28))
                      .bodyMass(Load.ofKilograms(body.kilograms() + 0.5))
                      .trained(80)
                      .ability(Skarvdal.ylva().build().ability())
                      .hand(body.left())
                      .hand(Side.RIGHT, body.right())
                      .edge(Length.ofMillimetres(20))
                      .edge(Length.ofMillimetres(18))
                      .edge(Length.ofMillimetres(16))
                      .added(Load.ofKilograms(add), Load.ofKilograms(most))
                      .assist(Load.ofKilograms(assist), Load.ofKilograms(least));
              body.sex().ifPresent(built::sex);
              days.forEach((d, minutes) -> built.available(d, Duration.ofMinutes(minutes)));
              hard.forEach(
                  d ->
                      built.climbing(
                          new Athlete.ClimbingDay(d, true, "hard", Duration.ofHours(2))));
              absences.forEach(built::away);
              return built.build();
            });
  }

  /** Of an athlete: mass, sex and hands, which are alike more often than not. */
  private record Body(int kilograms, Optional<Sex> sex, Hand left, Hand right) {}

  private static Arbitrary<Body> bodies() {
    Arbitrary<Hand> hand =
        Arbitraries.integers()
            .between(160, 212)
            .map(length -> Hand.ofLength(Length.ofMillimetres(length)));
    Arbitrary<Optional<Sex>> sex = Arbitraries.of(Sex.class).optional();
    Arbitrary<Double> shorter = Arbitraries.of(0.0, 0.0, 0.0, 2.0, 5.0);
    Arbitrary<Finger> finger = Arbitraries.of(Finger.class);
    return Combinators.combine(Arbitraries.integers().between(35, 110), sex, hand, finger, shorter)
        .as(
            (kilograms, which, left, unlike, by) -> {
              double bone = HandShape.of(left).bone(unlike, Segment.PROXIMAL).millimetres() - by;
              Hand right =
                  by == 0
                      ? left
                      : left.withBone(unlike, Segment.PROXIMAL, Length.ofMillimetres(bone));
              return new Body(kilograms, which, left, right);
            });
  }

  private static Arbitrary<Log> logs(LocalDate from) {
    return Arbitraries.integers()
        .between(500, 1600)
        .map(
            hectograms ->
                Skarvdal.log(
                    Skarvdal.test(Skarvdal.HALF_CRIMP, from.minusDays(9), hectograms / 10.0),
                    Skarvdal.test(Skarvdal.DRAG, from.minusDays(2), hectograms / 12.0)));
  }

  private static Arbitrary<Plan> plans(LocalDate from) {
    Arbitrary<Block> block =
        Combinators.combine(
                Arbitraries.integers().between(1, 6),
                exercises().list().ofMinSize(1).ofMaxSize(2),
                Arbitraries.of(1, 1, 2, 2, 3, 4),
                Arbitraries.of(24, 48, 72, 96),
                advances(),
                Arbitraries.of(0, 1, 2, 3, 4),
                Arbitraries.of(true, false))
            .as(
                (weeks, exercises, perWeek, gap, advance, easedWeek, introduced) -> {
                  Block.Builder built =
                      Block.named("base", weeks)
                          .session(
                              SessionPlan.of(
                                      "strength", perWeek, exercises.toArray(new Exercise[0]))
                                  .atLeastApart(Duration.ofHours(gap)));
                  advance.ifPresent(built::advance);
                  if (easedWeek > 0 && easedWeek <= weeks) {
                    built.ease(easedWeek, 0.6);
                  }
                  if (introduced) {
                    built.introduce(Skarvdal.DRAG, 0.4, 3);
                  }
                  return built.build();
                });
    return Combinators.combine(block.list().ofMinSize(1).ofMaxSize(3), Arbitraries.of(0, 2, 4))
        .as(
            (blocks, every) -> {
              Plan.Builder plan = Plan.named("season").athlete("ylva").from(from);
              List<Block> named = new ArrayList<>();
              for (int i = 0; i < blocks.size(); i++) {
                Block b = blocks.get(i);
                named.add(new Block("block-" + (i + 1), b.weeks(), b.content(), b.only()));
              }
              named.forEach(plan::block);
              if (every > 0) {
                plan.retest(
                    new Plan.Retest(
                        List.of(Setup.of(Skarvdal.HALF_CRIMP, Skarvdal.EDGE)),
                        Duration.ofSeconds(7),
                        every));
              }
              return plan.build();
            });
  }

  private static Arbitrary<Exercise> exercises() {
    Arbitrary<Level> level =
        Arbitraries.oneOf(
            Arbitraries.integers().between(30, 100).map(p -> new Level.OfMax(p / 100.0)),
            Arbitraries.of(0.4, 0.6, 0.799, 0.8, 0.84, 0.97, 1.0).map(Level.OfMax::new),
            Arbitraries.integers().between(0, 8).map(s -> new Level.Reserve(Duration.ofSeconds(s))),
            Arbitraries.integers().between(4, 10).map(e -> new Level.Effort(e)),
            Arbitraries.integers().between(30, 90).map(k -> new Level.Total(Load.ofKilograms(k))),
            Arbitraries.integers()
                .between(-20, 20)
                .map(k -> new Level.BodyMass(Load.ofKilograms(k))));
    Arbitrary<Protocol> protocol = Arbitraries.of(Skarvdal.HOLDS, Skarvdal.SERIES);
    Arbitrary<Grip> grip =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(
                20, Arbitraries.of(Skarvdal.HALF_CRIMP, Skarvdal.DRAG, Skarvdal.FRONT_THREE)),
            net.jqwik.api.Tuple.of(2, Arbitraries.just(PractisedGrips.BACK_THREE_MIDDLE_OPEN)),
            net.jqwik.api.Tuple.of(1, Arbitraries.just(PractisedGrips.STRAIGHT_FOUR)));
    Arbitrary<Hands> hands =
        Arbitraries.frequency(
            net.jqwik.api.Tuple.of(12, Hands.BOTH),
            net.jqwik.api.Tuple.of(1, Hands.LEFT),
            net.jqwik.api.Tuple.of(1, Hands.RIGHT));
    // One hand has no test of its own, so its load is written in kilograms.
    return Combinators.combine(protocol, grip, level, Arbitraries.integers().between(1, 6), hands)
        .as(
            (p, g, l, sets, h) ->
                new Exercise(
                    p,
                    Map.of(
                        "level",
                        new Argument.AtLevel(
                            h == Hands.BOTH ? l : new Level.Total(Load.ofKilograms(60))),
                        "sets",
                        new Argument.Count(sets)),
                    new Exercise.On(g),
                    Skarvdal.EDGE,
                    h,
                    false,
                    Optional.empty()));
  }

  private static Arbitrary<Optional<Advance>> advances() {
    return Arbitraries.of(
        Optional.empty(),
        Optional.of(Advance.weekly(new Advance.LoadByShare(0.02))),
        Optional.of(Advance.weekly(new Advance.LoadBy(Load.ofKilograms(1.25)))),
        Optional.of(Advance.every(2, new Advance.SetsTo(7, 1))),
        Optional.of(
            Advance.weekly(new Advance.HoldTo(Duration.ofSeconds(14), Duration.ofSeconds(1)))),
        Optional.of(
            Advance.every(
                2, new Advance.EdgeTo(Length.ofMillimetres(16), Length.ofMillimetres(2)))),
        Optional.of(Advance.weekly(new Advance.SetsTo(6, 1)).then(new Advance.LoadByShare(0.025))));
  }
}
