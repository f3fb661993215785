package gripwright.language.syntax.internal;

import gripwright.language.syntax.internal.grammar.GripLexer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * The balance of braces in each declaration, which distinguishes a missing brace from a misplaced
 * statement. It is counted from one heading of a declaration to the next, where a heading is first
 * on its line, has a name and opens a brace.
 */
final class Braces {

  private final int[] headings;
  private final int[] balances;

  Braces(Scan scan) {
    List<CommonToken> seen = new ArrayList<>();
    for (CommonToken token : scan.tokens()) {
      if (token.getChannel() == Token.DEFAULT_CHANNEL) {
        seen.add(token);
      }
    }
    int[] starts = new int[seen.size()];
    int[] sums = new int[seen.size() + 1];
    int count = 0;
    for (int i = 0; i < seen.size(); i++) {
      if (scan.firstOnLine(seen.get(i)) && opensDeclaration(seen, i)) {
        starts[count++] = seen.get(i).getTokenIndex();
      }
      int type = seen.get(i).getType();
      sums[count] += type == GripLexer.LBRACE ? 1 : type == GripLexer.RBRACE ? -1 : 0;
    }
    headings = Arrays.copyOf(starts, count);
    balances = Arrays.copyOf(sums, count + 1);
  }

  private static boolean opensDeclaration(List<CommonToken> tokens, int at) {
    int type = tokens.get(at).getType();
    if (type == GripLexer.USE) {
      return at + 1 < tokens.size() && Vocabulary.isText(tokens.get(at + 1).getType());
    }
    if (!Bodies.isDeclaration(type)) {
      return false;
    }
    int line = tokens.get(at).getLine();
    int next = at + 1;
    boolean regular = true;
    while (next < tokens.size() && next < at + 12) {
      CommonToken token = tokens.get(next);
      if (token.getType() == GripLexer.LBRACE) {
        return regular || token.getLine() == line;
      }
      regular &=
          next == at + 1
              ? Vocabulary.isWord(token.getType())
              : token.getType() == GripLexer.REPLACES || Vocabulary.isText(token.getType());
      if (!regular && token.getLine() != line) {
        return false;
      }
      next++;
    }
    return false;
  }

  private int part(Token token) {
    int at = Arrays.binarySearch(headings, token.getTokenIndex());
    return at >= 0 ? at + 1 : -at - 1;
  }

  /** Returns whether no declaration begins between two tokens. */
  boolean sameDeclaration(Token one, Token other) {
    return part(one) == part(other);
  }

  /** Returns whether a declaration begins with this token. */
  boolean isHeading(Token token) {
    return Arrays.binarySearch(headings, token.getTokenIndex()) >= 0;
  }

  /** Returns the number of opening minus closing braces in the declaration around a token. */
  int balance(Token token) {
    return balances[part(token)];
  }

  /** Records that a brace was added, left out or found, which changes the remaining balance. */
  void settle(Token token, int change) {
    balances[part(token)] += change;
  }

  /**
   * Returns whether a declaration is nested in the one around it, because it is closed first. If
   * so, the following text belongs to the outer one.
   */
  boolean isNested(Token heading) {
    int inner = part(heading);
    if (inner == 0 || balances[inner - 1] <= 0 || balances[inner] >= 0) {
      return false;
    }
    balances[inner] += balances[inner - 1];
    balances[inner - 1] = 0;
    return true;
  }
}
