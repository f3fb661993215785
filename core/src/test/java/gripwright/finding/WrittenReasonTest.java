package gripwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class WrittenReasonTest {

  @Test
  void aLetterOrADigitOfAnyScriptIsAWord() {
    for (String text : List.of("a", " 7 ", "...x", "\u00C5", "\u533B", "\u0645", "\uD835\uDC00")) {
      assertTrue(WrittenReason.hasWord(text), text);
      assertEquals(text, WrittenReason.check(text, "a reason"));
    }
  }

  @Test
  void invisibleCharactersAreNoWord() {
    for (String text :
        List.of("", "  ", ".", "-", "\u00A0", "\u200B", "\u2060\uFEFF", "\u3164", "!?", "\u0301")) {
      assertFalse(WrittenReason.hasWord(text), text);
      assertEquals(
          "a reason without a word: \"" + text + "\"",
          assertThrows(IllegalArgumentException.class, () -> WrittenReason.check(text, "a reason"))
              .getMessage());
    }
  }
}
