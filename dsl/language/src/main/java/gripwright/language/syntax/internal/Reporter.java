package gripwright.language.syntax.internal;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.Nearest;
import gripwright.language.source.Span;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/**
 * Reports the expected and the actual token, once for each place. Keeps the alternatives tried at a
 * token until it is known to fit none.
 */
final class Reporter {

  private static final IntervalSet SCALES = IntervalSet.of(GripParser.FRENCH, GripParser.IRCRA);

  private final Scan scan;
  private final Mistakes mistakes;

  /** Alternatives at a token that was then tried for something else. */
  private final IntervalSet open = new IntervalSet();

  private int openAt = -1;
  private @Nullable RuleContext openContext;
  private int nameAt = -1;
  private @Nullable RuleContext nameContext;
  private int reportedAt = -1;

  Reporter(Scan scan, Mistakes mistakes) {
    this.scan = scan;
    this.mistakes = mistakes;
  }

  /** Records what is possible at a token. */
  void tried(Token token, IntervalSet possible, RuleContext context) {
    if (openAt != token.getTokenIndex()) {
      openAt = token.getTokenIndex();
      open.clear();
    }
    open.addAll(possible);
    openContext = context;
  }

  /** Records that a keyword is about to be read as a name. */
  void readAsName(Token token, RuleContext context) {
    nameAt = token.getTokenIndex();
    nameContext = context;
  }

  /** Records that the mistake at a token was already reported. */
  void isDone(Token token) {
    reportedAt = token.getTokenIndex();
  }

  /** Reports words at the end of a statement that don't belong to it. */
  void leftover(Token token) {
    if (openAt == token.getTokenIndex()) {
      expected(token, new IntervalSet(), openContext);
    } else {
      expected(token, new IntervalSet(), null);
    }
  }

  /**
   * Reports that something else was expected.
   *
   * @param token the token found
   * @param required the tokens required there; empty if the statement may end
   * @param context the rule that was being read
   */
  void expected(Token token, IntervalSet required, @Nullable RuleContext context) {
    if (reportedAt == token.getTokenIndex()) {
      return;
    }
    reportedAt = token.getTokenIndex();
    IntervalSet possible = new IntervalSet(required);
    if (openAt == token.getTokenIndex()) {
      possible.addAll(open);
    }
    Token before = scan.before(token);
    if (mistakes.isFull()
        || scan.oddBefore(token)
        || (before != null
            && MalformedTokens.isOdd(before)
            && (!scan.firstOnLine(token) || Habit.at(token, scan) != null))) {
      return;
    }
    if (before != null
        && nameAt == before.getTokenIndex()
        && Vocabulary.isKeyword(before.getType())
        && possible.contains(before.getType())) {
      add(before, IntervalSet.of(GripParser.WORD), new IntervalSet(), nameContext);
    } else if (before != null && possible.contains(GripParser.PLUS) && isGrade(before, token)) {
      add(before, SCALES, new IntervalSet(), context);
    } else if (token.getType() == GripParser.OF && possible.contains(GripParser.OF)) {
      add(scan.after(token), afterOf(possible), new IntervalSet(), context);
    } else if (possible.contains(GripParser.PERCENT)
        && (token.getType() == GripParser.MAX || token.getType() == GripParser.OF)) {
      add(token, IntervalSet.of(GripParser.PERCENT), new IntervalSet(), context);
    } else {
      add(token, required, possible, context);
    }
  }

  /** Returns what may follow an {@code of}: any value for a share, else a number. */
  private static IntervalSet afterOf(IntervalSet possible) {
    return possible.contains(GripParser.MAX)
        ? IntervalSet.of(GripParser.NUMBER).or(IntervalSet.of(GripParser.LPAREN))
        : IntervalSet.of(GripParser.NUMBER);
  }

  /** Reports that something else was expected where a statement begins. */
  void expectedHere(Token token, Message expected, String example) {
    if (reportedAt != token.getTokenIndex()) {
      reportedAt = token.getTokenIndex();
      Habit habit = Habit.at(token, scan);
      if (habit != null) {
        mistakes.add(habit.span(), habit.finding());
        return;
      }
      mistakes.add(
          scan.span(token),
          Mistakes.error("syntax.expected")
              .with("expected", expected)
              .with("found", Mistakes.quote(scan.text(token)))
              .with("example", example));
    }
  }

  /** Returns whether a mistake was reported at a token. */
  boolean isReported(Token token) {
    return reportedAt == token.getTokenIndex();
  }

  private boolean isGrade(Token word, Token value) {
    return Vocabulary.isUnknownWord(word.getType())
        && (value.getType() == GripParser.GRADE || value.getType() == GripParser.NUMBER)
        && !scan.firstOnLine(value)
        && Nearest.to(Vocabulary.plain(scan.text(word)), Vocabulary.keywords(SCALES)).isPresent();
  }

  private void add(
      Token token, IntervalSet required, IntervalSet optional, @Nullable RuleContext context) {
    IntervalSet possible = required.or(optional);
    Habit habit = Habit.at(token, scan);
    if (habit != null) {
      mistakes.add(habit.span(), habit.finding());
      return;
    }
    boolean atEnd = token.getType() == Token.EOF || scan.firstOnLine(token);
    Finding finding =
        Mistakes.error("syntax.expected")
            .with("expected", Expectation.of(required, optional, context))
            .with(atEnd ? "missing" : "found", found(token));
    String word = Vocabulary.isUnknownWord(token.getType()) ? scan.text(token) : "";
    Optional<String> meant =
        (token.getType() == GripParser.AND || Vocabulary.isWeekday(word))
                && possible.contains(GripParser.COMMA)
            ? Optional.of(",")
            : possible.contains(GripParser.WORD)
                ? Optional.empty()
                : Vocabulary.meant(word, Vocabulary.keywords(possible));
    String example = Examples.of(context);
    if (meant.isPresent()) {
      finding = finding.with("suggestion", meant.get());
    } else if (example != null) {
      finding = finding.with("example", example);
    }
    mistakes.add(place(token), finding);
  }

  private Object found(Token token) {
    if (token.getType() == Token.EOF) {
      return Clause.of("term.end-of-file");
    }
    return scan.firstOnLine(token) && scan.before(token) != null
        ? Clause.of("term.end-of-line")
        : Mistakes.quote(scan.text(token));
  }

  private Span place(Token token) {
    Token before = scan.before(token);
    boolean elsewhere = token.getType() == Token.EOF || scan.firstOnLine(token);
    return elsewhere && before != null ? new Span(scan.end(before), 0) : scan.span(token);
  }

  /**
   * Reports a body that is not closed, unless one inside it was reported at the same place.
   *
   * @param body the body
   * @param token the first token that cannot be in it
   */
  void unclosed(ParserRuleContext body, Token token) {
    boolean opened = body.getStart().getType() == GripParser.LBRACE;
    if (opened && reportedAt != token.getTokenIndex()) {
      reportedAt = token.getTokenIndex();
      ParserRuleContext heading = (ParserRuleContext) body.getParent().getChild(0);
      Span span = scan.span(heading.getStart()).to(scan.span(body.getStart()));
      String block = scan.text(heading.getStart());
      if (heading.getChildCount() > 1 && heading.getChild(1) instanceof ParserRuleContext name) {
        block += " " + scan.text(name.getStart());
      }
      mistakes.add(span, Mistakes.error("syntax.unclosed").with("block", block));
    }
  }
}
