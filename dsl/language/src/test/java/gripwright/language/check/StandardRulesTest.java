package gripwright.language.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ModelPath;
import gripwright.finding.Topic;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.rule.StandardRules;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The built-in rules as text and as Java are the same rules. */
class StandardRulesTest {

  private static final Path JAVA =
      Path.of("../../core/src/main/java/gripwright/rule/StandardRules.java");

  /** Topics of breaches: data for other code that the language can't express. */
  private static final Map<String, Topic> TOPICS =
      Map.ofEntries(
          Map.entry("split-grip-gate", Topic.EXPERIENCE),
          Map.entry("single-finger-gate", Topic.EXPERIENCE),
          Map.entry("grip-needs-gate", Topic.PREREQUISITES),
          Map.entry("injured-finger", Topic.INJURY),
          Map.entry("injured-climbing", Topic.INJURY),
          Map.entry("youth-level", Topic.YOUTH),
          Map.entry("youth-hard", Topic.YOUTH),
          Map.entry("youth-failure", Topic.YOUTH),
          Map.entry("youth-light-work", Topic.SUPERVISION),
          Map.entry("youth-supervision", Topic.SUPERVISION),
          Map.entry("rehabilitation-exercise", Topic.REHABILITATION),
          Map.entry("join-load-rise", Topic.JOIN));

  @Test
  void theJavaFormEqualsTheText() throws IOException {
    List<RuleSet> fromText = fromText();
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.writeString(JAVA, RuleSourceWriter.write(fromText));
      return;
    }
    for (int i = 0; i < fromText.size(); i++) {
      RuleSet built = StandardRules.sets().get(i);
      for (int k = 0; k < built.rules().size(); k++) {
        assertEquals(fromText.get(i).rules().get(k), built.rules().get(k));
      }
    }
    assertTrue(fromText.equals(StandardRules.sets()), "more or fewer rules than in Java");
  }

  @Test
  void theJavaFormIsTheOneThatIsGenerated() throws IOException {
    String squeezed = Files.readString(JAVA).replaceAll("\\s+", "");
    assertTrue(
        RuleSourceWriter.write(fromText()).replaceAll("\\s+", "").equals(squeezed),
        "the file was edited: run this test with -Dgripwright.bless=true, then the formatter");
  }

  @Test
  void everyBuiltInRuleHasASource() {
    for (RuleSet set : StandardRules.sets()) {
      set.rules().forEach(rule -> assertTrue(rule.source().isPresent(), rule.name()));
    }
  }

  @Test
  void noMessagePromisesAnything() {
    for (RuleSet set : StandardRules.sets()) {
      set.rules()
          .forEach(
              rule ->
                  assertTrue(
                      !rule.message().matches("(?i).*\\b(safe|safely|protects?|prevents?)\\b.*"),
                      rule.message()));
    }
  }

  private static List<RuleSet> fromText() throws IOException {
    try (InputStream in =
        RuleSetCheck.class.getResourceAsStream("/gripwright/language/catalogue/rules.grip")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      ParsedFile file = Reader.parse(SourceFile.of("rules.grip", text));
      List<LocatedFinding> findings = new ArrayList<>(file.findings());
      RuleSetCheck check =
          new RuleSetCheck(new RuleNames((l, w) -> true, (l, w) -> true, List.of()));
      List<RuleSet> sets = new ArrayList<>();
      for (Declaration declaration : file.declarations()) {
        if (declaration instanceof Declaration.Rules rules) {
          ModelPath place = ModelPath.of("rules", rules.name().text());
          Declared<Declaration.Rules> declared = new Declared<>(file, rules, rules.name(), false);
          check.check(declared, new Diagnostics(declared, place, findings)).ifPresent(sets::add);
        }
      }
      assertEquals(
          List.of(), findings.stream().map(f -> f.report(Wording.english()).toString()).toList());
      return sets.stream().map(StandardRulesTest::withTopics).toList();
    }
  }

  private static RuleSet withTopics(RuleSet set) {
    return new RuleSet(
        set.name(), set.title(), set.rules().stream().map(StandardRulesTest::withTopic).toList());
  }

  private static Rule withTopic(Rule rule) {
    Topic topic = TOPICS.get(rule.name());
    return topic == null ? rule : rule.toBuilder().about(topic).build();
  }
}
