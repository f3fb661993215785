package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.rule.StandardRules;
import gripwright.wording.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Keeps the reference of findings true: every code is there, and every example does as it says. */
class FindingsPageTest {

  private static final String PAGE = "docs/findings.md";
  private static final Set<String> WITHOUT_EXAMPLE =
      Set.of(
          "budget.athletes",
          "budget.cancelled",
          "budget.exercise",
          "budget.findings",
          "budget.holds",
          "budget.placement",
          "budget.sessions",
          "budget.time",
          "budget.values",
          "budget.weekly",
          "budget.weeks",
          "budget.work",
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

  @Test
  void everyCodeHasAWrongAndARightExample() {
    Page page = Page.read(PAGE);
    List<String> infos = page.blocks().stream().map(Page.Block::info).toList();
    List<String> missing = new ArrayList<>();
    for (String heading : page.headings(3)) {
      String code = code(heading);
      boolean both =
          infos.stream().anyMatch(i -> (i + " ").startsWith("grip wrong " + code + " "))
              && infos.contains("grip right " + code);
      if (both == WITHOUT_EXAMPLE.contains(code)) {
        missing.add(code);
      }
    }
    assertEquals(List.of(), missing);
  }

  @TestFactory
  Stream<DynamicTest> everyExampleDoesAsItSays() {
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
        Gripwright.read(
                "example.grip",
                block.text(),
                ReadOptions.standard().withRoot(Page.root().resolve("docs")))
            .compile()
            .findings();
    Set<String> codes =
        findings.stream().map(ReportedFinding::code).collect(Collectors.toCollection(TreeSet::new));
    if (block.info().startsWith("grip wrong")) {
      Set<String> expected = new TreeSet<>(Set.of(code));
      if (block.info().contains(" with ")) {
        expected.add(block.info().replaceFirst(".* with ", ""));
      }
      assertEquals(expected, codes, () -> told(findings));
    } else {
      assertAll(
          () -> assertFalse(codes.contains(code), () -> told(findings)),
          () ->
              assertTrue(
                  findings.stream().noneMatch(f -> f.severity() == Severity.ERROR),
                  () -> told(findings)));
    }
  }

  private static String told(List<ReportedFinding> findings) {
    return findings.stream()
        .limit(5)
        .map(f -> f.code() + " at " + f.file() + ":" + f.line() + ": " + f.message())
        .collect(Collectors.joining("\n"));
  }

  private static String code(String heading) {
    return heading.replace("`", "");
  }
}
