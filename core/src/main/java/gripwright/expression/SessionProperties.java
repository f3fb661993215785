package gripwright.expression;

import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of sessions, days and pairs of sessions. */
final class SessionProperties {

  static final Vocabulary INTENSITIES = Vocabulary.of("intensity", "high", "low");
  private static final List<String> WEEKDAY_WORDS =
      List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");
  static final Vocabulary WEEKDAYS = Vocabulary.of("weekday", WEEKDAY_WORDS.toArray());

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
            "What it is: training and, in pairs only, a retest or climbing.")
        .number("date", Type.Plain.DATE, "The day.")
        .word("weekday", WEEKDAYS, "The weekday: mon, tue and so on.")
        .time(
            "minutes",
            "How long it takes, warm-up and rests included; missing for retests and climbing.")
        .word(
            "intensity",
            INTENSITIES,
            "High if any exercise is hard, else low; retests and hard climbing are high.")
        .truth("hard", "Any exercise is hard; retests and hard climbing are.")
        .truth("eased", "It is in an eased week.")
        .quantity("load", Dimension.LOAD_TIME, "Sum of load times time over all holds.")
        .time("time-under-load", "All holds together.")
        .count(
            "end-reserve",
            "Least estimated share of capacity left at the end of any of its exercises; missing where"
                + " none is known, and for retests and climbing.")
        .quantity(
            "body-mass",
            Dimension.MASS,
            "The body mass that loads were calculated with; missing for retests and climbing.")
        .many("exercises", Kind.EXERCISE, "Its exercises in order.")
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("week", Kind.WEEK, "The week it is in.")
        .one("block", Kind.BLOCK, "The block it is in.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on the day.");
  }

  private static void addDay(PropertyCatalogue.Of day) {
    day.number("date", Type.Plain.DATE, "The day.")
        .word("weekday", WEEKDAYS, "The weekday: mon, tue and so on.")
        .truth("hard", "Something on it is hard: a session, a retest or climbing.")
        .truth("retest", "There is a retest.")
        .truth("climbing", "There is hard climbing.")
        .time("minutes", "All sessions together.")
        .quantity("load", Dimension.LOAD_TIME, "Sum of load times time over all holds.")
        .time("time-under-load", "All holds together.")
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
        .truth("shared-fingers", "Some finger is used in both; climbing uses all four.")
        .truth(
            "shared-hard-fingers",
            "Some finger is worked hard in both; retests and hard climbing work theirs hard.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on the later day.");
  }
}
