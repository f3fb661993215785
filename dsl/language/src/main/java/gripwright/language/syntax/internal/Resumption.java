package gripwright.language.syntax.internal;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.Nearest;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNState;
import org.jspecify.annotations.Nullable;

/** Where reading goes on: the next statement, the end of a body, or the next declaration. */
final class Resumption {

  private static final Message TOP = Clause.of("term.home-file");
  private static final List<String> DECLARATIONS =
      List.of("use", "athlete", "grip", "protocol", "plan", "rules", "log", "compare");

  private final Scan scan;
  private final Braces braces;
  private final Mistakes mistakes;
  private final Reporter reporter;
  private final Recovery recovery;
  private boolean lost;

  /** Where the last misplaced statement ended, and in which body: the next may go with it. */
  private int strayEnd = -1;

  private int strayType = -1;
  private @Nullable RuleContext strayBody;

  Resumption(Scan scan, Braces braces, Mistakes mistakes, Reporter reporter, Recovery recovery) {
    this.scan = scan;
    this.braces = braces;
    this.mistakes = mistakes;
    this.reporter = reporter;
    this.recovery = recovery;
  }

  /** Sees to it that a declaration or the end of the file comes next. */
  void atTop(Parser parser) {
    int state = GripParser._ATN.states.get(parser.getState()).getStateType();
    while (true) {
      CommonToken token = (CommonToken) parser.getCurrentToken();
      int type = token.getType();
      boolean first = state == ATNState.BLOCK_START;
      if (type == Token.EOF
          || (Bodies.isDeclaration(type) && !onlyLooksLikeDeclaration(token))
          || (first && type == GripParser.LANGUAGE)) {
        lost = false;
        return;
      }
      if (type == GripParser.RBRACE) {
        if (!lost) {
          mistakes.add(scan.span(token), Mistakes.error("syntax.brace").with("found", "}"));
        }
        lost = true;
        recovery.skipOne(parser);
        continue;
      }
      if (first && type == GripParser.NUMBER) {
        // the number of the language, whose word is missing: reported for the file
        lost = true;
      }
      if (Vocabulary.isUnknownWord(type)) {
        List<String> words =
            first && parser.getInputStream().LA(2) == GripParser.NUMBER
                ? List.of("language")
                : DECLARATIONS;
        int next = parser.getInputStream().LA(2);
        Optional<String> meant =
            meant(
                token, words, word -> word == GripParser.LANGUAGE || Bodies.mayDeclare(word, next));
        if (meant.isPresent()) {
          unknownStatement(token, meant);
          token.setType(Vocabulary.typeOf(meant.get()));
          lost = false;
          return;
        }
      }
      if (!lost) {
        strayAtTop(token);
        lost = true;
      }
      skip(parser, null, scan.lineOpener(token).getCharPositionInLine());
    }
  }

  private void strayAtTop(Token token) {
    int type = token.getType();
    if (type == GripParser.LANGUAGE) {
      misplaced(token, Clause.of("term.home-first-line"));
    } else if (Vocabulary.isKeyword(type) && Bodies.home(type) != null) {
      misplaced(token, Bodies.home(type));
    } else if (Vocabulary.isWord(type)) {
      unknownStatement(token, Optional.empty());
    } else if (type == GripParser.LBRACE) {
      mistakes.add(scan.span(token), Mistakes.error("syntax.brace").with("found", "{"));
    } else {
      unknownStatement(token, Optional.empty());
    }
  }

  /** Sees to it that a statement of a body or its closing brace comes next. */
  void inBody(Parser parser, Bodies.Body body) {
    ParserRuleContext context = parser.getContext();
    while (true) {
      CommonToken token = (CommonToken) parser.getCurrentToken();
      int type = token.getType();
      if (type == Token.EOF) {
        throw new Recovery.Unclosed(parser);
      }
      if (braces.isHeading(token) && scan.firstOnLine(token)) {
        if (!braces.isNested(token)) {
          throw new Recovery.Unclosed(parser);
        }
        misplaced(token, TOP);
        skip(parser, context, scan.lineOpener(token).getCharPositionInLine());
        continue;
      }
      if (type == GripParser.RBRACE) {
        if (closesOuter(context, token)) {
          throw new Recovery.Unclosed(parser);
        }
        if (strayBody == context && braces.balance(token) < 0) {
          // closes what the misplaced statements were in, whose heading is missing
          strayBody = null;
          braces.settle(token, 1);
          recovery.skipOne(parser);
          continue;
        }
        if (!isExtra(parser, body, context, token)) {
          return;
        }
        mistakes.add(scan.span(token), Mistakes.error("syntax.brace").with("found", "}"));
        braces.settle(token, 1);
        recovery.skipOne(parser);
        continue;
      }
      if (endsEarly(context, body, token)) {
        throw new Recovery.Unclosed(parser);
      }
      if (body.mayBegin(type) && !isLeftover(parser, context, token)) {
        return;
      }
      if (isStray(parser, body, context, token)) {
        continue;
      }
      return;
    }
  }

  /** Tells whether a closing brace is one too many, and not the one that closes this body. */
  private boolean isExtra(Parser parser, Bodies.Body body, ParserRuleContext context, Token token) {
    if (braces.balance(token) >= 0) {
      return false;
    }
    CommonToken next = (CommonToken) parser.getInputStream().LT(2);
    if (!body.mayBegin(next.getType()) || braces.isHeading(next)) {
      return false;
    }
    boolean indented =
        context.getChild(1) instanceof ParserRuleContext item
            && item.getStart().getCharPositionInLine() > indentation(context);
    return !Bodies.outerMayBegin(context, next.getType())
        && !(indented && next.getCharPositionInLine() <= indentation(context));
  }

  /** Tells by its indentation whether a brace closes a block around this one, which has none. */
  private boolean closesOuter(ParserRuleContext context, Token token) {
    if (braces.balance(token) <= 0 || !scan.firstOnLine(token)) {
      return false;
    }
    int column = token.getCharPositionInLine();
    if (column >= indentation(context)) {
      return false;
    }
    RuleContext outer = Bodies.contextAround(context.getParent());
    while (outer != null) {
      if (column == indentation((ParserRuleContext) outer)) {
        return true;
      }
      outer = Bodies.contextAround(outer.parent);
    }
    return false;
  }

  /**
   * Tells whether a statement belongs to a block around this one, whose closing brace is missing.
   */
  private boolean endsEarly(ParserRuleContext context, Bodies.Body body, Token token) {
    if (braces.balance(token) <= 0
        || !scan.firstOnLine(token)
        || !Bodies.outerMayBegin(context, token.getType())) {
      return false;
    }
    int indentation = indentation(context);
    return !body.mayBegin(token.getType())
        || (indentation > 0 && token.getCharPositionInLine() <= indentation);
  }

  private int indentation(ParserRuleContext body) {
    Token heading = body.getParent().getStart();
    return scan.lineOpener(heading).getCharPositionInLine();
  }

  /** Tells whether a word goes on with the statement before it, which lacks a comma. */
  private boolean isLeftover(Parser parser, ParserRuleContext context, Token token) {
    int type = token.getType();
    if (context.getRuleIndex() == GripParser.RULE_sessionLineBody) {
      return !opensStatement(token) && parser.getInputStream().LA(2) != GripParser.ON;
    }
    return type >= GripParser.INDEX
        && type <= GripParser.THUMB
        && !scan.firstOnLine(token)
        && context.getChild(context.getChildCount() - 1) instanceof ParserRuleContext last
        && last.getStart().getType() == GripParser.FINGERS
        && parser.getInputStream().LA(3) != GripParser.NUMBER
        && parser.getInputStream().LA(3) != GripParser.INCLUDED;
  }

  /** Deals with a word that begins no statement here; tells whether to look again. */
  private boolean isStray(
      Parser parser, Bodies.Body body, ParserRuleContext context, CommonToken token) {
    int type = token.getType();
    int indentation = scan.lineOpener(token).getCharPositionInLine();
    boolean stray = false;
    if (type == GripParser.LBRACE) {
      mistakes.add(scan.span(token), Mistakes.error("syntax.brace").with("found", "{"));
      if (braces.balance(token) > 0 || scan.mate(token) == null) {
        braces.settle(token, -1);
        recovery.skipOne(parser);
        return true;
      }
    } else if (!opensStatement(token)) {
      reporter.leftover(token);
      if (context.getChild(context.getChildCount() - 1) instanceof ParserRuleContext last) {
        last.exception = new InputMismatchException(parser);
      }
    } else if (body.rule() == GripParser.RULE_logBody
        && (Bodies.isLogWord(type) || !Vocabulary.isWord(type))) {
      reporter.expectedHere(
          token, Clause.of("term.date-such-as-2027-01-11"), "2027-01-08 body-mass 61 kg");
    } else if (Vocabulary.isKeyword(type) && Bodies.home(type) != null) {
      stray = true;
      if (!goesWithStray(token, context)) {
        misplaced(token, Bodies.home(type));
      }
    } else if (body.rule() == GripParser.RULE_logBody
        && parser.getInputStream().LA(2) == GripParser.ON) {
      stray = true;
      if (!goesWithStray(token, context)) {
        misplaced(token, Clause.of("term.home-logged-session"));
      }
    } else if (Vocabulary.isWord(type)) {
      List<String> words = Vocabulary.keywords(body.first());
      int next = parser.getInputStream().LA(2);
      Optional<String> meant = meant(token, words, t -> body.mayBegin(t, next));
      if (meant.isPresent()) {
        unknownStatement(token, meant);
        token.setType(Vocabulary.typeOf(meant.get()));
        return false;
      }
      unknownStatement(token, Nearest.to(Vocabulary.plain(scan.text(token)), words));
    } else {
      unknownStatement(token, Optional.empty());
    }
    skip(parser, context, indentation);
    if (stray) {
      strayEnd = parser.getCurrentToken().getTokenIndex();
      strayType = type;
      strayBody = context;
    }
    return true;
  }

  /** Returns the near keyword that what comes next goes with. */
  private Optional<String> meant(Token token, List<String> words, IntPredicate fits) {
    return Nearest.all(Vocabulary.plain(scan.text(token)), words).stream()
        .filter(word -> fits.test(Vocabulary.typeOf(word)))
        .findFirst();
  }

  private boolean opensStatement(Token token) {
    Token before = scan.before(token);
    return scan.firstOnLine(token)
        || (before != null
            && (before.getType() == GripParser.LBRACE || before.getType() == GripParser.RBRACE));
  }

  /** Tells whether a line of a plan that has lost its heading only looks like a declaration. */
  private boolean onlyLooksLikeDeclaration(Token token) {
    return lost && token.getType() == GripParser.RULES && !braces.isHeading(token);
  }

  /** Tells whether a misplaced statement belongs with one before it, which was reported. */
  private boolean goesWithStray(Token token, RuleContext body) {
    return strayBody == body
        && (strayEnd == token.getTokenIndex() || braces.balance(token) < 0)
        && Bodies.shareHome(strayType, token.getType());
  }

  private void misplaced(Token token, @Nullable Message home) {
    mistakes.add(
        scan.span(token),
        Mistakes.error("syntax.misplaced")
            .with("statement", scan.text(token))
            .with("home", home == null ? Clause.of("term.elsewhere") : home));
  }

  private void unknownStatement(Token token, Optional<String> meant) {
    Finding finding =
        Mistakes.error("syntax.statement").with("found", Mistakes.quote(scan.text(token)));
    mistakes.add(
        scan.span(token), meant.isPresent() ? finding.with("suggestion", meant.get()) : finding);
  }

  /** Goes on at the opening brace that follows a broken heading, or at the next line. */
  void afterHeading(Parser parser) {
    while (true) {
      Token token = parser.getCurrentToken();
      int type = token.getType();
      if (type == Token.EOF
          || type == GripParser.LBRACE
          || type == GripParser.RBRACE
          || scan.firstOnLine(token)) {
        return;
      }
      recovery.skipOne(parser);
    }
  }

  /** Goes on at the next statement after a broken one. */
  void afterStatement(Parser parser, ParserRuleContext statement) {
    RuleContext body = Bodies.contextAround(statement);
    int indentation = scan.lineOpener(statement.getStart()).getCharPositionInLine();
    boolean nothingRead = statement.getStart() == parser.getCurrentToken();
    if (nothingRead && parser.getCurrentToken().getType() != Token.EOF) {
      recovery.skipOne(parser);
    }
    skipWhile(parser, body, indentation);
  }

  private void skip(Parser parser, @Nullable RuleContext body, int indentation) {
    skipOneOrGroup(parser);
    skipWhile(parser, body, indentation);
  }

  private void skipWhile(Parser parser, @Nullable RuleContext body, int indentation) {
    while (!goesOnAt(parser.getCurrentToken(), body, indentation)) {
      skipOneOrGroup(parser);
    }
  }

  private void skipOneOrGroup(Parser parser) {
    Token token = parser.getCurrentToken();
    Token mate = token.getType() == GripParser.LBRACE ? scan.mate(token) : null;
    if (mate != null && braces.sameDeclaration(token, mate)) {
      while (parser.getCurrentToken().getTokenIndex() < mate.getTokenIndex()) {
        recovery.skipOne(parser);
      }
    } else if (token.getType() == GripParser.LBRACE) {
      braces.settle(token, -1);
    }
    recovery.skipOne(parser);
  }

  private boolean goesOnAt(Token token, @Nullable RuleContext context, int indentation) {
    int type = token.getType();
    if (type == Token.EOF || type == GripParser.RBRACE) {
      return true;
    }
    Token before = scan.before(token);
    boolean listed =
        before != null && before.getType() == GripParser.COMMA && !reporter.isReported(token);
    if (!scan.firstOnLine(token) || listed) {
      return false;
    }
    if (braces.isHeading(token)) {
      return true;
    }
    boolean word =
        (Vocabulary.isWord(type) || Vocabulary.isDate(type))
            && token.getCharPositionInLine() <= indentation;
    if (context == null) {
      return word || Bodies.isDeclaration(type);
    }
    Bodies.Body body = Bodies.of(context.getRuleIndex());
    return word || (body != null && body.mayBegin(type)) || Bodies.outerMayBegin(context, type);
  }
}
