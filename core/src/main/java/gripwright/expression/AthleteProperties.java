package gripwright.expression;

import gripwright.hand.Sex;
import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of athletes. */
final class AthleteProperties {

  private AthleteProperties() {}

  static void addTo(List<Property> all) {
    new PropertyCatalogue.Of(Kind.ATHLETE, all)
        .word("name", Vocabulary.ATHLETES, "The name.")
        .time("age", "Age on the day, in calendar months: 192 months is the sixteenth birthday.")
        .time("trained", "Structured finger training so far, on the day.")
        .number("ability", Type.Plain.GRADE, "The level.")
        .quantity("body-mass", Dimension.MASS, "Body mass as last logged on or before the day.")
        .word(
            "sex",
            Vocabulary.of("sex", (Object[]) Sex.values()),
            "Female or male; missing where it is not written.")
        .truth("injured", "An injury is not cleared on the day.");
  }
}
