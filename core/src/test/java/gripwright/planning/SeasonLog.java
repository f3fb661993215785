package gripwright.planning;

import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.plan.TestTime;
import gripwright.planning.mix.Choice;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Draws the log of a trainee: tests before and during a plan, and what was trained and felt. */
final class SeasonLog {

  private final Draw draw;
  private final LocalDate from;
  private final boolean careful;
  private final Trainee trainee;
  private final List<LogEntry> entries = new ArrayList<>();

  SeasonLog(Draw draw, LocalDate from, boolean careful, Trainee trainee) {
    this.draw = draw;
    this.from = from;
    this.careful = careful;
    this.trainee = trainee;
  }

  Log write(Plan plan) {
    LocalDate tested = from.minusDays(draw.between(1, 60));
    for (Setup setup : setups(plan)) {
      if (careful || draw.chance(85)) {
        test(setup, tested, 1);
      }
    }
    moreTests(tested);
    Optional<LocalDate> retested = retested(plan);
    if (draw.chance(retested.isPresent() ? 70 : 40)) {
      trained(plan, retested.orElse(from).plusDays(2));
    }
    if (draw.chance(25)) {
      LocalDate day = from.plusDays(draw.between(-10, 40));
      double kilograms = trainee.athlete().bodyMass().kilograms() + draw.between(-2.0, 2.0, 0.5);
      entries.add(new LogEntry.BodyMass(day, Load.ofKilograms(kilograms)));
    }
    if (draw.chance(20)) {
      boolean hard = draw.chance(careful ? 0 : 60);
      entries.add(
          LogEntry.Climbed.builder(
                  from.plusDays(draw.between(-5, 30)),
                  hard,
                  hard ? "hard" : "easy",
                  Duration.ofMinutes(90))
              .effort(
                  draw.chance(50) ? OptionalDouble.of(draw.between(3, 9)) : OptionalDouble.empty())
              .pain(careful ? OptionalDouble.empty() : OptionalDouble.of(draw.between(0, 7)))
              .build());
    }
    if (draw.chance(25)) {
      pain();
    }
    return new Log("ylva", entries);
  }

  private static Set<Setup> setups(Plan plan) {
    Set<Setup> setups = new LinkedHashSet<>();
    for (Block block : plan.blocks()) {
      for (SessionPlan session : block.content().sessions()) {
        for (Exercise exercise : session.content().exercises()) {
          for (Grip grip : Choice.grips(exercise)) {
            setups.add(exercise.setup(grip).withEdge(Trainee.EDGE));
          }
        }
      }
    }
    return setups;
  }

  private void test(Setup setup, LocalDate day, double share) {
    double kilograms = trainee.tested(setup.grip()) * (setup.hands() == Hands.BOTH ? 1 : 0.55);
    entries.add(
        new LogEntry.Tested(
            new StrengthTest(
                day,
                setup,
                new StrengthTest.Held(
                    Duration.ofSeconds(7),
                    Load.ofKilograms(Math.round(kilograms * share * 2) / 2.0))),
            Optional.empty()));
  }

  private void moreTests(LocalDate tested) {
    Setup halfCrimp = Setup.of(gripwright.grip.StandardGrips.HALF_CRIMP, Trainee.EDGE);
    double best = trainee.tested(halfCrimp.grip());
    if (draw.chance(25)) {
      Load load = Load.ofKilograms(Math.round(best * 0.7));
      StrengthTest.Result result =
          new StrengthTest.ToFailure(load, Duration.ofSeconds(draw.between(25, 50)));
      entries.add(
          new LogEntry.Tested(
              new StrengthTest(tested.plusDays(1), halfCrimp, result), Optional.empty()));
    }
    if (draw.chance(10)) {
      List<Load> means = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        means.add(Load.ofKilograms(Math.round(best * (0.5 + 0.45 * Math.exp(-i / 4.0)))));
      }
      entries.add(
          new LogEntry.Tested(
              new StrengthTest(
                  tested,
                  halfCrimp,
                  new StrengthTest.Series(Duration.ofSeconds(7), Duration.ofSeconds(3), means)),
              Optional.empty()));
    }
    if (draw.chance(20)) {
      test(halfCrimp, from.plusDays(draw.between(3, 35)), draw.between(0.95, 1.1, 0.05));
    }
  }

  /** The first test of the plan, on any day of its week, however near to other hard work. */
  private Optional<LocalDate> retested(Plan plan) {
    for (PlannedTest retest : plan.retests()) {
      LocalDate day =
          from.plusWeeks(((TestTime.Every) retest.times().get(0)).weeks() - 1L)
              .plusDays(draw.between(0, 6));
      if (!day.isAfter(plan.to()) && draw.chance(60)) {
        test(retest.setups().get(0), day, draw.between(0.95, 1.1, 0.05));
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  /**
   * Two or three sessions a week of what the plan asks, not always in full.
   *
   * @param least the last day or a later one
   */
  private void trained(Plan plan, LocalDate least) {
    LocalDate day = from;
    LocalDate drawn = from.plusDays(draw.between(5, 40));
    LocalDate last = drawn.isBefore(least) ? least : drawn;
    SessionPlan session = plan.blocks().get(0).content().sessions().get(0);
    while (day.isBefore(last)) {
      if (draw.chance(15)) {
        entries.add(new LogEntry.Skipped(day, session.name(), Optional.empty()));
      } else {
        List<LogEntry.Done> done = new ArrayList<>();
        for (Exercise exercise : session.content().exercises()) {
          done.add(done(exercise));
        }
        entries.add(new LogEntry.Trained(day, session.name(), done, Optional.empty()));
      }
      day = day.plusDays(draw.between(2, 4));
    }
  }

  private LogEntry.Done done(Exercise exercise) {
    Grip grip = Choice.grips(exercise).get(0);
    return LogEntry.Done.builder(exercise.protocol().name(), exercise.setup(grip))
        .sets(draw.of(4, 4, 4, 3))
        .setsPlanned(4)
        .load(Load.ofKilograms(Math.round(trainee.tested(grip) * 0.6)))
        .effort(draw.of(6, 7, 8, 8, 9))
        .pain(careful ? draw.of(0, 0, 1, 3) : draw.of(0, 0, 2, 3, 6))
        .build();
  }

  private void pain() {
    boolean strong = draw.chance(careful ? 15 : 70);
    LocalDate day =
        from.plusDays(strong && careful ? -draw.between(14, 40) : draw.between(-15, 25));
    LogEntry.Pain.Kind kind =
        strong ? draw.of(LogEntry.Pain.Kind.values()) : LogEntry.Pain.Kind.DULL;
    entries.add(
        LogEntry.Pain.builder(
                day,
                draw.of(Finger.values()),
                strong && kind == LogEntry.Pain.Kind.DULL ? draw.between(5, 9) : draw.between(1, 5))
            .structure(
                draw.chance(60)
                    ? Optional.of(draw.of(Structure.A2, Structure.PIP))
                    : Optional.empty())
            .side(draw.chance(60) ? Optional.of(draw.of(Side.values())) : Optional.empty())
            .kind(kind)
            .build());
  }
}
