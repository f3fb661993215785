package gripwright.language.syntax.internal;

import gripwright.finding.Nearest;
import gripwright.language.syntax.TokenKind;
import gripwright.language.syntax.internal.grammar.GripLexer;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/** The meaning of token types: which are keywords and units, and how they are written. */
final class Vocabulary {

  private static final Set<String> WEEKDAYS =
      Set.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

  private static final int FIRST_KEYWORD = GripLexer.LANGUAGE;
  private static final int LAST_KEYWORD = GripLexer.DATE - 1;

  /** Words that people write for a unit; misspellings are found by similarity. */
  private static final Map<String, String> UNIT_WORDS =
      Map.ofEntries(
          Map.entry("kilo", "kg"),
          Map.entry("kilos", "kg"),
          Map.entry("kgs", "kg"),
          Map.entry("kilogram", "kg"),
          Map.entry("kilograms", "kg"),
          Map.entry("lbs", "lb"),
          Map.entry("pound", "lb"),
          Map.entry("pounds", "lb"),
          Map.entry("n", "N"),
          Map.entry("newton", "N"),
          Map.entry("newtons", "N"),
          Map.entry("sec", "s"),
          Map.entry("secs", "s"),
          Map.entry("second", "s"),
          Map.entry("seconds", "s"),
          Map.entry("mins", "min"),
          Map.entry("minute", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hr", "h"),
          Map.entry("hrs", "h"),
          Map.entry("hour", "h"),
          Map.entry("hours", "h"),
          Map.entry("d", "days"),
          Map.entry("wk", "weeks"),
          Map.entry("wks", "weeks"),
          Map.entry("mo", "months"),
          Map.entry("inches", "inch"),
          Map.entry("degree", "deg"),
          Map.entry("degrees", "deg"),
          Map.entry("\u00b0", "deg"),
          Map.entry("millimetre", "mm"),
          Map.entry("millimetres", "mm"),
          Map.entry("millimeters", "mm"),
          Map.entry("centimetre", "cm"),
          Map.entry("centimetres", "cm"),
          Map.entry("centimeters", "cm"),
          Map.entry("percent", "%"),
          Map.entry("pct", "%"));

  /** Common terms for keywords; misspellings are found by similarity. */
  private static final Map<String, String> SYNONYMS =
      Map.ofEntries(
          Map.entry("weight", "body-mass"),
          Map.entry("bodyweight", "body-mass"),
          Map.entry("body-weight", "body-mass"),
          Map.entry("mass", "body-mass"),
          Map.entry("bw", "body-mass"),
          Map.entry("level", "ability"),
          Map.entry("grade", "ability"),
          Map.entry("gender", "sex"),
          Map.entry("birthday", "born"),
          Map.entry("experience", "trained"),
          Map.entry("training", "trained"),
          Map.entry("injured", "injury"),
          Map.entry("holiday", "away"),
          Map.entry("vacation", "away"),
          Map.entry("travel", "away"),
          Map.entry("comment", "note"),
          Map.entry("goal", "towards"),
          Map.entry("start", "from"),
          Map.entry("begins", "from"),
          Map.entry("phase", "block"),
          Map.entry("cycle", "block"),
          Map.entry("workout", "session"),
          Map.entry("training-session", "session"),
          Map.entry("deload", "ease"),
          Map.entry("hang", "hold"),
          Map.entry("warmup", "warm-up"),
          Map.entry("rpe", "effort"),
          Map.entry("max-test", "test"),
          Map.entry("climbed", "climbing"),
          Map.entry("missed", "skipped"));

  private static final List<String> UNITS =
      List.of(
          "deg", "mm", "cm", "inch", "kg", "lb", "N", "s", "min", "h", "days", "weeks", "months",
          "%");

  private static final String[] SPELLINGS = spellings();

  private Vocabulary() {}

  static boolean isKeyword(int type) {
    return type >= FIRST_KEYWORD && type <= LAST_KEYWORD;
  }

  static boolean isUnit(int type) {
    return type >= GripLexer.DEG && type <= LAST_KEYWORD;
  }

  static boolean isUnknownWord(int type) {
    return type == GripLexer.WORD || type == GripLexer.BAD_WORD;
  }

  static boolean isWord(int type) {
    return isKeyword(type) || isUnknownWord(type);
  }

  static boolean isText(int type) {
    return type == GripLexer.STRING
        || type == GripLexer.UNTERMINATED_STRING
        || type == GripLexer.CURLY_STRING;
  }

  static boolean isDate(int type) {
    return type == GripLexer.DATE || type == GripLexer.BAD_DATE;
  }

  static boolean isOperator(int type) {
    return (type >= GripLexer.LE && type <= GripLexer.SLASH)
        || type == GripLexer.AND
        || type == GripLexer.OR
        || type == GripLexer.IS
        || type == GripLexer.IN
        || type == GripLexer.NOT
        || type == GripLexer.BETWEEN
        || type == GripLexer.DOT;
  }

  /** Returns how a keyword, unit or sign is written, or null for anything else. */
  static @Nullable String spelling(int type) {
    return type < 0 || SPELLINGS[type].isEmpty() ? null : SPELLINGS[type];
  }

  private static String[] spellings() {
    String[] spellings = new String[GripLexer.VOCABULARY.getMaxTokenType() + 1];
    for (int type = 0; type < spellings.length; type++) {
      String quoted = GripLexer.VOCABULARY.getLiteralName(type);
      spellings[type] = quoted == null ? "" : quoted.substring(1, quoted.length() - 1);
    }
    spellings[GripLexer.LE] = "<=";
    spellings[GripLexer.GE] = ">=";
    spellings[GripLexer.NE] = "!=";
    spellings[GripLexer.EQ] = "=";
    spellings[GripLexer.MINUS] = "-";
    spellings[GripLexer.STAR] = "*";
    spellings[GripLexer.SLASH] = "/";
    return spellings;
  }

  static TokenKind kind(int type) {
    if (isUnit(type)) {
      return TokenKind.UNIT;
    }
    if (isKeyword(type)) {
      return TokenKind.KEYWORD;
    }
    return switch (type) {
      case GripLexer.WORD, GripLexer.BAD_WORD -> TokenKind.WORD;
      case GripLexer.NUMBER -> TokenKind.NUMBER;
      case GripLexer.GLUED -> TokenKind.GLUED;
      case GripLexer.GRADE -> TokenKind.GRADE;
      case GripLexer.DATE, GripLexer.BAD_DATE -> TokenKind.DATE;
      case GripLexer.STRING, GripLexer.UNTERMINATED_STRING, GripLexer.CURLY_STRING ->
          TokenKind.TEXT;
      case Token.EOF -> TokenKind.END;
      default -> TokenKind.SIGN;
    };
  }

  /** Returns the keywords among some types of tokens, as they are written. */
  static List<String> keywords(IntervalSet types) {
    List<String> words = new ArrayList<>();
    for (int type : types.toArray()) {
      String word = isKeyword(type) && !isUnit(type) ? spelling(type) : null;
      if (word != null) {
        words.add(word);
      }
    }
    return words;
  }

  /** Returns the keyword for a common term. */
  static Optional<String> synonym(String plain) {
    return Optional.ofNullable(SYNONYMS.get(plain));
  }

  /** Returns the keyword that a word most likely means. */
  static Optional<String> meant(String word, List<String> keywords) {
    String plain = plain(word);
    if (isWeekday(plain)) {
      return Optional.empty(); // right as it is
    }
    return synonym(plain).filter(keywords::contains).or(() -> Nearest.to(plain, keywords));
  }

  /** Returns whether a word is a weekday, which is no keyword but has a meaning. */
  static boolean isWeekday(String word) {
    return WEEKDAYS.contains(word);
  }

  /** Returns the type of a keyword, which must be one. */
  static int typeOf(String keyword) {
    for (int type = FIRST_KEYWORD; type <= LAST_KEYWORD; type++) {
      if (keyword.equals(spelling(type))) {
        return type;
      }
    }
    if (keyword.equals("%")) {
      return GripLexer.PERCENT;
    }
    throw new IllegalArgumentException("not a keyword: " + keyword);
  }

  /** Returns the unit that a word most likely means, or null. */
  static @Nullable String unitMeant(String word) {
    String plain = plain(word);
    String alias = UNIT_WORDS.get(plain);
    if (alias != null) {
      return alias;
    }
    if (plain.length() < 3) {
      return UNITS.stream().filter(u -> u.equalsIgnoreCase(plain)).findFirst().orElse(null);
    }
    return Nearest.to(plain, UNITS)
        .or(() -> Nearest.to(plain, UNIT_WORDS.keySet()).map(UNIT_WORDS::get))
        .orElse(null);
  }

  /** Returns whether a word is a common name of a unit rather than a typing mistake. */
  static boolean isUnitWord(String word) {
    return UNIT_WORDS.containsKey(plain(word));
  }

  /** Returns a word in lower-case Latin letters, as far as possible. */
  static String plain(String word) {
    StringBuilder plain = new StringBuilder();
    Normalizer.normalize(word, Normalizer.Form.NFKD)
        .codePoints()
        .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
        .forEach(c -> plain.appendCodePoint(LookAlikes.latin(c)));
    return plain.toString().toLowerCase(Locale.ROOT);
  }
}
