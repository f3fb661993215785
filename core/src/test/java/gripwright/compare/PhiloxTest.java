package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class PhiloxTest {

  private static int[] words(String hex) {
    String[] parts = hex.split(" ");
    int[] words = new int[parts.length];
    for (int i = 0; i < parts.length; i++) {
      words[i] = HexFormat.fromHexDigits(parts[i]);
    }
    return words;
  }

  /** Known answers of the generator's authors, Philox4x32-10 (from memory, twice computed). */
  @Test
  void knownAnswers() {
    assertArrayEquals(
        words("6627e8d5 e169c58d bc57ac4c 9b00dbd8"), new Philox(0, 0).words(0, 0, 0, 0));
    assertArrayEquals(
        words("408f276d 41c83b0e a20bc7c6 6d5451fd"), new Philox(-1, -1).words(-1, -1, -1, -1));
  }

  @Test
  void uniformNumbersAreSpreadEvenlyAndDeviatesAreStandardNormal() {
    Philox random = new Philox(2027);
    double sum = 0;
    double squares = 0;
    int[] tenths = new int[10];
    int count = 100_000;
    for (int i = 0; i < count; i++) {
      tenths[(int) (10 * random.uniform(0, i, 0, 0))]++;
      double deviate = random.normal(0, i, 1, 0);
      sum += deviate;
      squares += deviate * deviate;
    }
    for (int tenth : tenths) {
      assertEquals(count / 10.0, tenth, 5 * Math.sqrt(count / 10.0));
    }
    assertEquals(0, sum / count, 5 / Math.sqrt(count));
    assertEquals(1, squares / count, 0.02);
  }
}
