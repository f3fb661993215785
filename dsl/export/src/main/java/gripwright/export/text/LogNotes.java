package gripwright.export.text;

import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.export.words.Words;
import gripwright.finding.Listing;
import gripwright.finding.Message;
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
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Describes what the log shows about a plan: how sessions were trained and what that changed in the
 * weeks ahead.
 */
final class LogNotes {

  private static final int MOST_CHANGES = 8;
  private static final int MOST_REASONS = 3;

  private final Words words;

  LogNotes(Words words) {
    this.words = words;
  }

  /** Adds what the log changed, the most severe first. */
  void addChanges(Page page, CompiledPlan plan) {
    List<LogChange> changes = plan.changes();
    if (changes.isEmpty()) {
      return;
    }
    page.gap();
    page.line(words.say("season.changes"));
    List<ChangeGroup> ordered =
        ChangeGroup.of(changes.stream().map(LogChange::change).toList()).stream()
            .sorted(Comparator.comparingInt(LogNotes::rank).thenComparing(ChangeGroup::date))
            .toList();
    ordered.stream().limit(MOST_CHANGES).forEach(group -> add(page, group, plan));
    int more = ordered.size() - MOST_CHANGES;
    if (more > 0) {
      page.line("  " + words.count("season.changes-more", more));
    }
  }

  private void add(Page page, ChangeGroup group, CompiledPlan plan) {
    page.wrapped("  ", Page.clean(new ChangeWords(words).sentence(group, plan)));
    List<Message> reasons =
        plan.changes().stream()
            .filter(c -> group.changes().contains(c.change()))
            .flatMap(c -> c.because().stream())
            .<Message>map(reason -> reason)
            .distinct()
            .toList();
    page.wrapped(
        "    ",
        Page.clean(
            words.say(
                "page.because",
                "reason",
                Listing.first(MOST_REASONS, Listing.Style.CLAUSES, reasons))));
  }

  private static int rank(ChangeGroup group) {
    PlanChange change = group.first();
    return switch (change.kind()) {
      case SESSION_DROPPED, RETEST_CHANGED -> 0;
      case EXERCISE_CHANGED ->
          change instanceof SessionChange.ExerciseChanged c && ChangeGroup.isLower(c) ? 1 : 3;
      case PLAN_MOVED,
          GOAL_CHANGED,
          PART_CHANGED,
          GRIP_STARTS,
          WAIVER_ADDED,
          WAIVER_DROPPED,
          BLOCK_ADDED,
          BLOCK_DROPPED,
          BLOCK_MOVED,
          BLOCK_RESIZED,
          BLOCK_REWRITTEN,
          WEEK_EASED,
          SESSION_ADDED,
          SESSION_MOVED,
          SESSION_TIMED,
          EXERCISE_ADDED,
          EXERCISE_DROPPED ->
          2;
    };
  }

  /** Returns what is at a time of day and at a place, with those that are known. */
  static String at(Words words, Optional<LocalTime> time, Optional<String> place, String what) {
    String there =
        place.map(name -> words.say("season.at-place", "what", what, "place", name)).orElse(what);
    return time.map(at -> words.say("season.at", "time", at.toString(), "what", there))
        .orElse(there);
  }

  /** Returns a session's time and name, how it was done, its duration and whether it is hard. */
  String head(DatedSession session) {
    return at(words, session.time(), session.place(), untimed(session));
  }

  private String untimed(DatedSession session) {
    return words.say(
        session.hard() ? "season.session-hard" : "season.session",
        "session",
        session.happened().map(happened -> trained(session, happened)).orElse(session.name()),
        "minutes",
        session.minutes());
  }

  private String trained(DatedSession session, Happened happened) {
    String kind = words.of("season.happened", happened.kind());
    return happened
        .planned()
        .filter(p -> !p.date().equals(session.date()))
        .map(
            p ->
                words.say(
                    "season.trained-moved",
                    "session",
                    session.name(),
                    "happened",
                    kind,
                    "date",
                    words.day(p.date())))
        .orElseGet(() -> words.say("season.trained", "session", session.name(), "happened", kind));
  }

  /** Adds what the coach wrote for the warm-up of a session, and about the session. */
  void addTexts(Page page, String indent, DatedSession session) {
    session
        .warmUpText()
        .ifPresent(
            text ->
                page.wrapped(indent, words.say("season.warm-up-text", "text", Page.clean(text))));
    session
        .notes()
        .forEach(note -> page.wrapped(indent, words.say("season.note", "note", Page.clean(note))));
  }

  /** Adds how a past session felt and what was left out. */
  void addDone(Page page, DatedSession session, LogTimeline timeline) {
    if (session.happened().isEmpty()) {
      return;
    }
    Happened happened = session.happened().get();
    LogEntry.Trained line = timeline.line(happened);
    happened.planned().stream()
        .flatMap(planned -> ExerciseMatch.of(planned, line).stream())
        .filter(match -> !match.isUnloggedWarmUp())
        .forEach(match -> page.wrapped("    ", Page.clean(line(match))));
    line.note()
        .ifPresent(
            note -> page.wrapped("    ", words.say("season.note", "note", Page.clean(note))));
  }

  private String line(ExerciseMatch match) {
    List<String> facts = new ArrayList<>();
    match
        .planned()
        .filter(asked -> match.done().isEmpty() || isOther(match, asked))
        .ifPresent(
            asked ->
                facts.add(
                    words.count(
                        match.done().isEmpty()
                            ? "season.left-out"
                            : asked.scheme().setsUpTo() ? "season.asked-up-to" : "season.asked",
                        asked.scheme().sets(),
                        "load",
                        asked.totalLoad())));
    match
        .done()
        .map(Done::effort)
        .ifPresent(
            e ->
                e.ifPresent(
                    v -> facts.add(words.say("season.effort", "score", Numbers.plain(v, 1)))));
    match
        .done()
        .map(Done::pain)
        .ifPresent(
            p ->
                p.ifPresent(
                    v -> facts.add(words.say("season.pain", "score", Numbers.plain(v, 1)))));
    String what =
        match
            .done()
            .map(Done::setup)
            .or(() -> match.planned().map(PlannedExercise::setup))
            .map(words::setup)
            .orElse("");
    return words.say(
        "page.said-of",
        "what",
        what,
        "sentence",
        facts.isEmpty() ? words.say("season.as-asked") : words.commas(facts));
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
  String missed(MissedSession missed) {
    String session = missed.planned().name();
    String kind = words.of("season.missed", missed.kind());
    return missed
        .note()
        .map(
            note ->
                words.say(
                    "season.missed-note",
                    "session",
                    session,
                    "kind",
                    kind,
                    "note",
                    Page.clean(note)))
        .orElseGet(() -> words.say("season.missed", "session", session, "kind", kind));
  }
}
