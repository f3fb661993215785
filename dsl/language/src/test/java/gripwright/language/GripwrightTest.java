package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.Joint;
import gripwright.hand.JointLimits;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.language.source.SourceLoader;
import gripwright.log.LogEntry;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.quantity.Length;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The facade as a host sees it. */
class GripwrightTest {

  private static final Path CORPUS = Path.of("src/test/resources/corpus");

  private static Reading corpus(String name) {
    return Gripwright.read(CORPUS.resolve(name), ReadOptions.standard().withRoot(CORPUS));
  }

  private static String protocol(String name, String level) {
    return "protocol " + name + " {\n  hold 7 s at " + level + " % max\n}\n";
  }

  @Test
  void validDeclarationsAreReadAlthoughOthersHaveErrors() {
    Reading reading =
        Gripwright.read(
            "x.grip", "language 1\n" + protocol("right", "60") + protocol("wrong", "160"));
    assertFalse(reading.usable());
    assertTrue(reading.protocols().containsKey("right"));
    assertFalse(reading.protocols().containsKey("wrong"));
    assertEquals(1, reading.findings().size());
  }

  @Test
  void findingsAreCutOffAndCounted() {
    String many =
        "language 1\n"
            + IntStream.range(0, 50)
                .mapToObj(i -> protocol("p" + i, "160"))
                .collect(Collectors.joining());
    List<ReportedFinding> shown = Gripwright.read("x.grip", many).findings();
    assertEquals(31, shown.size());
    ReportedFinding last = shown.get(30);
    assertEquals("syntax.more", last.code());
    assertEquals(Severity.ADVICE, last.severity());
    assertTrue(last.message().startsWith("20 "), last.message());
    assertEquals(
        50,
        Gripwright.read("x.grip", many, ReadOptions.standard().withAllFindings())
            .findings()
            .size());
    assertEquals(
        6,
        Gripwright.read("x.grip", many, ReadOptions.standard().withFindings(5, 10))
            .findings()
            .size());
  }

  @Test
  void findingsOfARunAreCutOffToo() {
    Map<String, String> texts = new HashMap<>();
    StringBuilder main = new StringBuilder("language 1\n");
    for (int file = 0; file < 6; file++) {
      int number = file;
      main.append("use \"f").append(file).append(".grip\"\n");
      texts.put(
          "f" + file + ".grip",
          "language 1\n"
              + IntStream.range(0, 25)
                  .mapToObj(i -> protocol("p" + number + "-" + i, "160"))
                  .collect(Collectors.joining()));
    }
    Reading reading =
        Gripwright.read(
            "main.grip", main.toString(), ReadOptions.standard().withFiles(SourceLoader.of(texts)));
    assertEquals(101, reading.findings().size());
    assertEquals(
        1, reading.findings().stream().filter(f -> f.code().equals("syntax.more")).count());
  }

  @Test
  void anErrorIsNeverCutOffForAdvice() {
    String advice = "protocol a%d {\n  given x 3\n  hold 7 s at 60 %% max\n}\n";
    String text =
        "language 1\n"
            + IntStream.range(0, 40)
                .mapToObj(i -> advice.formatted(i))
                .collect(Collectors.joining())
            + protocol("wrong", "160");
    List<ReportedFinding> shown = Gripwright.read("x.grip", text).findings();
    assertTrue(shown.stream().anyMatch(ReportedFinding::blocks));
  }

  @Test
  void orThrowCarriesTheFindings() {
    Reading reading = Gripwright.read("x.grip", "language 1\n" + protocol("wrong", "160"));
    FindingsException thrown = assertThrows(FindingsException.class, reading::orThrow);
    assertEquals(reading.findings(), thrown.findings());
    assertTrue(thrown.getMessage().startsWith("x.grip:3:"), thrown.getMessage());
    assertThrows(FindingsException.class, () -> reading.compile().orThrow());
    Reading good = corpus("good-plan.grip");
    assertSame(good, good.orThrow());
  }

  @Test
  void onePlanIsCompiledByName() {
    Reading reading = corpus("good-plan.grip");
    assertEquals(1, reading.compile("p").plans().size());
    IllegalArgumentException thrown =
        assertThrows(IllegalArgumentException.class, () -> reading.compile("q"));
    assertEquals("no plan q among p", thrown.getMessage());
  }

  @Test
  void everyStatementOfAPlanIsInTheModel() {
    Plan plan = corpus("good-everything-in-a-plan.grip").plans().get("p");
    assertEquals(List.of("aslaug", "torkel"), plan.athletes());
    assertEquals(Duration.ofMinutes(10), plan.warmUp());
    assertEquals(Duration.ofMinutes(4), plan.restBetween());
    assertEquals(0.12, plan.weeklyRise().orElseThrow());
    assertEquals(0.5, plan.weights().match());
    assertEquals(2, plan.demand().size());
    SessionPlan session = plan.blocks().get(0).contentFor("aslaug").sessions().get(0);
    assertEquals(Duration.ofHours(72), session.gap());
    assertEquals(2, session.contentFor("aslaug").exercises().size());
    assertEquals(1, session.contentFor("torkel").exercises().size());
    assertEquals(Duration.ofMinutes(15), session.contentFor("torkel").warmUp().orElseThrow());
    assertEquals(4, plan.blocks().get(0).contentFor("aslaug").eases().get(0).week());
    assertEquals(3, plan.blocks().get(0).contentFor("torkel").eases().get(0).week());
    assertEquals(1, plan.blocks().get(0).contentFor("torkel").advances().size());
  }

  /** A side's own joint range replaces that of both hands. */
  @Test
  void anAthletesOwnJointRangesApplyToBothHands() {
    Athlete aslaug = corpus("good-joint-limits.grip").athletes().get("aslaug");
    JointLimits left = aslaug.hand(Side.LEFT).limits();
    JointLimits right = aslaug.hand(Side.RIGHT).limits();
    assertEquals(FlexionRange.degrees(20, 90), left.of(Finger.RING, Joint.PIP).orElseThrow());
    assertEquals(FlexionRange.degrees(0, 100), right.of(Finger.RING, Joint.PIP).orElseThrow());
    for (JointLimits limits : List.of(left, right)) {
      assertEquals(FlexionRange.degrees(0, 100), limits.of(Finger.INDEX, Joint.PIP).orElseThrow());
      assertEquals(FlexionRange.degrees(5, 70), limits.of(Finger.INDEX, Joint.DIP).orElseThrow());
      assertEquals(FlexionRange.degrees(0, 80), limits.of(Finger.RING, Joint.MCP).orElseThrow());
      assertEquals(FlexionRange.degrees(-10, 70), limits.of(Finger.RING, Joint.DIP).orElseThrow());
      assertEquals(FlexionRange.degrees(90, 90), limits.of(Finger.LITTLE, Joint.PIP).orElseThrow());
      assertEquals(Optional.empty(), limits.of(Finger.LITTLE, Joint.DIP));
    }
    assertEquals(
        Length.ofMillimetres(18),
        aslaug.hand(Side.LEFT).bones().get(new Hand.Bone(Finger.RING, Segment.DISTAL)));
  }

  @Test
  void logsOfOneAthleteAreMergedByDate() {
    List<LogEntry> entries = corpus("good-log.grip").logs().get("aslaug").entries();
    assertEquals(10, entries.size());
    for (int i = 1; i < entries.size(); i++) {
      assertFalse(entries.get(i).date().isBefore(entries.get(i - 1).date()));
    }
  }

  /** A mistake in content for one athlete is shown where that content is written. */
  @Test
  void findingsPointAtAnAthletesOwnLine() {
    String own =
        Gripwright.read(
                CORPUS.resolve("good-everything-in-a-plan.grip"),
                ReadOptions.standard().withRoot(CORPUS))
            .compile()
            .findings()
            .stream()
            .filter(f -> f.place() != null && f.place().contains("for torkel"))
            .map(f -> f.code() + " " + f.line())
            .collect(Collectors.joining(" "));
    assertEquals("plan.load-modelled 21", own);
  }
}
