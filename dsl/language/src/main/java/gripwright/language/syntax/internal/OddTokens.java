package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.finding.Topic;
import gripwright.language.source.Span;
import gripwright.language.syntax.SyntaxTree;
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
 * Tokens that are understood and still wrong: a unit stuck to its number, a quote that is not
 * closed, a date that is not in the calendar. Where a statement was given up, what follows the
 * mistake in it is left alone.
 */
final class OddTokens {

  private static final Pattern GLUED =
      Pattern.compile("([0-9]+(?:\\.[0-9]+)?)(.+)", Pattern.DOTALL);
  private static final Pattern YEAR_FIRST = Pattern.compile("([0-9]{4})[-./]([0-9]+)[-./]([0-9]+)");
  private static final Pattern DAY_FIRST = Pattern.compile("([0-9]+)[-./]([0-9]+)[-./]([0-9]{4})");

  private final Scan scan;
  private final Mistakes mistakes;
  private final Set<Integer> skipped = new HashSet<>();

  OddTokens(Scan scan, SyntaxTree tree, Mistakes mistakes) {
    this.scan = scan;
    this.mistakes = mistakes;
    tree.root()
        .tokens(
            token -> {
              if (token.skipped()) {
                skipped.add(token.span().start());
              }
            });
  }

  /** Tells whether a token is reported for its own sake. */
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
    if (Vocabulary.isKeyword(type) || type == GripLexer.WORD || type == GripLexer.NUMBER) {
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
        // as it should be
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
    Finding finding = Mistakes.error("syntax.name").about(Topic.MISWRITTEN_NAME).with("name", text);
    String plain =
        Vocabulary.plain(text).replaceAll("[^a-z0-9]+", "-").replaceAll("^[-0-9]+|-+$", "");
    if (LookAlikes.anyIn(text)) {
      finding = finding.with("look-alike", plain);
    } else if (!plain.isEmpty()) {
      finding = finding.with("suggestion", plain);
    }
    mistakes.add(scan.span(token), finding);
  }

  private void reportGlued(CommonToken token, String text) {
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

  /** Returns the number that a glued amount begins with. */
  static String number(String glued) {
    Matcher matcher = GLUED.matcher(glued);
    return matcher.matches() ? matcher.group(1) : glued;
  }

  /** Returns the unit that is stuck to a number, or most likely meant by what is; or null. */
  static @Nullable String unit(String glued) {
    String word = glued.substring(number(glued).length());
    return gripwright.quantity.Unit.parse(word).isPresent() ? word : Vocabulary.unitMeant(word);
  }

  /** Returns a date in the one form it is written in, or null if it is not in the calendar. */
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
