package gripwright.language.format;

import gripwright.language.source.SourceFile;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import gripwright.language.syntax.Trivia;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Plan files to format, and the parts of a text that no layout may change. */
final class PlanTexts {

  static final Path EXAMPLES = Path.of("../../examples/plans");
  static final Path CATALOGUE = Path.of("src/main/resources/gripwright/language/catalogue");
  static final Path SAMPLES = Path.of("src/test/resources/samples/good");
  private static final List<Path> FOLDERS =
      List.of(
          EXAMPLES,
          CATALOGUE,
          Path.of("src/test/resources/corpus"),
          Path.of("src/test/resources/corpus/parts"),
          Path.of("src/test/resources/syntax-all"),
          Path.of("src/test/resources/trials"));

  private static final List<String> GAPS =
      List.of(" ", "  ", "\n", "\t", "\r\n", "\n\n", " \n \n\t\n", "\n\n\n\n", "\f", "\r");
  private static final List<String> COMMENTS =
      List.of("# one", "#two", "# three \"{ } do", "#", "# \u00e5\t#", "# blanks behind  \t");

  private PlanTexts() {}

  static ParsedFile parse(String text) {
    return Reader.parse(SourceFile.of("a.grip", text));
  }

  static Map<Path, String> in(Path folder) {
    Map<Path, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".grip")).toList()) {
        byte[] bytes = Files.readAllBytes(file);
        texts.put(file, new String(bytes, java.nio.charset.StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  /** Returns every text of the project without a syntax error. */
  static List<String> wellWritten() {
    return FOLDERS.stream()
        .flatMap(folder -> in(folder).values().stream())
        .filter(text -> parse(text).findings().isEmpty())
        .toList();
  }

  /** Returns the words, numbers, texts and signs of a text, in order. */
  static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    parse(text).tree().root().tokens(token -> words.add(token.text()));
    return words;
  }

  /** Returns the words and comments of a text, in order. */
  static List<String> wordsAndComments(String text) {
    List<String> all = new ArrayList<>();
    parse(text)
        .tree()
        .root()
        .tokens(
            token -> {
              comments(token.leading(), all);
              all.add(token.text());
              comments(token.trailing(), all);
            });
    return all;
  }

  private static void comments(List<Trivia> pieces, List<String> all) {
    for (Trivia piece : pieces) {
      if (piece.kind() == Trivia.Kind.COMMENT) {
        all.add(piece.text().stripTrailing());
      }
    }
  }

  /** Returns a text with other white space and more comments between its words. */
  static String laidOut(String text, Random random) {
    StringBuilder out = new StringBuilder(random.nextInt(8) == 0 ? "\uFEFF" : "");
    int commentsInAHundred = random.nextInt(4) * random.nextInt(8);
    boolean calm = random.nextBoolean();
    boolean[] first = {true};
    parse(text)
        .tree()
        .root()
        .tokens(
            token -> {
              boolean glued = token.leading().isEmpty() && endsGlued(out);
              if (random.nextInt(100) < commentsInAHundred) {
                comment(out, random);
              }
              if (!glued || random.nextInt(9) == 0) {
                int gaps = calm ? 2 : GAPS.size();
                out.append(first[0] && random.nextBoolean() ? "" : gap(random, gaps));
              }
              first[0] = false;
              pieces(out, token.leading());
              out.append(token.text());
              pieces(out, token.trailing());
              out.append(token.trailing().isEmpty() ? "" : gap(random, calm ? 2 : GAPS.size()));
            });
    return out.toString();
  }

  private static boolean endsGlued(StringBuilder out) {
    return out.length() > 0 && !Character.isWhitespace(out.charAt(out.length() - 1));
  }

  /** Keeps the existing comments; only the white space around them changes. */
  private static void pieces(StringBuilder out, List<Trivia> pieces) {
    for (Trivia piece : pieces) {
      if (piece.kind() == Trivia.Kind.COMMENT) {
        out.append(piece.text()).append('\n');
      }
    }
  }

  private static void comment(StringBuilder out, Random random) {
    out.append(gap(random, GAPS.size()))
        .append(COMMENTS.get(random.nextInt(COMMENTS.size())))
        .append(random.nextBoolean() ? "\n" : "\r\n");
  }

  private static String gap(Random random, int of) {
    return GAPS.get(random.nextInt(of));
  }
}
