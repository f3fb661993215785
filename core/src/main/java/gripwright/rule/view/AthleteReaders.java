package gripwright.rule.view;

import gripwright.expression.Kind;
import gripwright.hand.Sex;

/** Readers of the properties of athletes. */
final class AthleteReaders {

  private AthleteReaders() {}

  static void addTo(Readers all) {
    all.<AthleteView>of(Kind.ATHLETE)
        .object("name", a -> a.athlete.name())
        .number("age", AthleteView::age)
        .number("trained", AthleteView::trained)
        .number("ability", a -> a.athlete.ability().ircra())
        .number("body-mass", AthleteView::bodyMass)
        .object("sex", a -> a.athlete.sex().map(Sex::word).orElse(null))
        .number("hard-climbing-days", a -> AthleteDays.usualHardDays(a.athlete))
        .number("hard-climbing-time", a -> AthleteDays.longestUsual(a.athlete))
        .truth("injured", AthleteView::injured);
  }
}
