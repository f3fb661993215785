package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.finding.Topic;
import gripwright.language.source.Span;
import gripwright.language.syntax.internal.grammar.GripLexer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/**
 * Reports tokens that are recognised but wrong: a unit attached to its number, an unclosed quote, a
 * date that doesn't exist. In a statement that was skipped, tokens after the mistake are not
 * reported.
 */
final class MalformedTokens {

  private static final Pattern GLUED =
      Pattern.compile("([0-9]+(?:\\.[0-9]+)?)(.+)", Pattern.DOTALL);
  private static final Pattern YEAR_FIRST = Pattern.compile("([0-9]{4})[-./]([0-9]+)[-./]([0-9]+)");
  private static final Pattern DAY_FIRST = Pattern.compile("([0-9]+)[-./]([0-9]+)[-./]([0-9]{4})");

  private static final Pattern WEEKDAY =
      Pattern.compile("(?:mon|tues|wednes|thurs|fri|satur|sun)day");

  private final Scan scan;
  private final Mistakes mistakes;
  private final Set<Integer> skipped;
  private final Set<String> names = new HashSet<>();
  private final Set<Integer> grades;

  MalformedTokens(Scan scan, TreeBuilder tree, Mistakes mistakes) {
    this.scan = scan;
    this.mistakes = mistakes;
    this.skipped = tree.skipped();
    this.grades = tree.grades();
  }

  /** Returns whether a token itself is reported. */
  static boolean isOdd(Token token) {
    int type = token.getType();
    return type == GripLexer.BAD_WORD
        || type == GripLexer.GLUED
        || type == GripLexer.BAD_DATE
        || type == GripLexer.UNTERMINATED_STRING
        || type == GripLexer.CURLY_STRING;
  }

  void report() {
    boolean skipping = false;
    for (CommonToken token : scan.tokens()) {
      if (token.getChannel() == GripLexer.ODD) {
        if (!skipping) {
          reportCharacter(token);
        }
      } else if (token.getChannel() == Token.DEFAULT_CHANNEL) {
        skipping =
            !skipped.isEmpty()
                && skipped.contains(scan.start(token))
                && token.getType() != Token.EOF;
        if (!skipping) {
          reportToken(token);
        }
      }
    }
  }

  private void reportToken(CommonToken token) {
    int type = token.getType();
    if (Vocabulary.isKeyword(type)
        || type == GripLexer.WORD
        || type == GripLexer.NUMBER
        || grades.contains(scan.start(token))) {
      return;
    }
    String text = scan.text(token);
    switch (type) {
      case GripLexer.BAD_WORD -> reportName(token, text);
      case GripLexer.GLUED -> reportGlued(token, text);
      case GripLexer.UNTERMINATED_STRING ->
          mistakes.add(scan.span(token), Mistakes.error("syntax.string"));
      case GripLexer.CURLY_STRING ->
          mistakes.add(
              new Span(scan.start(token), 1),
              Mistakes.error("syntax.character")
                  .with("found", LookAlikes.name(text.codePointAt(0)))
                  .with("suggestion", "`\"`"));
      case GripLexer.DATE, GripLexer.BAD_DATE -> reportDate(token, text);
      case GripLexer.LE,
          GripLexer.GE,
          GripLexer.NE,
          GripLexer.EQ,
          GripLexer.MINUS,
          GripLexer.STAR,
          GripLexer.SLASH -> {
        String spelling = Vocabulary.spelling(token.getType());
        if (spelling != null && !spelling.equals(text)) {
          mistakes.add(
              scan.span(token),
              Mistakes.error("syntax.character")
                  .with("found", Mistakes.quote(text))
                  .with("suggestion", "`" + spelling + "`"));
        }
      }
      default -> {
        // correct
      }
    }
  }

  private void reportCharacter(CommonToken token) {
    String text = scan.text(token);
    if (token.getType() == GripLexer.MARK && token.getStartIndex() == 0) {
      return;
    }
    int character = text.codePointAt(0);
    Finding finding = Mistakes.error("syntax.character").with("found", LookAlikes.name(character));
    Object meant = LookAlikes.meant(character);
    mistakes.add(scan.span(token), meant == null ? finding : finding.with("suggestion", meant));
  }

  private void reportName(CommonToken token, String text) {
    if (isHabit(token) || !names.add(text)) {
      return; // one finding for a name, wherever it is used
    }
    Finding finding = Mistakes.error("syntax.name").about(Topic.MISWRITTEN_NAME).with("name", text);
    String plain =
        Vocabulary.plain(text).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
    if (WEEKDAY.matcher(plain).matches()) {
      plain = plain.substring(0, 3);
    }
    if (LookAlikes.anyIn(text)) {
      finding = finding.with("look-alike", plain);
    } else if (!plain.isEmpty()) {
      finding = finding.with("suggestion", plain);
    }
    mistakes.add(scan.span(token), finding);
  }

  /** Reports a habit with its own sentence. */
  private boolean isHabit(CommonToken token) {
    Habit habit = scan.before(token) == null ? null : Habit.at(token, scan);
    if (habit != null) {
      mistakes.add(habit.span(), habit.finding());
    }
    return habit != null;
  }

  private void reportGlued(CommonToken token, String text) {
    if (text.matches("[0-9.]+[xX×]") && isHabit(token)) {
      return;
    }
    String number = number(text);
    String word = text.substring(number.length());
    String unit = unit(text);
    if (unit != null && unit.equals(word)) {
      mistakes.add(
          scan.span(token), Mistakes.error("unit.glued").with("number", number).with("unit", unit));
    } else {
      Finding finding = Mistakes.error("unit.unknown").with("unit", word);
      Span span = Span.between(scan.start(token) + number.length(), scan.end(token));
      mistakes.add(span, unit == null ? finding : finding.with("suggestion", unit));
    }
  }

  private void reportDate(CommonToken token, String text) {
    LocalDate date = date(text);
    if (date == null) {
      Finding finding = Mistakes.error("value.date").with("date", text);
      String meant = dateMeant(text);
      mistakes.add(scan.span(token), meant == null ? finding : finding.with("suggestion", meant));
    }
  }

  /** Returns the number at the start of an amount without a blank. */
  static String number(String glued) {
    Matcher matcher = GLUED.matcher(glued);
    return matcher.matches() ? matcher.group(1) : glued;
  }

  /** Returns the unit attached to a number, or the one most likely meant; or null. */
  static @Nullable String unit(String glued) {
    String word = glued.substring(number(glued).length());
    return gripwright.quantity.Unit.parse(word).isPresent() ? word : Vocabulary.unitMeant(word);
  }

  /** Returns a date in its only valid form, or null if it doesn't exist. */
  static @Nullable LocalDate date(String text) {
    if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return null;
    }
    try {
      return LocalDate.of(
          Integer.parseInt(text, 0, 4, 10),
          Integer.parseInt(text, 5, 7, 10),
          Integer.parseInt(text, 8, 10, 10));
    } catch (DateTimeException e) {
      return null;
    }
  }

  private static @Nullable String dateMeant(String text) {
    Matcher year = YEAR_FIRST.matcher(text);
    if (year.matches()) {
      return date(year.group(1), year.group(2), year.group(3));
    }
    Matcher day = DAY_FIRST.matcher(text);
    return day.matches() && text.indexOf('/') < 0
        ? date(day.group(3), day.group(2), day.group(1))
        : null;
  }

  private static @Nullable String date(String year, String month, String day) {
    if (month.length() > 2 || day.length() > 2) {
      return null;
    }
    String text =
        year
            + "-"
            + "0".repeat(2 - month.length())
            + month
            + "-"
            + "0".repeat(2 - day.length())
            + day;
    return date(text) == null ? null : text;
  }
}
