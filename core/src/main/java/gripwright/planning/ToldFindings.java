package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.CompiledPlan;
import gripwright.plan.DatedSession;
import gripwright.plan.MissedSession;
import gripwright.plan.SessionPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What there is to say about the days that a log tells of; each line of the plan is told once. */
final class ToldFindings {

  private static final int DATES_TOLD = 6;

  private final Heard heard;
  private final Athlete athlete;
  private final ModelPath root;
  private final Map<String, List<LocalDate>> unplanned = new LinkedHashMap<>();
  private final Map<String, Finding> firsts = new LinkedHashMap<>();
  private final List<Finding> others = new ArrayList<>();

  ToldFindings(Heard heard, Athlete athlete, ModelPath root) {
    this.heard = heard;
    this.athlete = athlete;
    this.root = root;
  }

  /**
   * Notes what a week's log says beside the plan.
   *
   * @param dropped planned sessions that find no day after what was done
   */
  void note(
      Block block, PlanRun.WeekOfBlock week, WeekAsDone.Told told, List<DatedSession> dropped) {
    for (LogEntry.Trained line : told.unplanned()) {
      String names =
          block.contentFor(athlete.name()).sessions().stream()
              .map(SessionPlan::name)
              .sorted()
              .map(name -> "`" + name + "`")
              .collect(Collectors.joining(", "));
      ModelPath place =
          root.then("block", block.name())
              .then("week", week.blockWeek())
              .then("date", line.date().toString());
      String key = block.name() + " " + line.session();
      firsts.putIfAbsent(
          key,
          Finding.advice("plan.session-unplanned", place)
              .with("session", line.session())
              .with("names", names));
      unplanned.computeIfAbsent(key, k -> new ArrayList<>()).add(line.date());
    }
    for (DatedSession session : dropped) {
      others.add(
          Finding.advice("plan.session-not-made-up", session.path())
              .with("session", session.name())
              .with("dates", session.date())
              .with("week", week.number())
              .with("until", heard.until().orElseThrow()));
    }
  }

  /** Returns the findings, with those about sessions that have no line. */
  List<Finding> all(List<MissedSession> missed) {
    List<Finding> all = new ArrayList<>();
    Map<ModelPath, List<DatedSession>> byLine = new LinkedHashMap<>();
    missed.stream()
        .filter(m -> m.kind() == MissedSession.Kind.NOT_LOGGED)
        .map(MissedSession::planned)
        .forEach(
            s ->
                byLine
                    .computeIfAbsent(FindingList.line(s.path()), line -> new ArrayList<>())
                    .add(s));
    byLine.forEach(
        (line, sessions) -> {
          Finding finding =
              Finding.advice("plan.session-not-logged", sessions.get(0).path())
                  .with("session", sessions.get(0).name())
                  .with("dates", dates(sessions.stream().map(DatedSession::date).toList()))
                  .with("until", heard.until().orElseThrow());
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

  private static String dates(List<LocalDate> days) {
    String told =
        days.stream().limit(DATES_TOLD).map(LocalDate::toString).collect(Collectors.joining(", "));
    return days.size() > DATES_TOLD ? told + " and " + (days.size() - DATES_TOLD) + " more" : told;
  }

  /**
   * Returns findings of rules such that what has happened stops nobody: an error about days of
   * which the log tells is advice, and stays an error for the days ahead.
   */
  static List<Finding> settled(List<Finding> findings, CompiledPlan compiled) {
    if (compiled.heard().until().isEmpty()) {
      return findings;
    }
    List<Finding> settled = new ArrayList<>();
    for (Finding finding : findings) {
      List<ModelPath> places =
          finding.places().isEmpty() ? List.of(finding.place()) : finding.places();
      List<ModelPath> past = places.stream().filter(compiled::isPast).toList();
      if (!finding.blocks() || past.isEmpty()) {
        settled.add(finding);
        continue;
      }
      List<ModelPath> ahead = places.stream().filter(p -> !past.contains(p)).toList();
      if (!ahead.isEmpty()) {
        settled.add(
            new Finding(
                finding.code(),
                finding.severity(),
                ahead.get(0),
                finding.arguments(),
                finding.places().isEmpty() ? List.of() : ahead,
                finding.waivedBecause()));
      }
      settled.add(breach(finding, past));
    }
    return settled;
  }

  private static Finding breach(Finding finding, List<ModelPath> past) {
    Finding breach =
        Finding.advice("plan.past-breach", past.get(0))
            .with("rule", finding.rule().orElse(finding.code()))
            .with("message", finding.arguments().getOrDefault("message", ""))
            .with("dates", dates(past.stream().flatMap(p -> date(p).stream()).distinct().toList()));
    for (ModelPath place : past) {
      breach = breach.alsoAt(place);
    }
    return breach;
  }

  private static Optional<LocalDate> date(ModelPath place) {
    return place.steps().stream()
        .filter(s -> s.kind().equals("date"))
        .map(s -> LocalDate.parse(s.name()))
        .findFirst();
  }
}
