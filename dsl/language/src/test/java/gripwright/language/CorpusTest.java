package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import java.io.IOException;
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
 * A folder of small files beside the exact findings expected of them, one a line: {@code
 * file:line:column severity code}. A finding that is not listed fails. Run with {@code
 * -Dgripwright.bless=true} to rewrite the expectations, and read the difference.
 */
class CorpusTest {

  private static final boolean BLESS = Boolean.getBoolean("gripwright.bless");
  private static final Path CORPUS = Path.of("src/test/resources/corpus");
  private static final Pattern CODE =
      Pattern.compile("\"((?:name|unit|type|value|syntax)\\.[a-z][a-z0-9-]*)\"");

  private static Stream<Path> files() throws IOException {
    return Files.list(CORPUS).filter(file -> file.toString().endsWith(".grip")).sorted();
  }

  private static String findings(Path file) {
    return Gripwright.read(file, ReadOptions.standard().withRoot(CORPUS))
        .compile()
        .findings()
        .stream()
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
  Stream<DynamicTest> everyFileHasItsFindingsAndNoOthers() throws IOException {
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
        assertTrue(
            Gripwright.read(file, ReadOptions.standard().withRoot(CORPUS)).compile().usable(),
            file.toString());
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
    for (Path file : files().toList()) {
      for (String line : findings(file).lines().toList()) {
        missing.remove(line.substring(line.lastIndexOf(' ') + 1));
      }
    }
    // Covered by ResolverTest: they need files that have no place in a repository.
    missing.removeAll(Set.of("syntax.too-large", "name.unreadable", "name.too-many-files"));
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
