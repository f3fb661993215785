package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.OnlyAt;
import gripwright.language.syntax.OnlyOn;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.PlannedKind;
import gripwright.language.syntax.PlannedTime;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.TestPart;
import gripwright.language.syntax.WarmUp;
import gripwright.language.syntax.Word;
import gripwright.plan.PlannedTest;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.plan.TestTime;
import gripwright.quantity.Range;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Checks the tests of a plan. */
final class PlannedTestCheck {

  private static final int MOST_EXERCISES = (int) Range.EXERCISES.high();

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Known<Grip> grips;
  private final PlanPlaces places;

  private final ExerciseCheck exercises;

  PlannedTestCheck(PlanScope scope) {
    this.places = scope.places();
    this.diagnostics = scope.diagnostics();
    this.amounts = new Amounts(diagnostics);
    this.grips = scope.grips();
    this.exercises = new ExerciseCheck(scope);
  }

  /** Returns a test written as {@code retest}; empty if it has a mistake, which is reported. */
  Optional<PlannedTest> regular(PlanItem.RetestItem retest) {
    Optional<SetupCheck.Place> place = SetupCheck.check(diagnostics, retest.setup());
    Optional<Duration> hold = amounts.time(retest.hold(), Slot.HOLD);
    Optional<Integer> every = amounts.weeks(retest.every(), Slot.RETEST);
    List<Setup> setups = setups(retest.grips(), place);
    return diagnostics.sound() && hold.isPresent() && every.isPresent() && !setups.isEmpty()
        ? Optional.of(PlannedTest.every(setups, hold.get(), every.get()))
        : Optional.empty();
  }

  /**
   * Returns a test; empty if it has a mistake, which is reported.
   *
   * @param weeks number of weeks of the plan, if known
   */
  Optional<PlannedTest> check(PlanItem.TestItem test, Optional<Integer> weeks) {
    Optional<SetupCheck.Place> place = SetupCheck.check(diagnostics, test.setup());
    Optional<TestKind> kind = test.kind().accept(new Kinds());
    Times times = new Times(weeks);
    test.times().forEach(time -> time.accept(times));
    times.requireAfter();
    diagnostics.markInvalidIf(test.body().damaged());
    List<Setup> setups = setups(test.grips(), place);
    Parts parts = new Parts();
    test.body().parts().forEach(part -> part.accept(parts));
    if (!diagnostics.sound() || kind.isEmpty() || times.found.isEmpty() || setups.isEmpty()) {
      return Optional.empty();
    }
    PlannedTest.Builder builder = PlannedTest.of(setups, kind.get()).times(times.found);
    parts.changes.forEach(change -> change.accept(builder));
    return Optional.of(builder.build());
  }

  private List<Setup> setups(List<Word> names, Optional<SetupCheck.Place> place) {
    diagnostics.distinct(names, "grip");
    List<Setup> setups = new ArrayList<>();
    for (Word word : names) {
      Optional<Grip> grip = grips.find(diagnostics, word);
      if (grip.isPresent() && place.isPresent()) {
        setups.add(place.get().with(grip.get()));
      }
    }
    return setups;
  }

  /** Builds a kind of test. */
  private final class Kinds implements PlannedKind.Visitor<Optional<TestKind>> {
    @Override
    public Optional<TestKind> holdKind(PlannedKind.HoldKind kind) {
      return amounts.time(kind.time(), Slot.HOLD).map(TestKind.Hold::new);
    }

    @Override
    public Optional<TestKind> failureKind(PlannedKind.FailureKind kind) {
      Values values = new Values(diagnostics);
      return values
          .level(kind.level())
          .flatMap(
              level -> {
                if (level.byTime()) {
                  diagnostics.error(
                      kind.level(),
                      "type.mismatch",
                      "slot",
                      Terms.of("load-of-test"),
                      "expected",
                      Terms.of("share-or-load"),
                      "found",
                      Values.kind(kind.level()));
                  return Optional.empty();
                }
                return Optional.of(new TestKind.ToFailure(level));
              });
    }

    @Override
    public Optional<TestKind> seriesKind(PlannedKind.SeriesKind kind) {
      Optional<Integer> holds = amounts.count(kind.holds(), Slot.REPETITIONS);
      Optional<Duration> work = amounts.time(kind.work(), Slot.HOLD);
      Optional<Duration> rest = amounts.time(kind.rest(), Slot.REST);
      return holds.flatMap(
          number ->
              work.flatMap(time -> rest.map(pause -> new TestKind.Series(number, time, pause))));
    }
  }

  /** Collects the times of a test. */
  private final class Times implements PlannedTime.Visitor {
    private final Optional<Integer> weeks;
    private final List<TestTime> found = new ArrayList<>();
    private final List<PlannedTime.Later> early = new ArrayList<>();
    private final Once once = new Once(diagnostics);

    Times(Optional<Integer> weeks) {
      this.weeks = weeks;
    }

    @Override
    public void every(PlannedTime.Every time) {
      amounts
          .weeks(time.weeks(), Slot.RETEST)
          .filter(number -> once.first(time, "every " + number + " weeks"))
          .map(TestTime.Every::new)
          .ifPresent(found::add);
    }

    @Override
    public void inWeeks(PlannedTime.InWeeks time) {
      for (Amount written : time.weeks()) {
        Optional<Integer> week = amounts.count(written, Slot.WEEK);
        if (week.isPresent() && once.first(written, "test-week", week.get().toString())) {
          if (weeks.isPresent() && week.get() > weeks.get()) {
            diagnostics.error(written, "value.test-week", "week", week.get(), "weeks", weeks.get());
          } else {
            found.add(new TestTime.InWeek(week.get()));
          }
        }
      }
    }

    @Override
    public void beforeFirst(PlannedTime.BeforeFirst time) {
      if (once.first(time, "before the first week")) {
        found.add(new TestTime.Before());
      }
    }

    @Override
    public void afterLast(PlannedTime.AfterLast time) {
      if (once.first(time, "after the last week")) {
        found.add(new TestTime.After());
      }
    }

    @Override
    public void later(PlannedTime.Later time) {
      if (!found.contains(new TestTime.After())) {
        early.add(time);
      }
      amounts
          .weeks(time.weeks(), Slot.RETEST)
          .filter(number -> once.first(time, number + " weeks later"))
          .map(TestTime.Later::new)
          .ifPresent(found::add);
    }

    void requireAfter() {
      early.forEach(time -> diagnostics.error(time, "value.later"));
    }
  }

  /** Collects what is written about a test. */
  private final class Parts implements TestPart.Visitor {
    private final List<Consumer<PlannedTest.Builder>> changes = new ArrayList<>();
    private final Once once = new Once(diagnostics);
    private int lines;

    @Override
    public void note(Note part) {
      changes.add(test -> test.note(part.text().value()));
    }

    @Override
    public void warmUp(WarmUp part) {
      if (once.first(part, "warm-up")) {
        amounts
            .time(part.time(), Slot.WARM_UP)
            .ifPresent(
                time ->
                    changes.add(
                        test -> test.warmUp(time).warmUpText(AthleteCheck.note(part.text()))));
      }
    }

    @Override
    public void doItem(SessionPart.DoItem part) {
      lines++;
      if (part.warmUp() == null) {
        diagnostics.error(part.protocol(), "value.test-work", "protocol", part.protocol().text());
      }
      if (lines == MOST_EXERCISES + 1) {
        diagnostics.error(
            part,
            "value.too-many",
            "what",
            Terms.of("many-exercises"),
            "found",
            lines,
            "limit",
            MOST_EXERCISES);
      }
      exercises
          .check(part, Optional.empty())
          .filter(exercise -> exercise.warmUp() && lines <= MOST_EXERCISES)
          .ifPresent(exercise -> changes.add(test -> test.exercise(exercise)));
    }

    @Override
    public void attempts(TestPart.Attempts part) {
      once.first(part, "attempts");
      Optional<Integer> number = amounts.count(part.number(), Slot.ATTEMPTS);
      Optional<Duration> resting = amounts.time(part.resting(), Slot.REST);
      if (number.isPresent() && resting.isPresent()) {
        changes.add(test -> test.attempts(number.get(), resting.get()));
      }
    }

    @Override
    public void attemptsCount(TestPart.AttemptsCount part) {
      if (once.first(part, "counts")) {
        changes.add(test -> test.counts(part.best() ? TestCount.BEST : TestCount.MEAN));
      }
    }

    @Override
    public void rested(TestPart.Rested part) {
      if (once.first(part, "rested")) {
        amounts
            .time(part.time(), Slot.RESTED)
            .ifPresent(time -> changes.add(test -> test.rested(time)));
      }
    }

    @Override
    public void onlyOn(OnlyOn part) {
      once.first(part, "only on");
      Words words = new Words(diagnostics);
      for (Word day : part.days()) {
        Optional<DayOfWeek> weekday = words.weekday(day);
        weekday.ifPresent(found -> changes.add(test -> test.onlyOn(found)));
      }
    }

    @Override
    public void onlyAt(OnlyAt part) {
      once.first(part, "only at");
      places
          .read(List.of(part), diagnostics)
          .ifPresent(found -> changes.add(test -> found.forEach(test::onlyAt)));
    }
  }
}
