package gripwright.export.json;

import gripwright.change.PlanChange;
import gripwright.grip.Setup;
import gripwright.history.ExerciseMatch;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.LogChange;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Writes what the log shows about a plan as JSON. */
final class LogJson {

  private static final int KILOGRAMS = 4;
  private static final int MILLIMETRES = 2;
  private static final int SCORE = 2;

  private LogJson() {}

  static void happened(JsonText json, Happened happened, LogEntry.Trained line) {
    json.field(
        "kind",
        switch (happened.kind()) {
          case DONE -> "done";
          case IN_PART -> "in-part";
          case UNPLANNED -> "unplanned";
        });
    json.field("planned", happened.planned().map(p -> p.date().toString()).orElse(null));
    json.field("note", line.note().orElse(null));
    json.list("exercises", matches(happened, line), m -> json.line(() -> match(json, m)));
  }

  private static List<ExerciseMatch> matches(Happened happened, LogEntry.Trained line) {
    return happened
        .planned()
        .map(
            planned ->
                ExerciseMatch.of(planned, line).stream()
                    .filter(match -> !match.isUnloggedWarmUp())
                    .toList())
        .orElseGet(
            () ->
                line.done().stream()
                    .map(done -> new ExerciseMatch(Optional.empty(), Optional.of(done)))
                    .toList());
  }

  private static void match(JsonText json, ExerciseMatch match) {
    Optional<Setup> setup =
        match.done().map(Done::setup).or(() -> match.planned().map(PlannedExercise::setup));
    json.field(
        "protocol",
        match
            .done()
            .map(Done::protocol)
            .or(() -> match.planned().map(PlannedExercise::protocol))
            .orElse(null));
    json.field("grip", setup.map(s -> s.grip().name()).orElse(null));
    json.field(
        "edgeMm",
        setup.map(s -> OptionalDouble.of(s.edge().millimetres())).orElse(OptionalDouble.empty()),
        MILLIMETRES);
    json.field("hands", setup.map(s -> s.hands().word()).orElse(null));
    json.field("setsAsked", number(match.setsPlanned()), 0);
    json.field("setsDone", number(match.setsDone()), 0);
    json.field(
        "loadAskedKg", kilograms(match.planned().map(PlannedExercise::totalLoad)), KILOGRAMS);
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

  static void change(JsonText json, LogChange changed) {
    PlanChange change = changed.change();
    ChangeJson.About about = ChangeJson.about(change, json.wording());
    PlannedExercise exercise = about.exercise();
    DatedSession session = about.session();
    json.field("date", change.date().toString());
    json.field("kind", ChangeJson.kind(change));
    json.field("session", session == null ? null : session.name());
    json.field("protocol", exercise == null ? null : exercise.protocol());
    json.field("grip", exercise == null ? null : exercise.setup().grip().name());
    json.field("measure", about.measure());
    json.field("before", about.before());
    json.field("after", about.after());
    json.list("because", changed.because(), c -> json.text(json.wording().say(c)));
  }
}
