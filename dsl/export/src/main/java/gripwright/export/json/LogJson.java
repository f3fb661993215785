package gripwright.export.json;

import gripwright.grip.Setup;
import gripwright.log.LogEntry.Done;
import gripwright.plan.ExerciseMatch;
import gripwright.plan.Happened;
import gripwright.plan.LogChange;
import gripwright.plan.MissedSession;
import gripwright.plan.PlanChange;
import gripwright.plan.PlannedExercise;
import gripwright.quantity.Load;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What a log said of a plan, as JSON. */
final class LogJson {

  private static final int KILOGRAMS = 4;
  private static final int MILLIMETRES = 2;
  private static final int SCORE = 2;
  private static final Pattern CAPITAL = Pattern.compile("(?<=[a-z])(?=[A-Z])");

  private LogJson() {}

  static void happened(JsonText json, Happened happened) {
    json.field(
        "kind",
        switch (happened.kind()) {
          case DONE -> "done";
          case IN_PART -> "in-part";
          case UNPLANNED -> "unplanned";
        });
    json.field("planned", happened.planned().map(p -> p.date().toString()).orElse(null));
    json.field("note", happened.logged().note().orElse(null));
    json.list("exercises", matches(happened), m -> json.line(() -> match(json, m)));
  }

  private static List<ExerciseMatch> matches(Happened happened) {
    return happened
        .planned()
        .map(planned -> ExerciseMatch.of(planned, happened.logged()))
        .orElseGet(
            () ->
                happened.logged().done().stream()
                    .map(done -> new ExerciseMatch(Optional.empty(), Optional.of(done)))
                    .toList());
  }

  private static void match(JsonText json, ExerciseMatch match) {
    Optional<Setup> setup =
        match.done().map(Done::setup).or(() -> match.asked().map(PlannedExercise::setup));
    json.field(
        "protocol",
        match
            .done()
            .map(Done::protocol)
            .or(() -> match.asked().map(PlannedExercise::protocol))
            .orElse(null));
    json.field("grip", setup.map(s -> s.grip().name()).orElse(null));
    json.field(
        "edgeMm",
        setup.map(s -> OptionalDouble.of(s.edge().millimetres())).orElse(OptionalDouble.empty()),
        MILLIMETRES);
    json.field("hands", setup.map(s -> s.hands().word()).orElse(null));
    json.field("setsAsked", number(match.setsAsked()), 0);
    json.field("setsDone", number(match.setsDone()), 0);
    json.field("loadAskedKg", kilograms(match.asked().map(PlannedExercise::totalLoad)), KILOGRAMS);
    json.field("loadDoneKg", kilograms(match.done().flatMap(Done::load)), KILOGRAMS);
    json.field("effort", match.done().map(Done::effort).orElse(OptionalDouble.empty()), SCORE);
    json.field("pain", match.done().map(Done::pain).orElse(OptionalDouble.empty()), SCORE);
  }

  private static OptionalDouble number(OptionalInt count) {
    return count.isPresent() ? OptionalDouble.of(count.getAsInt()) : OptionalDouble.empty();
  }

  private static OptionalDouble kilograms(Optional<Load> load) {
    return load.map(l -> OptionalDouble.of(l.kilograms())).orElse(OptionalDouble.empty());
  }

  static void missed(JsonText json, MissedSession missed) {
    json.field("date", missed.planned().date().toString());
    json.field("week", missed.planned().week());
    json.field("block", missed.planned().block());
    json.field("session", missed.planned().name());
    json.field("kind", missed.kind() == MissedSession.Kind.SKIPPED ? "skipped" : "not-logged");
    json.field("note", missed.note().orElse(null));
  }

  /**
   * What a change is about.
   *
   * @param session name of the session; null for tests
   * @param exercise the exercise; null where it is about more
   * @param measure what changed of it; null where it is about more
   * @param before how it was; null where it was not
   * @param after how it is; null where it is gone
   */
  private record About(
      @Nullable String session,
      @Nullable PlannedExercise exercise,
      PlanChange.@Nullable Measure measure,
      @Nullable String before,
      @Nullable String after) {}

  static void change(JsonText json, LogChange changed) {
    PlanChange change = changed.change();
    About about = about(change);
    PlannedExercise exercise = about.exercise();
    json.field("date", change.date().toString());
    json.field("kind", kebab(change.getClass().getSimpleName()));
    json.field("session", about.session());
    json.field("protocol", exercise == null ? null : exercise.protocol());
    json.field("grip", exercise == null ? null : exercise.setup().grip().name());
    PlanChange.Measure measure = about.measure();
    json.field(
        "measure",
        measure == null ? null : measure.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    json.field("before", about.before());
    json.field("after", about.after());
    json.list("because", changed.because(), json::text);
  }

  private static String kebab(String name) {
    return CAPITAL.matcher(name).replaceAll("-").toLowerCase(Locale.ROOT);
  }

  private static About about(PlanChange change) {
    if (change instanceof PlanChange.ExerciseChanged c) {
      return new About(
          c.session().name(),
          c.after(),
          c.measure(),
          value(c.before(), c.measure()),
          value(c.after(), c.measure()));
    }
    if (change instanceof PlanChange.ExerciseAdded c) {
      return new About(c.session().name(), c.exercise(), null, null, null);
    }
    if (change instanceof PlanChange.ExerciseDropped c) {
      return new About(c.session().name(), c.exercise(), null, null, null);
    }
    if (change instanceof PlanChange.SessionAdded c) {
      return new About(c.session().name(), null, null, null, c.session().date().toString());
    }
    if (change instanceof PlanChange.SessionDropped c) {
      return new About(c.session().name(), null, null, c.session().date().toString(), null);
    }
    if (change instanceof PlanChange.SessionMoved c) {
      return new About(
          c.after().name(), null, null, c.before().date().toString(), c.after().date().toString());
    }
    if (change instanceof PlanChange.SessionTimed c) {
      return new About(
          c.after().name(),
          null,
          null,
          c.before().minutes() + " min",
          c.after().minutes() + " min");
    }
    if (change instanceof PlanChange.RetestChanged c) {
      return new About(
          null,
          null,
          null,
          c.before().isEmpty() ? null : c.before().get(0).date().toString(),
          c.after().isEmpty() ? null : c.after().get(0).date().toString());
    }
    return new About(null, null, null, null, null);
  }

  private static @Nullable String value(PlannedExercise exercise, PlanChange.Measure measure) {
    return switch (measure) {
      case PROTOCOL -> exercise.protocol();
      case GRIP -> exercise.setup().grip().name();
      case EDGE -> exercise.setup().edge().toString();
      case SETS -> Integer.toString(exercise.scheme().sets());
      case REPETITIONS -> Integer.toString(exercise.scheme().repetitionsPerSet());
      case HOLD -> exercise.scheme().holds().get(0).seconds() + " s";
      case LOAD -> exercise.totalLoad().toString();
      default -> null;
    };
  }
}
