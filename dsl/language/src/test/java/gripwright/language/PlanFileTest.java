package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.expression.Expression;
import gripwright.expression.Kind;
import gripwright.expression.Scope;
import gripwright.grip.StandardGrips;
import gripwright.language.source.SourceLoader;
import gripwright.language.write.Unwritable;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.rule.StandardRules;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PlanFileTest {

  private static final Path SAMPLES = Path.of("src/test/resources/samples");

  private static Stream<Path> files(Path folder) {
    if (!Files.isDirectory(folder)) {
      return Stream.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".grip")).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @TestFactory
  Stream<DynamicTest> aReadingIsWrittenAndReadsBackEqual() {
    return Stream.of(
            Path.of("../../examples/plans"),
            Path.of("src/test/resources/corpus"),
            Path.of("src/test/resources/trials"),
            Path.of("src/test/resources/syntax-all"),
            SAMPLES.resolve("good"))
        .flatMap(PlanFileTest::files)
        .filter(file -> Gripwright.read(file).usable())
        .map(file -> DynamicTest.dynamicTest(file.toString(), () -> same(Gripwright.read(file))));
  }

  private static void same(Reading read) {
    PlanFile file = new PlanFile();
    read.athletes().values().forEach(file::add);
    read.grips().values().stream()
        .filter(g -> !StandardGrips.byName().containsValue(g))
        .forEach(file::add);
    read.protocols().values().stream()
        .filter(p -> !StandardProtocols.byName().containsValue(p))
        .forEach(file::add);
    read.ruleSets().values().stream()
        .filter(set -> !StandardRules.sets().contains(set))
        .forEach(file::add);
    read.logs().values().forEach(file::add);
    read.plans().values().forEach(file::add);
    read.comparisons().values().forEach(file::add);
    Reading back = Gripwright.read("plan.grip", file.text());
    assertEquals(List.of(), back.findings().stream().filter(f -> f.blocks()).toList());
    assertEquals(read.athletes(), back.athletes());
    assertEquals(read.grips(), back.grips());
    assertEquals(read.protocols(), back.protocols());
    assertEquals(read.ruleSets(), back.ruleSets());
    assertEquals(read.logs(), back.logs());
    assertEquals(read.plans(), back.plans());
    assertEquals(read.comparisons(), back.comparisons());
  }

  @Test
  void builtInRulesAreWrittenUnderAnotherName() {
    for (RuleSet set : StandardRules.sets()) {
      List<Rule> rules = set.rules().stream().map(PlanFileTest::renamed).toList();
      RuleSet ours = new RuleSet("our-" + set.name(), set.title(), rules);
      String text = new PlanFile().add(ours).text();
      assertEquals(ours, Gripwright.read("r.grip", text).ruleSets().get(ours.name()));
    }
  }

  private static Rule renamed(Rule rule) {
    Rule.Builder renamed =
        Rule.named("our-" + rule.name(), rule.severity(), rule.scope())
            .require(rule.require())
            .message(rule.message())
            .neverWaived(rule.neverWaived());
    rule.when().ifPresent(renamed::when);
    rule.source().ifPresent(renamed::source);
    return renamed.build();
  }

  private static Plan plan(Protocol protocol) {
    Exercise exercise = Exercise.of(protocol, StandardGrips.HALF_CRIMP, Length.ofMillimetres(20));
    return Plan.named("p")
        .athlete("tove")
        .from(LocalDate.of(2027, 1, 11))
        .weeklyRise(0.07)
        .block(Block.named("base", 1).session(SessionPlan.of("s", 2, exercise)).build())
        .build();
  }

  private static final String TOVE =
      """
      language 1
      athlete tove {
        born       1995-01-01
        body-mass  62 kg
        trained    40 months
        ability    french 7b
        hand {
          length    176 mm
        }
        available  mon 60 min, thu 60 min
        equipment {
          edges    20 mm
        }
      }
      """;

  @Test
  void aProtocolIsWrittenWithThePlanThatUsesIt() {
    Protocol own =
        Protocol.named("own")
            .given("sets", 4)
            .step(
                new Protocol.Part.Repeat(
                    gripwright.protocol.Term.given("sets"),
                    gripwright.protocol.Term.of(Duration.ofSeconds(150)),
                    List.of(
                        new Protocol.Part.Hold(
                            gripwright.protocol.Term.of(Duration.ofSeconds(10)),
                            gripwright.protocol.Term.of(Level.ofMax(7))))))
            .build();
    ReadOptions beside =
        ReadOptions.standard().withFiles(SourceLoader.of(Map.of("club.grip", TOVE)));
    String text = new PlanFile().using("club.grip").add(plan(own)).text("plan.grip", beside);
    assertEquals(
        """
        language 1
        use "club.grip"

        protocol own {
          given  sets 4
          repeat sets resting 150 s {
            hold 10 s at 7 % max
          }
        }

        plan p {
          for      tove
          from     2027-01-11
          weekly-rise at most 7 %

          block base 1 week {
            session s 2 per week {
              do own on half-crimp edge 20 mm
            }
          }
        }
        """,
        text);
  }

  @Test
  void missingPartsAreNotWritten() {
    PlanFile file = new PlanFile().add(plan(StandardProtocols.MAX_HOLDS));
    Unwritable refusal = assertThrows(Unwritable.class, file::text);
    assertTrue(refusal.getMessage().contains("unknown athlete `tove`"), refusal.getMessage());
  }

  private static void refused(String words, PlanFile file) {
    Unwritable refusal = assertThrows(Unwritable.class, file::text);
    assertTrue(refusal.getMessage().contains(words), refusal.getMessage());
  }

  @Test
  void whatTheLanguageCannotExpressIsRefused() {
    Reading club = Gripwright.read("club.grip", TOVE);
    LogEntry twoLines =
        new LogEntry.Skipped(LocalDate.of(2027, 1, 5), "s", Optional.of("ill\nvery"));
    refused(
        "can't say",
        new PlanFile().add(club.athletes().get("tove")).add(Log.empty("tove").with(twoLines)));
    Expression week = Expression.subject(Kind.WEEK);
    Rule below =
        Rule.error("r", Scope.WEEK)
            .require(
                week.get("minutes").atLeast(Expression.amount(-1, gripwright.quantity.Unit.MINUTE)))
            .message("m")
            .build();
    refused("below zero", new PlanFile().add(RuleSet.of("rs", below)));
    assertThrows(
        Unwritable.class, () -> new PlanFile().add(RuleSet.of("rs", below)).add(RuleSet.of("rs")));
  }
}
