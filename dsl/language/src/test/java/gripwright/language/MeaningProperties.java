package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.finding.ReportedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.SourceLoader;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Order and layout never change what a file means. */
class MeaningProperties {

  private static final Path CORPUS = Path.of("src/test/resources/corpus");
  private static final List<String> FILES =
      List.of(
          "parts/club.grip",
          "parts/work.grip",
          "good-everything-in-a-plan.grip",
          "good-log.grip",
          "good-compare.grip",
          "good-grip.grip",
          "rule-waived.grip");

  /** Two logs of one athlete with entries of the same days, written at different times. */
  private static final List<String> MORE_LOGS =
      List.of(
          "log aslaug {\n  2027-01-03 pain ring a2 left 1\n  2027-01-03 pain ring a2 left 2\n}\n",
          "log aslaug {\n  2027-01-03 body-mass 62.5 kg\n  2027-01-03 skipped s\n}\n");

  private static String text(String file) {
    try {
      return Files.readString(CORPUS.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the declarations of the files, each once, as they are written. */
  private static List<String> declarations() {
    Map<String, String> byName = new TreeMap<>();
    for (String name : FILES) {
      SourceFile source = SourceFile.of(name, text(name));
      ParsedFile file = Reader.parse(source);
      for (Declaration declaration : file.declarations()) {
        if (!(declaration instanceof Declaration.Use)
            && !(declaration instanceof Declaration.Language)) {
          String written = source.text(file.span(declaration.id()));
          // The plan of the second file is a plan of its own here.
          byName.put(
              name + written,
              name.startsWith("rule-") ? written.replace("plan p", "plan q") : written);
        }
      }
    }
    List<String> declarations = new ArrayList<>(byName.values());
    declarations.addAll(MORE_LOGS);
    return declarations;
  }

  private static String joined(List<String> declarations) {
    return "language 1\n" + String.join("\n", declarations) + "\n";
  }

  private static List<String> saying(Compilation compilation) {
    return compilation.findings().stream()
        .map((ReportedFinding f) -> f.code() + " " + f.message() + " " + f.hint() + " " + f.place())
        .sorted()
        .toList();
  }

  private static void assertSame(Reading expected, Reading actual) {
    assertEquals(expected.athletes(), actual.athletes());
    assertEquals(expected.grips(), actual.grips());
    assertEquals(expected.protocols(), actual.protocols());
    assertEquals(expected.ruleSets(), actual.ruleSets());
    assertEquals(expected.logs(), actual.logs());
    assertEquals(expected.plans(), actual.plans());
    assertEquals(expected.comparisons(), actual.comparisons());
    Compilation one = expected.compile();
    Compilation other = actual.compile();
    assertEquals(one.plans(), other.plans());
    assertEquals(saying(one), saying(other));
  }

  @Property(tries = 40)
  void orderOfDeclarationsChangesNothing(@ForAll Random random) {
    List<String> declarations = declarations();
    Reading expected = Gripwright.read("x.grip", joined(declarations));
    assertTrue(expected.usable(), () -> expected.findings().toString());
    assertEquals(2, expected.plans().size());
    Collections.shuffle(declarations, random);
    assertSame(expected, Gripwright.read("x.grip", joined(declarations)));
  }

  @Property(tries = 40)
  void thePlaceOfADeclarationChangesNothing(@ForAll Random random) {
    List<String> declarations = declarations();
    Reading expected = Gripwright.read("x.grip", joined(declarations));
    List<List<String>> files = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      files.add(new ArrayList<>());
    }
    declarations.forEach(d -> files.get(random.nextInt(4)).add(d));
    Map<String, String> texts = new TreeMap<>();
    List<String> uses = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      texts.put("f" + i + ".grip", joined(files.get(i)));
      uses.add("use \"f" + i + ".grip\"");
    }
    Collections.shuffle(uses, random);
    assertSame(
        expected,
        Gripwright.read(
            "x.grip", joined(uses), ReadOptions.standard().withFiles(SourceLoader.of(texts))));
  }

  @Property(tries = 40)
  void layoutChangesNothing(@ForAll Random random) {
    String text = joined(declarations());
    assertSame(Gripwright.read("x.grip", text), Gripwright.read("x.grip", laidOut(text, random)));
  }

  private static String laidOut(String text, Random random) {
    String end = random.nextBoolean() ? "\r\n" : "\n";
    return text.lines()
        .map(
            line -> {
              String indent = random.nextBoolean() ? "\t" : " ".repeat(random.nextInt(9));
              String comment = random.nextInt(4) == 0 ? " # ... \"{ " + random.nextInt() : "";
              String blank = random.nextInt(6) == 0 ? end + "   " + end : "";
              return indent + line.strip() + " ".repeat(random.nextInt(3)) + comment + blank;
            })
        .collect(Collectors.joining(end));
  }
}
