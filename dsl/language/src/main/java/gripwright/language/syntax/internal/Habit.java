package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.language.source.Span;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/**
 * A notation that is common elsewhere, such as {@code 3x10}, {@code 2x per week} or {@code rpe 8}.
 * It gets its own sentence instead of a list of what is possible.
 *
 * @param kind the argument that chooses the wording, such as {@code decimal} or {@code per-week}
 * @param written the correct form, or the word in question
 * @param span the characters
 */
record Habit(String kind, String written, Span span) {

  private static final Pattern SETS_BY_HOLDS =
      Pattern.compile("([0-9]+) ?[xX\u00D7*] ?[0-9]+(?:\\.[0-9]+)?(?: ?(?:s|sec)\\b)?");
  private static final Pattern PER_WEEK =
      Pattern.compile(
          "(?:([0-9]+) ?(?:[xX\u00D7]|times)?|(once|twice)) ?(?:per|a|/|each|every|weekly)? ?"
              + "(?:week|wk|weekly)?\\b");
  private static final Pattern DATE =
      Pattern.compile("([0-9]{4}) ?(\\p{Pd}) ?([0-9]{1,2}) ?\\p{Pd} ?([0-9]{1,2})\\b");
  private static final Pattern EFFORT =
      Pattern.compile("(?:@ ?)?(?:rpe|RPE) ?(10|[0-9](?:\\.[0-9]+)?)?");
  private static final Pattern ADDED =
      Pattern.compile("(?:body-?weight |bw |BW )?([-+\u2212]) ?([0-9]+(?:\\.[0-9]+)?) ?(kg|lbs?)");
  private static final Pattern SHARE =
      Pattern.compile("(?:at |@ ?)?([0-9]+(?:\\.[0-9]+)?) ?%(?: (?:of )?max)?");
  private static final Pattern GRADE =
      Pattern.compile(
          "([vV])([0-9]{1,2})\\b|(5\\.[0-9]+[a-d]?)|([3-9][abcABC]?\\+?)(?![0-9A-Za-z.])");
  private static final Pattern ILL = Pattern.compile("(?:ill|sick|injured|flu|cold|rested?)\\b");

  /** Returns the habit behind an unexpected token, or null. */
  static @Nullable Habit at(Token token, Scan scan) {
    String text = scan.source().text();
    int at = scan.start(token);
    Token before = scan.before(token);
    if (token.getType() == GripParser.COMMA && isDecimal(text, at)) {
      return decimal(text, at);
    }
    if (before != null && before.getType() == GripParser.COMMA && isDecimal(text, at - 1)) {
      return decimal(text, at - 1);
    }
    if (text.startsWith("//", at)) {
      return new Habit("comment", "#", new Span(at, 2));
    }
    Habit date = date(text, at);
    if (date != null) {
      return date;
    }
    if (before == null || token.getType() == Token.EOF) {
      return null;
    }
    int statement = scan.lineOpener(scan.firstOnLine(token) ? before : token).getType();
    if (isLevelWord(before) && token.getType() == GripParser.WORD) {
      return statement == GripParser.HOLD
          ? new Habit("level-word", scan.text(before), scan.span(token))
          : null;
    }
    return switch (statement) {
      case GripParser.SESSION -> perWeek(scan, token);
      case GripParser.DO -> exercise(scan, token);
      case GripParser.ABILITY -> grade(scan, scan.firstOnLine(token) ? before : token);
      case GripParser.DATE -> logged(scan, token);
      default -> null;
    };
  }

  /** Returns a finding that names the habit. */
  Finding finding() {
    return Mistakes.error("syntax.expected").with(kind, written);
  }

  private static @Nullable Habit date(String text, int at) {
    Matcher date = matcher(DATE, text, at);
    if (!date.lookingAt() || date.group(2).equals("-")) {
      return null;
    }
    String written = date.group(1) + "-" + two(date.group(3)) + "-" + two(date.group(4));
    return new Habit("dash", written, Span.between(at, date.end()));
  }

  private static String two(String number) {
    return number.length() == 1 ? "0" + number : number;
  }

  /** {@code session strength 2x per week}, {@code twice a week}, {@code 2/week}. */
  private static @Nullable Habit perWeek(Scan scan, Token token) {
    String text = scan.source().text();
    Token before = scan.before(token);
    Token first = before != null && before.getType() == GripParser.NUMBER ? before : token;
    int at = scan.start(first);
    Matcher times = matcher(PER_WEEK, text, at);
    if (scan.firstOnLine(token) || !followsName(scan, first) || !times.lookingAt()) {
      return null;
    }
    String sessions =
        times.group(1) != null ? times.group(1) : times.group(2).equals("once") ? "1" : "2";
    return new Habit("per-week", sessions + " per week", Span.between(at, times.end()));
  }

  /**
   * Returns whether a token follows the name of a session directly, where its frequency is written.
   */
  private static boolean followsName(Scan scan, Token token) {
    Token name = scan.before(token);
    Token keyword = name == null ? null : scan.before(name);
    return keyword != null && keyword.getType() == GripParser.SESSION;
  }

  /** Finds habits in the sets, loads and effort that follow the protocol or edge of an exercise. */
  private static @Nullable Habit exercise(Scan scan, Token token) {
    if (scan.firstOnLine(token)) {
      return null;
    }
    String text = scan.source().text();
    int at = scan.start(token);
    Matcher sets = matcher(SETS_BY_HOLDS, text, at);
    if (sets.lookingAt()) {
      return new Habit("sets-by-holds", sets.group(1), Span.between(at, sets.end()));
    }
    if (token.getType() == GripParser.WITH) {
      return new Habit("with-first", "with", scan.span(token));
    }
    Token before = scan.before(token);
    boolean afterRpe = before != null && scan.text(before).equalsIgnoreCase("rpe");
    int from = before != null && afterRpe ? scan.start(before) : at;
    Matcher effort = matcher(EFFORT, text, from);
    if (effort.lookingAt()) {
      String number = effort.group(1) == null ? "8" : effort.group(1);
      return new Habit("level", "effort " + number, Span.between(from, effort.end()));
    }
    Matcher added = matcher(ADDED, text, at);
    if (added.lookingAt()) {
      String sign = added.group(1).equals("+") ? "+" : "-";
      String unit = added.group(3).startsWith("lb") ? "lb" : "kg";
      String level = "body-mass " + sign + " " + added.group(2) + " " + unit;
      return new Habit("level", level, Span.between(at, added.end()));
    }
    Matcher share = matcher(SHARE, text, at);
    if (share.lookingAt()) {
      return new Habit("level", share.group(1) + " % max", Span.between(at, share.end()));
    }
    return oneWord(scan, token);
  }

  private static @Nullable Habit logged(Scan scan, Token token) {
    Matcher ill = matcher(ILL, scan.source().text(), scan.start(token));
    Token before = scan.before(token);
    if (before != null && before.getType() == GripParser.DATE && ill.lookingAt()) {
      return new Habit("ill", ill.group(), scan.span(token));
    }
    return oneWord(scan, token);
  }

  /** {@code half crimp}: two words before an edge, or before what follows a protocol. */
  private static @Nullable Habit oneWord(Scan scan, Token token) {
    Token before = scan.before(token);
    if (before == null
        || scan.firstOnLine(token)
        || scan.firstOnLine(before)
        || !Vocabulary.isUnknownWord(token.getType())
        || !Vocabulary.isWord(before.getType())) {
      return null;
    }
    Token opener = scan.before(before);
    if (opener == null || opener.getType() == before.getType()) {
      return null; // a keyword that is written twice
    }
    Token after = scan.after(token);
    int next = after.getType();
    boolean grip = opener.getType() == GripParser.ON || opener.getType() == GripParser.TEST;
    boolean ends =
        grip
            ? next == GripParser.EDGE || (next == GripParser.GLUED && !scan.firstOnLine(after))
            : next == GripParser.ON || next == GripParser.WITH;
    if (!ends) {
      return null;
    }
    String name = Vocabulary.plain(scan.text(before)) + "-" + Vocabulary.plain(scan.text(token));
    return new Habit("one-word", name, scan.span(before).to(scan.span(token)));
  }

  /** {@code ability V7} or {@code ability 7c}: a grade without the name of its scale. */
  private static @Nullable Habit grade(Scan scan, Token token) {
    int at = scan.start(token);
    Token before = scan.before(token);
    Matcher grade = matcher(GRADE, scan.source().text(), at);
    if (before == null || before.getType() != GripParser.ABILITY || !grade.lookingAt()) {
      return null;
    }
    String written =
        grade.group(1) != null
            ? "v " + grade.group(2)
            : grade.group(3) != null ? "yds " + grade.group(3) : "french " + grade.group(4);
    return new Habit("grade", written, Span.between(at, grade.end()));
  }

  private static Matcher matcher(Pattern pattern, String text, int at) {
    int end = text.indexOf('\n', at);
    return pattern.matcher(text).region(at, Math.min(at + 60, end < 0 ? text.length() : end));
  }

  private static boolean isLevelWord(Token token) {
    return token.getType() == GripParser.RESERVE || token.getType() == GripParser.EFFORT;
  }

  private static boolean isDecimal(String text, int comma) {
    return comma > 0
        && comma + 1 < text.length()
        && text.charAt(comma) == ','
        && isDigit(text.charAt(comma - 1))
        && isDigit(text.charAt(comma + 1));
  }

  private static Habit decimal(String text, int comma) {
    int start = comma;
    while (start > 0 && isDigit(text.charAt(start - 1))) {
      start--;
    }
    int end = comma + 1;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    String point = text.substring(start, comma) + "." + text.substring(comma + 1, end);
    return new Habit("decimal", point, Span.between(start, end));
  }

  private static boolean isDigit(char character) {
    return character >= '0' && character <= '9';
  }
}
