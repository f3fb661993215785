package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.rule.StandardRules;
import gripwright.season.Season;
import gripwright.season.SeasonOptions;
import gripwright.wording.Messages;
import gripwright.wording.Wording;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Keeps the reference of findings up to date: every code is listed, and every example gives the
 * stated findings.
 */
class FindingsPageTest {

  private static final String PAGE = "docs/findings.md";
  private static final Pattern WITHIN = Pattern.compile(" within ([a-z]+)(?: ([0-9]+))?$");
  private static final Set<String> WITHOUT_EXAMPLE =
      Set.of(
          "budget.athletes",
          "budget.cancelled",
          "budget.sessions",
          "budget.time",
          "budget.weekly",
          "budget.weeks",
          "plan.for-cohort",
          "name.too-many-files",
          "name.unreadable",
          "syntax.encoding",
          "syntax.more",
          "syntax.too-deep",
          "syntax.too-large",
          "syntax.too-long");

  @Test
  void everyCodeIsDocumentedAndEveryDocumentedCodeExists() {
    Set<String> codes = new TreeSet<>(Messages.english().codes());
    StandardRules.sets()
        .forEach(set -> set.rules().forEach(rule -> codes.add("rule." + rule.name())));
    List<String> documented =
        Page.read(PAGE).headings(3).stream().map(FindingsPageTest::code).toList();
    assertEquals(
        String.join("\n", codes), String.join("\n", new TreeSet<>(documented)), "codes of " + PAGE);
    assertEquals(documented.size(), new TreeSet<>(documented).size(), "a code is there twice");
  }

  /** A limit says where it comes from: from whom, from common practice, or from ourselves. */
  @Test
  void everyBuiltInRuleNamesItsSource() {
    Pattern source =
        Pattern.compile(
            "(?is).*(common\\s+practice|choice\\s+of\\s+this\\s+library|\\b(19|20)\\d\\d\\b|source:).*");
    List<String> without = new ArrayList<>();
    for (String section : String.join("\n", Page.read(PAGE).lines()).split("\n### ")) {
      String prose = section.split("\nWrong")[0];
      if (section.startsWith("`rule.") && !source.matcher(prose).matches()) {
        without.add(prose.lines().findFirst().orElseThrow());
      }
    }
    assertEquals(List.of(), without);
  }

  @Test
  void everyCodeHasAWrongAndARightExample() {
    Page page = Page.read(PAGE);
    List<String> infos = page.blocks().stream().map(Page.Block::info).toList();
    List<String> missing = new ArrayList<>();
    for (String heading : page.headings(3)) {
      String code = code(heading);
      boolean both =
          infos.stream().anyMatch(i -> (i + " ").startsWith("grip wrong " + code + " "))
              && infos.stream().anyMatch(i -> (i + " ").startsWith("grip right " + code + " "));
      if (both == WITHOUT_EXAMPLE.contains(code)) {
        missing.add(code);
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void everyCodeOfTheBudgetHasAnExampleOrItsSentence() {
    List<String> infos = Page.read(PAGE).blocks().stream().map(Page.Block::info).toList();
    List<String> missing =
        Messages.english().codes().stream()
            .filter(code -> code.startsWith("budget."))
            .filter(
                code ->
                    infos.stream().anyMatch(i -> i.startsWith("seen " + code + " "))
                        != WITHOUT_EXAMPLE.contains(code))
            .toList();
    assertEquals(List.of(), missing);
  }

  /** Findings of the plan above them, built in Java, since a file would be refused before. */
  @TestFactory
  Stream<DynamicTest> everyQuotedSentenceIsTheActualOne() {
    List<Page.Block> seen =
        new ArrayList<>(
            Page.read(PAGE).blocks().stream().filter(b -> b.info().startsWith("seen ")).toList());
    Collections.reverse(seen); // from the bottom up, so that a rewritten block moves no later one
    return seen.stream()
        .map(block -> DynamicTest.dynamicTest(block.info(), () -> checkSentence(block)));
  }

  private static void checkSentence(Page.Block block) {
    Page page = Page.read(PAGE);
    String plan =
        page.blocks().stream()
            .filter(b -> b.info().equals("grip plan over budget"))
            .map(Page.Block::text)
            .findFirst()
            .orElseThrow();
    Season season = Gripwright.read("example.grip", plan, options()).orThrow().season();
    List<Finding> findings =
        season.compile(SeasonOptions.standard().withBudget(budget(block.info()))).findings();
    assertEquals(
        List.of(code(block.heading())), findings.stream().map(Finding::code).distinct().toList());
    ReportedFinding reported = Wording.english().report(findings.get(0));
    Blessing.block(page, block, reported.message() + "\n  help: " + reported.hint());
  }

  private static ReadOptions options() {
    return ReadOptions.standard().withRoot(Page.root().resolve("docs"));
  }

  /** Returns the budget of a program that allows less than the standard one, if a block says so. */
  private static Budget budget(String info) {
    Matcher within = WITHIN.matcher(info);
    if (!within.find()) {
      return Budget.standard();
    }
    String what = within.group(1);
    if (what.equals("cancellation")) {
      return Budget.standard().withCancellation(() -> true);
    }
    long most = Long.parseLong(within.group(2));
    if (what.equals("time")) {
      AtomicLong late = new AtomicLong();
      Duration time = Duration.ofSeconds(most);
      return Budget.standard().withDeadline(time, () -> late.getAndAdd(time.toNanos() + 1));
    }
    return Budget.standard().with(Limit.valueOf(what.toUpperCase(Locale.ROOT)), most);
  }

  @TestFactory
  Stream<DynamicTest> everyExampleGivesTheStatedFindings() {
    return Page.read(PAGE).blocks().stream()
        .filter(block -> block.info().startsWith("grip "))
        .map(
            block ->
                DynamicTest.dynamicTest(
                    block.info() + ", line " + block.first(), () -> check(block)));
  }

  private static void check(Page.Block block) {
    String code = code(block.heading());
    List<ReportedFinding> findings =
        Gripwright.read("example.grip", block.text(), options().withBudget(budget(block.info())))
            .check()
            .findings();
    Set<String> codes =
        findings.stream().map(ReportedFinding::code).collect(Collectors.toCollection(TreeSet::new));
    if (block.info().startsWith("grip wrong")) {
      Set<String> expected = new TreeSet<>(Set.of(code));
      if (block.info().contains(" with ")) {
        expected.addAll(List.of(block.info().replaceFirst(".* with ", "").split(" and ")));
      }
      assertEquals(expected, codes, () -> described(findings));
    } else {
      assertAll(
          () -> assertFalse(codes.contains(code), () -> described(findings)),
          () ->
              assertTrue(
                  findings.stream().noneMatch(f -> f.severity() == Severity.ERROR),
                  () -> described(findings)));
    }
  }

  private static String described(List<ReportedFinding> findings) {
    return findings.stream()
        .limit(5)
        .map(f -> f.code() + " at " + f.file() + ":" + f.line() + ": " + f.message())
        .collect(Collectors.joining("\n"));
  }

  private static String code(String heading) {
    return heading.replace("`", "");
  }
}
