package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.finding.ReportedFinding;
import gripwright.rule.StandardRules;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * A folder of small files, each with its exact expected findings, one a line: {@code
 * file:line:column severity code}. A finding that is not listed fails. A file may be read within a
 * smaller budget, which its second line names: {@code # budget: work 900}. Run with {@code
 * -Dgripwright.bless=true} to rewrite the expectations, and read the difference.
 */
class CorpusTest {

  private static final boolean BLESS = Boolean.getBoolean("gripwright.bless");
  private static final Path CORPUS = Path.of("src/test/resources/corpus");
  private static final Pattern CODE =
      Pattern.compile("\"((?:name|unit|type|value|syntax)\\.[a-z][a-z0-9-]*)\"");

  /** Returns the budget of a file, whose second line may be smaller than the standard. */
  private static final Pattern BUDGET = Pattern.compile("# budget: (.*)");

  private static Stream<Path> files() throws IOException {
    return Files.list(CORPUS).filter(file -> file.toString().endsWith(".grip")).sorted();
  }

  private static ReadOptions options(Path file) {
    return ReadOptions.standard().withRoot(CORPUS).withBudget(budget(file));
  }

  private static Budget budget(Path file) {
    try (Stream<String> lines = Files.lines(file, StandardCharsets.ISO_8859_1)) {
      Budget budget = Budget.standard();
      Matcher line = BUDGET.matcher(lines.skip(1).findFirst().orElse(""));
      if (line.matches()) {
        for (String limit : line.group(1).split(", ")) {
          String[] words = limit.split(" ");
          budget =
              budget.with(
                  Limit.valueOf(words[0].toUpperCase(Locale.ROOT)), Long.parseLong(words[1]));
        }
      }
      return budget;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String findings(Path file) {
    return Gripwright.read(file, options(file)).check().findings().stream()
        .map(CorpusTest::line)
        .collect(Collectors.joining());
  }

  private static String line(ReportedFinding finding) {
    return finding.file()
        + ":"
        + finding.line()
        + ":"
        + finding.column()
        + " "
        + finding.severity().word()
        + (finding.waivedBecause() == null ? "" : " waived")
        + " "
        + finding.code()
        + "\n";
  }

  private static Path expectedOf(Path file) {
    return file.resolveSibling(file.getFileName().toString().replace(".grip", ".expected"));
  }

  @TestFactory
  Stream<DynamicTest> everyFileHasExactlyItsExpectedFindings() throws IOException {
    return files()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      if (BLESS) {
                        Files.writeString(expectedOf(file), findings(file));
                      }
                      assertEquals(Files.readString(expectedOf(file)), findings(file));
                    }));
  }

  @Test
  void goodFilesHaveNoErrors() throws IOException {
    for (Path file : files().toList()) {
      if (file.getFileName().toString().startsWith("good-")) {
        assertTrue(Gripwright.read(file, options(file)).compile().usable(), file.toString());
      }
    }
  }

  /** Every code that resolving and checking can give is given by some file. */
  @Test
  void everyCodeIsCovered() throws IOException {
    Set<String> missing = new TreeSet<>();
    for (String folder : new String[] {"resolve", "check"}) {
      try (Stream<Path> sources =
          Files.list(Path.of("src/main/java/gripwright/language").resolve(folder))) {
        for (Path source : sources.toList()) {
          Matcher codes = CODE.matcher(Files.readString(source));
          while (codes.find()) {
            missing.add(codes.group(1));
          }
        }
      }
    }
    Set<String> given = new TreeSet<>(); // as expected, which each file's own test checks
    for (Path file : files().toList()) {
      for (String line : Files.readString(expectedOf(file)).lines().toList()) {
        given.add(line.substring(line.lastIndexOf(' ') + 1));
      }
    }
    for (Limit limit : Limit.values()) {
      missing.add("budget." + limit.word());
    }
    missing.removeAll(given);
    // Texts meet these limits as syntax.too-large, -deep and -long, or as value.too-many: see
    // ReadingBudgetTest, and SeasonBudgetTest for plans that are built in Java.
    missing.removeAll(
        Set.of("budget.characters", "budget.tokens", "budget.nesting", "budget.operators"));
    missing.removeAll(
        Set.of("budget.weeks", "budget.athletes", "budget.weekly", "budget.sessions"));
    // Covered by ResolverTest: they need files that don't belong in a repository.
    missing.removeAll(Set.of("syntax.too-large", "name.unreadable", "name.too-many-files"));
    assertEquals(Set.of(), missing);
  }

  /**
   * Every built-in rule is broken by some file, and another plan, alike but for the limit, keeps
   * it; docs/mutation.md says how the limits were moved, one step at a time.
   */
  @Test
  void everyBuiltInRuleIsBrokenBySomeFile() throws IOException {
    Set<String> missing = new TreeSet<>();
    StandardRules.sets()
        .forEach(set -> set.rules().forEach(rule -> missing.add("rule." + rule.name())));
    for (Path file : files().toList()) {
      for (String line : Files.readString(expectedOf(file)).lines().toList()) {
        missing.remove(line.substring(line.lastIndexOf(' ') + 1));
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void localeAndTimeZoneChangeNothing() throws IOException {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      for (Path file : files().toList()) {
        if (!BLESS) {
          assertEquals(Files.readString(expectedOf(file)), findings(file), file.toString());
        }
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
