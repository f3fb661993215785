package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of the tests in this package, and checks for every text. */
final class Texts {

  static final Path MISTAKES = Path.of("src/test/resources/syntax");
  static final Path EVERYTHING = Path.of("src/test/resources/syntax-all");

  private Texts() {}

  static List<Path> in(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".grip")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static ParsedFile parse(String text) {
    return Reader.parse(SourceFile.of("a.grip", text));
  }

  /** Parses a text and checks what must hold for any text at all. */
  static ParsedFile check(String text) {
    ParsedFile parsed = parse(text);
    assertEquals(text, parsed.tree().text());
    checkNode(parsed.tree().root(), text);
    for (LocatedFinding finding : parsed.findings()) {
      assertTrue(finding.span().end() <= text.length(), () -> finding + " beyond the text");
    }
    for (int id = 0; id < parsed.parts(); id++) {
      assertTrue(parsed.span(id).end() <= text.length());
    }
    return parsed;
  }

  private static void checkNode(SyntaxNode node, String text) {
    int at = node.span().start();
    for (SyntaxElement child : node.children()) {
      Span span = child.span();
      assertTrue(at <= span.start(), () -> child + " overlaps its neighbour");
      assertTrue(node.span().contains(span), () -> child + " sticks out");
      at = span.end();
      if (child instanceof SyntaxNode inner) {
        checkNode(inner, text);
      } else if (child instanceof SyntaxToken token) {
        assertEquals(token.text(), text.substring(span.start(), span.end()));
      }
    }
  }

  static List<String> codes(ParsedFile parsed) {
    return parsed.findings().stream().map(f -> f.finding().code()).toList();
  }

  static String place(LocatedFinding finding) {
    SourceFile file = finding.file();
    int start = finding.span().start();
    return file.line(start) + ":" + file.column(start);
  }
}
