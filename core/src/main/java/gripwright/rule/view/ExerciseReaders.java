package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.grip.Grip;
import gripwright.hand.Finger;

/** Readers of the properties of exercises and grips. */
final class ExerciseReaders {

  private ExerciseReaders() {}

  static void addTo(Readers all) {
    addWork(all.of(Kind.EXERCISE));
    addHistory(all.of(Kind.EXERCISE));
    addPlace(all.of(Kind.EXERCISE));
    addGrip(all.of(Kind.GRIP));
  }

  private static void addWork(Readers.Of<ExerciseView> exercise) {
    exercise
        .object("grip", ExerciseView::grip)
        .number("edge", e -> e.edge)
        .object("hands", e -> e.hands)
        .truth("lifting", e -> e.setup.lifting())
        .object("protocol", e -> e.protocol)
        .number("level", e -> e.level)
        .number("total-load", e -> e.totalLoad)
        .number("added-load", e -> e.added)
        .number("load", e -> e.load)
        .number("time-under-load", e -> e.timeUnderLoad)
        .number("impulse", e -> e.impulse)
        .number("sets", e -> e.sets)
        .number("repetitions", e -> e.repetitions)
        .number("hold", e -> e.longestHold)
        .number("rest", e -> e.rest)
        .number("set-rest", e -> e.setRest)
        .number("order", e -> e.order)
        .truth("hard", e -> e.hard)
        .truth("to-failure", ExerciseView::toFailure)
        .truth("warm-up", ExerciseView::warmUp)
        .truth("known-light", e -> e.knownLight)
        .number("light-load", e -> e.lightLoad)
        .truth("test", e -> e.test)
        .truth("tested", e -> e.tested)
        .truth("logged", e -> e.plan().timeline.isPast(e.date()))
        .number("since-test", ExerciseView::sinceTest)
        .number("end-reserve", ExerciseView::endReserve);
  }

  private static void addHistory(Readers.Of<ExerciseView> exercise) {
    exercise
        .truth("rehabilitation", e -> e.rehabilitation)
        .truth("meets-needs", e -> e.athlete().meetsNeeds(e.grip()))
        .number("familiar", e -> e.athlete().familiar(e.grip().name()))
        .truth("uses-injured-finger", e -> e.plan().history.usesOpenInjury(e))
        .truth("uses-painful-finger", e -> e.plan().history.usesPainfulFinger(e))
        .truth("uses-growing-joint-in-pain", e -> e.plan().history.usesGrowingJointInPain(e))
        .truth("hurts-too-much", e -> e.plan().history.hurtsTooMuch(e))
        .number("since-clearance", e -> e.plan().history.sinceClearance(e))
        .number("level-before", e -> e.plan().history.levelBefore(e))
        .number("since-pain", e -> e.plan().history.sincePain(e))
        .number("level-since-pain", e -> e.plan().history.levelSincePain(e));
  }

  private static void addPlace(Readers.Of<ExerciseView> exercise) {
    exercise
        .object("fingers", ExerciseView::fingersAtWork)
        .object("session", e -> e.session)
        .object("week", ExerciseView::week)
        .object("block", e -> e.session.block())
        .object("plan", ExerciseView::plan)
        .object("athlete", ExerciseView::athlete)
        .number("date", e -> e.session.date.toEpochDay());
  }

  private static void addGrip(Readers.Of<Grip> grip) {
    grip.object("name", Grip::name)
        .object("family", g -> g.family().word())
        .object("structure", g -> g.structure().word())
        .truth("fully-crimped", Grip::fullCrimp)
        .number("fingers", g -> g.fingers().count());
    for (Finger finger : Finger.values()) {
      grip.truth("uses-" + finger, g -> g.fingers().has(finger));
    }
  }
}
