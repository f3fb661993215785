package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The tree gives back any text. */
class RoundTripTest {

  private static final Path SAMPLES = Path.of("src/test/resources/samples");

  @TestFactory
  Stream<DynamicTest> samplesComeBackAndHaveNoMistakeInTheirSyntax() {
    return Stream.of("good", "bad")
        .flatMap(folder -> Texts.in(SAMPLES.resolve(folder)).stream())
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> clean(file)));
  }

  @TestFactory
  Stream<DynamicTest> samplesOfALaterLanguageComeBackToo() {
    return Texts.in(SAMPLES.resolve("second")).stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(), () -> Texts.check(Texts.read(file))));
  }

  @TestFactory
  Stream<DynamicTest> textsOfEveryStatementComeBackWithoutMistakes() {
    return Texts.in(Texts.EVERYTHING).stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> clean(file)));
  }

  private static void clean(Path file) {
    ParsedFile parsed = Texts.check(Texts.read(file));
    assertEquals(List.of(), Texts.codes(parsed));
    assertTrue(!parsed.declarations().toString().contains("damaged=true"));
  }

  @Test
  void everyKindOfNodeIsInOneOfThem() {
    Set<NodeKind> missing = EnumSet.allOf(NodeKind.class);
    for (Path file : Texts.in(Texts.EVERYTHING)) {
      collect(Texts.parse(Texts.read(file)).tree().root(), missing);
    }
    // Wrappers that hold one node and nothing else are never kept.
    missing.removeIf(
        k ->
            k.name().endsWith("_ITEM")
                || k == NodeKind.DECLARATION
                || k == NodeKind.STEP
                || k == NodeKind.PRIMARY
                || k == NodeKind.HEAD
                || k == NodeKind.RESERVED);
    assertEquals(Set.of(), missing);
  }

  private static void collect(SyntaxNode node, Set<NodeKind> missing) {
    missing.remove(node.kind());
    node.nodes().forEach(n -> collect(n, missing));
  }

  @Property
  void anyTextComesBack(@ForAll String text) {
    Texts.check(text);
  }

  @Test
  void halfASurrogateComesBack() {
    Texts.check("language 1\n# \ud800 alone\nplan \udc00 {\n}\n");
    Texts.check("\ud83e");
  }

  @Test
  void idsRunInTheOrderOfTheText() {
    for (Path file : Texts.in(Texts.EVERYTHING)) {
      ParsedFile parsed = Texts.parse(Texts.read(file));
      int last = -1;
      for (Declaration declaration : parsed.declarations()) {
        assertTrue(declaration.id() > last);
        last = declaration.id();
        assertTrue(parsed.span(last).length() > 0);
      }
    }
  }
}
