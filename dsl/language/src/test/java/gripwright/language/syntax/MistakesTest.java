package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Each file with a mistake gives exactly the findings in the file next to it. Run with {@code
 * -Dgripwright.bless=true} to write the expectations anew, and review them in the diff.
 */
class MistakesTest {

  @TestFactory
  Stream<DynamicTest> eachMistakeGivesItsFindings() {
    return Texts.in(Texts.MISTAKES).stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
  }

  private static void check(Path file) throws IOException {
    ParsedFile parsed = Texts.check(Texts.read(file));
    String found =
        parsed.findings().stream()
            .map(f -> Texts.place(f) + " " + f.finding().code() + "\n")
            .collect(Collectors.joining());
    Path expected =
        file.resolveSibling(file.getFileName().toString().replace(".grip", ".expected"));
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.writeString(expected, found, StandardCharsets.UTF_8);
    }
    assertEquals(Texts.read(expected), found);
  }

  @Test
  void everyFindingHasItsSentence() {
    for (Path file : Texts.in(Texts.MISTAKES)) {
      for (var finding : Texts.parse(Texts.read(file)).findings()) {
        String sentence = Wording.english().sentence(finding.finding());
        String hint = Wording.english().hint(finding.finding()).orElse("");
        assertTrue(!hint.isEmpty(), () -> file + " has a finding without a hint");
        for (String word : List.of("token", "illegal", "invalid", "mismatched", "{found}")) {
          assertTrue(!sentence.contains(word), () -> sentence);
        }
      }
    }
  }

  @Test
  void whatIsMissingAfterAnOfIsNamed() {
    String log =
        "language 1\nlog ylva {\n  2027-01-05 session s {\n    p on g edge 20 mm: %s\n  }\n}\n";
    String rules = "language 1\nrules r {\n  rule a {\n    require load > %s\n  }\n}\n";
    assertEquals("a number should come here, not `,`", missing(log, "sets 3 of, load 60 kg"));
    assertEquals("a number is missing at the end of the line", missing(log, "sets 3 of"));
    assertEquals("a number should come here, not `load`", missing(log, "sets 3 of load 60 kg"));
    assertEquals("a value is missing at the end of the line", missing(rules, "3 % of"));
    assertEquals("`%` should come here, not `of`", missing(rules, "3 of load"));
  }

  private static String missing(String text, String words) {
    var findings = Texts.parse(text.replace("%s", words)).findings();
    assertEquals(1, findings.size());
    return Wording.english().sentence(findings.get(0).finding());
  }

  @Test
  void theFileIsReadPastItsMistake() {
    Path file = Texts.MISTAKES.resolve("no-close-brace-session.grip");
    ParsedFile parsed = Texts.parse(Texts.read(file));
    Declaration.Plan plan = (Declaration.Plan) parsed.declarations().get(3);
    PlanItem.BlockItem block = (PlanItem.BlockItem) plan.items().get(3);
    assertEquals(3, block.parts().size(), "the session, the advance and the ease");
    assertTrue(!plan.damaged() && !block.damaged());
    assertTrue(((BlockPart.SessionItem) block.parts().get(0)).damaged());
    assertEquals(6, plan.items().size());
  }
}
