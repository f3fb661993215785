package gripwright.language.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gripwright.wording.Messages;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Searches the sources: every code has a sentence, and every placeholder of a sentence has an
 * argument.
 */
final class EveryCodeIsWordedTest {

  private static final Pattern CODE =
      Pattern.compile("\"((?:syntax|name|unit|type|value|plan|budget|log)\\.[a-z][a-z0-9-]*)\"");
  private static final Pattern WITH = Pattern.compile("\\.with\\(\\s*\"([a-zA-Z0-9-]+)\"");
  private static final Pattern MAKES_FINDINGS =
      Pattern.compile("Finding\\.(error|warning|advice)\\(");
  private static final Pattern WORD = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9-]*)\\}");

  /** Codes by which findings of others are recognized. */
  private static final Pattern LOOKED_FOR =
      Pattern.compile("\\.equals\\(\"[^\"]*\"\\)|Set\\.of\\((\"[^\"]*\",?\\s*)+\\)");

  private static List<String> variants(String code) {
    return Messages.english().templates().entrySet().stream()
        .filter(e -> e.getKey().equals(code) || e.getKey().startsWith(code + "."))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files =
        Files.list(Path.of("../../core/src/main/resources/gripwright/wording"))) {
      return files.filter(f -> f.toString().endsWith(".properties")).sorted().toList();
    }
  }

  private static List<String> sources() throws IOException {
    List<String> texts = new ArrayList<>();
    for (Path root : List.of(Path.of("../../core/src/main/java"), Path.of("src/main/java"))) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
          texts.add(Files.readString(file));
        }
      }
    }
    return texts;
  }

  @Test
  void everyCodeHasASentence() throws IOException {
    Set<String> missing = new TreeSet<>();
    for (String source : sources()) {
      Matcher codes = CODE.matcher(source);
      while (codes.find()) {
        if (Wording.english().template(codes.group(1)).isEmpty()) {
          missing.add(codes.group(1));
        }
      }
    }
    missing.removeIf(code -> code.endsWith(".grip")); // names of files
    assertEquals(Set.of(), missing);
  }

  /** A code that two sources give may have a sentence for each. */
  @Test
  void planningSuppliesEveryArgumentOfItsSentences() throws IOException {
    Map<String, Set<String>> given = new TreeMap<>();
    for (String text : sources()) {
      String source = LOOKED_FOR.matcher(text).replaceAll("");
      Matcher codes = CODE.matcher(source);
      while (codes.find()) {
        if (codes.group(1).startsWith("plan.") && MAKES_FINDINGS.matcher(source).find()) {
          Set<String> words = given.computeIfAbsent(codes.group(1), code -> new TreeSet<>());
          Matcher with = WITH.matcher(source);
          while (with.find()) {
            words.add(with.group(1));
          }
        }
      }
    }
    Set<String> wrong = new TreeSet<>();
    given.forEach(
        (code, known) -> {
          for (String template : variants(code)) {
            Matcher words = WORD.matcher(template);
            while (words.find()) {
              if (!known.contains(words.group(1))) {
                wrong.add(code + " {" + words.group(1) + "} in " + template);
              }
            }
          }
        });
    assertEquals(Set.of(), wrong);
  }

  @Test
  void noSentencePromisesOrBlames() throws IOException {
    Pattern never =
        Pattern.compile("\\b(safe\\w*|protect\\w*|prevent\\w*|illegal\\w*)\\b|\\btoken", 2);
    for (Path file : files()) {
      if (Files.exists(file)) {
        Properties properties = new Properties();
        try (var reader = Files.newBufferedReader(file)) {
          properties.load(reader);
        }
        for (Object value : properties.values()) {
          assertFalse(never.matcher((String) value).find(), file + ": " + value);
        }
      }
    }
  }

  @Test
  void noKeyIsWrittenTwice() throws IOException {
    for (Path file : files()) {
      Set<String> seen = new TreeSet<>();
      List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of();
      for (String line : lines) {
        if (line.contains(" = ") && !line.startsWith("#")) {
          String key = line.substring(0, line.indexOf(" = ")).strip();
          assertFalse(!seen.add(key), file + ": " + key);
        }
      }
    }
  }
}
