package gripwright.language.syntax.internal;

import gripwright.finding.Clause;
import gripwright.finding.Finding;
import gripwright.finding.Message;
import gripwright.finding.Nearest;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNState;
import org.jspecify.annotations.Nullable;

/**
 * Finds where reading continues after a mistake: the next statement, the end of a body, or the next
 * declaration.
 */
final class ErrorRecovery {

  private static final Pattern WEEKDAY =
      Pattern.compile("(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*", Pattern.CASE_INSENSITIVE);
  private static final Message TOP = Clause.of("term.home-file");
  private static final List<String> DECLARATIONS =
      List.of("use", "athlete", "grip", "protocol", "plan", "rules", "log", "cohort", "compare");

  private final Scan scan;
  private final Braces braces;
  private final Mistakes mistakes;
  private final Reporter reporter;
  private final Skipping skipping;
  private final BodyEnds ends;
  private boolean lost;

  /** End of the last misplaced statement and its body: the next one may belong to it. */
  private int strayEnd = -1;

  private int strayType = -1;
  private @Nullable RuleContext strayBody;

  ErrorRecovery(Scan scan, Braces braces, Mistakes mistakes, Reporter reporter, Skipping skipping) {
    this.scan = scan;
    this.braces = braces;
    this.mistakes = mistakes;
    this.reporter = reporter;
    this.skipping = skipping;
    this.ends = new BodyEnds(scan, braces);
  }

  /** Skips tokens until a declaration or the end of the file comes next. */
  void atTop(Parser parser) {
    int state = GripParser._ATN.states.get(parser.getState()).getStateType();
    @Nullable Token number = null; // one that was read as that of the language and not reported
    while (true) {
      CommonToken token = (CommonToken) parser.getCurrentToken();
      int type = token.getType();
      boolean first = state == ATNState.BLOCK_START;
      if (number != null && type == GripParser.LANGUAGE) {
        unknownStatement(number, Optional.empty()); // the language line has another
        number = null;
      }
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
        skipping.one(parser);
        continue;
      }
      if (first && type == GripParser.NUMBER) {
        // the version number of a language line without its keyword: reported for the file
        number = lost ? number : token;
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
      skipping.skip(parser, null, scan.lineOpener(token).getCharPositionInLine());
      if (number != null && saysLanguage(token, parser.getCurrentToken())) {
        unknownStatement(number, Optional.empty());
        number = null;
      }
    }
  }

  private boolean saysLanguage(Token from, Token end) {
    Token token = from;
    while (token.getType() != GripParser.LANGUAGE && token.getTokenIndex() < end.getTokenIndex()) {
      token = scan.after(token);
    }
    return token.getType() == GripParser.LANGUAGE && token != end;
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

  /** Skips tokens until a statement of a body or its closing brace comes next. */
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
        skipping.skip(parser, context, scan.lineOpener(token).getCharPositionInLine());
        continue;
      }
      if (type == GripParser.RBRACE) {
        if (ends.closesOuter(context, token)) {
          throw new Recovery.Unclosed(parser);
        }
        if (strayBody == context && braces.balance(token) < 0) {
          // closes the body of the misplaced statements, whose heading is missing
          strayBody = null;
          braces.settle(token, 1);
          skipping.one(parser);
          continue;
        }
        if (!ends.isExtra(parser, body, context, token)) {
          return;
        }
        mistakes.add(scan.span(token), Mistakes.error("syntax.brace").with("found", "}"));
        braces.settle(token, 1);
        skipping.one(parser);
        continue;
      }
      if (ends.endsEarly(context, body, token)) {
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

  /** Returns whether a word continues the previous statement, which lacks a comma. */
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

  /** Handles a word that begins no statement here; returns whether to look again. */
  private boolean isStray(
      Parser parser, Bodies.Body body, ParserRuleContext context, CommonToken token) {
    int type = token.getType();
    int indentation = scan.lineOpener(token).getCharPositionInLine();
    boolean stray = false;
    if (type == GripParser.LBRACE) {
      mistakes.add(scan.span(token), Mistakes.error("syntax.brace").with("found", "{"));
      if (braces.balance(token) > 0 || scan.mate(token) == null) {
        braces.settle(token, -1);
        skipping.one(parser);
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
    } else if (isWeekdayOfSession(body, token)) {
      unknownStatement(token, Optional.of("prefer"));
      token.setType(GripParser.PREFER);
      return false;
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
      unknownStatement(token, Vocabulary.meant(scan.text(token), words));
    } else {
      unknownStatement(token, Optional.empty());
    }
    skipping.skip(parser, context, indentation);
    if (stray) {
      strayEnd = parser.getCurrentToken().getTokenIndex();
      strayType = type;
      strayBody = context;
    }
    return true;
  }

  /** Returns whether {@code on tue} stands in a session for {@code prefer tue}. */
  private boolean isWeekdayOfSession(Bodies.Body body, Token token) {
    return body.rule() == GripParser.RULE_sessionBody
        && token.getType() == GripParser.ON
        && WEEKDAY.matcher(scan.text(scan.after(token))).matches();
  }

  /** Returns a similar keyword that fits what follows. */
  private Optional<String> meant(Token token, List<String> words, IntPredicate fits) {
    String text = Vocabulary.plain(scan.text(token));
    return Stream.concat(
            Vocabulary.synonym(text).filter(words::contains).stream(),
            Nearest.all(text, words).stream())
        .filter(word -> fits.test(Vocabulary.typeOf(word)))
        .findFirst();
  }

  private boolean opensStatement(Token token) {
    Token before = scan.before(token);
    return scan.firstOnLine(token)
        || (before != null
            && (before.getType() == GripParser.LBRACE || before.getType() == GripParser.RBRACE));
  }

  /**
   * Returns whether a line only looks like a declaration because the heading of its plan is
   * missing.
   */
  private boolean onlyLooksLikeDeclaration(Token token) {
    return lost && token.getType() == GripParser.RULES && !braces.isHeading(token);
  }

  /** Returns whether a misplaced statement belongs to a previous one that was reported. */
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
}
