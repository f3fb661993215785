package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Limit;
import gripwright.expression.Kind;
import gripwright.expression.Property;
import gripwright.expression.Type;
import gripwright.finding.ReportedFinding;
import gripwright.finding.Severity;
import gripwright.grip.Grip;
import gripwright.grip.StandardGrips;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Resolver;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.Reader;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Range;
import gripwright.wording.Wording;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Keeps the examples, tables and grammar of the language reference up to date. */
class LanguagePageTest {

  private static final String PAGE = "docs/language.md";
  private static final String GRAMMAR =
      "dsl/language/src/main/antlr4/gripwright/language/syntax/internal/grammar/Grip";

  /** The text around a part of a declaration. */
  private static final Map<String, List<String>> AROUND =
      Map.of(
          "grip", List.of("", ""),
          "grip athlete", List.of("language 1\nathlete a {\n", "}\n"),
          "grip plan", List.of("language 1\nplan p {\n", "}\n"),
          "grip block", List.of("language 1\nplan p {\nblock b 4 weeks {\n", "}\n}\n"),
          "grip session",
              List.of(
                  "language 1\nplan p {\nblock b 4 weeks {\nsession s 2 per week {\n",
                  "}\n}\n}\n"));

  @TestFactory
  Stream<DynamicTest> everyExampleParses() {
    return Page.read(PAGE).blocks().stream()
        .filter(block -> block.info().startsWith("grip"))
        .map(
            block ->
                DynamicTest.dynamicTest(
                    block.info() + ", line " + block.first(),
                    () -> {
                      List<String> around = AROUND.get(block.info());
                      String text = around.get(0) + block.text() + around.get(1);
                      List<LocatedFinding> findings =
                          Reader.parse(SourceFile.of("example.grip", text)).findings();
                      assertEquals(
                          List.of(),
                          findings.stream().map(f -> f.report(Wording.english())).toList());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyCompleteExampleHasNoErrors() {
    return Page.read(PAGE).blocks().stream()
        .filter(block -> block.info().equals("grip"))
        .map(
            block ->
                DynamicTest.dynamicTest(
                    "line " + block.first(),
                    () ->
                        assertEquals(
                            List.of(),
                            Gripwright.read(
                                    "example.grip",
                                    block.text(),
                                    ReadOptions.standard().withRoot(Page.root().resolve("docs")))
                                .compile()
                                .findings()
                                .stream()
                                .filter(f -> f.severity() == Severity.ERROR)
                                .map(ReportedFinding::message)
                                .toList())));
  }

  @Test
  void theGrammarIsTheParsersOwn() throws IOException {
    Path root = Page.root();
    Blessing.generated(
        Page.read(PAGE),
        "grammar",
        PublishedGrammar.of(
            Files.readString(root.resolve(GRAMMAR + "Keywords.g4"))
                + Files.readString(root.resolve(GRAMMAR + "Lexer.g4")),
            Files.readString(root.resolve(GRAMMAR + "Parser.g4"))));
  }

  @Test
  void everyPropertyIsListed() {
    StringBuilder text = new StringBuilder();
    for (Kind kind : Kind.values()) {
      text.append("\n**`")
          .append(kind.word())
          .append("`**: ")
          .append(Wording.english().say(kind.one()))
          .append("\n\n");
      text.append("| property | is | |\n|---|---|---|\n");
      for (Property property : Property.of(kind)) {
        text.append("| `")
            .append(property.name())
            .append("` | ")
            .append(inWords(property.type()))
            .append(" | ")
            .append(property.doc())
            .append(" |\n");
      }
    }
    Blessing.generated(Page.read(PAGE), "properties", text.toString());
  }

  private static String inWords(Type type) {
    return type instanceof Type.Word word && word.vocabulary().closed()
        ? word.vocabulary().words().stream()
            .map(w -> "`" + w + "`")
            .collect(Collectors.joining(" "))
        : Wording.english().say(type.words());
  }

  @Test
  void everyLimitIsTheActualOne() throws IOException {
    Limits limits = Limits.standard();
    String check = "check/";
    StringBuilder text = new StringBuilder("\n| what | at most |\n|---|---|\n");
    row(text, "a file, in MiB", limits.maxCharacters() >> 20);
    row(text, "words, numbers and signs of a file", limits.maxTokens());
    row(text, "nesting of braces, brackets, `not` and `-`", limits.maxNesting());
    row(text, "signs and joining words of an expression", limits.maxOperators());
    row(text, "files of a project", Resolver.MOST_FILES);
    row(text, "all files of a project, in MiB", Resolver.MOST_CHARACTERS >> 20);
    row(text, "holds and rests of an exercise", Limit.EXERCISE.standard());
    row(text, "exercises of a session", (long) Range.EXERCISES.high());
    row(text, "grips to choose from", (long) Range.GRIPS.high());
    row(text, "sessions of a week of a plan", Limit.WEEKLY.standard());
    row(text, "weeks of a plan", Limit.WEEKS.standard());
    row(text, "athletes of a plan", Limit.ATHLETES.standard());
    row(text, "dated sessions of all plans, for all their athletes", Limit.SESSIONS.standard());
    row(text, "holds and rests of all plans, for all their athletes", Limit.HOLDS.standard());
    row(text, "places that findings of a compile list", Limit.FINDINGS.standard());
    row(text, "evaluation steps of the rules of a compile", Limit.WORK.standard());
    row(text, "values that the rules of a compile keep", Limit.VALUES.standard());
    row(text, "steps of the search for days of a compile", Limit.PLACEMENT.standard());
    row(text, "findings shown of a file", ReadOptions.STANDARD_FINDINGS_PER_FILE);
    row(text, "findings shown in all", ReadOptions.STANDARD_FINDINGS);
    Blessing.generated(Page.read(PAGE), "limits", text.toString());
  }

  @Test
  void theRangesAreListed() {
    StringBuilder text = new StringBuilder("\n| what | can be | from |\n|---|---|---|\n");
    for (Range range : Range.values()) {
      text.append("| ").append(range.what()).append(" | ").append(range.inWords());
      text.append(" | ").append(range.source()).append(" |\n");
    }
    Blessing.generated(Page.read(PAGE), "ranges", text.toString());
  }

  private static void row(StringBuilder text, String what, long most) {
    text.append("| ").append(what).append(" | ");
    text.append(String.format(Locale.ROOT, "%,d", most)).append(" |\n");
  }

  /** Reads a private constant from its source, since no host needs it. */
  private static long constant(String type, String name) throws IOException {
    Path file =
        Page.root().resolve("dsl/language/src/main/java/gripwright/language/" + type + ".java");
    Matcher found = Pattern.compile(name + " = ([0-9_]+);").matcher(Files.readString(file));
    assertTrue(found.find(), () -> file + " has no " + name);
    return Long.parseLong(found.group(1).replace("_", ""));
  }

  @Test
  void theCatalogueIsListed() {
    StringBuilder text = new StringBuilder("\n| grip | | family | needs |\n|---|---|---|---|\n");
    for (Grip grip : StandardGrips.all()) {
      text.append("| `")
          .append(grip.name())
          .append("` | ")
          .append(grip.title().orElse(""))
          .append(" | `")
          .append(grip.family().word())
          .append("` | ")
          .append(needs(grip))
          .append(" |\n");
    }
    text.append("\n| protocol | | parameters |\n|---|---|---|\n");
    for (Protocol protocol : StandardProtocols.all()) {
      text.append("| `")
          .append(protocol.name())
          .append("` | ")
          .append(protocol.title().orElse(""))
          .append(" | ")
          .append(
              protocol.parameters().keySet().stream()
                  .map(p -> "`" + p + "`")
                  .collect(Collectors.joining(" ")))
          .append(" |\n");
    }
    Blessing.generated(Page.read(PAGE), "catalogue", text.toString());
  }

  private static String needs(Grip grip) {
    Stream.Builder<String> needs = Stream.builder();
    if (grip.needs().trainedMonths() > 0) {
      needs.add((long) grip.needs().trainedMonths() + " months of training");
    }
    grip.needs().ability().ifPresent(ability -> needs.add(ability.toString()));
    grip.needs()
        .familiar()
        .forEach((name, months) -> needs.add(months.longValue() + " months of `" + name + "`"));
    return needs.build().collect(Collectors.joining(", "));
  }
}
