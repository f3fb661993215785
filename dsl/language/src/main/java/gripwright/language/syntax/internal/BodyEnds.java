package gripwright.language.syntax.internal;

import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;

/**
 * Decides by braces and indentation where a body ends if a brace is missing or there is one too
 * many.
 */
final class BodyEnds {

  private final Scan scan;
  private final Braces braces;

  BodyEnds(Scan scan, Braces braces) {
    this.scan = scan;
    this.braces = braces;
  }

  /** Returns whether a closing brace is one too many rather than the end of this body. */
  boolean isExtra(Parser parser, Bodies.Body body, ParserRuleContext context, Token token) {
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

  /**
   * Tells by its indentation whether a brace closes an enclosing block, so that this one lacks its
   * brace.
   */
  boolean closesOuter(ParserRuleContext context, Token token) {
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
   * Returns whether a statement belongs to an enclosing block, so that the brace of this one is
   * missing.
   */
  boolean endsEarly(ParserRuleContext context, Bodies.Body body, Token token) {
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
}
