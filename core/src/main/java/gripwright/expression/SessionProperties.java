package gripwright.expression;

import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of sessions, days and pairs of sessions. */
final class SessionProperties {

  static final Vocabulary INTENSITIES = Vocabulary.of("intensity", "high", "low");
  private static final List<String> WEEKDAY_WORDS =
      List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  static final Vocabulary WEEKDAYS = Vocabulary.of("weekday", WEEKDAY_WORDS.toArray());

  private static final String HAND =
      "For the hand that has more, in all plans of the athlete and logged outside"
          + " them, without tests: ";
  private static final String WINDOW =
      " in all plans of the athlete and logged outside them, without"
          + " rehabilitation. Of this plan, days up to this one count; of plans that"
          + " began before it, all days.";

  private SessionProperties() {}

  static void addTo(List<Property> all) {
    addSession(new PropertyCatalogue.Of(Kind.SESSION, all));
    addDay(new PropertyCatalogue.Of(Kind.DAY, all));
    addPair(new PropertyCatalogue.Of(Kind.PAIR, all));
  }

  private static void addSession(PropertyCatalogue.Of session) {
    session
        .word("name", Vocabulary.SESSIONS, "Its name.")
        .word(
            "what",
            Vocabulary.of("kind-of-session", "training", "retest", "climbing"),
            "Kind of session: training or, only in pairs, a retest or climbing.")
        .number("date", Type.Plain.DATE, "The day.")
        .word("weekday", WEEKDAYS, "The weekday: mon, tue and so on.")
        .word("place", Vocabulary.PLACES, "Name of the place; empty where none is written.")
        .time("minutes", "Duration with warm-up and rests; missing for retests and climbing.")
        .word(
            "intensity",
            INTENSITIES,
            "High if any exercise is hard, otherwise low; retests and hard climbing are" + " high.")
        .truth("hard", "At least one exercise is hard; retests and hard climbing are hard.")
        .truth("eased", "The session is in an eased (deload) week.")
        .quantity("load", Dimension.LOAD_TIME, "Load-time: sum of load times time over all holds.")
        .time("time-under-load", "Time under tension: the sum of all holds.")
        .count(
            "end-reserve",
            "Lowest estimated share of capacity left at the end of any of its"
                + " exercises; missing if none is known, and for retests and climbing.")
        .count("most-holds", "Number of holds of the hand that has more.")
        .time("most-time-under-load", "Time under tension of the hand that holds longer.")
        .quantity(
            "body-mass",
            Dimension.MASS,
            "The body mass that loads are calculated with; missing for retests and" + " climbing.")
        .time(
            "warm-up",
            "Warm-up before the first hold at 80 % max: the planned warm-up, work below"
                + " 60 % max and climbing of that day; missing if no hold is that hard, or if"
                + " nothing is known about the warm-up.")
        .count(
            "hard-efforts",
            "Number of logged sessions in a row, up to this one, with an effort of 9.5"
                + " or more where the plan has less; missing for sessions ahead.")
        .many("exercises", Kind.EXERCISE, "Its exercises, in order.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("week", Kind.WEEK, "The week it is in.")
        .one("block", Kind.BLOCK, "The block it is in.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on the day.");
  }

  private static void addDay(PropertyCatalogue.Of day) {
    day.number("date", Type.Plain.DATE, "The day.")
        .word("weekday", WEEKDAYS, "The weekday: mon, tue and so on.")
        .truth("hard", "A session, a retest or climbing on the day is hard.")
        .truth("retest", "A retest is on the day.")
        .truth("climbing", "Hard climbing is on the day.")
        .time("minutes", "Total time of all sessions.")
        .quantity("load", Dimension.LOAD_TIME, "Load-time: sum of load times time over all holds.")
        .time("time-under-load", "Time under tension: the sum of all holds.")
        .count(
            "other-sessions",
            "Number of sessions on the day in the athlete's plans that began before" + " this one.")
        .count(
            "sessions-in-7",
            "Most sessions in any seven consecutive days that contain this one: those"
                + " of this plan up to the day, and those of the athlete's earlier plans and"
                + " of the log outside plans.")
        .count(
            "planned-sessions",
            "Number of sessions on the day in all plans of the athlete, counted on"
                + " their planned days, as if nothing had been logged in this plan.")
        .count("planned-in-7", "The value of `sessions-in-7` with sessions on their planned days.")
        .count("hand-holds", HAND + "holds.")
        .count("hand-holds-above-80", HAND + "holds above 80 % max.")
        .time("hand-time-at-80", HAND + "time under tension at 80 % max or more.")
        .time("hand-time-at-60", HAND + "time under tension at 60 % max or more.")
        .time("grip-time-at-60", HAND + "time under tension at 60 % max or more on one grip.")
        .time("hand-time-at-40", HAND + "time under tension at 40 % max or more.")
        .count("hand-sets-at-60", HAND + "sets with a hold at 60 % max or more.")
        .count(
            "days-at-80",
            "Most days with work at 80 % max or more, or a test, in any seven"
                + " consecutive days that contain this one,"
                + WINDOW)
        .count(
            "days-at-70",
            "Most days with work at 70 % max or more, or a test, in any seven"
                + " consecutive days that contain this one,"
                + WINDOW)
        .count(
            "rest-days",
            "Fewest days without work at 60 % max or more, a test or hard climbing, in"
                + " any seven consecutive days that contain this one,"
                + WINDOW)
        .time(
            "until-fresh",
            "Whole days of 24 h until the next day that a plan of the athlete works towards; missing"
                + " if there is none.")
        .many("sessions", Kind.SESSION, "Its sessions.")
        .many("exercises", Kind.EXERCISE, "The exercises of its sessions.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("week", Kind.WEEK, "The week it is in.")
        .one("block", Kind.BLOCK, "The block it is in.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on the day.");
  }

  private static void addPair(PropertyCatalogue.Of pair) {
    pair.one("earlier", Kind.SESSION, "The earlier session.")
        .one("later", Kind.SESSION, "The later session.")
        .time("gap", "Whole calendar days between the two, of 24 h each.")
        .time(
            "pause",
            "From the end of the earlier to the start of the later, where the time of day of both"
                + " is known; otherwise as `gap`.")
        .truth("shared-fingers", "At least one finger is used in both; climbing uses all four.")
        .truth(
            "shared-hard-fingers",
            "At least one finger is worked hard in both; retests and hard climbing are"
                + " hard for their fingers.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on the later day.");
  }
}
