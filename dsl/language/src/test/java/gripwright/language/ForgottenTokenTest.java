package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.language.source.SourceFile;
import gripwright.language.source.SourceLoader;
import gripwright.language.syntax.Reader;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.SyntaxToken;
import gripwright.work.MostTries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Leaves out every word, number and sign of the examples, one at a time. The examples use every
 * production of the grammar ({@code everyProductionIsThere}).
 *
 * <p>The results are in {@code forgotten.expected}, one line a token, so that a changed message is
 * visible in a review; run with {@code -Dgripwright.bless=true} to rewrite it.
 */
class ForgottenTokenTest {

  /** A unit forgotten at the end of a list of times is missing in each. */
  private static final int MOST_ERRORS = 8;

  /** A declaration without its name or keyword is not reported as missing where it is used. */
  private static final int MOST_UNKNOWN = 2;

  private static final Set<String> CHOICES =
      Set.of("DECLARATION", "HEAD", "PRIMARY", "RESERVED", "STEP", "SKIPPED_LINE");

  private static final Pattern EXPECTED_FOUND =
      Pattern.compile("expected (.*) here, found (.*)", Pattern.DOTALL);

  private static final boolean BLESS = Boolean.getBoolean("gripwright.bless");
  private static final Path FOLDER = Path.of("../../examples/plans");
  private static final Path EXPECTED = Path.of("src/test/resources/forgotten.expected");

  private static Map<String, String> texts() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".grip")).sorted().toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return texts;
  }

  private static Map<String, Integer> errors(String name, String text, Map<String, String> others) {
    Map<String, Integer> counts = new TreeMap<>();
    ReadOptions options =
        ReadOptions.standard().withFiles(SourceLoader.of(others)).withAllFindings();
    for (ReportedFinding finding : Gripwright.read(name, text, options).findings()) {
      if (finding.severity() == Severity.ERROR) {
        assertFalse(isAtOdds(finding.message()), finding.message());
        counts.merge(finding.code(), 1, Integer::sum);
      }
    }
    return counts;
  }

  /** Returns whether a sentence expects what it says was found. */
  private static boolean isAtOdds(String message) {
    Matcher sentence = EXPECTED_FOUND.matcher(message);
    return sentence.matches()
        && List.of(sentence.group(1).split(", | or ")).contains(sentence.group(2));
  }

  @Test
  void eachForgottenTokenGivesItsExpectedFindings() throws IOException {
    List<String> found = new ArrayList<>();
    int all = 0;
    Map<String, String> texts = texts();
    for (Map.Entry<String, String> file : texts.entrySet()) {
      String text = file.getValue();
      assertEquals(Map.of(), errors(file.getKey(), text, texts));
      List<SyntaxToken> tokens = new ArrayList<>();
      SourceFile source = SourceFile.of(file.getKey(), text);
      Reader.parse(source).tree().root().tokens(tokens::add);
      tokens.removeIf(token -> token.text().isEmpty());
      for (SyntaxToken token : BLESS ? tokens : MostTries.some(tokens)) {
        int start = token.span().start();
        Map<String, Integer> after =
            errors(
                file.getKey(),
                text.substring(0, start) + text.substring(token.span().end()),
                texts);
        List<String> fresh = new ArrayList<>();
        after.forEach(
            (code, count) -> {
              fresh.add(count == 1 ? code : count + " x " + code);
            });
        String where = file.getKey() + ":" + source.line(start) + ":" + source.column(start);
        int errors = after.values().stream().mapToInt(Integer::intValue).sum();
        assertTrue(errors <= MOST_ERRORS, () -> where + " without it: " + fresh);
        assertTrue(
            after.getOrDefault("name.unknown", 0) <= MOST_UNKNOWN,
            () -> where + " without it: " + fresh);
        found.add(
            where
                + " "
                + token.text()
                + " -> "
                + (fresh.isEmpty() ? "still right" : String.join(", ", fresh)));
      }
      all += tokens.size();
    }
    if (BLESS) {
      Files.writeString(EXPECTED, String.join("\n", found) + "\n");
    }
    List<String> expected = new ArrayList<>(Files.readAllLines(EXPECTED));
    assertEquals(all, expected.size());
    if (found.size() < all) { // the quick build tries some of each file
      Set<String> tried = new HashSet<>();
      found.forEach(line -> tried.add(place(line)));
      expected.removeIf(line -> !tried.contains(place(line)));
    }
    assertEquals(String.join("\n", expected), String.join("\n", found));
  }

  private static String place(String line) {
    return line.substring(0, line.indexOf(' '));
  }

  /** Optional parts of the grammar can be left out: texts, titles and the like. */
  @Test
  void mostForgottenTokensAreNoticed() throws IOException {
    List<String> lines = Files.readAllLines(EXPECTED);
    long right = lines.stream().filter(line -> line.endsWith("still right")).count();
    assertTrue(lines.size() > 500, lines.size() + " tokens");
    long many = lines.stream().filter(line -> line.matches(".* -> .*(,| x ).*")).count();
    assertTrue(right * 25 < lines.size(), right + " of " + lines.size() + " are not noticed");
    assertTrue(
        many * 100 < lines.size(), many + " of " + lines.size() + " are reported twice or more");
  }

  @Test
  void everyProductionIsThere() throws IOException {
    Set<String> missing = new TreeSet<>();
    for (gripwright.language.syntax.NodeKind kind : gripwright.language.syntax.NodeKind.values()) {
      missing.add(kind.name());
    }
    for (Map.Entry<String, String> file : texts().entrySet()) {
      remove(Reader.parse(SourceFile.of(file.getKey(), file.getValue())).tree().root(), missing);
    }
    // Alternatives have no node of their own, nor does a line that was not read.
    missing.removeIf(kind -> kind.endsWith("_ITEM") || CHOICES.contains(kind));
    assertEquals(Set.of(), missing);
  }

  private static void remove(SyntaxNode node, Set<String> missing) {
    missing.remove(node.kind().name());
    for (SyntaxElement child : node.children()) {
      if (child instanceof SyntaxNode inner) {
        remove(inner, missing);
      }
    }
  }

  /** The stored wrong files: how many there are, and that no two are the same. */
  @Test
  void thereAreAtLeastTwoHundredWrongFiles() throws IOException {
    Set<String> wrong = new TreeSet<>();
    for (String folder : List.of("corpus", "syntax")) {
      try (Stream<Path> files = Files.list(Path.of("src/test/resources").resolve(folder))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".expected")).toList()) {
          if (Files.readAllLines(file).stream().anyMatch(line -> !line.isBlank())) {
            Path text =
                file.resolveSibling(file.getFileName().toString().replace(".expected", ".grip"));
            wrong.add(
                Files.exists(text)
                    ? new String(Files.readAllBytes(text), java.nio.charset.StandardCharsets.UTF_8)
                    : file.toString());
          }
        }
      }
    }
    assertTrue(
        wrong.size() >= 200,
        wrong.size() + ": " + wrong.stream().limit(1).collect(Collectors.joining()));
  }
}
