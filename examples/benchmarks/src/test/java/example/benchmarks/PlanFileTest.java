package example.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PlanFileTest {

  @ParameterizedTest
  @ValueSource(ints = {500, 1000, 2000})
  void hasTheRequestedLinesAndNoErrors(int lines) {
    String text = PlanFile.ofLines(lines);
    assertEquals(lines, text.lines().count());
    Compilation compilation = Gripwright.read("season.grip", text).compile();
    assertEquals(List.of(), errors(compilation.findings()));
  }

  @Test
  void givesTheSameFileEachTime() {
    assertEquals(PlanFile.ofLines(1000), PlanFile.ofLines(1000));
  }

  @Test
  void refusesTooFewLines() {
    assertThrows(IllegalArgumentException.class, () -> PlanFile.ofLines(100));
  }

  @Test
  void containsAthletesLogsAndPlansThatCompile() {
    Reading reading = Gripwright.read("season.grip", PlanFile.ofLines(1000));
    assertEquals(12, reading.athletes().size());
    assertEquals(12, reading.logs().size());
    assertEquals(6, reading.plans().size());
    Compilation compilation = reading.compile();
    assertEquals(12, compilation.plans().size());
    assertTrue(compilation.plans().stream().allMatch(plan -> plan.sessions().size() >= 12));
  }

  @Test
  void jsonAndYamlHaveTheSameFacts() throws Exception {
    String text = PlanFile.ofLines(1000);
    JsonNode facts = Facts.tree(text);
    assertEquals(facts, new ObjectMapper().readTree(Facts.json(text)));
    assertEquals(facts, new YAMLMapper().readTree(Facts.yaml(text)));
  }

  @Test
  void factsKeepEveryStatement() {
    JsonNode facts = Facts.tree("language 1\nplan p { for a from 2027-01-11 weigh match 40 % }\n");
    assertEquals(
        "[{\"type\":\"Language\",\"version\":1},"
            + "{\"type\":\"Plan\",\"name\":\"p\",\"items\":["
            + "{\"type\":\"ForItem\",\"athletes\":[\"a\"]},"
            + "{\"type\":\"FromItem\",\"date\":\"2027-01-11\"},"
            + "{\"type\":\"Weigh\",\"weights\":[{\"name\":\"match\",\"percent\":{\"%\":40}}]}]}]",
        facts.toString());
    assertThrows(IllegalArgumentException.class, () -> Facts.tree("language 1\nplan {"));
  }

  private static List<String> errors(List<ReportedFinding> findings) {
    return findings.stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .map(finding -> finding.line() + ": " + finding.message())
        .toList();
  }
}
