package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.budget.Meter;
import gripwright.finding.Finding;
import gripwright.finding.FindingList;
import gripwright.finding.ModelPath;
import gripwright.grip.FingerSet;
import gripwright.history.LogTimeline;
import gripwright.planning.placement.Conflict;
import gripwright.planning.placement.HardDays;
import gripwright.planning.placement.HardWork;
import gripwright.planning.placement.Placement;
import gripwright.planning.placement.PlacementReasons;
import gripwright.schedule.DatedSession;
import gripwright.schedule.HardThing;
import gripwright.schedule.PlacementReason;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Places the sessions of a week and says what prevents those that find no day. */
final class WeekPlacing {

  private final Athlete athlete;
  private final LogTimeline timeline;
  private final SessionExpansion expansion;
  private final LookAhead lookAhead;
  private final Meter meter;

  WeekPlacing(
      Athlete athlete,
      LogTimeline timeline,
      SessionExpansion expansion,
      LookAhead lookAhead,
      Meter meter) {
    this.meter = meter;
    this.athlete = athlete;
    this.timeline = timeline;
    this.expansion = expansion;
    this.lookAhead = lookAhead;
  }

  /**
   * The sessions of a week on their days.
   *
   * @param sessions those that found a day
   * @param withoutLogLimits fingers that each would work hard if the log had limited nothing
   */
  record Placed(List<DatedSession> sessions, Map<ModelPath, FingerSet> withoutLogLimits) {

    /** A week without a session. */
    static final Placed NOTHING = new Placed(List.of(), Map.of());
  }

  /**
   * Returns the sessions of a week on their days, and reports which find none.
   *
   * @param known hard days as far as they were known when the week began
   * @param before what is dated before the week
   * @param found what can't be met is added here
   */
  Placed place(
      WeekContext week,
      List<SessionExpansion.Draft> drafts,
      HardDays known,
      HardWork before,
      FindingList found) {
    Placement.Week fixed =
        new Placement.Week(
            week.first(),
            athlete::availableOn,
            known.near(week.first(), before),
            PlanState.lastOfName(before.sessions()));
    PlacementReasons reasons = new PlacementReasons(fixed, athlete, week.number());
    List<SessionExpansion.Draft> fitting =
        drafts.stream().filter(d -> fitsSomeDay(week, d, found)).toList();
    List<Placement.Request> requests =
        fitting.stream().map(SessionExpansion.Draft::request).toList();
    Placement.Found search =
        Placement.place(
            new Placement.Asked(fixed, requests, lookAhead.testsIn(week.number())),
            lookAhead::gapDays,
            () -> lookAhead.after(week, requests, day -> known.near(day, before)),
            meter);
    noteUnproved(week, search, found);
    List<Optional<LocalDate>> days = search.first().sessions();
    List<DatedSession> placed = new ArrayList<>();
    Map<ModelPath, FingerSet> hardFingers = new HashMap<>();
    List<Placement.Request> dated = new ArrayList<>();
    Map<String, Integer> missing = new TreeMap<>();
    for (int i = 0; i < fitting.size(); i++) {
      SessionExpansion.Draft draft = fitting.get(i);
      if (days.get(i).isPresent()) {
        LocalDate day = days.get(i).get();
        PlacementReason because = reasons.because(draft.request(), day);
        dated.add(draft.request());
        expansion
            .dated(week, draft.session(), day, because, found)
            .ifPresent(
                session -> {
                  draft
                      .request()
                      .hardFingers()
                      .ifPresent(fingers -> hardFingers.put(session.path(), fingers));
                  placed.add(session);
                });
      } else {
        missing.merge(draft.session().name(), 1, Integer::sum);
      }
    }
    Search done = new Search(fixed, fitting, dated);
    missing.forEach((name, count) -> noteMissing(week, done, name, count, found));
    return new Placed(placed, hardFingers);
  }

  private static void noteUnproved(WeekContext week, Placement.Found search, FindingList found) {
    if (!search.proved()) {
      found.add(
          Finding.advice("plan.days-unproved", week.path())
              .with("week", week.number())
              .with("more", search.more()),
          search.more());
    }
  }

  private boolean fitsSomeDay(WeekContext week, SessionExpansion.Draft draft, FindingList found) {
    Duration longest =
        athlete.available().values().stream().max(Duration::compareTo).orElse(Duration.ZERO);
    if (draft.request().minutes() <= longest.toMinutes()) {
      return true;
    }
    found.add(
        Finding.error("plan.session-too-long", week.path().then("session", draft.session().name()))
            .with("session", draft.session().name())
            .with("minutes", draft.request().minutes())
            .with("longest", longest.toMinutes()),
        draft.request().minutes());
    return false;
  }

  /**
   * How days were looked for.
   *
   * @param fixed the week before its sessions
   * @param drafts sessions that wanted a day
   * @param placed what those asked for that found one
   */
  private record Search(
      Placement.Week fixed, List<SessionExpansion.Draft> drafts, List<Placement.Request> placed) {}

  private void noteMissing(
      WeekContext week, Search search, String name, int missing, FindingList found) {
    if (timeline.isPast(week.first())) {
      return; // what was done counts, not what could have been
    }
    SessionExpansion.Draft draft =
        search.drafts().stream()
            .filter(d -> d.session().name().equals(name))
            .findFirst()
            .orElseThrow();
    int wanted = draft.session().perWeek();
    List<Placement.Request> others =
        search.placed().stream().filter(r -> !r.name().equals(name)).toList();
    Set<Conflict.Fact> facts =
        new Conflict(search.fixed(), draft.request(), wanted, others).fewest(meter);
    boolean away = week.first().datesUntil(week.first().plusDays(7)).anyMatch(athlete::isAway);
    boolean afterLog = timeline.isPast(week.first().minusDays(7));
    ModelPath place = week.path().then("session", name);
    Optional<LocalDate> goal =
        facts.stream()
            .filter(
                f ->
                    f instanceof Conflict.HardOn hard
                        && hard.day().what() instanceof HardThing.Goal)
            .map(f -> ((Conflict.HardOn) f).day().date())
            .findFirst();
    Finding finding =
        away || goal.isPresent() || afterLog
            ? Finding.warning("plan.week-short", place)
            : Finding.error("plan.no-day", place);
    if (goal.isPresent()) {
      finding = finding.with("goal", goal.get());
    } else if (afterLog && !away) {
      finding = finding.with("after", timeline.lastKnownDay().orElseThrow());
    }
    found.add(
        finding
            .with("session", name)
            .with("week", week.number())
            .with("wanted", wanted)
            .with("placed", wanted - missing)
            .with(
                "reason",
                new PlacementReasons(search.fixed(), athlete, week.number())
                    .conflict(draft.request(), facts)),
        missing);
  }
}
