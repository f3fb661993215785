package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** {@code check} of several files, and its output for code hosts and editors. */
final class CheckCommandTest extends CommandLine {

  private static final String WRONG = "language 1\nprotocol p {\n  hold 7 s at 60 mm\n}\n";
  private static final String RULES =
      """
      language 1
      rules club {
        rule short-rest {
          severity warning
          for exercise
          require rest >= 2 min
          message "rest longer between sets"
          source "the club's own"
        }
      }
      """;

  private void write(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  private List<Error> sarifErrors() throws IOException {
    try (InputStream in =
        CheckCommandTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON)
          .validate(out(), InputFormat.JSON);
    }
  }

  private JsonNode results() throws IOException {
    return new ObjectMapper().readTree(out()).at("/runs/0/results");
  }

  @Test
  void filesOfTwoFoldersHaveDifferentNames() throws IOException {
    write("a/x.grip", WRONG);
    write("b/x.grip", WRONG);
    assertEquals(1, run("check", "a/x.grip", "b/x.grip"));
    assertTrue(out().contains("\n  a/x.grip:3:15 ("), out());
    assertTrue(out().contains("\n  b/x.grip:3:15 ("), out());
    assertEquals(1, run("check", "a/x.grip", "b/x.grip", "--as", "json"));
    assertTrue(out().contains("\"file\": \"b/x.grip\""), out());
    assertEquals(1, run("check", "b/x.grip"));
    assertTrue(out().contains("\n  x.grip:3:15 ("), out());
  }

  @Test
  void usedFilesMustStillBeInTheirOwnFolder() throws IOException {
    write("a/x.grip", "language 1\nuse \"../b/x.grip\"\n");
    write("b/x.grip", "language 1\n");
    assertEquals(1, run("check", "a/x.grip", "b/x.grip"));
    assertTrue(out().contains("(name.outside-root)\n"), out());
    assertEquals(0, run("check", "a/x.grip", "b/x.grip", "--root", "."), out());
  }

  @Test
  void aFileThatTwoUseIsReportedOnce() throws IOException {
    write("a.grip", "language 1\nuse \"shared.grip\"\n");
    write("b.grip", "language 1\nuse \"shared.grip\"\n");
    write("shared.grip", WRONG);
    assertEquals(1, run("check", "a.grip", "b.grip"));
    assertEquals(2, out().split("error: ", -1).length, out());
    assertTrue(out().endsWith("b.grip: 1 error (1 shown above)\n"), out());
  }

  @Test
  void allFindingsCanBeShown() throws IOException {
    write("a.grip", "language 1\nplan p {\n" + "  from\n".repeat(250) + "}\n");
    assertEquals(1, run("check", "a.grip"));
    assertTrue(out().endsWith("a.grip: 30 errors, 1 piece of advice\n"), out());
    assertEquals(1, run("check", "a.grip", "--all"));
    assertTrue(out().endsWith("a.grip: 250 errors\n"), out());
  }

  @Test
  void aSecondDefinitionShowsTheFirst() throws IOException {
    write("a.grip", "language 1\nuse \"b.grip\"\nprotocol p {\n  hold 7 s at 60 % max\n}\n");
    write("b.grip", "language 1\nprotocol p {\n  hold 7 s at 50 % max\n}\n");
    assertEquals(1, run("check", "a.grip"));
    assertTrue(out().contains("note: first defined here, b.grip:2:10\n"), out());
    assertEquals(1, run("check", "a.grip", "--as", "sarif"));
    assertEquals(List.of(), sarifErrors());
    assertEquals(
        "b.grip",
        results().at("/0/relatedLocations/0/physicalLocation/artifactLocation/uri").asText());
  }

  @Test
  void sarifCountsColumnsInUtf16Units() throws IOException {
    write("a.grip", "\uFEFFlanguage 1 # \uD83E\uDDD7\nplan p \"\uD83E\uDDD7\" { form }\n");
    assertEquals(1, run("check", "a.grip", "--as", "sarif"));
    JsonNode region = results().at("/0/locations/0/physicalLocation/region");
    assertEquals(2, region.path("startLine").asInt(), out());
    assertEquals(15, region.path("startColumn").asInt(), out());
    assertEquals(19, region.path("endColumn").asInt(), out());
  }

  @Test
  void sarifOfAMissingFile() throws IOException {
    assertEquals(2, run("check", "no.grip", "--as", "sarif"));
    assertEquals(List.of(), sarifErrors());
    assertEquals("name.file-missing", results().at("/0/ruleId").asText());
    assertFalse(
        new ObjectMapper()
            .readTree(out())
            .at("/runs/0/invocations/0/executionSuccessful")
            .asBoolean());
    assertEquals(2, run("check", "--as", "sarif", "--bad"));
    assertEquals(List.of(), sarifErrors());
  }

  /** Logs of all plans of ours, and of files with all kinds of mistakes, keep the schema. */
  @Test
  void sarifKeepsItsSchemaForEveryFile() throws IOException {
    List<String> files = new ArrayList<>();
    for (String place : List.of("../../examples/plans", "../language/src/test/resources/corpus")) {
      try (Stream<Path> found = Files.list(Path.of(place))) {
        found
            .filter(file -> file.toString().endsWith(".grip"))
            .sorted()
            .forEach(file -> files.add(file.toAbsolutePath().normalize().toString()));
      }
    }
    files.add(0, "check");
    files.addAll(List.of("--as", "sarif", "--all"));
    assertEquals(1, run(files.toArray(String[]::new)));
    assertEquals(List.of(), sarifErrors());
    Set<String> levels = new HashSet<>();
    results().forEach(result -> levels.add(result.path("level").asText()));
    assertEquals(Set.of("error", "warning", "note"), levels);
    assertTrue(out().contains("\"justification\""), "a waiver is there");
  }

  @Test
  void aCoachsOwnRuleIsExplained() throws IOException {
    write("club.grip", RULES);
    assertEquals(0, run("explain", "rule.short-rest", "club.grip"), out() + err());
    assertTrue(out().startsWith("rule.short-rest\n\n  rest longer between sets\n"), out());
    assertTrue(out().contains("warning; source: the club's own\n"), out());
    assertTrue(out().endsWith("Declared in rules club, club.grip line 3.\n"), out());
    assertEquals(2, run("explain", "rule.short-rest"));
    assertTrue(err().contains("gripwright explain rule.short-rest FILE"), err());
    assertEquals(2, run("explain", "rule.short-ret", "club.grip"));
    assertTrue(err().contains("did you mean `rule.short-rest`?"), err());
    assertEquals(0, run("explain", "name.unknown", "club.grip"));
    assertEquals(2, run("explain", "name.unknown", "none.grip"));
  }
}
