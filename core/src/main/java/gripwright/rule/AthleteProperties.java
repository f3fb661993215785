package gripwright.rule;

import gripwright.hand.Sex;
import gripwright.quantity.Dimension;
import java.util.List;

/** The properties of athletes. */
final class AthleteProperties {

  private AthleteProperties() {}

  static void addTo(List<PropertyTable.Entry> all) {
    new PropertyTable.Of<>(Kind.ATHLETE, AthleteView.class, all)
        .word("name", Vocabulary.ATHLETES, "The name.", a -> a.athlete.name())
        .time(
            "age",
            "Age on the day, in calendar months: 192 months is the sixteenth birthday.",
            AthleteView::age)
        .time("trained", "Structured finger training so far, on the day.", AthleteView::trained)
        .number("ability", Type.Plain.GRADE, "The level.", a -> a.athlete.ability().ircra())
        .quantity(
            "body-mass",
            Dimension.MASS,
            "Body mass as last logged on or before the day.",
            AthleteView::bodyMass)
        .word(
            "sex",
            Vocabulary.of("sex", (Object[]) Sex.values()),
            "Female or male; missing where it is not written.",
            a -> a.athlete.sex().map(Sex::word).orElse(null))
        .truth("injured", "An injury is not cleared on the day.", AthleteView::injured);
  }
}
