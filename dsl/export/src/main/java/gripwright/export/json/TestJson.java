package gripwright.export.json;

import gripwright.plan.TestCount;
import gripwright.plan.TestKind;
import gripwright.schedule.DatedRetest;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes what a planned test says beyond the time of one hold. */
final class TestJson {

  private static final int SECONDS = 3;

  private TestJson() {}

  static void kind(JsonText json, DatedRetest test) {
    Kind kind = test.kind().accept(new Kinds(json));
    json.field("kind", kind.word());
    json.field("level", kind.level().orElse(null));
    json.field("holds", kind.holds(), 0);
    json.field("restSeconds", kind.restSeconds(), SECONDS);
    json.field("attempts", test.attempts().number());
    json.field("attemptRestSeconds", seconds(test.attempts().resting()), SECONDS);
    json.field("counts", test.attempts().counts().map(TestCount::word).orElse(null));
    json.list("notes", test.notes(), json::text);
  }

  /** Writes the warm-up of a test, if it has its own. */
  static void warmUp(JsonText json, DatedRetest.WarmUp warmUp) {
    if (warmUp.minutes().isPresent()) {
      json.field("warmUpMinutes", warmUp.minutes(), SECONDS);
    }
    warmUp.text().ifPresent(text -> json.field("warmUpText", text));
  }

  private static double seconds(Duration time) {
    return time.toNanos() / 1e9;
  }

  /** The parts of a kind; those that it doesn't have are empty. */
  private record Kind(
      String word, Optional<String> level, OptionalDouble holds, OptionalDouble restSeconds) {}

  private record Kinds(JsonText json) implements TestKind.Visitor<Kind> {
    @Override
    public Kind hold(TestKind.Hold hold) {
      return new Kind("hold", Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    @Override
    public Kind toFailure(TestKind.ToFailure failure) {
      return new Kind(
          "to-failure",
          Optional.of(json.wording().say(failure.level())),
          OptionalDouble.empty(),
          OptionalDouble.empty());
    }

    @Override
    public Kind series(TestKind.Series series) {
      return new Kind(
          "series",
          Optional.empty(),
          OptionalDouble.of(series.holds()),
          OptionalDouble.of(seconds(series.rest())));
    }
  }
}
