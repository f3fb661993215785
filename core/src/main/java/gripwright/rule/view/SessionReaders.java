package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.List;

/** Readers of the properties of sessions, days and pairs of sessions. */
final class SessionReaders {

  private static final List<String> WEEKDAY_WORDS =
      List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private SessionReaders() {}

  static void addTo(Readers all) {
    addSession(all.of(Kind.SESSION));
    addDay(all.of(Kind.DAY));
    addPair(all.of(Kind.PAIR));
  }

  private static void addSession(Readers.Of<SessionView> session) {
    session
        .object("name", s -> s.name)
        .object("what", s -> s.what.toString())
        .number("date", s -> s.date.toEpochDay())
        .object("weekday", s -> weekday(s.date))
        .object("place", s -> s.placeName)
        .number("minutes", s -> Unit.MINUTE.toBase(s.minutes))
        .object("intensity", s -> s.hard ? "high" : "low")
        .truth("hard", s -> s.hard)
        .truth("eased", s -> s.eased)
        .number("load", s -> s.load)
        .number("time-under-load", s -> s.timeUnderLoad)
        .number(
            "end-reserve",
            s ->
                s.exercises.stream()
                    .mapToDouble(ExerciseView::endReserve)
                    .filter(reserve -> !Double.isNaN(reserve))
                    .min()
                    .orElse(Double.NaN))
        .number("most-holds", SessionView::mostHolds)
        .number("most-time-under-load", SessionView::mostTimeUnderLoad)
        .number("body-mass", s -> s.bodyMass)
        .number("warm-up", SessionView::warmUp)
        .number("hard-efforts", s -> s.plan.efforts().inARow(s))
        .object("exercises", s -> s.exercises)
        .object("fingers", SessionView::fingers)
        .object("week", s -> s.week)
        .object("block", SessionView::block)
        .object("plan", s -> s.plan)
        .object("athlete", SessionView::athlete);
  }

  private static void addDay(Readers.Of<DayView> day) {
    day.number("date", d -> d.date.toEpochDay())
        .object("weekday", d -> weekday(d.date))
        .truth("hard", d -> d.hard)
        .truth("retest", d -> d.retest)
        .truth("climbing", d -> d.climbing)
        .number("minutes", d -> Unit.MINUTE.toBase(d.minutes()))
        .number("load", DayView::load)
        .number("time-under-load", DayView::timeUnderLoad)
        .number("other-sessions", d -> d.plan.sessionsOfOtherPlans(d.date, d.date))
        .number("sessions-in-7", d -> d.plan.athleteDays().sessionsInWindow(d.date))
        .number(
            "planned-sessions",
            d -> d.ofAllPlans().plannedSessions() + d.ofAllPlans().otherPlannedSessions())
        .number("planned-in-7", d -> d.plan.athleteDays().plannedInWindow(d.date))
        .number("hand-holds", d -> d.ofAllPlans().most(HeldWork::holds))
        .number("hand-holds-above-80", d -> d.ofAllPlans().most(HeldWork::holdsAbove80))
        .number("hand-time-at-80", d -> d.ofAllPlans().most(HeldWork::secondsAt80))
        .number("hand-time-at-60", d -> d.ofAllPlans().most(HeldWork::secondsAt60))
        .number("grip-time-at-60", d -> d.ofAllPlans().mostOnOneGrip())
        .number("hand-time-at-40", d -> d.ofAllPlans().most(HeldWork::secondsAt40))
        .number("hand-sets-at-60", d -> d.ofAllPlans().most(HeldWork::setsAt60))
        .number("days-at-80", d -> d.plan.athleteDays().daysAt(0.8, d.date))
        .number("days-at-70", d -> d.plan.athleteDays().daysAt(0.7, d.date))
        .number("rest-days", d -> d.plan.athleteDays().restDays(d.date))
        .number("until-fresh", d -> Unit.DAY.toBase(d.plan.athleteDays().daysToFresh(d.date)))
        .object("sessions", d -> d.sessions)
        .object("exercises", d -> d.exercises)
        .object("fingers", DayView::fingers)
        .object("week", d -> d.week)
        .object("block", DayView::block)
        .object("plan", d -> d.plan)
        .object("athlete", d -> d.plan.athleteOn(d.date));
  }

  private static void addPair(Readers.Of<PairView> pair) {
    pair.object("earlier", PairView::earlier)
        .object("later", PairView::later)
        .number("gap", PairView::gap)
        .number("pause", PairView::pause)
        .truth("shared-fingers", PairView::sharedFingers)
        .truth("shared-hard-fingers", PairView::sharedHardFingers)
        .object("plan", p -> p.earlier().plan)
        .object("athlete", p -> p.later().athlete());
  }

  private static String weekday(LocalDate date) {
    return WEEKDAY_WORDS.get(date.getDayOfWeek().ordinal());
  }
}
