package gripwright.language.write.internal;

import gripwright.plan.PlannedTest;
import gripwright.plan.TestKind;
import gripwright.plan.TestTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Writes planned tests. */
final class TestLines {

  private final Lines out;

  TestLines(Lines out) {
    this.out = out;
  }

  /**
   * Writes a test.
   *
   * @param what its grips, edge and hands, as written
   */
  void write(PlannedTest test, String what) {
    String heading = "test " + what + " " + kind(test.kind()) + " " + times(test);
    List<String> parts = parts(test);
    if (parts.isEmpty()) {
      out.add(heading);
    } else {
      out.add(heading + " {");
      parts.forEach(out::add);
      out.add("}");
    }
  }

  private static List<String> parts(PlannedTest test) {
    List<String> parts = new ArrayList<>();
    test.warmUp()
        .ifPresent(
            time ->
                parts.add(
                    "warm-up " + Written.time(time) + Written.quotedIfPresent(test.warmUpText())));
    if (test.attempts() > 1 || !test.resting().isZero()) {
      parts.add("attempts " + test.attempts() + " resting " + Written.time(test.resting()));
    }
    test.counts().ifPresent(counts -> parts.add(counts.word() + " counts"));
    if (!test.rested().equals(PlannedTest.STANDARD_RESTED)) {
      parts.add("rested " + Written.time(test.rested()));
    }
    if (!test.onlyOn().isEmpty()) {
      parts.add(
          "only on "
              + test.onlyOn().stream()
                  .sorted()
                  .map(Written::weekday)
                  .collect(Collectors.joining(", ")));
    }
    if (!test.onlyAt().isEmpty()) {
      parts.add("only at " + String.join(", ", test.onlyAt()));
    }
    test.exercises().forEach(exercise -> parts.add(BlockLines.exercise(exercise)));
    test.notes().forEach(note -> parts.add("note " + Written.quoted(note)));
    return parts;
  }

  private static String kind(TestKind kind) {
    return kind.accept(
        new TestKind.Visitor<>() {
          @Override
          public String hold(TestKind.Hold hold) {
            return "hold " + Written.seconds(hold.time());
          }

          @Override
          public String toFailure(TestKind.ToFailure failure) {
            return "to-failure at " + CatalogueLines.level(failure.level());
          }

          @Override
          public String series(TestKind.Series series) {
            return "series "
                + series.holds()
                + " x "
                + Written.seconds(series.work())
                + " / "
                + Written.seconds(series.rest());
          }
        });
  }

  /** Returns the times of a test: `later` after those that it follows, weeks last. */
  static String times(PlannedTest test) {
    List<String> written = new ArrayList<>();
    for (TestTime time : test.times()) {
      written.add(time.accept(new Times()));
    }
    return String.join(", ", written);
  }

  private static final class Times implements TestTime.Visitor<String> {
    @Override
    public String every(TestTime.Every time) {
      return "every " + Written.weeks(time.weeks());
    }

    @Override
    public String inWeek(TestTime.InWeek time) {
      return "in week " + time.week();
    }

    @Override
    public String before(TestTime.Before time) {
      return "before the first week";
    }

    @Override
    public String after(TestTime.After time) {
      return "after the last week";
    }

    @Override
    public String later(TestTime.Later time) {
      return Written.weeks(time.weeks()) + " later";
    }
  }
}
