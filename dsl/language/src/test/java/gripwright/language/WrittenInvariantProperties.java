package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Equipment;
import gripwright.finding.ReportedFinding;
import gripwright.planning.GeneratedSeason;
import gripwright.planning.Reached;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Invariants of every written plan: order, layout and units. */
class WrittenInvariantProperties {

  private static CompiledPlan only(Compilation compilation) {
    return compilation.plans().get(0);
  }

  /** Returns everything except lists in written order, such as an athlete's grips. */
  private static List<List<?>> trained(CompiledPlan plan) {
    return List.of(plan.sessions(), plan.weeks(), plan.retests(), plan.climbing());
  }

  private static List<String> saying(Compilation compilation) {
    return compilation.findings().stream()
        .map((ReportedFinding f) -> f.code() + " " + f.message() + " " + f.hint() + " " + f.place())
        .sorted()
        .toList();
  }

  /** Returns findings without their places: {@code retest 2} may be the first now. */
  private static List<String> messages(Compilation compilation) {
    return compilation.findings().stream()
        .map((ReportedFinding f) -> f.code() + " " + f.message() + " " + f.hint())
        .sorted()
        .toList();
  }

  /** Invariant 10, of the order of statements. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void theOrderOfStatementsChangesNothing(@ForAll GeneratedSeason season, @ForAll Random random) {
    Reading written = Gripwright.read("season.grip", SeasonText.of(season));
    Reading shuffled =
        Gripwright.read(
            "season.grip",
            new SeasonText(season, false, lines -> Collections.shuffle(lines, random)).write());
    assertEquals(written.usable(), shuffled.usable());
    if (written.usable()) {
      Compilation one = written.compile();
      Compilation other = shuffled.compile();
      assertEquals(trained(only(one)), trained(only(other)));
      if (!isCut(one)) { // of many findings the first in the text are shown
        assertEquals(messages(one), messages(other));
      }
    }
    Reached.reached(written.usable(), 80);
  }

  private static boolean isCut(Compilation compilation) {
    return compilation.findings().stream().anyMatch(f -> f.code().equals("syntax.more"));
  }

  /** Invariant 10, of layout. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void layoutAndCommentsChangeNothing(@ForAll GeneratedSeason season, @ForAll Random random) {
    String text = SeasonText.of(season);
    Reading written = Gripwright.read("season.grip", text);
    Reading laidOut = Gripwright.read("season.grip", laidOut(text, random));
    assertEquals(written.usable(), laidOut.usable());
    if (written.usable()) {
      Compilation one = written.compile();
      Compilation other = laidOut.compile();
      assertEquals(only(one), only(other));
      assertEquals(saying(one), saying(other));
    }
    Reached.reached(written.usable(), 80);
  }

  private static String laidOut(String text, Random random) {
    String end = random.nextBoolean() ? "\r\n" : "\n";
    boolean wide = random.nextBoolean();
    return text.lines()
        .map(
            line -> {
              String indent = random.nextBoolean() ? "\t" : " ".repeat(random.nextInt(7));
              String comment = random.nextInt(4) == 0 ? " # } \"" + random.nextInt(99) : "";
              String blank = random.nextInt(6) == 0 ? end + "   " + end : "";
              boolean quoted = line.contains("\"");
              String words = wide && !quoted ? line.replace(" ", "  ") : line;
              return indent + words + comment + blank;
            })
        .collect(Collectors.joining(end));
  }

  /** Invariant 11. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void poundsAndInchesGiveTheSamePlanWithinOneStepOfTheEquipment(@ForAll GeneratedSeason season) {
    Reading metric = Gripwright.read("season.grip", SeasonText.of(season));
    Reading imperial =
        Gripwright.read("season.grip", new SeasonText(season, true, lines -> {}).write());
    assertEquals(metric.usable(), imperial.usable(), () -> imperial.findings().toString());
    if (metric.usable()) {
      CompiledPlan one = only(metric.compile());
      CompiledPlan other = only(imperial.compile());
      assertEquals(one.retests().size(), other.retests().size());
      assertEquals(one.sessions().size(), other.sessions().size());
      if (replaces(one) && !days(one).equals(days(other))) {
        return; // of two sessions a step apart, a test takes the place of either
      }
      assertEquals(days(one), days(other));
      double step = largestStep(season.athlete().equipment());
      for (int i = 0; i < one.sessions().size(); i++) {
        DatedSession session = one.sessions().get(i);
        // A line of a log may be reported for either of two equally near exercises.
        if (session.happened().isPresent()) {
          continue;
        }
        for (int j = 0; j < session.exercises().size(); j++) {
          assertNear(session.exercises().get(j), other.sessions().get(i).exercises().get(j), step);
        }
      }
    }
    Reached.reached(metric.usable(), 80);
  }

  private static boolean replaces(CompiledPlan plan) {
    return plan.retests().stream().anyMatch(retest -> !retest.insteadOf().isEmpty());
  }

  private static List<String> days(CompiledPlan plan) {
    return plan.sessions().stream()
        .map(
            s ->
                s.date()
                    + s.name()
                    + s.hard()
                    + s.exercises().stream()
                        .map(e -> e.setup().grip().name() + e.scheme().sets())
                        .sorted()
                        .toList())
        .toList();
  }

  private static double largestStep(Equipment equipment) {
    return Stream.of(equipment.added(), equipment.assist())
        .flatMap(s -> s.stream())
        .mapToDouble(s -> s.step().kilograms())
        .max()
        .orElse(0);
  }

  private static void assertNear(PlannedExercise one, PlannedExercise other, double step) {
    for (int i = 0; i < one.steps().size(); i++) {
      assertEquals(one.steps().get(i).seconds(), other.steps().get(i).seconds());
      if (one.steps().get(i).isHold()) {
        double kilograms = one.steps().get(i).load().orElseThrow().kilograms();
        double again = other.steps().get(i).load().orElseThrow().kilograms();
        assertTrue(
            Math.abs(kilograms - again) <= step + 1e-6,
            one.path() + ": " + kilograms + " " + again);
      }
    }
  }

  /** Invariant 12: a written plan means the same as the plan built in Java. */
  @Property(edgeCases = EdgeCasesMode.NONE)
  void aPlanThatIsWrittenAndReadAgainIsCheckedTheSame(@ForAll GeneratedSeason season) {
    Reading reading = Gripwright.read("season.grip", SeasonText.of(season));
    if (reading.usable()) {
      assertEquals(season.athlete(), reading.athletes().get("ylva"));
      assertEquals(season.log(), reading.logs().get("ylva"));
      assertEquals(season.plan(), reading.plans().get("season"));
      assertEquals(season.compile(), only(reading.compile()));
    }
    Reached.reached(reading.usable(), 80);
  }
}
