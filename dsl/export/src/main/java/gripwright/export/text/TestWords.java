package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.schedule.DatedRetest;
import java.time.Duration;

/** Describes what is done in a planned test. */
final class TestWords {

  private static final double NANOS_A_MINUTE = 6e10;

  private final Words words;

  TestWords(Words words) {
    this.words = words;
  }

  /** Returns what is done on each setup, such as {@code hold 7 s}. */
  String what(DatedRetest test) {
    String what = kind(test.kind());
    if (test.attempts().number() > 1) {
      what =
          words.say(
              "season.test-attempts",
              "what",
              what,
              "attempts",
              test.attempts().number(),
              "rest",
              ExerciseTable.time(test.attempts().resting()));
    }
    if (test.attempts().counts().isPresent()) {
      boolean best = test.attempts().counts().get() == TestCount.BEST;
      what = words.say(best ? "season.test-best" : "season.test-mean", "what", what);
    }
    return what;
  }

  /** Returns what is tested, with the load of a hold to failure. */
  String setups(DatedRetest test) {
    return words.commas(
        test.setups().stream()
            .map(
                setup ->
                    test.load(setup)
                        .map(
                            load ->
                                words.say(
                                    "season.test-load", "setup", words.setup(setup), "load", load))
                        .orElseGet(() -> words.setup(setup)))
            .toList());
  }

  /** Returns the time of the warm-up; nothing if it is that of the plan. */
  static String minutes(DatedRetest.WarmUp warmUp) {
    return warmUp.minutes().isPresent()
        ? ExerciseTable.time(
            Duration.ofNanos(Math.round(warmUp.minutes().getAsDouble() * NANOS_A_MINUTE)))
        : "";
  }

  /**
   * Adds what prepares for the tests, and the coach's notes.
   *
   * @param table the table of its exercises
   */
  void addBody(Page page, String indent, DatedRetest test, ExerciseTable table) {
    DatedRetest.WarmUp warmUp = test.warmUp();
    if (warmUp.minutes().isPresent()) {
      String time = minutes(warmUp);
      page.wrapped(
          indent,
          warmUp
              .text()
              .map(
                  text ->
                      words.say("season.test-warm-up-text", "time", time, "text", Page.clean(text)))
              .orElseGet(() -> words.say("season.test-warm-up", "time", time)));
    }
    table.addAll(page, test.exercises());
    test.notes()
        .forEach(note -> page.wrapped(indent, words.say("season.note", "note", Page.clean(note))));
  }

  private String kind(TestKind kind) {
    return kind.accept(
        new TestKind.Visitor<>() {
          @Override
          public String hold(TestKind.Hold hold) {
            return words.say("season.test-hold", "time", ExerciseTable.time(hold.time()));
          }

          @Override
          public String toFailure(TestKind.ToFailure failure) {
            return words.say("season.test-failure", "level", words.of(failure.level()));
          }

          @Override
          public String series(TestKind.Series series) {
            return words.say(
                "season.test-series",
                "holds",
                series.holds(),
                "time",
                ExerciseTable.time(series.work()),
                "rest",
                ExerciseTable.time(series.rest()));
          }
        });
  }
}
