package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.athlete.Slot;
import gripwright.hand.Side;
import gripwright.history.LogTimeline;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Plan;
import gripwright.plan.PlannedTest;
import gripwright.plan.SessionPlan;
import gripwright.quantity.Load;
import gripwright.season.CompiledPlan;
import gripwright.season.Planner;
import gripwright.strength.StrengthTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * An athlete, a log and a plan that belong together.
 *
 * @param athlete for whom
 * @param log what is known
 * @param plan what the coach wrote
 */
public record GeneratedSeason(Athlete athlete, Log log, Plan plan) {

  /** Compiles the plan and checks it against the built-in rules. */
  public CompiledPlan compile() {
    return Planner.compile(plan, athlete, log, List.of());
  }

  /** Returns the season with every date moved by whole weeks. */
  GeneratedSeason later(int weeks) {
    Function<LocalDate, LocalDate> moved = day -> day.plusWeeks(weeks);
    Athlete shifted =
        athlete.toBuilder()
            .born(moved.apply(athlete.born()))
            .trained(later(athlete.trained(), moved))
            .familiar(
                athlete.familiar().stream()
                    .map(f -> new Athlete.Familiarity(f.grip(), later(f.experience(), moved)))
                    .toList())
            .injuries(athlete.injuries().stream().map(i -> later(i, moved)).toList())
            .away(
                athlete.away().stream()
                    .map(
                        a ->
                            new Athlete.Absence(
                                moved.apply(a.from()), moved.apply(a.to()), a.note()))
                    .toList())
            .build();
    Log log2 = new Log(log.athlete(), log.entries().stream().map(e -> later(e, moved)).toList());
    return new GeneratedSeason(
        shifted,
        log2,
        planned(
            moved.apply(plan.from()),
            plan.towards().map(g -> new Plan.Goal(moved.apply(g.date()), g.title())),
            plan.blocks(),
            plan.retests()));
  }

  private static Athlete.Experience later(
      Athlete.Experience experience, Function<LocalDate, LocalDate> moved) {
    return new Athlete.Experience(experience.months(), experience.asOf().map(moved));
  }

  private static Injury later(Injury injury, Function<LocalDate, LocalDate> moved) {
    return injury.toBuilder()
        .from(moved.apply(injury.from()))
        .cleared(injury.cleared().map(moved))
        .build();
  }

  private static LogEntry later(LogEntry entry, Function<LocalDate, LocalDate> moved) {
    LocalDate day = moved.apply(entry.date());
    if (entry instanceof LogEntry.Tested tested) {
      return new LogEntry.Tested(
          new StrengthTest(day, tested.test().setup(), tested.test().result()), tested.note());
    }
    if (entry instanceof LogEntry.Trained trained) {
      return new LogEntry.Trained(day, trained.session(), trained.done(), trained.note());
    }
    if (entry instanceof LogEntry.Climbed climbed) {
      return climbed.toBuilder().date(day).build();
    }
    if (entry instanceof LogEntry.Skipped skipped) {
      return new LogEntry.Skipped(day, skipped.session(), skipped.note());
    }
    if (entry instanceof LogEntry.Pain pain) {
      return pain.toBuilder().date(day).build();
    }
    return new LogEntry.BodyMass(day, ((LogEntry.BodyMass) entry).mass());
  }

  /** Returns the season with every tested load multiplied. */
  GeneratedSeason stronger(double factor) {
    List<LogEntry> entries = new ArrayList<>();
    for (LogEntry entry : log.entries()) {
      entries.add(
          entry instanceof LogEntry.Tested tested
              ? new LogEntry.Tested(stronger(tested.test(), factor), tested.note())
              : entry);
    }
    return new GeneratedSeason(athlete, new Log(log.athlete(), entries), plan);
  }

  private static StrengthTest stronger(StrengthTest test, double factor) {
    StrengthTest.Result result = test.result();
    StrengthTest.Result more =
        result instanceof StrengthTest.Held held
            ? new StrengthTest.Held(held.hold(), held.load().times(factor))
            : result instanceof StrengthTest.ToFailure failure
                ? new StrengthTest.ToFailure(failure.load().times(factor), failure.lasting())
                : stronger((StrengthTest.Series) result, factor);
    return new StrengthTest(test.date(), test.setup(), more);
  }

  private static StrengthTest.Series stronger(StrengthTest.Series series, double factor) {
    List<Load> means = series.means().stream().map(m -> m.times(factor)).toList();
    return new StrengthTest.Series(series.work(), series.rest(), means);
  }

  /** Returns the season of an athlete who wrote down no session of the plan. */
  public GeneratedSeason withoutSessionsLogged() {
    List<LogEntry> entries =
        log.entries().stream()
            .filter(e -> !(e instanceof LogEntry.Trained) && !(e instanceof LogEntry.Skipped))
            .toList();
    return new GeneratedSeason(athlete, new Log(log.athlete(), entries), plan);
  }

  /** Returns the season as it is planned when it begins: the log covers none of it. */
  GeneratedSeason ahead() {
    return new GeneratedSeason(
        athlete, LogTimeline.of(plan, athlete, log).withoutPlanDays().log(), plan);
  }

  /** Returns the season of an athlete whose left hand is this one's right, and the other way. */
  public GeneratedSeason mirrored() {
    Athlete mirror = athlete(athlete.injuries(), athlete.available());
    return new GeneratedSeason(
        mirror.toBuilder()
            .hand(Side.LEFT, mirror.hand(Side.RIGHT))
            .hand(Side.RIGHT, mirror.hand(Side.LEFT))
            .build(),
        log,
        plan);
  }

  /** Returns the season of an athlete with one injury more. */
  GeneratedSeason injured(Injury injury) {
    List<Injury> more = new ArrayList<>(athlete.injuries());
    more.add(injury);
    return new GeneratedSeason(athlete(more, athlete.available()), log, plan);
  }

  /** Returns the season of an athlete with other time to train. */
  GeneratedSeason available(List<Slot> time) {
    return new GeneratedSeason(athlete(athlete.injuries(), time), log, plan);
  }

  private Athlete athlete(List<Injury> injuries, List<Slot> available) {
    return athlete.toBuilder().injuries(injuries).available(available).build();
  }

  private Plan planned(
      LocalDate from, Optional<Plan.Goal> towards, List<Block> blocks, List<PlannedTest> retests) {
    Plan.Builder changed = plan.toBuilder().from(from).blocks(blocks).retests(retests);
    towards.ifPresent(changed::towards);
    return changed.build();
  }

  /** Returns seasons with one thing less: what fails is reported with as little as fails. */
  Stream<GeneratedSeason> simpler() {
    List<GeneratedSeason> less = new ArrayList<>();
    without(plan.blocks()).filter(l -> !l.isEmpty()).forEach(l -> less.add(with(l)));
    for (int i = 0; i < plan.blocks().size(); i++) {
      int place = i;
      simpler(plan.blocks().get(i))
          .forEach(
              block -> {
                List<Block> blocks = new ArrayList<>(plan.blocks());
                blocks.set(place, block);
                less.add(with(blocks));
              });
    }
    without(plan.retests())
        .forEach(
            l ->
                less.add(
                    new GeneratedSeason(
                        athlete, log, planned(plan.from(), plan.towards(), plan.blocks(), l))));
    without(log.entries())
        .forEach(l -> less.add(new GeneratedSeason(athlete, new Log(log.athlete(), l), plan)));
    without(athlete.injuries())
        .forEach(l -> less.add(new GeneratedSeason(athlete(l, athlete.available()), log, plan)));
    return less.stream();
  }

  /** Returns how much there is in it. */
  int size() {
    int size = plan.retests().size() + log.entries().size() + athlete.injuries().size();
    for (Block block : plan.blocks()) {
      Block.Content content = block.content();
      size += block.weeks() + content.advances().size() + content.eases().size();
      size += content.introductions().size();
      for (SessionPlan session : content.sessions()) {
        size += session.content().exercises().size() + session.perWeek();
      }
    }
    return size;
  }

  private GeneratedSeason with(List<Block> blocks) {
    return new GeneratedSeason(
        athlete, log, planned(plan.from(), plan.towards(), blocks, plan.retests()));
  }

  private static Stream<Block> simpler(Block block) {
    Block.Content all = block.content();
    List<Block> less = new ArrayList<>();
    if (block.weeks() > 1) {
      int weeks = block.weeks() - 1;
      less.add(
          Block.named(block.name(), weeks)
              .content(
                  new Block.Content(
                      all.sessions(),
                      all.advances(),
                      all.eases().stream().filter(e -> e.week() <= weeks).toList(),
                      all.introductions()))
              .build());
    }
    List<Supplier<Block.Content>> contents = new ArrayList<>();
    without(all.sessions())
        .filter(l -> !l.isEmpty())
        .forEach(
            l ->
                contents.add(
                    () -> new Block.Content(l, all.advances(), all.eases(), all.introductions())));
    without(all.advances())
        .forEach(
            l ->
                contents.add(
                    () -> new Block.Content(all.sessions(), l, all.eases(), all.introductions())));
    without(all.eases())
        .forEach(
            l ->
                contents.add(
                    () ->
                        new Block.Content(all.sessions(), all.advances(), l, all.introductions())));
    without(all.introductions())
        .forEach(
            l ->
                contents.add(
                    () -> new Block.Content(all.sessions(), all.advances(), all.eases(), l)));
    for (Supplier<Block.Content> content : contents) {
      try {
        less.add(block.toBuilder().content(content.get()).only(Map.of()).build());
      } catch (IllegalArgumentException cannotBe) {
        continue; // such as progress of a grip that is no longer trained
      }
    }
    return less.stream();
  }

  private static <T> Stream<List<T>> without(List<T> all) {
    List<List<T>> shorter = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      List<T> some = new ArrayList<>(all);
      some.remove(i);
      shorter.add(some);
    }
    return shorter.stream();
  }
}
