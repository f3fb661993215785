package gripwright.expression;

import gripwright.grip.GripFamily;
import gripwright.grip.GripStructure;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of exercises and grips. */
final class ExerciseProperties {

  private ExerciseProperties() {}

  static void addTo(List<Property> all) {
    addWork(new PropertyCatalogue.Of(Kind.EXERCISE, all));
    addHistory(new PropertyCatalogue.Of(Kind.EXERCISE, all));
    addPlace(new PropertyCatalogue.Of(Kind.EXERCISE, all));
    addGrip(new PropertyCatalogue.Of(Kind.GRIP, all));
  }

  private static void addWork(PropertyCatalogue.Of exercise) {
    exercise
        .one("grip", Kind.GRIP, "The grip.")
        .quantity("edge", Dimension.LENGTH, "Depth of the edge.")
        .word(
            "hands",
            Vocabulary.of("hands", (Object[]) Hands.values()),
            "The hands that hold: both, left or right.")
        .truth("lifting", "A weight is lifted from the floor, so body mass doesn't count.")
        .word("protocol", Vocabulary.PROTOCOLS, "Name of the protocol.")
        .number(
            "level",
            Type.Plain.LEVEL,
            "Highest level of any hold: the written level or, if higher, the load as a"
                + " share of the maximum; missing if neither is known.")
        .quantity(
            "total-load",
            Dimension.MASS,
            "Greatest load of any hold, in total over the hands that hold.")
        .quantity(
            "added-load",
            Dimension.MASS,
            "Load added to body mass at the greatest load; negative for assistance.")
        .quantity("load", Dimension.LOAD_TIME, "Load-time: sum of load times time over all holds.")
        .time("time-under-load", "Time under tension: the sum of all holds.")
        .quantity("impulse", Dimension.IMPULSE, "Sum of force times time over all holds.")
        .count("sets", "Number of sets.")
        .count("repetitions", "Number of holds in a set.")
        .time(
            "hold",
            "The longest hold; holds with less than 1 s of rest between them count as" + " one.")
        .time("rest", "Rest between the holds of a set.")
        .time("set-rest", "Rest between sets.")
        .count("order", "Position in the session, from 1.")
        .truth("hard", "The exercise is hard.")
        .truth(
            "to-failure",
            "A hold goes to failure: it is written as to-failure, reserve 0 s or effort"
                + " 10, its bound (`up to`) is beyond the predicted time to failure, or the"
                + " mean of the estimate leaves less capacity at the end than the greatest"
                + " load needs.")
        .truth(
            "warm-up",
            "The line is written `as warm-up` and light enough: below 80 % max and not"
                + " hard, in a session whose warm-up lines have at most half of the"
                + " load-time. Any other line is work, whatever is written.")
        .truth(
            "known-light",
            "The greatest load is at most what is known to be light without a test: a"
                + " share of body mass that depends on fingers, hands and edge. The share is"
                + " smaller under 16, with an injury of a finger in use that is not cleared,"
                + " and in the 12 weeks after clearance.")
        .quantity(
            "light-load",
            Dimension.MASS,
            "The greatest load that is known to be light without a test, see"
                + " known-light; missing if no load is known to be light, and for tests.")
        .truth(
            "test",
            "It is a planned test of one setup: a hold at 100 % max whose load is not"
                + " known in advance. The built-in rules check tests like exercises; other"
                + " rules do so only if they name this property. Sums of load, time and sets"
                + " leave tests out.")
        .truth(
            "tested",
            "It is a planned test that was logged. It is done, so no upper limit"
                + " applies to it.")
        .truth("logged", "The log shows what was done on its day.")
        .time(
            "since-test",
            "Of a test: time since the athlete's last test in an earlier week, planned"
                + " or logged, in whole weeks of the plan; missing if there is none.")
        .count(
            "end-reserve",
            "Estimated share of capacity left at the end of the exercise, relative to"
                + " fresh fingers at the start of the session; missing if the maximum is"
                + " unknown.");
  }

  private static void addHistory(PropertyCatalogue.Of exercise) {
    exercise
        .truth("rehabilitation", "The line follows a named practitioner's plan.")
        .truth(
            "meets-needs",
            "The athlete meets the prerequisites of the grip, and those of the"
                + " catalogue's grip that it replaces.")
        .time(
            "familiar",
            "How long the athlete has used the grip, up to the day; 0 for a grip that"
                + " is not familiar.")
        .truth(
            "uses-injured-finger", "A finger in use has an injury that is not cleared on the day.")
        .truth(
            "uses-painful-finger",
            "A finger in use has pain that stops training: it was above 5, sharp or"
                + " sudden, or above 2 and rising two weeks in a row, also in training or"
                + " while climbing. Since then there were no scores of 2 or less on two days"
                + " at least 48 h apart, and no injury was cleared. An injury that is not"
                + " cleared has its own property, uses-injured-finger.")
        .truth(
            "uses-growing-joint-in-pain",
            "A finger in use had pain at a growth plate or in the PIP joint before the"
                + " athlete was 18, and no injury was written and cleared since. A single"
                + " score of 1 or 2 in the PIP joint counts until two scores of 0 at least 48"
                + " h apart.")
        .truth(
            "hurts-too-much",
            "Pain of a finger in use is too high for rehabilitation: in the seven days"
                + " up to its last score it was above 5, sharp or sudden, or above 2 and"
                + " above that of the seven days before. Pain up to the day of an injury is"
                + " the injury itself.")
        .time(
            "since-clearance",
            "Time since an injury of a finger in use was cleared, except of the skin;"
                + " missing if there was none.")
        .number(
            "level-before",
            Type.Plain.LEVEL,
            "Highest level of the last earlier week in which the most recently cleared"
                + " finger was used after clearance, in this plan, in an earlier one or in"
                + " the log; missing in the first such week.")
        .time(
            "since-pain",
            "Time since the end of a stop for pain of a finger in use, with two scores"
                + " of 2 or less; missing if there was none.")
        .number(
            "level-since-pain",
            Type.Plain.LEVEL,
            "Highest level of the last earlier week in which the finger was used after"
                + " that stop; missing in the first such week.");
  }

  private static void addPlace(PropertyCatalogue.Of exercise) {
    exercise
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("session", Kind.SESSION, "The session that it belongs to.")
        .one("week", Kind.WEEK, "The week it is in.")
        .one("block", Kind.BLOCK, "The block it is in.")
        .one("plan", Kind.PLAN, "The plan.")
        .one("athlete", Kind.ATHLETE, "The athlete on the day.")
        .number("date", Type.Plain.DATE, "The day.");
  }

  private static void addGrip(PropertyCatalogue.Of grip) {
    grip.word("name", Vocabulary.GRIPS, "Its name.")
        .word(
            "family",
            Vocabulary.of("grip-family", (Object[]) GripFamily.values()),
            "The declared family: four, open, split or single. Built-in rules use the"
                + " structure instead.")
        .word(
            "structure",
            Vocabulary.of("grip-structure", (Object[]) GripStructure.values()),
            "What the fingers and bands make of the grip: four (all four fingers), open"
                + " (three, the outer two with the middle joint at 45 deg or less), split"
                + " (two, or three that are not open) or single. A grip that replaces one of"
                + " the catalogue counts at least as strictly as that one.")
        .truth(
            "fully-crimped",
            "The grip is a full crimp by its bands: on two fingers the end joint is"
                + " wholly below 0 deg and the middle joint from 75 deg, or the middle joint"
                + " wholly above 100 deg; or it replaces the catalogue's full crimp.")
        .count("fingers", "Number of fingers that hold.");
    for (Finger finger : Finger.values()) {
      grip.truth("uses-" + finger, "The " + finger + " finger holds.");
    }
  }
}
