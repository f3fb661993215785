package gripwright.export.json;

import gripwright.change.PlanChange;
import gripwright.diff.EditionDiff;
import gripwright.diff.FactChange;
import gripwright.diff.PlanDiff;
import gripwright.diff.Redefinition;
import gripwright.export.words.Words;
import gripwright.finding.ReportedFinding;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes the changes between two editions as JSON: one flat list of changes. */
final class DiffJson {

  private DiffJson() {}

  /** One element of the list; null where a field does not apply. */
  private record Change(
      String kind,
      @Nullable String plan,
      @Nullable String athlete,
      @Nullable String date,
      @Nullable DatedSession session,
      @Nullable PlannedExercise exercise,
      @Nullable String name,
      @Nullable String measure,
      @Nullable String before,
      @Nullable String after) {

    static Change of(
        String kind, @Nullable String name, @Nullable String before, @Nullable String after) {
      return new Change(kind, null, null, null, null, null, name, null, before, after);
    }

    static Change of(PlanDiff diff, PlanChange change, Wording wording) {
      ChangeJson.About about = ChangeJson.about(change, wording);
      return new Change(
          ChangeJson.kind(change),
          diff.after().plan().name(),
          diff.after().athlete().name(),
          change.date().toString(),
          about.session(),
          about.exercise(),
          about.name(),
          about.measure(),
          about.before(),
          about.after());
    }

    Change in(CompiledPlan of) {
      return new Change(
          kind,
          of.plan().name(),
          of.athlete().name(),
          of.plan().from().toString(),
          session,
          exercise,
          name,
          measure,
          before,
          after);
    }
  }

  static void write(
      JsonText json, EditionDiff diff, List<ReportedFinding> before, List<ReportedFinding> after) {
    json.object(
        () -> {
          json.heading();
          json.list(
              "changes", changes(diff, json.wording()), c -> json.object(() -> change(json, c)));
          FindingJson.list(json, after);
          FindingJson.list(json, "findingsBefore", before);
        });
  }

  private static List<Change> changes(EditionDiff diff, Wording wording) {
    return Stream.of(
            diff.facts().stream().map(fact -> fact(fact, wording)),
            diff.definitions().stream().map(DiffJson::definition),
            diff.added().stream().map(p -> Change.of("plan-added", null, null, null).in(p)),
            diff.dropped().stream().map(p -> Change.of("plan-dropped", null, null, null).in(p)),
            diff.plans().stream().flatMap(plan -> plan(plan, wording)),
            diff.findingsNew().stream()
                .map(f -> Change.of("finding-new", f.code(), null, f.message())),
            diff.findingsGone().stream()
                .map(f -> Change.of("finding-gone", f.code(), f.message(), null)))
        .flatMap(changes -> changes)
        .toList();
  }

  private static Change fact(FactChange fact, Wording wording) {
    Words words = new Words(wording);
    return new Change(
        "fact-changed",
        null,
        fact.athlete(),
        null,
        null,
        null,
        null,
        ChangeJson.word(fact.fact()),
        fact.before().isEmpty() ? null : words.few(fact.before()),
        fact.after().isEmpty() ? null : words.few(fact.after()));
  }

  private static Change definition(Redefinition definition) {
    return new Change(
        "definition-" + definition.state().name().toLowerCase(Locale.ROOT),
        null,
        null,
        null,
        null,
        null,
        definition.name(),
        ChangeJson.word(definition.kind()),
        null,
        null);
  }

  private static Stream<Change> plan(PlanDiff diff, Wording wording) {
    CompiledPlan now = diff.after();
    return Stream.of(
            diff.changes().stream().map(change -> Change.of(diff, change, wording)),
            diff.cautionsNew().stream()
                .map(c -> Change.of("caution-new", null, null, wording.say(c)).in(now)),
            diff.cautionsGone().stream()
                .map(c -> Change.of("caution-gone", null, wording.say(c), null).in(now)))
        .flatMap(changes -> changes);
  }

  private static void change(JsonText json, Change change) {
    DatedSession session = change.session();
    PlannedExercise exercise = change.exercise();
    json.field("kind", change.kind());
    json.field("plan", change.plan());
    json.field("athlete", change.athlete());
    json.field("date", change.date());
    if (session == null) {
      json.nothing("week");
    } else {
      json.field("week", session.week());
    }
    json.field("session", session == null ? null : session.name());
    json.field("protocol", exercise == null ? null : exercise.protocol());
    json.field("grip", exercise == null ? null : exercise.setup().grip().name());
    json.field("name", change.name());
    json.field("measure", change.measure());
    json.field("before", change.before());
    json.field("after", change.after());
  }
}
