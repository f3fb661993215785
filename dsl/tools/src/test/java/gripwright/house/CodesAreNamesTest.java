package gripwright.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.rule.StandardRules;
import gripwright.wording.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Codes of findings and names of rules are names for people and tools: no logic compares them.
 * Other code uses the topic of a finding.
 */
final class CodesAreNamesTest {

  private static final List<Path> SOURCES =
      Stream.of("core", "dsl/language", "dsl/export", "dsl/tools")
          .map(module -> Path.of("../..", module, "src/main/java"))
          .toList();

  /** Comparisons that stay, by class, with the reason. */
  private static final Map<String, String> ALLOWED =
      Map.of(
          "Finding",
          "a code rule.NAME is made of the name of a rule, and this is where it is taken apart",
          "FindingPairs",
          "two findings of two editions are the same if they have the same code, whatever it is",
          "PlanFindings",
          "a finding that was settled is found again by the same code, whatever it is",
          "GripSurvey",
          "two breaches are of the same rule, whichever it is",
          "PainSteps",
          "the rule of a course of pain, which is an enumeration and no name",
          "CodePages",
          "finds the page of a code that somebody wants explained",
          "ExplainCommand",
          "finds out what somebody wants explained, which may be a code");

  /** A code or name of a rule is taken from a finding and compared, searched or switched over. */
  private static final Pattern COMPARED =
      Pattern.compile(
          "(code|rule)\\(\\)(\\s*\\.orElse\\([^)]*\\))?\\s*\\."
              + "(equals|equalsIgnoreCase|startsWith|endsWith|contains|matches|compareTo|indexOf)\\("
              + "|\\bcode\\.(equals|startsWith|endsWith|contains|matches)\\("
              + "|(contains|equals|containsKey|get)\\(\\s*\\w+(\\(\\))?\\.code\\(\\)"
              + "|switch \\([^;{]*\\b(code|rule)\\(\\)[^;{]*\\{\\s*(case \"|default)");

  /** A text that is compared, searched or a case of a switch. */
  private static final Pattern TEXT =
      Pattern.compile(
          "(?:equals|startsWith|contains|case|Set\\.of|List\\.of)[ (]\\s*((?:\"[^\"]*\"(?:,\\s*)?)+)");

  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

  @Test
  void noLogicComparesTheCodeOfAFindingOrTheNameOfARule() throws IOException {
    Set<String> names = names();
    Map<String, String> found = new TreeMap<>();
    int files = 0;
    for (Path root : SOURCES) {
      try (Stream<Path> walk = Files.walk(root)) {
        for (Path file : walk.filter(f -> f.toString().endsWith(".java")).toList()) {
          String type = file.getFileName().toString().replace(".java", "");
          comparison(Files.readString(file), names).ifPresent(text -> found.put(type, text));
          files++;
        }
      }
    }
    assertTrue(files > 300, "sources are found: " + files);
    Set<String> allowed = new HashSet<>(ALLOWED.keySet());
    allowed.removeAll(found.keySet());
    assertEquals(Set.of(), allowed, "no longer needed: take it away");
    found.keySet().removeAll(ALLOWED.keySet());
    assertEquals(Map.of(), found, "give the finding a topic, and ask for that");
  }

  @Test
  void comparisonsAreFoundInEveryForm() {
    Set<String> names = names();
    for (String source :
        List.of(
            "f.code().equals(OTHER)",
            "f.code()\n    .startsWith(\"plan.\")",
            "KNOWN.contains(f.code())",
            "UNUSED.equals(finding.code())",
            "switch (breach.rule().orElse(\"\")) { case \"x\" -> 1; }",
            "code.equals(ANY)",
            "Set.of(\"plan.session-unplanned\")",
            "\"a\".equals(b) || b.equals(\"injured-finger\")",
            "case \"plan.past-breach\" -> 2")) {
      assertTrue(comparison(source, names).isPresent(), source);
    }
    for (String source :
        List.of(
            "Finding.error(\"name.unknown\", place)",
            "course.rule() == Rule.STOP",
            "words.equals(\"hard\")")) {
      assertTrue(comparison(source, names).isEmpty(), source);
    }
  }

  private static Set<String> names() {
    Set<String> names = new HashSet<>(Messages.english().codes());
    StandardRules.sets().forEach(set -> set.rules().forEach(rule -> names.add(rule.name())));
    return names;
  }

  private static Optional<String> comparison(String source, Set<String> names) {
    Matcher compared = COMPARED.matcher(source);
    if (compared.find()) {
      return Optional.of(compared.group());
    }
    Matcher texts = TEXT.matcher(source);
    while (texts.find()) {
      Matcher each = QUOTED.matcher(texts.group(1));
      while (each.find()) {
        if (names.contains(each.group(1))) {
          return Optional.of(texts.group());
        }
      }
    }
    return Optional.empty();
  }
}
