package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.Listing;
import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.history.LogTimeline;
import gripwright.log.LogEntry;
import gripwright.plan.SessionPlan;
import gripwright.schedule.DatedSession;
import gripwright.schedule.MissedSession;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What there is to say about the days that are known; each line of the plan is reported once. */
final class LogFindings {

  private static final int DATES_SAID = 6;

  private final LogTimeline timeline;
  private final Athlete athlete;
  private final List<MissedSession> missed;
  private final Map<String, List<LocalDate>> unplanned = new LinkedHashMap<>();
  private final Map<String, Finding> firsts = new LinkedHashMap<>();
  private final List<Finding> others = new ArrayList<>();

  /** Sessions that the log has without anything that was done, by day. */
  private final Map<LocalDate, Set<String>> empties = new HashMap<>();

  /**
   * The differences of a week from its plan.
   *
   * @param week the week
   * @param unplanned log entries without a planned session
   * @param dropped planned sessions that find no day after what was done
   * @param until the last day of what was done
   */
  record Note(
      WeekContext week,
      List<LogEntry.Trained> unplanned,
      List<DatedSession> dropped,
      LocalDate until) {}

  LogFindings(LogTimeline timeline, Athlete athlete, PlanState.Past past) {
    this.timeline = timeline;
    this.athlete = athlete;
    this.missed = past.missed();
    past.notes().forEach(this::note);
    timeline.log().of(LogEntry.Trained.class).stream()
        .filter(trained -> trained.done().isEmpty())
        .forEach(
            trained ->
                empties
                    .computeIfAbsent(trained.date(), date -> new HashSet<>())
                    .add(trained.session()));
  }

  private void note(Note note) {
    WeekContext week = note.week();
    for (LogEntry.Trained line : note.unplanned()) {
      List<String> names =
          week.block().contentFor(athlete.name()).sessions().stream()
              .map(SessionPlan::name)
              .sorted()
              .map(name -> "`" + name + "`")
              .toList();
      ModelPath place = week.path().then("date", line.date().toString());
      String key = week.block().name() + " " + line.session();
      Finding finding =
          Finding.advice("plan.session-unplanned", place)
              .about(Topic.UNPLANNED_SESSION)
              .with("session", line.session())
              .with("names", names);
      boolean again = names.contains("`" + line.session() + "`");
      firsts.putIfAbsent(key, again ? finding.with("again", line.session()) : finding);
      unplanned.computeIfAbsent(key, k -> new ArrayList<>()).add(line.date());
    }
    for (DatedSession session : note.dropped()) {
      others.add(
          Finding.advice("plan.session-not-made-up", session.path())
              .with("session", session.name())
              .with("dates", session.date())
              .with("week", week.number())
              .with("until", note.until()));
    }
  }

  /** Returns the findings, with those about sessions that have no line. */
  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    Map<Line, List<DatedSession>> byLine = new LinkedHashMap<>();
    missed.stream()
        .filter(m -> m.kind() == MissedSession.Kind.NOT_LOGGED)
        .map(MissedSession::planned)
        .forEach(s -> byLine.computeIfAbsent(keyOf(s), key -> new ArrayList<>()).add(s));
    byLine.forEach(
        (line, sessions) -> {
          Finding finding =
              Finding.advice("plan.session-not-logged", sessions.get(0).path())
                  .with("session", sessions.get(0).name())
                  .with("dates", dates(sessions.stream().map(DatedSession::date).toList()))
                  .with("first", sessions.get(0).date())
                  .with("until", timeline.lastKnownDay().orElseThrow());
          if (line.empty()) {
            finding = finding.with("empty", sessions.get(0).name());
          }
          for (DatedSession session : sessions) {
            finding = finding.alsoAt(session.path());
          }
          all.add(finding);
        });
    unplanned.forEach(
        (key, days) -> {
          Finding first = firsts.get(key);
          if (first != null) {
            all.add(first.with("dates", dates(days)));
          }
        });
    all.addAll(others);
    return all;
  }

  /**
   * A line of the plan that has no line in the log.
   *
   * @param path the line
   * @param empty true if the log has the session on that day, and nothing in it
   */
  private record Line(ModelPath path, boolean empty) {}

  private Line keyOf(DatedSession session) {
    boolean empty = empties.getOrDefault(session.date(), Set.of()).contains(session.name());
    return new Line(FindingList.line(session.path()), empty);
  }

  private static Listing dates(List<LocalDate> days) {
    return Listing.first(DATES_SAID, Listing.Style.COMMAS, days);
  }
}
