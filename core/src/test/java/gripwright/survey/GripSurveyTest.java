package gripwright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.expression.Shortfall;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.planning.Skarvdal;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.strength.StrengthTest;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.Slip;
import gripwright.tissue.SlipViews;
import gripwright.wording.Words;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class GripSurveyTest {

  private static final LocalDate DAY = Skarvdal.MONDAY;
  private static final Load LOAD = Load.ofKilograms(60);

  private static GripSurvey survey(Athlete athlete, Log log, Length edge) {
    return GripSurvey.of(athlete, log, StandardGrips.all(), edge, LOAD, DAY);
  }

  private static GripSurvey survey(Athlete.Builder athlete) {
    return survey(athlete.build(), Log.empty("ylva"), Skarvdal.EDGE);
  }

  private static GripSurvey.Row row(GripSurvey survey, String grip) {
    return survey.rows().stream()
        .filter(r -> r.grip().name().equals(grip))
        .findFirst()
        .orElseThrow();
  }

  /** Returns the names of the rules that prevent a grip. */
  private static List<String> gates(GripSurvey survey, String grip) {
    return row(survey, grip).gates().stream().map(Gate::rule).toList();
  }

  private static List<String> limits(GripSurvey survey, String grip) {
    return row(survey, grip).limits().stream().map(Gate::rule).toList();
  }

  private static Set<String> open(GripSurvey survey) {
    return survey.rows().stream()
        .filter(GripSurvey.Row::open)
        .map(r -> r.grip().name())
        .collect(Collectors.toSet());
  }

  @Provide
  Arbitrary<Grip> grips() {
    return Arbitraries.of(StandardGrips.all());
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void fingerLoadsSumToTheLoadOfTheHand(
      @ForAll("grips") Grip grip,
      @ForAll @DoubleRange(min = 160, max = 215) double length,
      @ForAll @DoubleRange(min = 8, max = 35) double edge,
      @ForAll @DoubleRange(min = 1, max = 150) double kilograms) {
    Athlete athlete = Skarvdal.ylva().hand(Hand.ofLength(Length.ofMillimetres(length))).build();
    GripSurvey survey =
        GripSurvey.of(
            athlete,
            Log.empty("ylva"),
            List.of(grip),
            Length.ofMillimetres(edge),
            Load.ofKilograms(kilograms),
            DAY);
    GripSurvey.Row row = survey.rows().get(0);
    List<FingerLoad> fingers = row.load().fingers();
    assertEquals(1, fingers.stream().mapToDouble(load -> load.share().value()).sum(), 1e-9);
    assertEquals(
        kilograms * 9.80665 / 2,
        fingers.stream().mapToDouble(f -> f.fingertip().value()).sum(),
        1e-6 * kilograms);
    for (SlipViews views : row.slips()) {
      for (Slip slip : views.both()) {
        assertEquals(
            row.load().newtons(),
            slip.after().values().stream().mapToDouble(f -> f).sum(),
            1e-6 * kilograms);
      }
    }
    assertEquals(fingers.size() == 1 ? 0 : fingers.size(), row.slips().size());
    assertTrue(
        row.lumbricalPulledLow().value() >= row.lumbrical().value() - 1e-9,
        "idle fingers pulled low only add to the index");
  }

  /** The reason to train three-finger grips, as a number. */
  @Test
  void whenTheLittleFingerSlipsTheRingFingerTakesOver() {
    Slip slip =
        row(survey(Skarvdal.ylva()), "half-crimp").slips().stream()
            .filter(s -> s.leaving() == Finger.LITTLE)
            .findFirst()
            .orElseThrow()
            .momentKept();
    assertTrue(slip.momentKept());
    assertTrue(slip.ratio(Finger.RING) > 1.3, () -> "" + slip);
    assertTrue(slip.ratio(Finger.RING) > slip.ratio(Finger.MIDDLE));
    assertTrue(slip.ratio(Finger.MIDDLE) > slip.ratio(Finger.INDEX));
  }

  @Test
  void rowsAreSortedCrimpsFirstAndOwnGripsLast() {
    Grip own =
        Grip.named("a-crimp")
            .family(StandardGrips.HALF_CRIMP.family())
            .fingers(StandardGrips.HALF_CRIMP.fingers())
            .build();
    List<Grip> grips = new ArrayList<>(StandardGrips.all());
    grips.add(own);
    Collections.reverse(grips);
    GripSurvey survey =
        GripSurvey.of(Skarvdal.ylva().build(), Log.empty("ylva"), grips, Skarvdal.EDGE, LOAD, DAY);
    assertEquals(
        List.of(
            "half-crimp",
            "full-crimp",
            "open-four",
            "three-finger-drag",
            "front-three",
            "back-three",
            "front-two",
            "middle-two",
            "back-two",
            "index-single",
            "middle-single",
            "ring-single",
            "little-single",
            "a-crimp"),
        survey.rows().stream().map(r -> r.grip().name()).toList());
  }

  @Test
  void underSixteenSplitGripsAndSingleFingersAreClosed() {
    GripSurvey survey = survey(Skarvdal.ylva().born(DAY.minusYears(15)).familiar("half-crimp", 36));
    assertEquals(List.of("youth-grip"), gates(survey, "front-three"));
    assertEquals(List.of("youth-grip"), gates(survey, "index-single"));
    assertEquals(Set.of("half-crimp", "open-four", "three-finger-drag"), open(survey));
    assertEquals(List.of("youth-full-crimp"), gates(survey, "full-crimp"));
    assertTrue(survey.underSixteen());
    for (String grip : open(survey)) {
      assertTrue(row(survey, grip).limited(), grip);
      assertTrue(limits(survey, grip).containsAll(List.of("youth-added-load", "youth-level")));
    }
    assertFalse(row(survey, "front-three").limited(), "closed, not limited");
    assertFalse(survey(Skarvdal.ylva().born(DAY.minusYears(16))).underSixteen());
    Athlete athlete = Skarvdal.ylva().born(DAY.minusYears(15)).build();
    GripSurvey shallow = survey(athlete, Log.empty("ylva"), Length.ofMillimetres(17));
    assertEquals(List.of("youth-edge"), gates(shallow, "half-crimp"));
    assertEquals(Set.of(), open(shallow));
  }

  @Test
  void atSixteenTheNoteIsReportedOnceAndClosesNoGrip() {
    GripSurvey survey = survey(Skarvdal.ylva().born(DAY.minusYears(16)));
    assertEquals(List.of("youth-supervision"), survey.notes().stream().map(Gate::rule).toList());
    assertEquals(List.of(), gates(survey, "half-crimp"));
    assertEquals(List.of(), survey(Skarvdal.ylva()).notes());
  }

  private static List<String> counted(Gate gate) {
    return gate.missing().stream()
        .map(
            missing ->
                missing instanceof Gate.TrainingByRule training
                    ? "trained "
                        + (int) training.months()
                        + " of "
                        + Words.say(training.shortfall().limit())
                    : counted(((Gate.Counted) missing).shortfall()))
        .toList();
  }

  private static String counted(Shortfall shortfall) {
    return shortfall.what()
        + " "
        + Words.say(shortfall.was())
        + " of "
        + Words.say(shortfall.limit());
  }

  @Test
  void eighteenMonthsAreTooFewForASplitGrip() {
    GripSurvey survey = survey(Skarvdal.ylva().trained(18));
    assertEquals(List.of("split-grip-gate"), gates(survey, "front-three"));
    Gate gate = row(survey, "front-three").gates().get(0);
    assertEquals("18 months", Words.fact(gate.breach().arguments().get("was")));
    assertEquals("24 months", Words.fact(gate.breach().arguments().get("limit")));
    assertEquals(List.of("trained 18 of 24 months"), counted(gate));
    Gate both =
        row(
                survey(Skarvdal.ylva().trained(18).ability(Ability.of(GradeScale.IRCRA, "17"))),
                "front-three")
            .gates()
            .get(0);
    assertEquals(List.of("trained 18 of 24 months", "ability IRCRA 17 of IRCRA 18"), counted(both));
    assertTrue(row(survey, "half-crimp").open());
    assertTrue(row(survey(Skarvdal.ylva().trained(24)), "front-three").open());
    assertEquals(
        List.of("split-grip-gate"),
        gates(survey(Skarvdal.ylva().ability(Ability.of(GradeScale.IRCRA, "17"))), "back-three"));
  }

  /** Without a plan, time in training counts as of the day, unless it has a date. */
  @Test
  void trainingCountsFromItsOwnDay() {
    Athlete.Builder athlete =
        Skarvdal.ylva().trained(new Athlete.Experience(18, Optional.of(DAY.minusMonths(7))));
    GripSurvey survey = survey(athlete);
    assertEquals(25, survey.trainedMonths(), 0.1);
    assertTrue(row(survey, "front-three").open());
    assertEquals(18, survey(Skarvdal.ylva().trained(18)).trainedMonths());
  }

  @Test
  void prerequisitesOfAGripAreAGateToo() {
    GripSurvey without = survey(Skarvdal.ylva());
    assertEquals(List.of("grip-needs-gate"), gates(without, "full-crimp"));
    assertEquals(
        List.of(new Gate.Familiarity("half-crimp", 0, 12)),
        row(without, "full-crimp").gates().get(0).missing());
    GripSurvey survey = survey(Skarvdal.ylva().familiar("half-crimp", 12));
    assertTrue(row(survey, "full-crimp").open());
    assertTrue(row(survey, "full-crimp").limited());
    assertEquals(List.of("full-crimp-ceiling"), limits(survey, "full-crimp"));
    assertFalse(row(survey, "half-crimp").limited());
  }

  @Test
  void anUnclearedInjuryClosesGripsWithTheFinger() {
    Injury open =
        Injury.builder(Finger.RING, Structure.A2, DAY.minusDays(30)).side(Side.LEFT).build();
    GripSurvey survey = survey(Skarvdal.ylva().injury(open));
    assertEquals(List.of("injured-finger"), gates(survey, "half-crimp"));
    assertEquals(
        List.of(new Gate.Injured(open)), row(survey, "half-crimp").gates().get(0).missing());
    assertTrue(gates(survey, "ring-single").contains("injured-finger"));
    assertFalse(gates(survey, "front-two").contains("injured-finger"));
    Injury cleared =
        Injury.builder(Finger.RING, Structure.A2, DAY.minusDays(30))
            .side(Side.LEFT)
            .cleared(DAY)
            .build();
    assertTrue(row(survey(Skarvdal.ylva().injury(cleared)), "half-crimp").open());
  }

  @Test
  void strongPainInTheLogClosesGripsWithTheFinger() {
    Log log =
        Log.empty("ylva").with(LogEntry.Pain.builder(DAY.minusDays(3), Finger.INDEX, 7).build());
    GripSurvey survey = survey(Skarvdal.ylva().build(), log, Skarvdal.EDGE);
    assertEquals(List.of("painful-finger"), gates(survey, "half-crimp"));
    assertEquals(List.of(), gates(survey, "back-three"));
  }

  @Test
  void handsThatDifferHaveTheirOwnRows() {
    Hand hand = Hand.ofLength(Length.ofMillimetres(180));
    Hand shortLittle = hand.withBone(Finger.LITTLE, Segment.PROXIMAL, Length.ofMillimetres(30));
    GripSurvey survey = survey(Skarvdal.ylva().hand(hand).hand(Side.LEFT, shortLittle));
    assertFalse(survey.handsAreEqual());
    assertEquals(
        2, survey.rows().stream().filter(r -> r.grip().name().equals("half-crimp")).count());
    assertEquals(Optional.of(Side.LEFT), row(survey, "half-crimp").side());
    assertEquals(
        Optional.of(Side.LEFT),
        row(survey, "front-three").side(),
        "another little finger makes another own hang");
    Hand stiff = hand.withLimit(Finger.INDEX, Joint.PIP, FlexionRange.degrees(0, 70));
    GripSurvey stiffLeft = survey(Skarvdal.ylva().hand(hand).hand(Side.LEFT, stiff));
    assertFalse(row(stiffLeft, "half-crimp").fit().reachable());
    assertEquals(
        Optional.empty(), row(stiffLeft, "back-three").side(), "the right hand's hang stands in");
    assertFalse(stiffLeft.reservations().contains(ModelCaveat.OWN_HANG));
  }

  @Test
  void caveatsDependOnTheRows() {
    Hand stub =
        Hand.ofLength(Length.ofMillimetres(180))
            .withBone(Finger.LITTLE, Segment.PROXIMAL, Length.ofMillimetres(10));
    List<ModelCaveat> all = new ArrayList<>(List.of(ModelCaveat.values()));
    all.removeAll(List.of(ModelCaveat.SHALLOW_EDGE, ModelCaveat.UNMODELLED_EDGE));
    assertEquals(all, survey(Skarvdal.ylva().hand(stub)).reservations());
    assertEquals(
        List.of(ModelCaveat.ESTIMATE, ModelCaveat.ESTIMATED_BONES, ModelCaveat.TISSUE),
        GripSurvey.of(
                Skarvdal.ylva().build(),
                Log.empty("ylva"),
                List.of(StandardGrips.HALF_CRIMP),
                Skarvdal.EDGE,
                LOAD,
                DAY)
            .reservations());
  }

  /** The longest end bone of a hand of 180 mm has 19.4 mm. */
  @Test
  void aShallowEdgeIsReported() {
    Athlete athlete = Skarvdal.ylva().hand(Hand.ofLength(Length.ofMillimetres(180))).build();
    for (double edge : new double[] {1, 4.3, 4.4, 19, 20}) {
      List<ModelCaveat> reported =
          survey(athlete, Log.empty("ylva"), Length.ofMillimetres(edge)).reservations();
      assertEquals(edge <= 4.3, reported.contains(ModelCaveat.UNMODELLED_EDGE), () -> edge + " mm");
      assertEquals(
          edge > 4.3 && edge < 19.4,
          reported.contains(ModelCaveat.SHALLOW_EDGE),
          () -> edge + " mm");
    }
  }

  @Test
  void aLoadAboveTheTestedMaximumIsReported() {
    Log log =
        Log.empty("ylva")
            .with(
                new LogEntry.Tested(
                    new StrengthTest(
                        DAY.minusDays(7),
                        Setup.of(StandardGrips.HALF_CRIMP, Skarvdal.EDGE),
                        new StrengthTest.Held(Duration.ofSeconds(7), Load.ofKilograms(70))),
                    Optional.empty()));
    GripSurvey survey = survey(Skarvdal.ylva().build(), log, Skarvdal.EDGE);
    assertEquals(Optional.of(false), survey.aboveMaximum(row(survey, "half-crimp")));
    assertEquals(Optional.of(true), survey.aboveMaximum(row(survey, "back-two")));
    GripSurvey untested = survey(Skarvdal.ylva());
    assertEquals(Optional.empty(), untested.aboveMaximum(row(untested, "back-two")));
  }

  @Test
  void aHandWhoseBonesWereAllMeasuredIsItsOwn() {
    Hand hand = Hand.ofLength(Length.ofMillimetres(180));
    HandShape usual = HandShape.of(hand);
    Hand measured = hand;
    for (Finger finger : Finger.values()) {
      for (Segment segment : Segment.values()) {
        measured = measured.withBone(finger, segment, usual.bone(finger, segment));
      }
    }
    assertFalse(
        survey(Skarvdal.ylva().hand(measured))
            .reservations()
            .contains(ModelCaveat.ESTIMATED_BONES));
    GripSurvey oneOnly = survey(Skarvdal.ylva().hand(hand).hand(Side.LEFT, measured));
    assertTrue(oneOnly.reservations().contains(ModelCaveat.ESTIMATED_BONES));
    assertEquals(Optional.of(Side.LEFT), row(oneOnly, "half-crimp").side());
  }

  @Test
  void everyRatioAndIndexHasItsInterval() {
    for (GripSurvey.Row row : survey(Skarvdal.ylva()).rows()) {
      for (Slip slip : row.slips().stream().flatMap(views -> views.both().stream()).toList()) {
        row.load()
            .ratios(slip)
            .forEach(
                (finger, ratio) -> {
                  assertEquals(slip.ratio(finger), ratio.value());
                  assertTrue(0 <= ratio.low() && ratio.low() <= ratio.value());
                  assertTrue(
                      ratio.value() <= ratio.high() && ratio.low() < ratio.high()
                          || ratio.high() == 0);
                });
      }
      assertTrue(0 <= row.lumbrical().low() && row.lumbrical().low() <= row.lumbrical().high());
    }
  }

  @Test
  void zeroLoadIsRefused() {
    Athlete athlete = Skarvdal.ylva().build();
    assertThrows(
        IllegalArgumentException.class,
        () ->
            GripSurvey.of(
                athlete, Log.empty("ylva"), StandardGrips.all(), Skarvdal.EDGE, Load.ZERO, DAY));
    assertThrows(
        IllegalArgumentException.class,
        () -> survey(athlete, Log.empty("ylva"), Length.ofMillimetres(0)));
  }
}
