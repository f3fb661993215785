package gripwright.rule.view;

import static gripwright.rule.Winter.FRONT_TWO;
import static gripwright.rule.Winter.HALF_CRIMP;
import static gripwright.rule.Winter.MONDAY;
import static gripwright.rule.Winter.line;

import gripwright.athlete.Injury;
import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.PropertyReaders;
import gripwright.expression.Type;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Sex;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.LogEntry;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.rule.Winter;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** A plan of which every property is read; {@code -} stands for what is missing. */
final class PropertyReader {

  static PlanView plan() {
    return Views.of(
        new Winter()
            .athlete(
                a ->
                    a.sex(Sex.FEMALE)
                        .familiar("first-two", 7)
                        .injury(
                            Injury.builder(Finger.RING, Structure.A2, MONDAY.minusDays(90))
                                .side(Side.LEFT)
                                .cleared(MONDAY.plusDays(2))
                                .build()))
            .log(new LogEntry.BodyMass(MONDAY.plusDays(7), Load.ofKilograms(61)))
            .log(LogEntry.Pain.builder(MONDAY.plusDays(12), Finger.INDEX, 8).build())
            .weeklyRise(0.05)
            .eased(2)
            .session(
                0, line(FRONT_TWO, 50).hands(Hands.LEFT).edge(15).sets(2), line(HALF_CRIMP, 30))
            .session("power", 4, line(HALF_CRIMP, 60), line(FRONT_TWO, 85).bodyMass(65))
            .session(9, line(HALF_CRIMP, 40))
            .session(14, line(HALF_CRIMP, 50).rehabilitation("a physiotherapist"))
            .climbing(6)
            .retest(20, HALF_CRIMP));
  }

  /** Writes the value of every property of a thing. */
  static String all(Kind kind, Object thing) {
    return Property.of(kind).stream()
        .map(p -> p.name() + " " + value(p, thing) + "\n")
        .collect(Collectors.joining());
  }

  private static String value(Property property, Object thing) {
    PropertyReaders.Access access = Readers.ALL.of(property);
    if (access instanceof PropertyReaders.NumberAccess number) {
      double value = number.read().applyAsDouble(thing);
      if (Double.isNaN(value)) {
        return "-";
      }
      return property.type() == Type.Plain.DATE
          ? LocalDate.ofEpochDay((long) value).toString()
          : Numbers.plain(value, 2);
    }
    if (access instanceof PropertyReaders.TruthAccess truth) {
      return truth.read().test(thing) ? "yes" : "no";
    }
    return name(((PropertyReaders.ObjectAccess) access).read().apply(thing));
  }

  private static String name(Object thing) {
    if (thing == null) {
      return "-";
    }
    if (thing instanceof List<?> several) {
      return several.stream().map(PropertyReader::name).collect(Collectors.joining(", "));
    }
    if (thing instanceof ExerciseView exercise) {
      return exercise.grip().name() + " " + exercise.session.date.getDayOfMonth();
    }
    if (thing instanceof SessionView session) {
      return session.name + " " + session.date.getDayOfMonth();
    }
    if (thing instanceof DayView day) {
      return Integer.toString(day.date.getDayOfMonth());
    }
    if (thing instanceof WeekView week) {
      return "week " + week.number();
    }
    if (thing instanceof BlockView block) {
      return block.name();
    }
    if (thing instanceof PlanView plan) {
      return plan.schedule.plan().name();
    }
    if (thing instanceof AthleteView athlete) {
      return athlete.athlete.name() + " on " + athlete.date;
    }
    if (thing instanceof FingerView finger) {
      return finger.work().side() + " " + finger.work().finger();
    }
    return thing instanceof Grip grip ? grip.name() : thing.toString();
  }

  static String value(Kind kind, Object thing, String property) {
    return value(Property.find(kind, property).orElseThrow(), thing);
  }

  private PropertyReader() {}
}
