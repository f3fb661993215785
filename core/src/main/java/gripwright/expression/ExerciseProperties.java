package gripwright.expression;

import gripwright.grip.GripFamily;
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
            "Which hands hold: both, left or right.")
        .truth("lifting", "A weight is lifted from the floor, so body mass plays no part.")
        .word("protocol", Vocabulary.PROTOCOLS, "Name of the protocol.")
        .number(
            "level",
            Type.Plain.LEVEL,
            "Greatest level of any hold: as written or, if more, its load as a share of the maximum;"
                + " missing without either.")
        .quantity(
            "total-load", Dimension.MASS, "Greatest load of any hold, on all hands that hold.")
        .quantity(
            "added-load",
            Dimension.MASS,
            "What is added to body mass at the greatest load; negative where load is taken off.")
        .quantity("load", Dimension.LOAD_TIME, "Sum of load times time over all holds.")
        .time("time-under-load", "All holds together.")
        .quantity("impulse", Dimension.IMPULSE, "Sum of force times time over all holds.")
        .count("sets", "How many sets.")
        .count("repetitions", "How many holds a set has.")
        .time("hold", "The longest hold.")
        .time("rest", "Rest between the holds of a set.")
        .time("set-rest", "Rest between sets.")
        .count("order", "Position in the session, from 1.")
        .truth("hard", "It counts as hard.")
        .count(
            "end-reserve",
            "Estimated share of capacity left at its end, of fresh fingers at the beginning of the"
                + " session; missing where nothing is known of the maximum.");
  }

  private static void addHistory(PropertyCatalogue.Of exercise) {
    exercise
        .truth("rehabilitation", "The line follows a named practitioner's plan.")
        .truth("meets-needs", "The athlete brings what the grip's own declaration asks for.")
        .time(
            "familiar",
            "How long the athlete has used the grip, on the day; 0 for a grip not familiar.")
        .truth(
            "uses-injured-finger", "A finger in use has an injury that is not cleared on the day.")
        .truth(
            "uses-painful-finger",
            "A finger in use had strong, sharp, sudden or rising pain, logged in the 14 days before,"
                + " also in training or while climbing, and no injury written down.")
        .time(
            "since-clearance",
            "Time since an injury of a finger in use was cleared; missing if there was none.")
        .number(
            "level-before",
            Type.Plain.LEVEL,
            "Greatest level of the nearest earlier week in which the finger that was cleared last was"
                + " used since; missing in the first such week.");
  }

  private static void addPlace(PropertyCatalogue.Of exercise) {
    exercise
        .many("fingers", Kind.FINGER, FingerProperties.DOC)
        .one("session", Kind.SESSION, "The session it is part of.")
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
            "How it is grouped: four, open, split or single.")
        .count("fingers", "How many fingers hold.");
    for (Finger finger : Finger.values()) {
      grip.truth("uses-" + finger, "The " + finger + " finger holds.");
    }
  }
}
