package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.schedule.DatedRetest;

/** Describes what is done in a planned test. */
final class TestWords {

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
