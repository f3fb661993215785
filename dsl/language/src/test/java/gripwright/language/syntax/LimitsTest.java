package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Strange texts end with one clear finding and without a deep stack. {@link LimitsWorkTest} counts
 * their work.
 */
class LimitsTest {

  private static final int SMALL_STACK = 512 * 1024;

  /** Reads a text and returns the codes of its findings. */
  List<String> codes(String text) throws InterruptedException {
    AtomicReference<List<String>> codes = new AtomicReference<>();
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Thread thread =
        new Thread(
            null,
            () -> {
              ParsedFile parsed = Reader.parse(SourceFile.of("a.grip", text));
              assertTrue(text.equals(parsed.tree().text()), "the text comes back");
              codes.set(Texts.codes(parsed));
            },
            "small stack",
            SMALL_STACK);
    thread.setUncaughtExceptionHandler((t, e) -> failure.set(e));
    thread.start();
    thread.join();
    assertNull(failure.get());
    return codes.get();
  }

  private static String rule(String expression) {
    return "language 1\nrules r {\n  rule a {\n    require " + expression + "\n  }\n}\n";
  }

  @Test
  void manyBraces() throws InterruptedException {
    assertEquals(List.of("syntax.too-deep"), codes("language 1\n" + "{".repeat(100_000)));
    assertEquals(
        List.of("syntax.too-deep"),
        codes("language 1\nprotocol p {\n" + "repeat 2 {\n".repeat(100_000)));
    assertEquals(List.of("syntax.brace"), codes("language 1\n" + "}".repeat(100_000)));
    assertEquals(List.of("syntax.brace"), codes("language 1\n" + "{}".repeat(100_000)));
  }

  @Test
  void manyBrackets() throws InterruptedException {
    assertEquals(List.of("syntax.too-deep"), codes(rule("(".repeat(100_000))));
    assertEquals(List.of(), codes(rule("(".repeat(190) + "a" + ")".repeat(190))));
    assertEquals(List.of("syntax.too-deep"), codes(rule("not ".repeat(100_000) + "a")));
    assertEquals(List.of("syntax.too-deep"), codes(rule("- ".repeat(100_000) + "a")));
    assertEquals(List.of("syntax.too-deep"), codes(rule("-(".repeat(100_000) + "a")));
    assertEquals(List.of("syntax.too-deep"), codes(rule("5 % of ".repeat(100_000) + "a")));
    assertEquals(List.of(), codes(rule("not ".repeat(190) + "a")));
    assertEquals(List.of(), codes(rule("5 % of ".repeat(150) + "a")));
  }

  @Test
  void deepAndBrokenToo() throws InterruptedException {
    assertEquals(List.of("syntax.expected"), codes(rule("(".repeat(190) + "a")));
    assertEquals(
        List.of("syntax.expected"), codes(rule("(".repeat(150) + "a b" + ")".repeat(150))));
  }

  @Test
  void longChains() throws InterruptedException {
    for (String operator : List.of(" + ", " * ", " and ", " or ")) {
      assertEquals(List.of("syntax.too-long"), codes(rule("a" + (operator + "a").repeat(10_000))));
      assertEquals(List.of(), codes(rule("a" + (operator + "a").repeat(500))));
    }
  }

  @Tag("full-build")
  @Test
  void longLines() throws InterruptedException {
    int size = 4 << 20;
    assertEquals(List.of("syntax.too-large"), codes("x".repeat(size + 1)));
    assertEquals(List.of("syntax.statement"), codes("language 1\n" + "x".repeat(size - 11)));
    assertEquals(List.of("syntax.too-large"), codes("language 1\n" + "x ".repeat(size / 2 - 6)));
    assertEquals(List.of("syntax.character"), codes("language 1\n" + "$".repeat(size - 11)));
    assertEquals(List.of("syntax.statement"), codes("language 1\n" + "\"".repeat(size / 8)));
    assertEquals(
        List.of("syntax.string"),
        codes("language 1\nplan p {\n  note \"" + "x".repeat(size - 40) + "\n}\n"));
    assertEquals(List.of("syntax.too-large"), codes("language 1\n" + "!".repeat(size - 11)));
    assertEquals(
        List.of("syntax.expected"), codes("language 1\nplan p " + "x ".repeat(300_000) + "{\n}\n"));
    assertEquals(List.of(), codes("language 1\n#" + "x".repeat(size - 12)));
    assertEquals(List.of(), codes("language 1\n" + "\n".repeat(size - 11)));
  }

  @Test
  void manyMistakes() throws InterruptedException {
    String text = "language 1\nplan p {\n" + "  from\n".repeat(20_000) + "}\n";
    assertEquals(Limits.standard().maxFindings(), codes(text).size());
  }

  @Test
  void manyUnclosedDeclarations() throws InterruptedException {
    assertEquals(
        Limits.standard().maxFindings(),
        codes(
                "language 1\n"
                    + "plan p {\n".repeat(150)
                    + "plan p {\n}\n".repeat(10)
                    + "plan p { for\n}\n".repeat(20_000))
            .size());
  }
}
