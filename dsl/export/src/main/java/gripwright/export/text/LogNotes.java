package gripwright.export.text;

import gripwright.change.PlanChange;
import gripwright.history.ExerciseMatch;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.MissedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.LogChange;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a log said of a plan: how sessions were trained, and what that changed ahead. */
final class LogNotes {

  private static final int MOST_CHANGES = 8;
  private static final int MOST_REASONS = 3;

  private LogNotes() {}

  /** Adds what the log changed, the gravest first. */
  static void addChanges(Page page, CompiledPlan plan) {
    List<LogChange> changes = plan.changes();
    if (changes.isEmpty()) {
      return;
    }
    page.gap();
    page.line("WHAT THE LOG CHANGED");
    List<ChangeGroup> ordered =
        ChangeGroup.of(changes.stream().map(LogChange::change).toList()).stream()
            .sorted(Comparator.comparingInt(LogNotes::rank).thenComparing(ChangeGroup::date))
            .toList();
    ordered.stream().limit(MOST_CHANGES).forEach(group -> add(page, group, plan));
    int more = ordered.size() - MOST_CHANGES;
    if (more > 0) {
      page.line("  and " + Page.count(more, "more change") + "; `explain` tells those of a day");
    }
  }

  private static void add(Page page, ChangeGroup group, CompiledPlan plan) {
    page.wrapped("  ", Page.clean(ChangeWords.sentence(group, plan)));
    List<String> all =
        plan.changes().stream()
            .filter(c -> group.changes().contains(c.change()))
            .flatMap(c -> c.because().stream())
            .map(Wording.english()::say)
            .distinct()
            .toList();
    List<String> reasons = all.stream().limit(MOST_REASONS).toList();
    int more = all.size() - reasons.size();
    page.wrapped(
        "    ",
        Page.clean(
            "because: "
                + String.join("; ", reasons)
                + (more > 0 ? "; and " + more + " more" : "")));
  }

  private static int rank(ChangeGroup group) {
    PlanChange change = group.first();
    if (change instanceof PlanChange.SessionDropped || change instanceof PlanChange.RetestChanged) {
      return 0;
    }
    if (change instanceof PlanChange.ExerciseChanged c) {
      return ChangeGroup.isLower(c) ? 1 : 3;
    }
    return 2;
  }

  /** Returns what became of the plan for a session, to stand behind its name. */
  static String head(DatedSession session) {
    return session.happened().map(h -> ", " + h.kind().words() + day(session, h)).orElse("");
  }

  private static String day(DatedSession session, Happened happened) {
    return happened
        .planned()
        .filter(p -> !p.date().equals(session.date()))
        .map(p -> " (planned for " + Page.day(p.date()) + ")")
        .orElse("");
  }

  /** Adds how a session of the past felt and what of it was left out. */
  static void addDone(Page page, DatedSession session, LogTimeline timeline) {
    if (session.happened().isEmpty()) {
      return;
    }
    Happened happened = session.happened().get();
    LogEntry.Trained line = timeline.line(happened);
    happened.planned().stream()
        .flatMap(planned -> ExerciseMatch.of(planned, line).stream())
        .forEach(match -> page.wrapped("    ", Page.clean(words(match))));
    line.note().ifPresent(note -> page.wrapped("    ", "\"" + Page.clean(note) + "\""));
  }

  private static String words(ExerciseMatch match) {
    List<String> words = new ArrayList<>();
    match
        .asked()
        .filter(asked -> match.done().isEmpty() || isOther(match, asked))
        .ifPresent(
            asked ->
                words.add(
                    (match.done().isEmpty() ? "left out, asked " : "asked ")
                        + Page.count(asked.scheme().sets(), "set")
                        + " at "
                        + asked.totalLoad()));
    match
        .done()
        .map(Done::effort)
        .ifPresent(e -> e.ifPresent(v -> words.add("effort " + Numbers.plain(v, 1))));
    match
        .done()
        .map(Done::pain)
        .ifPresent(p -> p.ifPresent(v -> words.add("pain " + Numbers.plain(v, 1))));
    String what =
        match
            .done()
            .map(Done::setup)
            .or(() -> match.asked().map(PlannedExercise::setup))
            .map(ExerciseTable::setup)
            .orElse("");
    return what + ": " + (words.isEmpty() ? "as asked" : String.join(", ", words));
  }

  private static boolean isOther(ExerciseMatch match, PlannedExercise asked) {
    boolean sets = match.setsDone().orElse(0) != asked.scheme().sets();
    boolean load =
        match
            .done()
            .flatMap(Done::load)
            .map(l -> l.compareTo(asked.totalLoad()) != 0)
            .orElse(false);
    return sets || load;
  }

  /** Returns what was missed, such as {@code strength, skipped: late shift}. */
  static String missed(MissedSession missed) {
    return missed.planned().name()
        + ", "
        + missed.kind().words()
        + missed.note().map(n -> ": " + Page.clean(n)).orElse("");
  }
}
