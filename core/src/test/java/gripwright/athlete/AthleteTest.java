package gripwright.athlete;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.hand.Finger;
import gripwright.hand.Hand;
import gripwright.hand.Structure;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AthleteTest {

  private static Athlete.Builder eira(LocalDate born) {
    return Athlete.named("eira")
        .born(born)
        .bodyMass(Load.ofKilograms(52))
        .trained(18)
        .ability(Ability.of(GradeScale.FRENCH, "6c"))
        .hand(Hand.ofLength(Length.ofMillimetres(170)))
        .available(DayOfWeek.MONDAY, Duration.ofMinutes(60))
        .edge(Length.ofMillimetres(20));
  }

  @Test
  void aBirthdayCountsFromItsDay() {
    Athlete athlete = eira(LocalDate.of(2011, 3, 15)).build();
    assertEquals(191, athlete.ageInMonths(LocalDate.of(2027, 3, 14)));
    assertEquals(192, athlete.ageInMonths(LocalDate.of(2027, 3, 15)));
  }

  @Test
  void leapDayBirthdayIsOnTheLeapDayOfALeapYear() {
    Athlete athlete = eira(LocalDate.of(2012, 2, 29)).build();
    assertEquals(191, athlete.ageInMonths(LocalDate.of(2028, 2, 28)));
    assertEquals(192, athlete.ageInMonths(LocalDate.of(2028, 2, 29)));
  }

  @Test
  void experienceGrowsWithTheCalendarFromTheDayItIsStatedFor() {
    LocalDate plan = LocalDate.of(2027, 1, 1);
    Athlete.Experience open = new Athlete.Experience(12, Optional.empty());
    assertEquals(12, open.monthsOn(plan, plan));
    assertEquals(24, open.monthsOn(plan.plusDays(365), plan), 0.02);
    Athlete.Experience dated = new Athlete.Experience(12, Optional.of(plan.minusDays(365)));
    assertEquals(24, dated.monthsOn(plan, plan), 0.02);
    assertEquals(0, open.monthsOn(plan.minusYears(5), plan));
  }

  /** Inches are written with two digits: 0.79 inch is 20.07 mm, 0.78 inch is 19.81 mm. */
  @Test
  void anEdgeInInchesIsTheOneInMillimetresThatItWasRoundedFrom() {
    Equipment equipment = eira(LocalDate.of(2000, 1, 1)).build().equipment();
    for (double depth : new double[] {19.8, 20, 20.066, 20.2}) {
      assertTrue(equipment.has(Length.ofMillimetres(depth)), depth + " mm");
    }
    for (double depth : new double[] {19.79, 20.21, 20.32}) {
      assertFalse(equipment.has(Length.ofMillimetres(depth)), depth + " mm");
    }
  }

  @Test
  void nobodyIsAvailableWhileAway() {
    LocalDate monday = LocalDate.of(2027, 3, 1);
    Athlete athlete =
        eira(LocalDate.of(1990, 1, 1))
            .away(new Athlete.Absence(monday, monday, Optional.empty()))
            .build();
    assertEquals(Duration.ZERO, athlete.availableOn(monday));
    assertEquals(Duration.ofHours(1), athlete.availableOn(monday.plusWeeks(1)));
    assertEquals(Duration.ZERO, athlete.availableOn(monday.plusDays(1)));
  }

  @Test
  void aNamedDateCountsBeforeAFromLineAndThatBeforeAWeekday() {
    LocalDate monday = LocalDate.of(2027, 3, 1);
    Slot later = from(monday.plusWeeks(2), Optional.of(monday.plusWeeks(5)), 2, 30);
    Athlete athlete =
        eira(LocalDate.of(1990, 1, 1))
            .available(from(monday, Optional.empty(), 1, 45))
            .available(later)
            .available(Slot.on(monday.plusWeeks(2), Optional.empty(), Duration.ofMinutes(20)))
            .away(new Athlete.Absence(monday, monday.plusWeeks(2), Optional.empty()))
            .build();
    assertEquals(Duration.ofMinutes(60), athlete.availableOn(monday.minusWeeks(1)));
    assertEquals(Duration.ZERO, athlete.availableOn(monday), "away");
    assertTrue(athlete.losesDayAway(monday));
    assertEquals(
        Duration.ofMinutes(20), athlete.availableOn(monday.plusWeeks(2)), "in spite of it");
    assertFalse(athlete.losesDayAway(monday.plusWeeks(2)));
    assertEquals(
        Duration.ofMinutes(45), athlete.availableOn(monday.plusWeeks(3)), "the other week");
    assertEquals(Duration.ofMinutes(30), athlete.availableOn(monday.plusWeeks(4)));
    assertEquals(
        Duration.ofMinutes(45), athlete.availableOn(monday.plusWeeks(6)), "after the last");
  }

  private static Slot from(LocalDate from, Optional<LocalDate> to, int every, int minutes) {
    return new Slot(
        new SlotDay.Weekly(DayOfWeek.MONDAY, Optional.of(new Span(from, to, every))),
        Optional.empty(),
        Duration.ofMinutes(minutes));
  }

  @Test
  void slotsOfADayHaveTimesThatDoNotOverlap() {
    LocalDate day = LocalDate.of(2027, 3, 1);
    Duration hour = Duration.ofHours(1);
    Athlete.Builder eira = eira(LocalDate.of(1990, 1, 1)).available(List.of());
    eira.available(Slot.on(DayOfWeek.MONDAY, LocalTime.of(18, 0), hour));
    eira.available(Slot.on(DayOfWeek.MONDAY, LocalTime.of(7, 0), hour));
    assertEquals(
        List.of(7, 18),
        eira.build().slotsOn(day).stream().map(s -> s.at().orElseThrow().getHour()).toList());
    eira.available(Slot.on(day, Optional.empty(), hour)); // counts alone
    assertEquals(1, eira.build().slotsOn(day).size());
    eira.available(Slot.on(DayOfWeek.MONDAY, LocalTime.of(17, 1), hour));
    assertThrows(IllegalArgumentException.class, eira::build);
    assertThrows(
        IllegalArgumentException.class, () -> Slot.on(DayOfWeek.MONDAY, LocalTime.of(23, 1), hour));
  }

  @Test
  void anInjuryIsOpenUntilTheDayItIsCleared() {
    LocalDate hurt = LocalDate.of(2027, 2, 3);
    LocalDate cleared = LocalDate.of(2027, 6, 20);
    Injury injury = Injury.builder(Finger.RING, Structure.A2, hurt).cleared(cleared).build();
    assertFalse(injury.openOn(hurt.minusDays(1)));
    assertTrue(injury.openOn(hurt));
    assertTrue(injury.openOn(cleared.minusDays(1)));
    assertFalse(injury.openOn(cleared));
    assertThrows(
        IllegalArgumentException.class,
        () -> Injury.builder(Finger.RING, Structure.A2, cleared).cleared(hurt).build());
  }

  @Test
  void anInjuryReturnsForTwelveWeeksAndNamesWhoClearedIt() {
    LocalDate hurt = LocalDate.of(2027, 2, 3);
    LocalDate cleared = LocalDate.of(2027, 6, 20);
    Injury injury = Injury.builder(Finger.RING, Structure.A2, hurt).cleared(cleared).build();
    assertFalse(injury.isReturning(cleared.minusDays(1)));
    assertTrue(injury.isReturning(cleared));
    assertTrue(injury.isReturning(cleared.plusDays(83)));
    assertFalse(injury.isReturning(cleared.plusDays(84)));
    assertTrue(injury.isReturning(hurt, cleared));
    assertFalse(injury.isReturning(hurt, cleared.minusDays(1)));
    assertEquals(Optional.of("therapist"), injury.clearedBy("therapist").clearedBy());
    assertThrows(IllegalArgumentException.class, () -> injury.clearedBy(" . "));
    Injury skin = Injury.builder(Finger.RING, Structure.SKIN, hurt).cleared(cleared).build();
    assertFalse(skin.isReturning(cleared));
    Injury open = Injury.builder(Finger.RING, Structure.A2, hurt).build();
    assertFalse(open.isReturning(cleared));
    assertThrows(IllegalArgumentException.class, () -> open.clearedBy("therapist"));
  }

  @Test
  void missingPartsAreNamed() {
    IllegalStateException missing =
        assertThrows(
            IllegalStateException.class,
            () ->
                Athlete.named("eira")
                    .available(DayOfWeek.MONDAY, Duration.ofHours(1))
                    .edge(Length.ofMillimetres(20))
                    .build());
    assertEquals("athlete eira has no date of birth", missing.getMessage());
  }
}
