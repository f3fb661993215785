package gripwright.rule;

import gripwright.quantity.Dimension;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.List;

/** The properties of sessions, days and pairs of sessions. */
final class SessionProperties {

  static final Vocabulary INTENSITIES = Vocabulary.of("intensity", "high", "low");
  private static final List<String> WEEKDAY_WORDS =
      List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  static final Vocabulary WEEKDAYS = Vocabulary.of("weekday", WEEKDAY_WORDS.toArray());

  private SessionProperties() {}

  static void addTo(List<PropertyTable.Entry> all) {
    addSession(new PropertyTable.Of<>(Kind.SESSION, SessionView.class, all));
    addDay(new PropertyTable.Of<>(Kind.DAY, DayView.class, all));
    addPair(new PropertyTable.Of<>(Kind.PAIR, PairView.class, all));
  }

  private static void addSession(PropertyTable.Of<SessionView> session) {
    session
        .word("name", Vocabulary.SESSIONS, "Its name.", s -> s.name)
        .word(
            "what",
            Vocabulary.of("kind of session", (Object[]) SessionView.What.values()),
            "What it is: training and, in pairs only, a retest or climbing.",
            s -> s.what.toString())
        .number("date", Type.Plain.DATE, "The day.", s -> s.date.toEpochDay())
        .word("weekday", WEEKDAYS, "The weekday: mon, tue and so on.", s -> weekday(s.date))
        .time(
            "minutes",
            "How long it takes, warm-up and rests included; missing for retests and climbing.",
            s -> Unit.MINUTE.toBase(s.minutes))
        .word(
            "intensity",
            INTENSITIES,
            "High if any exercise is hard, else low; retests and hard climbing are high.",
            s -> s.hard ? "high" : "low")
        .truth("hard", "Any exercise is hard; retests and hard climbing are.", s -> s.hard)
        .truth("eased", "It is in an eased week.", s -> s.eased)
        .quantity(
            "load", Dimension.LOAD_TIME, "Sum of load times time over all holds.", s -> s.load)
        .time("time-under-load", "All holds together.", s -> s.timeUnderLoad)
        .count(
            "end-reserve",
            "Least estimated share of capacity left at the end of any of its exercises; missing where"
                + " none is known, and for retests and climbing.",
            s ->
                s.exercises.stream()
                    .mapToDouble(ExerciseView::endReserve)
                    .filter(reserve -> !Double.isNaN(reserve))
                    .min()
                    .orElse(Double.NaN))
        .quantity(
            "body-mass",
            Dimension.MASS,
            "The body mass that loads were reckoned with; missing for retests and climbing.",
            s -> s.bodyMass)
        .many("exercises", Kind.EXERCISE, "Its exercises in order.", s -> s.exercises)
        .many("fingers", Kind.FINGER, FingerProperties.DOC, SessionView::fingers)
        .one("week", Kind.WEEK, "The week it is in.", s -> s.week)
        .one("block", Kind.BLOCK, "The block it is in.", SessionView::block)
        .one("plan", Kind.PLAN, "The plan.", s -> s.plan)
        .one("athlete", Kind.ATHLETE, "The athlete on the day.", SessionView::athlete);
  }

  private static void addDay(PropertyTable.Of<DayView> day) {
    day.number("date", Type.Plain.DATE, "The day.", d -> d.date.toEpochDay())
        .word("weekday", WEEKDAYS, "The weekday: mon, tue and so on.", d -> weekday(d.date))
        .truth("hard", "Something on it is hard: a session, a retest or climbing.", d -> d.hard)
        .truth("retest", "There is a retest.", d -> d.retest)
        .truth("climbing", "There is hard climbing.", d -> d.climbing)
        .time("minutes", "All sessions together.", d -> Unit.MINUTE.toBase(d.minutes()))
        .quantity(
            "load", Dimension.LOAD_TIME, "Sum of load times time over all holds.", DayView::load)
        .time("time-under-load", "All holds together.", DayView::timeUnderLoad)
        .many("sessions", Kind.SESSION, "Its sessions.", d -> d.sessions)
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.", d -> d.exercises)
        .many("fingers", Kind.FINGER, FingerProperties.DOC, DayView::fingers)
        .one("week", Kind.WEEK, "The week it is in.", d -> d.week)
        .one("block", Kind.BLOCK, "The block it is in.", DayView::block)
        .one("plan", Kind.PLAN, "The plan.", d -> d.plan)
        .one("athlete", Kind.ATHLETE, "The athlete on the day.", d -> d.plan.athleteOn(d.date));
  }

  private static void addPair(PropertyTable.Of<PairView> pair) {
    pair.one("earlier", Kind.SESSION, "The earlier session.", PairView::earlier)
        .one("later", Kind.SESSION, "The later session.", PairView::later)
        .time("gap", "Whole calendar days between the two, of 24 h each.", PairView::gap)
        .truth(
            "shared-fingers",
            "Some finger is used in both; climbing uses all four.",
            PairView::sharedFingers)
        .truth(
            "shared-hard-fingers",
            "Some finger is worked hard in both; retests and hard climbing work theirs hard.",
            PairView::sharedHardFingers)
        .one("plan", Kind.PLAN, "The plan.", p -> p.earlier().plan)
        .one("athlete", Kind.ATHLETE, "The athlete on the later day.", p -> p.later().athlete());
  }

  private static String weekday(LocalDate date) {
    return WEEKDAY_WORDS.get(date.getDayOfWeek().ordinal());
  }
}
