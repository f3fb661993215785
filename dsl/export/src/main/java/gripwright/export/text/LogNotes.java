package gripwright.export.text;

import gripwright.log.LogEntry.Done;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.ExerciseMatch;
import gripwright.plan.Happened;
import gripwright.plan.LogChange;
import gripwright.plan.MissedSession;
import gripwright.plan.PlanChange;
import gripwright.plan.PlannedExercise;
import gripwright.quantity.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** What a log said of a plan: how sessions were trained, and what that changed ahead. */
final class LogNotes {

  private static final int MOST_CHANGES = 8;
  private static final int MOST_REASONS = 3;

  private LogNotes() {}

  /** Changes of one kind to one exercise, or one change to a session. */
  private static final class Group {
    private final int rank;
    private final PlanChange first;
    private final List<PlanChange> changes = new ArrayList<>();
    private final Set<String> because = new LinkedHashSet<>();

    Group(int rank, PlanChange first) {
      this.rank = rank;
      this.first = first;
    }

    int rank() {
      return rank;
    }

    LocalDate date() {
      return first.date();
    }
  }

  /** Adds what the log changed, the gravest first. */
  static void addChanges(Page page, CompiledPlan plan) {
    List<LogChange> changes = plan.heard().changes();
    if (changes.isEmpty()) {
      return;
    }
    page.gap();
    page.line("WHAT THE LOG CHANGED");
    Map<String, Group> groups = new LinkedHashMap<>();
    for (LogChange change : changes) {
      Group group =
          groups.computeIfAbsent(
              key(change.change()), k -> new Group(rank(change.change()), change.change()));
      group.changes.add(change.change());
      group.because.addAll(change.because());
    }
    List<Group> ordered =
        groups.values().stream()
            .sorted(Comparator.comparingInt(Group::rank).thenComparing(Group::date))
            .toList();
    ordered.stream().limit(MOST_CHANGES).forEach(group -> add(page, group));
    int more = ordered.size() - MOST_CHANGES;
    if (more > 0) {
      page.line("  and " + Page.count(more, "more change") + "; `explain` tells those of a day");
    }
  }

  private static void add(Page page, Group group) {
    page.wrapped("  ", Page.clean(sentence(group)));
    List<String> reasons = group.because.stream().limit(MOST_REASONS).toList();
    int more = group.because.size() - reasons.size();
    page.wrapped(
        "    ",
        Page.clean(
            "because: "
                + String.join("; ", reasons)
                + (more > 0 ? "; and " + more + " more" : "")));
  }

  private static String key(PlanChange change) {
    if (change instanceof PlanChange.ExerciseChanged c) {
      return String.join(
          " ",
          "exercise",
          c.session().name(),
          c.after().protocol(),
          c.after().setup().grip().name(),
          c.after().setup().hands().word(),
          c.measure().name(),
          Boolean.toString(isLower(c)));
    }
    return change.getClass().getSimpleName() + change.date() + change.hashCode();
  }

  private static boolean isLower(PlanChange.ExerciseChanged change) {
    return change.after().loadIndex() <= change.before().loadIndex();
  }

  private static int rank(PlanChange change) {
    if (change instanceof PlanChange.SessionDropped || change instanceof PlanChange.RetestChanged) {
      return 0;
    }
    if (change instanceof PlanChange.ExerciseChanged c) {
      return isLower(c) ? 1 : 3;
    }
    return 2;
  }

  private static String sentence(Group group) {
    PlanChange change = group.first;
    if (change instanceof PlanChange.ExerciseChanged c) {
      PlanChange last = group.changes.get(group.changes.size() - 1);
      String days =
          group.changes.size() == 1
              ? "on " + Page.day(change.date())
              : Page.day(change.date())
                  + " to "
                  + Page.day(last.date())
                  + ", "
                  + Page.count(group.changes.size(), "session");
      return ExerciseTable.setup(c.after().setup())
          + " in "
          + c.session().name()
          + ", "
          + days
          + ": "
          + values(group.changes, c.measure());
    }
    if (change instanceof PlanChange.SessionDropped c) {
      return c.session().name() + " on " + Page.day(c.date()) + " falls away";
    }
    if (change instanceof PlanChange.SessionAdded c) {
      return c.session().name() + " on " + Page.day(c.date()) + " is new";
    }
    if (change instanceof PlanChange.SessionMoved c) {
      return c.after().name()
          + " on "
          + Page.day(c.after().date())
          + " instead of "
          + Page.day(c.before().date());
    }
    if (change instanceof PlanChange.RetestChanged c) {
      return c.after().isEmpty()
          ? "the test on " + Page.day(c.date()) + " falls away"
          : "a test on " + Page.day(c.date());
    }
    if (change instanceof PlanChange.ExerciseDropped c) {
      return ExerciseTable.setup(c.exercise().setup())
          + " falls away from "
          + c.session().name()
          + " on "
          + Page.day(c.date());
    }
    if (change instanceof PlanChange.ExerciseAdded c) {
      return ExerciseTable.setup(c.exercise().setup())
          + " is new in "
          + c.session().name()
          + " on "
          + Page.day(c.date());
    }
    return "another plan from " + Page.day(change.date());
  }

  private static String values(List<PlanChange> changes, PlanChange.Measure measure) {
    List<PlanChange.ExerciseChanged> all =
        changes.stream().map(PlanChange.ExerciseChanged.class::cast).toList();
    String word = measure.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    String now = range(all.stream().map(c -> value(c.after(), measure)).toList());
    String was = range(all.stream().map(c -> value(c.before(), measure)).toList());
    return now.isEmpty() ? word + " changes" : word + " " + now + " instead of " + was;
  }

  private static String range(List<String> values) {
    String first = values.get(0);
    String last = values.get(values.size() - 1);
    return first.equals(last) ? first : first + " to " + last;
  }

  private static String value(PlannedExercise exercise, PlanChange.Measure measure) {
    return switch (measure) {
      case SETS -> Integer.toString(exercise.scheme().sets());
      case LOAD -> exercise.totalLoad().toString();
      case EDGE -> exercise.setup().edge().toString();
      case HOLD -> Numbers.plain(exercise.scheme().holds().get(0).seconds(), 1) + " s";
      case GRIP -> exercise.setup().grip().name();
      case PROTOCOL -> exercise.protocol();
      default -> "";
    };
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
  static void addDone(Page page, DatedSession session) {
    if (session.happened().isEmpty()) {
      return;
    }
    Happened happened = session.happened().get();
    happened.planned().stream()
        .flatMap(planned -> ExerciseMatch.of(planned, happened.logged()).stream())
        .forEach(match -> page.wrapped("    ", Page.clean(words(match))));
    happened
        .logged()
        .note()
        .ifPresent(note -> page.wrapped("    ", "\"" + Page.clean(note) + "\""));
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
