package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.work.MostTries;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each word, number and sign of a text, left out, doubled or misspelt, is one mistake at most. */
class OneMistakeTest {

  private interface Change {
    String apply(String text, SyntaxToken token);
  }

  @TestFactory
  Stream<DynamicTest> leavingOutGivesAtMostOneFinding() {
    return each((text, token) -> replace(text, token, ""));
  }

  @TestFactory
  Stream<DynamicTest> doublingGivesAtMostOneFinding() {
    return each((text, token) -> replace(text, token, token.text() + " " + token.text()));
  }

  @TestFactory
  Stream<DynamicTest> swappingTwoLettersGivesAtMostOneFinding() {
    return each(
        (text, token) -> {
          String word = token.text();
          boolean swaps = word.length() > 2 && Character.isLetter(word.charAt(0));
          return swaps
              ? replace(
                  text,
                  token,
                  word.substring(0, 1) + word.charAt(2) + word.charAt(1) + word.substring(3))
              : text;
        });
  }

  private static String replace(String text, SyntaxToken token, String with) {
    return text.substring(0, token.span().start()) + with + text.substring(token.span().end());
  }

  private static Stream<DynamicTest> each(Change change) {
    return Texts.in(Texts.EVERYTHING).stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(), () -> check(Texts.read(file), change)));
  }

  private static void check(String text, Change change) {
    List<SyntaxToken> tokens = new ArrayList<>();
    Texts.parse(text).tree().root().tokens(tokens::add);
    for (SyntaxToken token : MostTries.some(tokens)) {
      ParsedFile parsed = Texts.parse(change.apply(text, token));
      assertTrue(
          parsed.findings().size() <= 1,
          () -> token.text() + " at " + token.span() + " gives " + parsed.findings());
    }
  }
}
