package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.finding.Nearest;
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
 * Continues reading after a mistake: one mistake gives one finding, and everything else in the file
 * is still read.
 *
 * <p>A mistake inside a statement ends the statement, and reading continues at the next one. After
 * a mistake in a heading, the body is still read. A misspelt keyword is reported and read as the
 * one meant; a missing name, number or keyword is never invented.
 */
final class Recovery extends DefaultErrorStrategy {

  private final Scan scan;
  private final Braces braces;
  private final Mistakes mistakes;
  private final Skipping skipping;
  private final ErrorRecovery errors;

  private final Reporter reporter;
  private @Nullable RecognitionException reported;

  Recovery(Scan scan, Mistakes mistakes) {
    this.scan = scan;
    this.mistakes = mistakes;
    this.braces = new Braces(scan);
    this.reporter = new Reporter(scan, mistakes);
    this.skipping = new Skipping(scan, braces, reporter, this);
    this.errors = new ErrorRecovery(scan, braces, mistakes, reporter, skipping);
  }

  /** Signals an unclosed body, at the statement that can't be in it. */
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
      errors.atTop(parser);
    } else if (body != null) {
      errors.inBody(parser, body);
    } else {
      CommonToken token = (CommonToken) parser.getCurrentToken();
      IntervalSet possible =
          GripParser._ATN.nextTokens(GripParser._ATN.states.get(parser.getState()));
      reporter.tried(token, possible, context);
      if (rule == GripParser.RULE_name || rule == GripParser.RULE_primary) {
        checkName(parser, token, context);
      } else if (possible.contains(GripParser.KG)) {
        repairUnit(parser, token);
      }
      repairWord(token, possible);
    }
  }

  /** Reports a missing name instead of reading the keyword of the next line as the name. */
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
      reporter.readAsName(token, context);
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

  /** Reports a word that is not a unit where one is needed, and reads it as the unit meant. */
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
    Habit habit = meant == null ? Habit.at(token, scan) : null;
    Finding finding = Mistakes.error("unit.unknown").with("unit", word);
    mistakes.add(
        habit == null ? scan.span(token) : habit.span(),
        habit != null
            ? habit.finding()
            : meant == null ? finding : finding.with("suggestion", meant));
    if (meant != null) {
      token.setType(Vocabulary.typeOf(meant));
    } else {
      reporter.isDone(token);
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
        Vocabulary.meant(word, Vocabulary.keywords(possible)).filter(m -> m.length() > 1);
    if (meant.isEmpty() || Habit.at(token, scan) != null) {
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

  /** Reads a body whose opening brace is missing, or is further along the line. */
  private Token missingBrace(Parser parser, Token token, IntervalSet possible) {
    ParserRuleContext owner = parser.getContext().getParent();
    boolean known =
        owner.getChild(0) instanceof ParserRuleContext heading && heading.exception != null;
    if (!known) {
      reporter.expected(token, possible, parser.getContext());
    }
    reporter.isDone(token);
    CommonToken ahead = scan.braceOnLine(token);
    if (ahead != null) {
      owner.exception = new InputMismatchException(parser);
      while (parser.getCurrentToken() != ahead) {
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
      braces.settle(mistake.getOffendingToken(), -1);
      reporter.unclosed((ParserRuleContext) mistake.getCtx(), mistake.getOffendingToken());
    } else {
      reporter.expected(mistake.getOffendingToken(), possible(mistake), mistake.getCtx());
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

  @Override
  public void recover(Parser parser, RecognitionException mistake) {
    ParserRuleContext context = parser.getContext();
    int rule = context.getRuleIndex();
    if (Bodies.of(rule) != null) {
      return;
    }
    if (Bodies.isHeading(rule)) {
      skipping.afterHeading(parser);
    } else if (Bodies.isItem(rule) || context.getParent() == null) {
      skipping.afterStatement(parser, context);
    } else {
      throw mistake;
    }
  }
}
