package gripwright.language.syntax;

import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * After any deletion, duplication or swap, a text is read to its end and its tree gives it back.
 */
@CountedWork
class MutationTest {

  private static final Pattern PIECE = Pattern.compile("\\s+|[\\p{L}\\p{N}_.-]+|.", Pattern.DOTALL);
  private static final int MUTATIONS = 10_000;

  /** Several times what the costliest of these short texts takes. */
  private static final long MOST_STEPS = 5_000_000;

  @Test
  void mutatedTextsAreRead() {
    List<List<String>> texts = new ArrayList<>();
    for (Path file : Texts.in(Texts.EVERYTHING)) {
      texts.add(pieces(Texts.read(file)));
    }
    Random random = new Random(20270111);
    int withFindings = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      List<String> pieces = new ArrayList<>(texts.get(random.nextInt(texts.size())));
      int changes = 1 + random.nextInt(3);
      for (int change = 0; change < changes; change++) {
        mutate(pieces, random);
      }
      String text = String.join("", pieces);
      withFindings += read(text).findings().isEmpty() ? 0 : 1;
    }
    assertTrue(withFindings > MUTATIONS / 3, "mutations are noticed");
  }

  private static ParsedFile read(String text) {
    try {
      return Work.atMost(MOST_STEPS, () -> Texts.check(text));
    } catch (Work.TooMuch e) {
      throw new AssertionError("takes too much work:\n" + text, e);
    }
  }

  private static List<String> pieces(String text) {
    List<String> pieces = new ArrayList<>();
    Matcher matcher = PIECE.matcher(text);
    while (matcher.find()) {
      pieces.add(matcher.group());
    }
    return pieces;
  }

  private static void mutate(List<String> pieces, Random random) {
    int at = random.nextInt(pieces.size());
    String piece = pieces.get(at);
    int letter = random.nextInt(piece.length());
    switch (random.nextInt(6)) {
      case 0 -> pieces.set(at, "");
      case 1 -> pieces.add(at, piece);
      case 2 -> {
        int other = random.nextInt(pieces.size());
        pieces.set(at, pieces.get(other));
        pieces.set(other, piece);
      }
      case 3 -> pieces.set(at, piece.substring(0, letter) + piece.substring(letter + 1));
      case 4 ->
          pieces.set(
              at,
              piece.substring(0, letter)
                  + piece.substring(letter, letter + 1)
                  + piece.substring(letter));
      default ->
          pieces.set(
              at,
              piece.substring(0, letter) + (char) random.nextInt(0x3000) + piece.substring(letter));
    }
    pieces.removeIf(String::isEmpty);
  }
}
