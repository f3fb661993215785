package gripwright.language.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

final class FindingTextTest {

  private static final ModelPath PLAN = ModelPath.of("plan", "autumn");

  private static LocatedFinding unused(SourceFile file, String marked) {
    int start = file.text().indexOf(marked);
    return LocatedFinding.at(
        file,
        new Span(start, marked.length()),
        Finding.warning("plan.waiver-unused", PLAN).with("rule", "short-rest"));
  }

  @Test
  void showsTheLineWithTheCharactersMarked() {
    SourceFile file = SourceFile.of("club/autumn.grip", "language 1\n  waive short-rest in base\n");
    assertEquals(
        """
        warning: the waiver of `short-rest` has no effect
          club/autumn.grip:2:9 (plan.waiver-unused)
            2:   waive short-rest in base
                       ~~~~~~~~~~ nothing here breaks this rule
          fix: delete it, or correct its rule or its place

        1 warning
        """,
        FindingText.plain().render(List.of(unused(file, "short-rest"))));
  }

  @Test
  void tabsAndWideCharactersKeepTheMarksInPlace() {
    SourceFile file = SourceFile.of("a.grip", "\tnote \"\u6307\u529B\" short-rest\n");
    String text = FindingText.plain().render(List.of(unused(file, "short-rest")));
    assertTrue(text.contains("    1:     note \"\u6307\u529B\" short-rest\n"), text);
    // 4 for the tab, 5 for the word and a blank, 2 quotes, 2 wide characters of 2, a blank
    assertTrue(text.contains("       " + " ".repeat(4 + 5 + 2 + 4 + 1) + "~~~~~~~~~~ "), text);
  }

  @Test
  void theFirstLineOfALongSpanIsShown() {
    SourceFile file = SourceFile.of("a.grip", "plan a {\r\n  from\r\n}\r\n");
    String text = FindingText.plain().render(List.of(unused(file, "a {\r\n  from")));
    assertTrue(text.contains("    1: plan a {\n            ~~~ nothing"), text);
  }

  @Test
  void theEndOfAFileCanBeMarked() {
    SourceFile file = SourceFile.of("a.grip", "plan a {");
    LocatedFinding end =
        LocatedFinding.at(
            file, new Span(8, 0), Finding.warning("plan.waiver-unused", PLAN).with("rule", "r"));
    String text = FindingText.plain().render(List.of(end));
    assertTrue(text.contains("    1: plan a {\n               ~ nothing"), text);
  }

  @Test
  void aFileWithoutTextHasNoLineToShow() {
    LocatedFinding nowhere =
        LocatedFinding.at(
            SourceFile.of("a.grip", ""),
            new Span(0, 0),
            Finding.warning("plan.waiver-unused", PLAN).with("rule", "r"));
    String text = FindingText.plain().render(List.of(nowhere));
    assertFalse(text.contains("~"), text);
  }

  @Test
  void relatedPlacesAndReasonsAreShown() {
    SourceFile file = SourceFile.of("a.grip", "first x\n\nagain x\n");
    Finding finding =
        Finding.error("rule.short-rest", PLAN)
            .with("message", "48 h between hard sessions")
            .with("source", "common practice")
            .alsoAt(PLAN.then("week", 2).then("date", "2027-01-19"))
            .waived("a trip with two days in a row");
    LocatedFinding located =
        LocatedFinding.at(file, new Span(9, 5), finding)
            .related("first-defined-here", file, new Span(0, 5));
    assertEquals(
        """
        waived error: 48 h between hard sessions
          a.grip:3:1 (rule.short-rest)
            3: again x
               ~~~~~
          where: week 2 (Tue 19 Jan)
          source: common practice
          waived: a trip with two days in a row
          note: first defined here, a.grip:1:1
            1: first x
               -----

        1 waived
        """,
        FindingText.plain().render(List.of(located)));
  }

  @Test
  void findingsOfAFileAreTogetherInItsOrder() {
    SourceFile one = SourceFile.of("one.grip", "aa bb cc");
    SourceFile two = SourceFile.of("two.grip", "dd");
    String text =
        FindingText.plain()
            .render(List.of(unused(one, "cc"), unused(two, "dd"), unused(one, "aa")));
    int aa = text.indexOf("one.grip:1:1");
    int cc = text.indexOf("one.grip:1:7");
    int dd = text.indexOf("two.grip:1:1");
    assertTrue(0 < aa && aa < cc && cc < dd, text);
    assertTrue(text.endsWith("\n3 warnings\n"), text);
  }

  @Test
  void aModelWithoutTextShowsItsPath() {
    Finding finding =
        Finding.error("plan.waiver-refused", PLAN.then("waiver", 1)).with("rule", "youth");
    assertEquals(
        """
        error: `youth` can't be waived
          plan autumn / waiver 1 (plan.waiver-refused)
          fix: change the plan so that it keeps the rule

        1 error
        """,
        FindingText.plain().renderModel(List.of(finding)));
  }

  @Test
  void aVeryLongLineIsCutAroundTheSpan() {
    String before = "x".repeat(1_000_000);
    SourceFile file = SourceFile.of("a.grip", before + "short-rest" + before);
    String text = FindingText.plain().render(List.of(unused(file, "short-rest")));
    assertTrue(text.length() < 1000, "cut");
    assertTrue(text.contains("    1: ..."), text);
    int line = text.indexOf("    1: ");
    int marks = text.indexOf("\n", line) + 1;
    assertEquals(text.indexOf("short-rest", line) - line, text.indexOf("~", marks) - marks, text);
  }

  @Test
  void controlCharactersAreReplaced() {
    SourceFile file = SourceFile.of("a.grip", "note \"\u001B[31m\u202Eevil\" short-rest");
    String text = FindingText.plain().render(List.of(unused(file, "short-rest")));
    assertFalse(text.contains("\u001B") || text.contains("\u202E"), "obeyed");
    assertTrue(text.contains("note \"\uFFFD[31m\uFFFDevil\" short-rest"), text);
  }

  @Test
  void coloursOnlyWhereRequested() {
    SourceFile file = SourceFile.of("a.grip", "short-rest");
    String plain = FindingText.plain().render(List.of(unused(file, "short-rest")));
    String coloured = FindingText.coloured().render(List.of(unused(file, "short-rest")));
    assertFalse(plain.contains("\u001B"));
    assertTrue(coloured.contains("\u001B[1;33m"));
    assertEquals(plain, coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  @Test
  void countsBySeverityAndCountsWaivedSeparately() {
    Finding error = Finding.error("x", PLAN);
    Finding advice = Finding.advice("x", PLAN);
    assertEquals("no findings", FindingText.plain().count(List.of()));
    assertEquals(
        "2 errors, 1 piece of advice; 1 waived",
        FindingText.plain().count(List.of(error, advice, error, error.waived("b"))));
  }

  @Property(tries = 500)
  void everyTextCanBeMarkedAnywhere(@ForAll String text, @ForAll int a, @ForAll int b) {
    SourceFile file = SourceFile.of("a.grip", text);
    int start = Math.floorMod(a, text.length() + 1);
    int end = start + Math.floorMod(b, text.length() + 1 - start);
    MarkedLine line = MarkedLine.of(file, Span.between(start, end));
    assertTrue(line.marks() >= 1 && line.indent() >= 0);
    assertTrue(line.text().codePoints().noneMatch(Character::isISOControl));
  }
}
