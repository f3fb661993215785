package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.language.finding.Nearest;
import gripwright.language.source.Span;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.NoViableAltException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNConfig;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/**
 * How reading goes on after a mistake: one mistake gives one finding, and everything else in the
 * file is still read.
 *
 * <p>A mistake inside a statement ends the statement, and reading goes on where the next one
 * begins. A mistake in a heading does not cost the body. A misspelt keyword is reported and then
 * read as the one meant; a name, a number or a keyword that is missing is never made up.
 */
final class Recovery extends DefaultErrorStrategy {

  private static final IntervalSet SCALES = IntervalSet.of(GripParser.FRENCH, GripParser.IRCRA);

  private final Scan scan;
  private final Braces braces;
  private final Mistakes mistakes;
  private final Resumption resumption;

  /** What could also have stood at a token that was then tried for something else. */
  private final IntervalSet open = new IntervalSet();

  private int openAt = -1;
  private @Nullable RuleContext openContext;
  private int nameAt = -1;
  private @Nullable RuleContext nameContext;
  private int reportedAt = -1;
  private @Nullable RecognitionException reported;

  Recovery(Scan scan, Mistakes mistakes) {
    this.scan = scan;
    this.mistakes = mistakes;
    this.braces = new Braces(scan);
    this.resumption = new Resumption(scan, braces, mistakes, this);
  }

  /** The end of a body that is not closed, seen from the statement that cannot be in it. */
  static final class Unclosed extends RecognitionException {
    private static final long serialVersionUID = 1;

    Unclosed(Parser parser) {
      super(parser, parser.getInputStream(), parser.getContext());
      setOffendingToken(parser.getCurrentToken());
    }
  }

  @Override
  public void sync(Parser parser) {
    ParserRuleContext context = parser.getContext();
    int rule = context.getRuleIndex();
    Bodies.Body body = Bodies.of(rule);
    if (rule == GripParser.RULE_file) {
      resumption.atTop(parser);
    } else if (body != null) {
      resumption.inBody(parser, body);
    } else {
      CommonToken token = (CommonToken) parser.getCurrentToken();
      IntervalSet possible =
          GripParser._ATN.nextTokens(GripParser._ATN.states.get(parser.getState()));
      remember(token, possible, context);
      if (rule == GripParser.RULE_name || rule == GripParser.RULE_primary) {
        checkName(parser, token, context);
      } else if (possible.contains(GripParser.KG)) {
        repairUnit(parser, token);
      }
      repairWord(token, possible);
    }
  }

  private void remember(Token token, IntervalSet possible, RuleContext context) {
    if (openAt != token.getTokenIndex()) {
      openAt = token.getTokenIndex();
      open.clear();
    }
    open.addAll(possible);
    openContext = context;
  }

  /**
   * Refuses to take the keyword that opens the next line for a name that is missing on this one.
   */
  private void checkName(Parser parser, Token token, RuleContext context) {
    if (scan.firstOnLine(token) && opensStatement(token, context)) {
      Token before = scan.before(token);
      Token next = parser.getInputStream().LT(2);
      boolean listed =
          before != null
              && before.getType() == GripParser.COMMA
              && (context.parent.getRuleIndex() != GripParser.RULE_names
                  || scan.firstOnLine(next)
                  || next.getType() == GripParser.COMMA
                  || next.getType() == GripParser.EDGE
                  || next.getType() == GripParser.LBRACE);
      if (!listed) {
        throw new InputMismatchException(parser);
      }
    }
    if (Vocabulary.isKeyword(token.getType())) {
      nameAt = token.getTokenIndex();
      nameContext = context;
    }
  }

  private boolean opensStatement(Token token, RuleContext context) {
    if (braces.isHeading(token)) {
      return true;
    }
    Bodies.Body body = Bodies.around(context);
    if (body == null
        || body.rule() == GripParser.RULE_sessionLineBody
        || context.parent.getRuleIndex() == GripParser.RULE_doneLine) {
      return false;
    }
    return body.mayBegin(token.getType())
        || (Vocabulary.isUnknownWord(token.getType())
            && Nearest.to(Vocabulary.plain(scan.text(token)), Vocabulary.keywords(body.first()))
                .isPresent());
  }

  /** Reports a word that stands for a unit and is none, and reads it as the unit meant. */
  private void repairUnit(Parser parser, CommonToken token) {
    Token before = scan.before(token);
    if (!Vocabulary.isUnknownWord(token.getType())
        || scan.firstOnLine(token)
        || before == null
        || before.getType() != GripParser.NUMBER
        || parser.getInputStream().LA(2) == GripParser.ON
        || isScore(parser.getContext())) {
      return;
    }
    String word = scan.text(token);
    String meant = Vocabulary.unitMeant(word);
    List<String> keywords = Vocabulary.keywords(parser.getExpectedTokens());
    boolean keyword =
        Nearest.to(Vocabulary.plain(word), keywords).isPresent()
            && (meant == null || !Vocabulary.isUnitWord(word));
    Token next = parser.getInputStream().LT(2);
    boolean fits = scan.firstOnLine(next) || parser.getExpectedTokens().contains(next.getType());
    if (keyword || (meant == null && !fits)) {
      return;
    }
    Finding finding = Mistakes.error("unit.unknown").with("unit", word);
    mistakes.add(scan.span(token), meant == null ? finding : finding.with("suggestion", meant));
    if (meant != null) {
      token.setType(Vocabulary.typeOf(meant));
    } else {
      reportedAt = token.getTokenIndex();
      parser.getContext().exception = new InputMismatchException(parser);
      skipOne(parser);
    }
  }

  private static boolean isScore(RuleContext context) {
    RuleContext at = context;
    for (int i = 0; i < 3 && at != null; i++) {
      int rule = at.getRuleIndex();
      if (rule == GripParser.RULE_effort
          || rule == GripParser.RULE_pain
          || rule == GripParser.RULE_painLine) {
        return true;
      }
      at = at.parent;
    }
    return false;
  }

  private boolean repairWord(CommonToken token, IntervalSet possible) {
    if (!Vocabulary.isUnknownWord(token.getType())
        || scan.firstOnLine(token)
        || possible.contains(GripParser.WORD)) {
      return false;
    }
    String word = scan.text(token);
    Optional<String> meant =
        Nearest.to(Vocabulary.plain(word), Vocabulary.keywords(possible))
            .filter(m -> m.length() > 1);
    if (meant.isEmpty()) {
      return false;
    }
    mistakes.add(
        scan.span(token),
        Mistakes.error("syntax.expected")
            .with("expected", "`" + meant.get() + "`")
            .with("found", Mistakes.quote(word))
            .with("suggestion", meant.get()));
    token.setType(Vocabulary.typeOf(meant.get()));
    return true;
  }

  @Override
  public Token recoverInline(Parser parser) {
    CommonToken token = (CommonToken) parser.getCurrentToken();
    IntervalSet possible =
        GripParser._ATN.nextTokens(GripParser._ATN.states.get(parser.getState()));
    if (Bodies.of(parser.getContext().getRuleIndex()) != null
        && possible.contains(GripParser.LBRACE)) {
      return missingBrace(parser, token, possible);
    }
    if (repairWord(token, possible)) {
      parser.consume();
      return token;
    }
    throw new InputMismatchException(parser);
  }

  /** Reads a body whose opening brace is missing, or stands further along the line. */
  private Token missingBrace(Parser parser, Token token, IntervalSet possible) {
    ParserRuleContext owner = parser.getContext().getParent();
    boolean known =
        owner.getChild(0) instanceof ParserRuleContext heading && heading.exception != null;
    if (!known) {
      report(token, possible, parser.getContext());
    }
    reportedAt = token.getTokenIndex();
    int ahead = 1;
    while (!scan.firstOnLine(parser.getInputStream().LT(ahead))
        && parser.getInputStream().LA(ahead) != Token.EOF
        && parser.getInputStream().LA(ahead) != GripParser.RBRACE
        && parser.getInputStream().LA(ahead) != GripParser.LBRACE) {
      ahead++;
    }
    if (parser.getInputStream().LA(ahead) == GripParser.LBRACE) {
      owner.exception = new InputMismatchException(parser);
      for (int i = 1; i < ahead; i++) {
        skipOne(parser);
      }
      Token brace = parser.getCurrentToken();
      parser.consume();
      return brace;
    }
    braces.settle(token, 1);
    CommonToken brace = new CommonToken(GripParser.LBRACE, "{");
    brace.setTokenIndex(-1);
    return brace;
  }

  /** Leaves out the next token. */
  void skipOne(Parser parser) {
    beginErrorCondition(parser);
    parser.consume();
    endErrorCondition(parser);
  }

  @Override
  public void reportError(Parser parser, RecognitionException mistake) {
    if (mistake == reported) {
      return;
    }
    reported = mistake;
    if (mistake instanceof Unclosed) {
      reportUnclosed((ParserRuleContext) mistake.getCtx(), mistake.getOffendingToken());
    } else {
      report(mistake.getOffendingToken(), possible(mistake), mistake.getCtx());
    }
  }

  private static IntervalSet possible(RecognitionException mistake) {
    IntervalSet possible = new IntervalSet();
    if (mistake instanceof NoViableAltException dead && dead.getDeadEndConfigs() != null) {
      for (ATNConfig config : dead.getDeadEndConfigs()) {
        possible.addAll(GripParser._ATN.nextTokens(config.state));
      }
    } else {
      possible.addAll(
          GripParser._ATN.nextTokens(GripParser._ATN.states.get(mistake.getOffendingState())));
    }
    return possible;
  }

  /** Reports what is at the end of a statement and does not belong to it. */
  void reportLeftover(Token token) {
    if (openAt == token.getTokenIndex()) {
      report(token, new IntervalSet(), openContext);
    } else {
      report(token, new IntervalSet(), null);
    }
  }

  /**
   * Reports that something else was expected.
   *
   * @param token what stands there
   * @param expected what the statement cannot do without there; empty if it may end
   * @param context what was being read
   */
  void report(Token token, IntervalSet expected, @Nullable RuleContext context) {
    if (reportedAt == token.getTokenIndex()) {
      return;
    }
    reportedAt = token.getTokenIndex();
    IntervalSet possible = new IntervalSet(expected);
    if (openAt == token.getTokenIndex()) {
      possible.addAll(open);
    }
    Token before = scan.before(token);
    if (mistakes.isFull()
        || scan.oddBefore(token)
        || (before != null && OddTokens.isOdd(before) && !scan.firstOnLine(token))) {
      return;
    }
    if (before != null
        && nameAt == before.getTokenIndex()
        && Vocabulary.isKeyword(before.getType())
        && possible.contains(before.getType())) {
      add(before, IntervalSet.of(GripParser.WORD), new IntervalSet(), nameContext);
    } else if (before != null && possible.contains(GripParser.PLUS) && isGrade(before, token)) {
      add(before, SCALES, new IntervalSet(), context);
    } else if (possible.contains(GripParser.PERCENT)
        && (token.getType() == GripParser.MAX || token.getType() == GripParser.OF)) {
      add(token, IntervalSet.of(GripParser.PERCENT), new IntervalSet(), context);
    } else {
      add(token, expected, possible, context);
    }
  }

  /** Reports that something else was expected where a statement begins. */
  void reportHere(Token token, String expected, String example) {
    if (reportedAt != token.getTokenIndex()) {
      reportedAt = token.getTokenIndex();
      mistakes.add(
          scan.span(token),
          Mistakes.error("syntax.expected")
              .with("expected", expected)
              .with("found", Mistakes.quote(scan.text(token)))
              .with("example", example));
    }
  }

  /** Tells whether a mistake was reported at a token. */
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
    Finding finding =
        Mistakes.error("syntax.expected")
            .with("expected", Expectation.inWords(required, optional, context))
            .with("found", found(token));
    String word = Vocabulary.isUnknownWord(token.getType()) ? scan.text(token) : "";
    Optional<String> meant =
        possible.contains(GripParser.WORD)
            ? Optional.empty()
            : Nearest.to(Vocabulary.plain(word), Vocabulary.keywords(possible));
    String example = Examples.of(context);
    if (meant.isPresent()) {
      finding = finding.with("suggestion", meant.get());
    } else if (example != null) {
      finding = finding.with("example", example);
    }
    mistakes.add(place(token), finding);
  }

  private String found(Token token) {
    if (token.getType() == Token.EOF) {
      return "the end of the file";
    }
    return scan.firstOnLine(token) && scan.before(token) != null
        ? "the end of the line"
        : Mistakes.quote(scan.text(token));
  }

  private Span place(Token token) {
    Token before = scan.before(token);
    boolean elsewhere = token.getType() == Token.EOF || scan.firstOnLine(token);
    return elsewhere && before != null ? new Span(scan.end(before), 0) : scan.span(token);
  }

  private void reportUnclosed(ParserRuleContext body, Token token) {
    boolean opened = body.getStart().getType() == GripParser.LBRACE;
    braces.settle(token, -1);
    if (opened && reportedAt != token.getTokenIndex()) {
      reportedAt = token.getTokenIndex();
      ParserRuleContext heading = (ParserRuleContext) body.getParent().getChild(0);
      Span span = scan.span(heading.getStart()).to(scan.span(body.getStart()));
      Token last = heading.getStop() == null ? heading.getStart() : heading.getStop();
      Token name =
          heading.getChildCount() > 1
              ? heading.getChild(1) instanceof ParserRuleContext n ? n.getStart() : last
              : last;
      String block =
          scan.text(heading.getStart()) + (name == heading.getStart() ? "" : " " + scan.text(name));
      mistakes.add(span, Mistakes.error("syntax.unclosed").with("block", block));
    }
  }

  @Override
  public void recover(Parser parser, RecognitionException mistake) {
    ParserRuleContext context = parser.getContext();
    int rule = context.getRuleIndex();
    if (Bodies.of(rule) != null) {
      return;
    }
    if (Bodies.isHeading(rule)) {
      resumption.afterHeading(parser);
    } else if (Bodies.isItem(rule) || context.getParent() == null) {
      resumption.afterStatement(parser, context);
    } else {
      throw mistake;
    }
  }
}
