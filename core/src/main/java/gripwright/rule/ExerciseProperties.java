package gripwright.rule;

import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of exercises and grips. */
final class ExerciseProperties {

  private ExerciseProperties() {}

  static void addTo(List<PropertyTable.Entry> all) {
    addWork(new PropertyTable.Of<>(Kind.EXERCISE, ExerciseView.class, all));
    addHistory(new PropertyTable.Of<>(Kind.EXERCISE, ExerciseView.class, all));
    addPlace(new PropertyTable.Of<>(Kind.EXERCISE, ExerciseView.class, all));
    addGrip(new PropertyTable.Of<>(Kind.GRIP, Grip.class, all));
  }

  private static void addWork(PropertyTable.Of<ExerciseView> exercise) {
    exercise
        .one("grip", Kind.GRIP, "The grip.", ExerciseView::grip)
        .quantity("edge", Dimension.LENGTH, "Depth of the edge.", e -> e.edge)
        .word(
            "hands",
            Vocabulary.of("hands", (Object[]) Hands.values()),
            "Which hands hold: both, left or right.",
            e -> e.hands)
        .truth(
            "lifting",
            "A weight is lifted from the floor, so body mass plays no part.",
            e -> e.planned.setup().lifting())
        .word("protocol", Vocabulary.PROTOCOLS, "Name of the protocol.", e -> e.planned.protocol())
        .number(
            "level",
            Type.Plain.LEVEL,
            "Greatest level of any hold: as written or, if more, its load as a share of the maximum;"
                + " missing without either.",
            e -> e.level)
        .quantity(
            "total-load",
            Dimension.MASS,
            "Greatest load of any hold, on all hands that hold.",
            e -> e.totalLoad)
        .quantity(
            "added-load",
            Dimension.MASS,
            "What is added to body mass at the greatest load; negative where load is taken off.",
            e -> e.added)
        .quantity(
            "load", Dimension.LOAD_TIME, "Sum of load times time over all holds.", e -> e.load)
        .time("time-under-load", "All holds together.", e -> e.timeUnderLoad)
        .quantity(
            "impulse",
            Dimension.IMPULSE,
            "Sum of force times time over all holds.",
            e -> e.planned.impulse())
        .count("sets", "How many sets.", e -> e.sets)
        .count(
            "repetitions", "How many holds a set has.", e -> e.planned.scheme().repetitionsPerSet())
        .time("hold", "The longest hold.", e -> e.longestHold)
        .time("rest", "Rest between the holds of a set.", e -> e.rest)
        .time("set-rest", "Rest between sets.", e -> e.setRest)
        .count("order", "Position in the session, from 1.", e -> e.planned.order())
        .truth("hard", "It counts as hard.", e -> e.hard)
        .count(
            "end-reserve",
            "Estimated share of capacity left at its end, of fresh fingers at the beginning of the"
                + " session; missing where nothing is known of the maximum.",
            ExerciseView::endReserve);
  }

  private static void addHistory(PropertyTable.Of<ExerciseView> exercise) {
    exercise
        .truth(
            "rehabilitation",
            "The line follows a named practitioner's plan.",
            e -> e.planned.rehabilitation().isPresent())
        .truth(
            "meets-needs",
            "The athlete brings what the grip's own declaration asks for.",
            e -> e.athlete().meetsNeeds(e.grip()))
        .time(
            "familiar",
            "How long the athlete has used the grip, on the day; 0 for a grip not familiar.",
            e -> e.athlete().familiar(e.grip().name()))
        .truth(
            "uses-injured-finger",
            "A finger in use has an injury that is not cleared on the day.",
            e -> e.plan().history.usesOpenInjury(e))
        .truth(
            "uses-painful-finger",
            "A finger in use had strong, sharp, sudden or rising pain, logged in the 14 days before,"
                + " also in training or while climbing, and no injury written down.",
            e -> e.plan().history.usesPainfulFinger(e))
        .time(
            "since-clearance",
            "Time since an injury of a finger in use was cleared; missing if there was none.",
            e -> e.plan().history.sinceClearance(e))
        .number(
            "level-before",
            Type.Plain.LEVEL,
            "Greatest level of the nearest earlier week in which the finger that was cleared last was"
                + " used since; missing in the first such week.",
            e -> e.plan().history.levelBefore(e));
  }

  private static void addPlace(PropertyTable.Of<ExerciseView> exercise) {
    exercise
        .many("fingers", Kind.FINGER, FingerProperties.DOC, ExerciseView::fingersAtWork)
        .one("session", Kind.SESSION, "The session it is part of.", e -> e.session)
        .one("week", Kind.WEEK, "The week it is in.", ExerciseView::week)
        .one("block", Kind.BLOCK, "The block it is in.", e -> e.session.block())
        .one("plan", Kind.PLAN, "The plan.", ExerciseView::plan)
        .one("athlete", Kind.ATHLETE, "The athlete on the day.", ExerciseView::athlete)
        .number("date", Type.Plain.DATE, "The day.", e -> e.session.date.toEpochDay());
  }

  private static void addGrip(PropertyTable.Of<Grip> grip) {
    grip.word("name", Vocabulary.GRIPS, "Its name.", Grip::name)
        .word(
            "family",
            Vocabulary.of("grip family", (Object[]) GripFamily.values()),
            "How it is grouped: four, open, split or single.",
            g -> g.family().word())
        .count("fingers", "How many fingers hold.", g -> g.fingers().count());
    for (Finger finger : Finger.values()) {
      grip.truth(
          "uses-" + finger, "The " + finger + " finger holds.", g -> g.fingers().has(finger));
    }
  }
}
