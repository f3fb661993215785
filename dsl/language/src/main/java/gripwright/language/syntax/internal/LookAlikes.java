package gripwright.language.syntax.internal;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Characters that look like plain ones and are not: where copying and pasting goes wrong. */
final class LookAlikes {

  private static final String GREEK_AND_CYRILLIC =
      "\u0391\u0392\u0395\u0396\u0397\u0399\u039a\u039c\u039d\u039f\u03a1\u03a4\u03a5\u03a7\u03bf\u03bd"
          + "\u0410\u0412\u0415\u041a\u041c\u041d\u041e\u0420\u0421\u0422\u0425\u0430\u0435\u043e\u0440"
          + "\u0441\u0443\u0445\u0456\u0458\u0455";
  private static final String THEIR_LATIN = "ABEZHIKMNOPTYXov" + "ABEKMHOPCTXaeop" + "cyxijs";

  private static final Map<Integer, String> NAMES =
      Map.ofEntries(
          Map.entry(0x00a0, "a non-breaking space"),
          Map.entry(0x2007, "a figure space"),
          Map.entry(0x2009, "a thin space"),
          Map.entry(0x202f, "a narrow non-breaking space"),
          Map.entry(0x200b, "a zero-width space"),
          Map.entry(0x200c, "a zero-width character"),
          Map.entry(0x200d, "a zero-width character"),
          Map.entry(0x3000, "a wide space"),
          Map.entry(0xfeff, "a byte order mark inside the text"),
          Map.entry(0x2010, "a hyphen of another kind"),
          Map.entry(0x2011, "a non-breaking hyphen"),
          Map.entry(0x2012, "a figure dash"),
          Map.entry(0x2013, "an en dash"),
          Map.entry(0x2014, "an em dash"),
          Map.entry(0x2212, "a minus sign of another kind"),
          Map.entry(0x2018, "a curly quote"),
          Map.entry(0x2019, "a curly quote"),
          Map.entry(0x201c, "a curly quote"),
          Map.entry(0x201d, "a curly quote"),
          Map.entry(0x201e, "a low quote"),
          Map.entry(0x00ab, "an angled quote"),
          Map.entry(0x00bb, "an angled quote"));

  private static final Map<Integer, String> MEANT =
      Map.ofEntries(
          Map.entry(0x00a0, "a space"),
          Map.entry(0x2007, "a space"),
          Map.entry(0x2009, "a space"),
          Map.entry(0x202f, "a space"),
          Map.entry(0x3000, "a space"),
          Map.entry(0x2010, "`-`"),
          Map.entry(0x2011, "`-`"),
          Map.entry(0x2012, "`-`"),
          Map.entry(0x2013, "`-`"),
          Map.entry(0x2014, "`-`"),
          Map.entry(0x2018, "`\"`"),
          Map.entry(0x2019, "`\"`"),
          Map.entry(0x201c, "`\"`"),
          Map.entry(0x201d, "`\"`"),
          Map.entry(0x201e, "`\"`"),
          Map.entry(0x00ab, "`\"`"),
          Map.entry(0x00bb, "`\"`"),
          Map.entry((int) '\'', "`\"`"),
          Map.entry((int) ';', "a new line"),
          Map.entry((int) '[', "`{`"),
          Map.entry((int) ']', "`}`"),
          Map.entry((int) '@', "`at`"),
          Map.entry((int) '&', "`and`"),
          Map.entry((int) '|', "`or`"),
          Map.entry((int) '~', "`within`"));

  private LookAlikes() {}

  /** Returns the Latin letter that a Greek or Cyrillic one looks like, else the letter itself. */
  static int latin(int character) {
    int at = GREEK_AND_CYRILLIC.indexOf(character);
    return at < 0 ? character : THEIR_LATIN.charAt(at);
  }

  /** Tells whether a word has a letter that looks like a Latin one and is not. */
  static boolean anyIn(String word) {
    return word.codePoints().anyMatch(c -> latin(c) != c);
  }

  /** Returns what to call a character in a sentence. */
  static String name(int character) {
    String name = NAMES.get(character);
    if (name != null) {
      return name;
    }
    boolean seen =
        !Character.isISOControl(character)
            && Character.isDefined(character)
            && Character.getType(character) != Character.SURROGATE
            && Character.getType(character) != Character.FORMAT
            && Character.getType(character) != Character.PRIVATE_USE;
    return seen
        ? "`" + Character.toString(character) + "`"
        : String.format(java.util.Locale.ROOT, "the character U+%04X", character);
  }

  /** Returns what was most likely meant by a character, or null. */
  static @Nullable String meant(int character) {
    return MEANT.get(character);
  }
}
