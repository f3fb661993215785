package gripwright.language.syntax.internal;

import gripwright.finding.Clause;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Characters that look like plain ones but are different, often from copied text. */
final class LookAlikes {

  private static final String GREEK_AND_CYRILLIC =
      "\u0391\u0392\u0395\u0396\u0397\u0399\u039a\u039c\u039d\u039f\u03a1\u03a4\u03a5\u03a7\u03bf\u03bd"
          + "\u0410\u0412\u0415\u041a\u041c\u041d\u041e\u0420\u0421\u0422\u0425\u0430\u0435\u043e\u0440"
          + "\u0441\u0443\u0445\u0456\u0458\u0455";
  private static final String THEIR_LATIN = "ABEZHIKMNOPTYXov" + "ABEKMHOPCTXaeop" + "cyxijs";

  private static final Map<Integer, String> NAMES =
      Map.ofEntries(
          Map.entry(0x00a0, "character-non-breaking-space"),
          Map.entry(0x2007, "character-figure-space"),
          Map.entry(0x2009, "character-thin-space"),
          Map.entry(0x202f, "character-narrow-non-breaking-space"),
          Map.entry(0x200b, "character-zero-width-space"),
          Map.entry(0x200c, "character-zero-width-character"),
          Map.entry(0x200d, "character-zero-width-character"),
          Map.entry(0x3000, "character-wide-space"),
          Map.entry(0xfeff, "character-byte-order-mark-inside-the-text"),
          Map.entry(0x2010, "character-hyphen-of-another-kind"),
          Map.entry(0x2011, "character-non-breaking-hyphen"),
          Map.entry(0x2012, "character-figure-dash"),
          Map.entry(0x2013, "character-en-dash"),
          Map.entry(0x2014, "character-em-dash"),
          Map.entry(0x2212, "character-minus-sign-of-another-kind"),
          Map.entry(0x2018, "character-curly-quote"),
          Map.entry(0x2019, "character-curly-quote"),
          Map.entry(0x201c, "character-curly-quote"),
          Map.entry(0x201d, "character-curly-quote"),
          Map.entry(0x201e, "character-low-quote"),
          Map.entry(0x00ab, "character-angled-quote"),
          Map.entry(0x00bb, "character-angled-quote"));

  private static final Object SPACE = Clause.of("term.character-space");

  private static final Map<Integer, Object> MEANT =
      Map.ofEntries(
          Map.entry(0x00a0, SPACE),
          Map.entry(0x2007, SPACE),
          Map.entry(0x2009, SPACE),
          Map.entry(0x202f, SPACE),
          Map.entry(0x3000, SPACE),
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
          Map.entry((int) ';', Clause.of("term.new-line")),
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

  /** Returns whether a word has a letter that looks like a Latin one but is not. */
  static boolean anyIn(String word) {
    return word.codePoints().anyMatch(c -> latin(c) != c);
  }

  /** Returns the name of a character in a sentence. */
  static Object name(int character) {
    String name = NAMES.get(character);
    if (name != null) {
      return Clause.of("term." + name);
    }
    boolean seen =
        !Character.isISOControl(character)
            && Character.isDefined(character)
            && Character.getType(character) != Character.SURROGATE
            && Character.getType(character) != Character.FORMAT
            && Character.getType(character) != Character.PRIVATE_USE;
    return seen
        ? "`" + Character.toString(character) + "`"
        : Clause.of("term.character", "code", String.format(Locale.ROOT, "U+%04X", character));
  }

  /** Returns the character that was most likely meant, or null. */
  static @Nullable Object meant(int character) {
    return MEANT.get(character);
  }
}
