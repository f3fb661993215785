package gripwright.export.json;

import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.schedule.DatedRetest;
import java.time.Duration;

/** Writes what a planned test says beyond the time of one hold. */
final class TestJson {

  private static final int SECONDS = 3;

  private TestJson() {}

  static void kind(JsonText json, DatedRetest test) {
    test.kind()
        .accept(
            new TestKind.Visitor<Void>() {
              @Override
              public Void hold(TestKind.Hold hold) {
                json.field("kind", "hold");
                return null;
              }

              @Override
              public Void toFailure(TestKind.ToFailure failure) {
                json.field("kind", "to-failure");
                json.field("level", json.wording().say(failure.level()));
                return null;
              }

              @Override
              public Void series(TestKind.Series series) {
                json.field("kind", "series");
                json.field("holds", series.holds());
                json.field("restSeconds", seconds(series.rest()), SECONDS);
                return null;
              }
            });
    json.field("attempts", test.attempts().number());
    json.field("attemptRestSeconds", seconds(test.attempts().resting()), SECONDS);
    json.field("counts", test.attempts().counts().map(TestCount::word).orElse(null));
    json.list("notes", test.notes(), json::text);
  }

  private static double seconds(Duration time) {
    return time.toNanos() / 1e9;
  }
}
