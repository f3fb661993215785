package gripwright.expression;

import gripwright.hand.Sex;
import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of athletes. */
final class AthleteProperties {

  private AthleteProperties() {}

  static void addTo(List<Property> all) {
    new PropertyCatalogue.Of(Kind.ATHLETE, all)
        .word("name", Vocabulary.ATHLETES, "Name of the athlete.")
        .time("age", "Age on the day, in calendar months: 192 months is the sixteenth birthday.")
        .time("trained", "Time of structured finger training up to the day.")
        .number("ability", Type.Plain.GRADE, "Climbing level.")
        .quantity("body-mass", Dimension.MASS, "Body mass last logged on or before the day.")
        .word(
            "sex",
            Vocabulary.of("sex", (Object[]) Sex.values()),
            "Female or male; missing where it is not written.")
        .count("hard-climbing-days", "Number of weekdays with usual hard climbing.")
        .time("hard-climbing-time", "Longest usual climbing on one of these weekdays.")
        .truth("injured", "An injury is not cleared on the day.");
  }
}
