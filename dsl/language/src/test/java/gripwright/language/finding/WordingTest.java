package gripwright.language.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.expression.Shortfall;
import gripwright.expression.Shortfall.Bound;
import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.finding.WrittenText;
import gripwright.grip.Band;
import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.wording.Wording;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class WordingTest {

  private static final Wording WORDING = Wording.english();

  private static final ModelPath PLAN = ModelPath.of("plan", "autumn");

  private static ModelPath day(String block, int week, String date) {
    return PLAN.then("for", "sunniva")
        .then("block", block)
        .then("week", week)
        .then("session", "strength")
        .then("date", date);
  }

  @Test
  void wordsInBracesAreReplacedByFactsThatPrintThemselves() {
    Finding finding =
        Finding.advice("plan.week-away", PLAN)
            .with("week", 3)
            .with("from", LocalDate.of(2027, 1, 18))
            .with("to", LocalDate.of(2027, 1, 24));
    assertEquals(
        "nothing is planned in week 3: the athlete is away from 2027-01-18 to 2027-01-24",
        WORDING.sentence(finding));
  }

  @Test
  void factsPrintByTheirType() {
    assertEquals("81.25 kg", WORDING.fact(Load.ofKilograms(81.25)));
    assertEquals("20 mm", WORDING.fact(Length.ofMillimetres(20)));
    assertEquals("90 s", WORDING.fact(Duration.ofSeconds(90)));
    assertEquals("60 s", WORDING.fact(Duration.ofMinutes(1)));
    assertEquals("3 min", WORDING.fact(Duration.ofMinutes(3)));
    assertEquals("90 min", WORDING.fact(Duration.ofMinutes(90)));
    assertEquals("48 h", WORDING.fact(Duration.ofHours(48)));
    assertEquals("0.5 s", WORDING.fact(Duration.ofMillis(500)));
    assertEquals("102.4", WORDING.fact(102.4));
    assertEquals("12", WORDING.fact(12.0));
    assertEquals("20 mm, 15 mm", WORDING.fact(List.of(mm(20), mm(15))));
    assertEquals("none", WORDING.fact(Optional.empty()));
  }

  @Test
  void aGripOutOfReachHasItsReason() {
    assertEquals(
        "the little finger is too short by 6.1 mm",
        WORDING.fact(new FitMiss.TooShort(Finger.LITTLE, mm(6.1))));
    assertEquals(
        "the middle finger comes no nearer than 53 deg, and the grip needs 0 deg to 20 deg",
        WORDING.fact(
            new FitMiss.OutOfBand(
                Finger.MIDDLE, Joint.PIP, Band.degrees(0, 20), Angle.ofDegrees(53), 33)));
    assertEquals(
        "the middle joint of the ring finger moves from 0 deg to 70 deg,"
            + " and the grip needs 75 deg to 105 deg",
        WORDING.fact(
            new FitMiss.BeyondLimit(
                Finger.RING, Joint.PIP, Band.degrees(75, 105), FlexionRange.degrees(0, 70), 5)));
    for (FitAdvice.Reason reason : FitAdvice.Reason.values()) {
      String words = WORDING.fact(new FitAdvice(Finger.RING, Joint.DIP, reason, 24));
      assertTrue(words.contains("ring finger") && words.contains("24 deg"), words);
    }
    assertEquals("either hand", WORDING.fact(Hands.BOTH));
    assertEquals("the left hand", WORDING.fact(Hands.LEFT));
  }

  @Test
  void aSentenceMayDependOnAnArgument() {
    Finding low =
        Finding.advice("plan.load-out-of-reach", PLAN)
            .with("setup", "half-crimp edge 20 mm")
            .with("wanted", Load.ofKilograms(92))
            .with("built", Load.ofKilograms(80));
    assertEquals(
        "`half-crimp edge 20 mm` needs 92 kg, but the equipment can't build more than 80 kg",
        WORDING.sentence(low));
    assertEquals(
        "`half-crimp edge 20 mm` is planned at 85 % of its maximum, but the equipment can't build"
            + " more than 73.9 %, 80 kg in all",
        WORDING.sentence(low.with("percent", "85 %").with("built-percent", "73.9 %")));
  }

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  @Test
  void aTimeSinceATestNamesTheTest() {
    Shortfall since =
        shortfall(Optional.empty(), "since-test", "3 weeks", Bound.AT_LEAST, "4 weeks");
    assertEquals(
        "too much (was 3 weeks since the previous test, at least 4 weeks)",
        WORDING.sentence(broken(List.of(since))));
  }

  @Test
  void theNumbersOfARiseNameNoIdentifier() {
    Finding rise =
        Finding.warning("rule.rise", PLAN)
            .with("message", "too steep")
            .with("missing", List.of(above("recent-load")));
    assertEquals(
        "too steep (was 12 % above the highest of the last three weeks, deload weeks left out, at most 10 %)",
        WORDING.sentence(rise));
    assertEquals(
        "too steep (was 12 % above the load-time of the week before, at most 10 %)",
        WORDING.sentence(rise.with("missing", List.of(above("previous.load")))));
  }

  private static Shortfall above(String property) {
    return new Shortfall(
        Optional.empty(),
        "load",
        new Clause("breach.share-above", Map.of("share", "12 %", "of", property)),
        Shortfall.Bound.AT_MOST,
        new WrittenText("10 %"));
  }

  @Test
  void insertedTextIsNotProcessedAgain() {
    Finding finding =
        Finding.warning("plan.waiver-unused", PLAN).with("rule", "{rule} $1 \\ {week}");
    assertEquals("the waiver of `{rule} $1 \\ {week}` has no effect", WORDING.sentence(finding));
  }

  @Test
  void aBrokenRuleHasItsOwnMessageItsPlacesAndItsSource() {
    Finding finding =
        Finding.error("rule.two-hard-days", PLAN)
            .with("message", "two hard days in a row: {not a placeholder}")
            .with("source", "Skarvdal house rules")
            .alsoAt(day("base", 1, "2027-01-12"))
            .alsoAt(day("base", 1, "2027-01-14"))
            .alsoAt(day("base", 3, "2027-01-26"));
    ReportedFinding reported = WORDING.report(finding);
    assertEquals("two hard days in a row: {not a placeholder}", reported.message());
    assertEquals(
        "for sunniva: base week 1 (Tue 12 Jan, Thu 14 Jan), week 3 (Tue 26 Jan); source: Skarvdal"
            + " house rules",
        reported.hint());
    assertEquals("two-hard-days", reported.rule());
  }

  @Test
  void eachBlockNamesItsWeeks() {
    Finding finding =
        Finding.error("rule.x", PLAN)
            .with("message", "m")
            .alsoAt(day("base", 1, "2027-01-12"))
            .alsoAt(day("base", 2, "2027-01-19"))
            .alsoAt(day("peak", 1, "2027-02-09"));
    assertEquals(
        Optional.of(
            "for sunniva: base week 1 (Tue 12 Jan), week 2 (Tue 19 Jan), peak week 1 (Tue 9 Feb)"),
        WORDING.where(finding));
  }

  @Test
  void manyWeeksAreWrittenAsRanges() {
    Finding finding = Finding.error("rule.x", PLAN).with("message", "m");
    for (int week : new int[] {1, 2, 3, 5, 7, 8}) {
      finding = finding.alsoAt(day("base", week, "2027-01-12"));
    }
    assertTrue(WORDING.where(finding).orElseThrow().contains("week 8 (Tue 12 Jan)"));
    finding = finding.alsoAt(day("peak", 2, "2027-03-12"));
    assertEquals(
        Optional.of("for sunniva: base weeks 1 to 3, 5, 7 to 8, peak week 2"),
        WORDING.where(finding));
  }

  @Test
  void aPlaceWithoutAWeekIsLeftOut() {
    Finding finding =
        Finding.error("rule.x", PLAN).with("message", "m").alsoAt(PLAN.then("block", "base"));
    assertEquals(Optional.empty(), WORDING.where(finding));
    Finding one = Finding.error("rule.x", day("base", 2, "2027-01-19")).with("message", "m");
    assertEquals(Optional.of("for sunniva: base week 2 (Tue 19 Jan)"), WORDING.where(one));
  }

  @Test
  void linesAndColumnsCountFromOneInCharacters() {
    SourceFile file = SourceFile.of("a.grip", "language 1\n# \uD83E\uDDD7 plan\n");
    ReportedFinding reported =
        LocatedFinding.at(
                file,
                new Span(16, 4),
                Finding.warning("plan.waiver-unused", PLAN).with("rule", "r").waived("because"))
            .report(WORDING);
    assertEquals("a.grip", reported.file());
    assertEquals(2, reported.line());
    assertEquals(5, reported.column());
    assertEquals(2, reported.endLine());
    assertEquals(9, reported.endColumn());
    assertEquals(Severity.WARNING, reported.severity());
    assertEquals("because", reported.waivedBecause());
    assertEquals("plan autumn", reported.place());
  }

  @Test
  void withoutATextThereIsNoFile() {
    ReportedFinding reported =
        WORDING.report(Finding.warning("plan.waiver-unused", ModelPath.ROOT).with("rule", "r"));
    assertNull(reported.file());
    assertEquals(0, reported.line());
    assertNull(reported.place());
    assertFalse(reported.blocks());
  }

  @Test
  void aRelatedPlaceWithoutWordingReadsAsItsKey() {
    assertEquals("first defined here", WORDING.related("first-defined-here"));
    assertEquals("some other thing", WORDING.related("some-other-thing"));
  }

  private static Shortfall shortfall(
      Optional<Message> of, String what, String was, Bound bound, String limit) {
    return new Shortfall(of, what, new WrittenText(was), bound, new WrittenText(limit));
  }

  private static Finding broken(Object missing) {
    return Finding.warning("rule.own", PLAN).with("message", "too much").with("missing", missing);
  }

  @Test
  void aBrokenRuleHasTheActualValueAndTheLimit() {
    Shortfall time =
        shortfall(Optional.empty(), "trained", "14 months", Bound.AT_LEAST, "24 months");
    Shortfall grade = shortfall(Optional.empty(), "ability", "IRCRA 16", Bound.OVER, "IRCRA 18");
    assertEquals(
        "too much (was 14 months, at least 24 months)", WORDING.sentence(broken(List.of(time))));
    assertEquals(
        "too much (trained 14 months, at least 24 months; ability IRCRA 16, over IRCRA 18)",
        WORDING.sentence(broken(List.of(time, grade))));
    Finding twice = broken(List.of(time)).alsoAt(PLAN.then("week", 1)).alsoAt(PLAN.then("week", 2));
    assertEquals("too much (first time: 14 months, at least 24 months)", WORDING.sentence(twice));
    assertEquals(
        "too much (worst in week 2: 14 months, at least 24 months)",
        WORDING.sentence(twice.with("worst", PLAN.then("week", 2))));
    assertEquals(
        "too much (worst: 14 months, at least 24 months)",
        WORDING.sentence(twice.with("worst", PLAN)));
    Shortfall ring =
        shortfall(
            Optional.of(new WrittenText("left ring finger")), "x", "82 s", Bound.UNDER, "80 s");
    assertEquals(
        "too much (left ring finger: 82 s, under 80 s)", WORDING.sentence(broken(List.of(ring))));
    assertEquals("too much", WORDING.sentence(broken(List.of())));
  }
}
