package gripwright.language.syntax.internal;

import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.internal.grammar.GripLexer;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/**
 * A text cut into tokens, with what is known before parsing: their places, the first tokens of
 * lines, and matching braces.
 */
final class Scan {

  private static final Set<Integer> HEADED =
      Set.of(
          GripLexer.ATHLETE,
          GripLexer.GRIP,
          GripLexer.PROTOCOL,
          GripLexer.PLAN,
          GripLexer.RULES,
          GripLexer.LOG,
          GripLexer.COMPARE,
          GripLexer.BLOCK,
          GripLexer.SESSION,
          GripLexer.RULE,
          GripLexer.DATE);

  private final SourceFile source;
  private final int @Nullable [] utf16;
  private final List<CommonToken> tokens = new ArrayList<>();
  private final boolean complete;
  private final int[] openers;
  private final int[] previous;
  private final int[] mates;

  private Scan(SourceFile source, int maxTokens) {
    this.source = source;
    this.utf16 = offsets(source.text());
    this.complete = lex(maxTokens);
    int size = tokens.size();
    openers = new int[size];
    previous = new int[size];
    mates = new int[size];
    link();
  }

  /** Cuts a text into at most a given number of tokens. */
  static Scan of(SourceFile source, int maxTokens) {
    return new Scan(source, maxTokens);
  }

  private static int @Nullable [] offsets(String text) {
    int points = text.codePointCount(0, text.length());
    if (points == text.length()) {
      return null;
    }
    int[] offsets = new int[points + 1];
    int at = 0;
    for (int i = 0; i < points; i++) {
      offsets[i] = at;
      at += Character.charCount(text.codePointAt(at));
    }
    offsets[points] = at;
    return offsets;
  }

  private boolean lex(int maxTokens) {
    GripLexer lexer = new GripLexer(CharStreams.fromString(source.text(), source.name()));
    lexer.removeErrorListeners();
    int lineWord = Token.EOF;
    int line = 0;
    while (tokens.size() <= maxTokens) {
      CommonToken token = (CommonToken) lexer.nextToken();
      if (token.getChannel() == Token.DEFAULT_CHANNEL && token.getLine() != line) {
        line = token.getLine();
        lineWord = token.getType();
      }
      if (token.getType() == GripLexer.UNTERMINATED_STRING && HEADED.contains(lineWord)) {
        addUnterminated(token);
      } else {
        add(token);
      }
      if (token.getType() == Token.EOF) {
        return true;
      }
    }
    return false;
  }

  /** Adds an unclosed title, and keeps the brace at the end of its heading. */
  private void addUnterminated(CommonToken token) {
    String text = token.getText();
    String title = text.stripTrailing();
    if (!title.endsWith("{")) {
      add(token);
      return;
    }
    String words = title.substring(0, title.length() - 1).stripTrailing();
    int from = token.getStartIndex();
    int wordsEnd = from + words.codePointCount(0, words.length());
    int brace = from + title.codePointCount(0, title.length()) - 1;
    int end = token.getStopIndex() + 1;
    addPart(token, GripLexer.UNTERMINATED_STRING, Token.DEFAULT_CHANNEL, from, wordsEnd);
    addPart(token, GripLexer.WHITE_SPACE, GripLexer.SPACE, wordsEnd, brace);
    addPart(token, GripLexer.LBRACE, Token.DEFAULT_CHANNEL, brace, brace + 1);
    addPart(token, GripLexer.WHITE_SPACE, GripLexer.SPACE, brace + 1, end);
  }

  private void addPart(CommonToken whole, int type, int channel, int start, int end) {
    if (end > start) {
      CommonToken part = new CommonToken(whole);
      part.setType(type);
      part.setChannel(channel);
      part.setStartIndex(start);
      part.setStopIndex(end - 1);
      part.setCharPositionInLine(whole.getCharPositionInLine() + start - whole.getStartIndex());
      add(part);
    }
  }

  private void add(CommonToken token) {
    token.setTokenIndex(tokens.size());
    tokens.add(token);
  }

  private void link() {
    int before = -1;
    int[] open = new int[tokens.size()];
    int depth = 0;
    for (int i = 0; i < tokens.size(); i++) {
      mates[i] = -1;
      previous[i] = before;
      CommonToken token = tokens.get(i);
      if (token.getChannel() != Token.DEFAULT_CHANNEL) {
        continue;
      }
      boolean first = before < 0 || tokens.get(before).getLine() != token.getLine();
      openers[i] = first ? i : openers[before];
      before = i;
      if (token.getType() == GripLexer.LBRACE) {
        open[depth++] = i;
      } else if (token.getType() == GripLexer.RBRACE && depth > 0) {
        int mate = open[--depth];
        mates[i] = mate;
        mates[mate] = i;
      }
    }
  }

  /** Returns the first token nested deeper than the limit, or null. */
  @Nullable CommonToken tooDeep(Limits limits) {
    int[] runs = new int[limits.maxNesting() + 2];
    int depth = 0;
    int total = 0;
    int last = Token.EOF;
    for (CommonToken token : tokens) {
      if (token.getChannel() != Token.DEFAULT_CHANNEL) {
        continue;
      }
      int type = token.getType();
      switch (type) {
        case GripLexer.LBRACE, GripLexer.LPAREN -> {
          runs[++depth] = 0;
          total++;
        }
        case GripLexer.RBRACE, GripLexer.RPAREN -> {
          total -= runs[depth];
          runs[depth] = 0;
          if (depth > 0) {
            depth--;
            total--;
          }
        }
        case GripLexer.NOT, GripLexer.MINUS -> {
          runs[depth]++;
          total++;
        }
        case GripLexer.OF -> {
          if (last == GripLexer.PERCENT || last == GripLexer.GLUED) {
            runs[depth]++;
            total++;
          }
        }
        case GripLexer.NUMBER, GripLexer.PERCENT, GripLexer.GLUED -> {
          // may continue with `of` another percentage
        }
        default -> {
          total -= runs[depth];
          runs[depth] = 0;
        }
      }
      if (total > limits.maxNesting()) {
        return token;
      }
      last = type;
    }
    return null;
  }

  SourceFile source() {
    return source;
  }

  /** Returns every token, including white space and comments; the last is the end of the file. */
  List<CommonToken> tokens() {
    return tokens;
  }

  /** Returns whether the whole text was cut into tokens, without reaching the limit. */
  boolean complete() {
    return complete;
  }

  int start(Token token) {
    return offset(token.getStartIndex());
  }

  int end(Token token) {
    return token.getType() == Token.EOF ? start(token) : offset(token.getStopIndex() + 1);
  }

  Span span(Token token) {
    return Span.between(start(token), end(token));
  }

  String text(Token token) {
    return source.text().substring(start(token), end(token));
  }

  /** Returns whether a token is written exactly so. */
  boolean isText(Token token, String text) {
    int start = start(token);
    return end(token) - start == text.length() && source.text().startsWith(text, start);
  }

  private int offset(int codePoint) {
    int[] table = utf16;
    return table == null ? codePoint : table[codePoint];
  }

  boolean firstOnLine(Token token) {
    return openers[token.getTokenIndex()] == token.getTokenIndex();
  }

  /** Returns the token before one, ignoring white space and comments, or null. */
  @Nullable CommonToken before(Token token) {
    int index = previous[token.getTokenIndex()];
    return index < 0 ? null : tokens.get(index);
  }

  /** Returns the token after one, ignoring white space and comments. */
  CommonToken after(Token token) {
    for (int i = token.getTokenIndex() + 1; i < tokens.size(); i++) {
      if (tokens.get(i).getChannel() == Token.DEFAULT_CHANNEL) {
        return tokens.get(i);
      }
    }
    return tokens.get(tokens.size() - 1);
  }

  /** Returns the first token on the line of one. */
  CommonToken lineOpener(Token token) {
    return tokens.get(openers[token.getTokenIndex()]);
  }

  /**
   * Returns the next opening brace on the line of a token or at the start of the following line.
   */
  @Nullable CommonToken braceOnLine(Token token) {
    for (int i = token.getTokenIndex(); i < tokens.size(); i++) {
      CommonToken next = tokens.get(i);
      if (next.getChannel() == Token.DEFAULT_CHANNEL) {
        if (next.getType() == GripLexer.LBRACE) {
          return next;
        }
        if (firstOnLine(next) || next.getType() == GripLexer.RBRACE) {
          return null;
        }
      }
    }
    return null;
  }

  /** Returns the matching brace, or null. */
  @Nullable CommonToken mate(Token brace) {
    int mate = mates[brace.getTokenIndex()];
    return mate < 0 ? null : tokens.get(mate);
  }

  /** Returns whether there is an invalid character between a token and the one before it. */
  boolean oddBefore(Token token) {
    for (int i = token.getTokenIndex() - 1; i > previous[token.getTokenIndex()]; i--) {
      if (tokens.get(i).getChannel() == GripLexer.ODD
          && tokens.get(i).getType() == GripLexer.UNKNOWN) {
        return true;
      }
    }
    return false;
  }
}
