package gripwright.language.syntax.internal;

import gripwright.language.syntax.internal.grammar.GripParser;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/** Skips what can't be read, up to where reading continues. */
final class Skipping {

  private final Scan scan;
  private final Braces braces;
  private final Reporter reporter;
  private final Recovery recovery;

  Skipping(Scan scan, Braces braces, Reporter reporter, Recovery recovery) {
    this.scan = scan;
    this.braces = braces;
    this.reporter = reporter;
    this.recovery = recovery;
  }

  /** Continues at the opening brace that follows a broken heading, or at the next line. */
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
      one(parser);
    }
  }

  /** Continues at the next statement after a broken one. */
  void afterStatement(Parser parser, ParserRuleContext statement) {
    RuleContext body = Bodies.contextAround(statement);
    int indentation = scan.lineOpener(statement.getStart()).getCharPositionInLine();
    boolean nothingRead = statement.getStart() == parser.getCurrentToken();
    if (nothingRead && parser.getCurrentToken().getType() != Token.EOF) {
      one(parser);
    }
    skipWhile(parser, body, indentation);
  }

  /** Skips one word, number or sign. */
  void one(Parser parser) {
    recovery.skipOne(parser);
  }

  /** Skips a word, or a group in braces, and what belongs to it by its indentation. */
  void skip(Parser parser, @Nullable RuleContext body, int indentation) {
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
        one(parser);
      }
    } else if (token.getType() == GripParser.LBRACE) {
      braces.settle(token, -1);
    }
    one(parser);
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
