package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.budget.Stage;
import gripwright.finding.ReportedFinding;
import gripwright.language.source.SourceLoader;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** One budget bounds reading, checking and compiling of text. */
class ReadingBudgetTest {

  private static final String ATHLETE =
      """
      athlete brit {
        born 1996-05-20
        body-mass 60 kg
        trained 40 months
        ability french 7c
        hand { length 180 mm }
        available tue 90 min, sat 90 min
        equipment { edges 20 mm  added 1 kg steps to 60 kg  assist 1 kg steps to 40 kg }
      }
      log brit {
        2026-12-20 test half-crimp edge 20 mm hold 7 s load 80 kg
      }
      """;

  private static final String PLAN =
      """
      plan spring {
        for brit
        from 2027-01-11
        rules club
        block base 3 weeks {
          session s 2 per week {
            do calm-holds on half-crimp edge 20 mm
          }
        }
      }
      rules club {
        rule few-holds {
          severity warning
          for exercise
          require count(plan.exercises where load <= exercise.load) <= 1
          message "many holds"
        }
      }
      """;

  private static final String TEXT = "language 1\n" + ATHLETE + PLAN;

  private static Reading read(String text, Budget budget) {
    return Gripwright.read("x.grip", text, ReadOptions.standard().withBudget(budget));
  }

  private static List<String> codes(List<ReportedFinding> findings) {
    return findings.stream().map(ReportedFinding::code).toList();
  }

  private static List<String> codes(String text, Budget budget) {
    return codes(read(text, budget).compile().findings());
  }

  private static Budget with(Limit limit, long most) {
    return Budget.standard().with(limit, most);
  }

  @Test
  void aGenerousBudgetChangesNothing() {
    Budget generous =
        Budget.standard()
            .withDeadline(Duration.ofDays(1), System::nanoTime)
            .withCancellation(() -> false)
            .withProgress((stage, done, of) -> {});
    for (Limit limit : Limit.values()) {
      generous = generous.with(limit, Long.MAX_VALUE);
    }
    Compilation usual = Gripwright.read("x.grip", TEXT).compile();
    Compilation bounded = read(TEXT, generous).compile();
    assertEquals(usual.findings(), bounded.findings());
    assertEquals(usual.plans(), bounded.plans());
    assertEquals(1, usual.plans().size());
  }

  @Test
  void limitsOfFilesAreThoseOfTheBudget() {
    String small = "language 1\nprotocol p {\n hold 7 s at 60 % max\n}\n";
    int length = small.length();
    assertEquals(List.of(), codes(small, with(Limit.CHARACTERS, length)));
    assertEquals(List.of("syntax.too-large"), codes(small, with(Limit.CHARACTERS, length - 1)));
    int tokens =
        IntStream.iterate(1, n -> n + 1)
            .filter(n -> codes(small, with(Limit.TOKENS, n)).isEmpty())
            .findFirst()
            .orElseThrow();
    assertTrue(tokens > 10 && tokens < small.length(), tokens + " words and signs");
    assertEquals(List.of("syntax.too-large"), codes(small, with(Limit.TOKENS, tokens - 1)));
    assertEquals(List.of(), codes(small, with(Limit.NESTING, 1)));
    String nested = small.replace("hold 7 s at 60 % max", "repeat 2 { hold 7 s at 60 % max }");
    assertEquals(List.of(), codes(nested, with(Limit.NESTING, 2)));
    assertEquals(List.of("syntax.too-deep"), codes(nested, with(Limit.NESTING, 1)));
    String sums =
        "language 1\nrules ours {\n rule mine {\n  severity warning\n  for week\n"
            + "  require minutes <= 1 min + 2 min\n  message \"short\"\n }\n}\n";
    assertEquals(List.of(), codes(sums, with(Limit.OPERATORS, 2)));
    assertEquals(List.of("syntax.too-long"), codes(sums, with(Limit.OPERATORS, 1)));
  }

  @Test
  void plansAreMeasuredWithTheBudgetWhenTheyAreChecked() {
    List<String> fine = List.of("rule.few-holds");
    List<String> tooMany = List.of("value.too-many");
    assertEquals(fine, codes(TEXT, with(Limit.WEEKS, 3)));
    assertEquals(tooMany, codes(TEXT, with(Limit.WEEKS, 2)));
    assertEquals(fine, codes(TEXT, with(Limit.WEEKLY, 2)));
    assertEquals(tooMany, codes(TEXT, with(Limit.WEEKLY, 1)));
    assertEquals(fine, codes(TEXT, with(Limit.SESSIONS, 6)));
    assertEquals(tooMany, codes(TEXT, with(Limit.SESSIONS, 5)));
    long holds = 100 + 3 * (10 + 2 * (10 + 40));
    assertEquals(fine, codes(TEXT, with(Limit.HOLDS, holds)));
    assertEquals(tooMany, codes(TEXT, with(Limit.HOLDS, holds - 1)));
    String two = TEXT.replace("for brit", "for brit, tove") + ATHLETE.replace("brit", "tove");
    assertEquals(fine, codes(two, with(Limit.ATHLETES, 2)));
    assertEquals(tooMany, codes(two, with(Limit.ATHLETES, 1)));
    String longer =
        TEXT.replace("calm-holds", "ours")
            + "protocol ours {\n repeat 20 resting 1 min {\n hold 5 s at 30 % max\n }\n}\n";
    assertEquals(fine, codes(longer, with(Limit.EXERCISE, 40)));
    assertEquals(tooMany, codes(longer, with(Limit.EXERCISE, 39)));
  }

  @Test
  void plansTogetherAreMeasuredToo() {
    String two = TEXT + PLAN.substring(0, PLAN.indexOf("rules club {")).replace("spring", "summer");
    assertEquals(2, read(two, with(Limit.SESSIONS, 12)).plans().size());
    Reading reading = read(two, with(Limit.SESSIONS, 11));
    assertEquals(List.of("value.too-many"), codes(reading.findings()));
    assertTrue(
        reading.findings().get(0).message().contains("12 sessions of all plans together"),
        reading.findings().get(0).message());
  }

  @Test
  void aWeekHasAHundredSessionsAtMost() {
    for (int kinds : List.of(100, 101)) {
      String sessions =
          IntStream.range(0, kinds)
              .mapToObj(
                  i ->
                      "session s"
                          + i
                          + " 1 per week {\n do calm-holds on half-crimp edge 20 mm\n}\n")
              .collect(Collectors.joining());
      String text =
          "language 1\n"
              + ATHLETE
              + "plan p {\n for brit\n from 2027-01-11\n block base 1 weeks {\n"
              + sessions
              + "}\n}\n";
      assertEquals(
          kinds == 100 ? List.of() : List.of("value.too-many"),
          codes(Gripwright.read("x.grip", text).findings()));
    }
  }

  @Test
  void compilingUsesTheBudgetOfTheReading() {
    Reading reading = read(TEXT, with(Limit.WORK, 60));
    assertTrue(reading.usable(), () -> reading.findings().toString());
    Compilation compilation = reading.compile();
    assertEquals(List.of("budget.work"), codes(compilation.findings()));
    ReportedFinding finding = compilation.findings().get(0);
    assertEquals(14, finding.line(), "where the plan begins");
    assertTrue(finding.message().contains("rule `"), finding.message());
    assertFalse(compilation.usable());
    assertEquals(List.of(), compilation.plans());
    assertEquals(List.of("budget.work"), codes(reading.compile("spring").findings()));
  }

  @Test
  void aReadingThatIsCancelledHasTheCatalogueAndOneFinding() {
    Reading reading = read(TEXT, Budget.standard().withCancellation(() -> true));
    assertEquals(List.of("budget.cancelled"), codes(reading.findings()));
    assertFalse(reading.usable());
    assertTrue(reading.fileRead());
    assertEquals(Map.of(), reading.plans());
    assertEquals(Map.of(), reading.athletes());
    assertTrue(reading.grips().containsKey("half-crimp"));
    assertEquals(List.of("budget.cancelled"), codes(reading.compile().findings()));
  }

  @Test
  void readingStopsWithinALargeFile() {
    String large = "language 1\n" + "protocol p {\n hold 7 s at 60 % max\n}\n".repeat(20_000);
    AtomicInteger looks = new AtomicInteger();
    List<Stage> stages = new ArrayList<>();
    Budget budget =
        Budget.standard()
            .withCancellation(() -> looks.incrementAndGet() > 20)
            .withProgress((stage, done, of) -> stages.add(stage));
    assertEquals(List.of("budget.cancelled"), codes(read(large, budget).findings()));
    assertEquals(List.of(Stage.READING), stages, "the file was not read to its end");
    assertEquals(21, looks.get());
  }

  @Test
  void checkingStopsBetweenTwoDeclarations() {
    AtomicBoolean cancelled = new AtomicBoolean();
    List<String> reports = new ArrayList<>();
    Budget budget =
        Budget.standard()
            .withCancellation(cancelled::get)
            .withProgress(
                (stage, done, of) -> {
                  reports.add(stage + " " + done + " " + of);
                  cancelled.set(stage == Stage.CHECKING && done == 2);
                });
    assertEquals(List.of("budget.cancelled"), codes(read(TEXT, budget).findings()));
    assertEquals(List.of("READING 0 1", "READING 1 1", "CHECKING 1 4", "CHECKING 2 4"), reports);
  }

  @Test
  void filesAreCounted() {
    List<String> reports = new ArrayList<>();
    SourceLoader files =
        (path, most) ->
            new SourceLoader.Loaded.Found(
                path, path.equals("a.grip") ? "language 1\nuse \"b.grip\"\n" : "language 1\n");
    Gripwright.read(
        "a.grip",
        "language 1\nuse \"b.grip\"\n",
        ReadOptions.standard()
            .withFiles(files)
            .withBudget(
                Budget.standard()
                    .withProgress(
                        (stage, done, of) -> reports.add(stage + " " + done + " " + of))));
    assertEquals(List.of("READING 0 1", "READING 0 2", "READING 1 2", "READING 2 2"), reports);
  }

  @Test
  void anInterruptedThreadStaysInterrupted() {
    Thread.currentThread().interrupt();
    Reading reading = read(TEXT, Budget.standard());
    assertTrue(Thread.interrupted());
    assertEquals(List.of("budget.cancelled"), codes(reading.findings()));
    assertEquals(List.of(), codes(read(TEXT, Budget.standard()).findings()));
  }

  @Test
  void readingAndCompilingHaveADeadlineEach() {
    AtomicLong now = new AtomicLong();
    Budget budget =
        Budget.standard()
            .withDeadline(Duration.ofSeconds(10), now::get)
            .withProgress((stage, done, of) -> now.addAndGet(1_000_000_000));
    Reading reading = read(TEXT, budget);
    assertTrue(reading.usable(), "seven reports take seven seconds");
    assertEquals(List.of("rule.few-holds"), codes(reading.compile().findings()));
    Reading late = read(TEXT, budget.withDeadline(Duration.ofSeconds(3), now::get));
    assertEquals(List.of("budget.time"), codes(late.findings()));
    assertTrue(late.findings().get(0).message().contains("within 3 s"));
  }
}
