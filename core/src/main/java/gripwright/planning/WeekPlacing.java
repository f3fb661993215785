package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.plan.Block;
import gripwright.plan.DatedRetest;
import gripwright.plan.DatedSession;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Places the sessions of a week and tells what stands against those that find no day. */
final class WeekPlacing {

  private final Athlete athlete;
  private final ModelPath root;
  private final Heard heard;
  private final SessionExpansion expansion;
  private final LookAhead lookAhead;
  private final FindingList findings;
  private final SoFar soFar;

  /**
   * What lies before the week; grows with the weeks.
   *
   * @param sessions all sessions so far
   * @param retests all tests so far
   * @param lastOfName the last day of each session's name
   */
  record SoFar(
      List<DatedSession> sessions, List<DatedRetest> retests, Map<String, LocalDate> lastOfName) {}

  WeekPlacing(
      Athlete athlete,
      ModelPath root,
      Heard heard,
      SessionExpansion expansion,
      LookAhead lookAhead,
      FindingList findings,
      SoFar soFar) {
    this.athlete = athlete;
    this.root = root;
    this.heard = heard;
    this.expansion = expansion;
    this.lookAhead = lookAhead;
    this.findings = findings;
    this.soFar = soFar;
  }

  /**
   * Returns the sessions of a week on their days, and tells which find none.
   *
   * @param known hard days as far as they were known when the week began
   */
  List<DatedSession> place(
      Block block,
      PlanRun.WeekOfBlock week,
      List<SessionExpansion.Draft> drafts,
      HardDays known,
      Progression progression,
      Progression.Week state) {
    Placement.Week fixed =
        new Placement.Week(
            week.first(),
            athlete::availableOn,
            known.near(week.first(), soFar.sessions(), soFar.retests()),
            soFar.lastOfName());
    PlacementWords words = new PlacementWords(fixed, athlete, week.number());
    List<SessionExpansion.Draft> fitting =
        drafts.stream().filter(d -> fitsSomeDay(block, week, d)).toList();
    List<Placement.Request> requests =
        fitting.stream().map(SessionExpansion.Draft::request).toList();
    Placement.Found found =
        Placement.place(
            new Placement.Asked(fixed, requests, lookAhead.testsIn(week.number())),
            lookAhead::gapDays,
            () ->
                lookAhead.after(
                    block,
                    week,
                    requests,
                    day -> known.near(day, soFar.sessions(), soFar.retests())));
    noteUnproved(block, week, found);
    List<Optional<LocalDate>> days = found.first().sessions();
    List<DatedSession> placed = new ArrayList<>();
    List<Placement.Request> dated = new ArrayList<>();
    Map<String, Integer> missing = new TreeMap<>();
    for (int i = 0; i < fitting.size(); i++) {
      SessionExpansion.Draft draft = fitting.get(i);
      if (days.get(i).isPresent()) {
        LocalDate day = days.get(i).get();
        String because = words.because(draft.request(), day);
        dated.add(draft.request());
        expansion
            .dated(block, week, draft.session(), progression, state, day, because)
            .ifPresent(
                session -> {
                  known.note(session, draft.request().hardFingers());
                  placed.add(session);
                });
      } else {
        missing.merge(draft.session().name(), 1, Integer::sum);
      }
    }
    missing.forEach((name, count) -> noteMissing(block, week, fixed, fitting, dated, name, count));
    return placed;
  }

  private void noteUnproved(Block block, PlanRun.WeekOfBlock week, Placement.Found found) {
    if (!found.proved()) {
      findings.add(
          Finding.advice("plan.days-unproved", path(block, week))
              .with("week", week.number())
              .with("more", found.more()),
          found.more());
    }
  }

  private boolean fitsSomeDay(Block block, PlanRun.WeekOfBlock week, SessionExpansion.Draft draft) {
    Duration longest =
        athlete.available().values().stream().max(Duration::compareTo).orElse(Duration.ZERO);
    if (draft.request().minutes() <= longest.toMinutes()) {
      return true;
    }
    findings.add(
        Finding.error(
                "plan.session-too-long", path(block, week).then("session", draft.session().name()))
            .with("session", draft.session().name())
            .with("minutes", draft.request().minutes())
            .with("longest", longest.toMinutes()),
        draft.request().minutes());
    return false;
  }

  private void noteMissing(
      Block block,
      PlanRun.WeekOfBlock week,
      Placement.Week fixed,
      List<SessionExpansion.Draft> drafts,
      List<Placement.Request> placed,
      String name,
      int missing) {
    if (heard.isPast(week.first())) {
      return; // what was done is told, not what could have been
    }
    SessionExpansion.Draft draft =
        drafts.stream().filter(d -> d.session().name().equals(name)).findFirst().orElseThrow();
    int wanted = draft.session().perWeek();
    List<Placement.Request> others = placed.stream().filter(r -> !r.name().equals(name)).toList();
    Set<Conflict.Fact> facts = new Conflict(fixed, draft.request(), wanted, others).fewest();
    boolean away = week.first().datesUntil(week.first().plusDays(7)).anyMatch(athlete::isAway);
    boolean afterLog = heard.isPast(week.first().minusDays(7));
    ModelPath place = path(block, week).then("session", name);
    Optional<LocalDate> goal =
        facts.stream()
            .filter(
                f -> f instanceof Conflict.HardOn hard && hard.day().what().equals(HardDays.GOAL))
            .map(f -> ((Conflict.HardOn) f).day().date())
            .findFirst();
    Finding finding =
        away || goal.isPresent() || afterLog
            ? Finding.warning("plan.week-short", place)
            : Finding.error("plan.no-day", place);
    if (goal.isPresent()) {
      finding = finding.with("goal", goal.get());
    } else if (afterLog && !away) {
      finding = finding.with("after", heard.until().orElseThrow());
    }
    findings.add(
        finding
            .with("session", name)
            .with("week", week.number())
            .with("wanted", wanted)
            .with("placed", wanted - missing)
            .with(
                "reason",
                new PlacementWords(fixed, athlete, week.number()).reason(draft.request(), facts)),
        missing);
  }

  private ModelPath path(Block block, PlanRun.WeekOfBlock week) {
    return root.then("block", block.name()).then("week", week.blockWeek());
  }
}
