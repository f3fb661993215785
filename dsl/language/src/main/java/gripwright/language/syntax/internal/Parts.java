package gripwright.language.syntax.internal;

import gripwright.language.source.Span;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.CalendarDay;
import gripwright.language.syntax.CalendarSpan;
import gripwright.language.syntax.ClockTime;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Report;
import gripwright.language.syntax.RestBetween;
import gripwright.language.syntax.Setup;
import gripwright.language.syntax.Share;
import gripwright.language.syntax.Supervised;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.TokenKind;
import gripwright.language.syntax.WarmUp;
import gripwright.language.syntax.Weigh;
import gripwright.language.syntax.Word;
import gripwright.quantity.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Builds the small records that statements consist of, and assigns ids in the order of the text,
 * outer parts first.
 */
final class Parts {

  private final List<Span> spans = new ArrayList<>();

  /** A statement that was reported and is left out. */
  static final class Incomplete extends RuntimeException {
    private static final long serialVersionUID = 1;

    Incomplete() {
      super("a part is missing or was not understood", null, false, false);
    }
  }

  /**
   * The contents of a body.
   *
   * @param items the valid statements
   * @param damaged whether there are others
   */
  record Body<T>(List<T> items, boolean damaged) {}

  /** Returns the place of each part, by id. */
  List<Span> spans() {
    return spans;
  }

  int id(SyntaxElement element) {
    return id(element.span());
  }

  int id(Span span) {
    spans.add(span);
    return spans.size() - 1;
  }

  /** Reads the statements of a body; those that are broken are left out. */
  <T> Body<T> body(SyntaxNode block, NodeKind kind, Function<SyntaxNode, T> reader) {
    Optional<SyntaxNode> body = block.node(kind);
    if (body.isEmpty()) {
      return new Body<>(List.of(), true);
    }
    boolean damaged = body.get().broken();
    List<T> items = new ArrayList<>();
    for (SyntaxNode item : body.get().nodes()) {
      if (item.broken()) {
        damaged = true;
      } else {
        try {
          items.add(reader.apply(item));
        } catch (Incomplete e) {
          damaged = true;
        }
      }
    }
    return new Body<>(items, damaged);
  }

  /** Returns the only node of a kind in another. */
  static SyntaxNode in(SyntaxNode node, NodeKind kind) {
    return node.node(kind).orElseThrow(Incomplete::new);
  }

  /** Returns one of the nodes in another, counted from 0. */
  static SyntaxNode in(SyntaxNode node, int index) {
    return node.node(index).orElseThrow(Incomplete::new);
  }

  /** Returns the node that follows a keyword directly in another node, or null. */
  static @Nullable SyntaxNode after(SyntaxNode node, String keyword) {
    boolean seen = false;
    for (SyntaxElement child : node.children()) {
      if (seen && child instanceof SyntaxNode found) {
        return found;
      }
      seen |= child instanceof SyntaxToken token && token.readAs().equals(keyword);
    }
    return null;
  }

  static SyntaxToken token(SyntaxNode node) {
    return node.firstToken().orElseGet(() -> token(in(node, 0)));
  }

  Word word(SyntaxNode node) {
    SyntaxToken token = token(node);
    return new Word(id(node), node.kind() == NodeKind.NAME ? token.text() : token.readAs());
  }

  Word word(SyntaxNode node, NodeKind kind) {
    return word(in(node, kind));
  }

  @Nullable Word wordIfAny(SyntaxNode node, NodeKind kind) {
    return node.node(kind).map(this::word).orElse(null);
  }

  List<Word> names(SyntaxNode node) {
    return list(in(node, NodeKind.NAMES).nodes(NodeKind.NAME), this::word);
  }

  Text text(SyntaxNode node) {
    return new Text(id(node), unquote(token(node).text()));
  }

  @Nullable Text textIfAny(SyntaxNode node) {
    return node.node(NodeKind.TEXT).map(this::text).orElse(null);
  }

  /** Returns a quoted text without its quotes, whichever they are, and with escapes undone. */
  static String unquote(String quoted) {
    StringBuilder text = new StringBuilder();
    boolean plain = quoted.startsWith("\"");
    for (int i = 1; i < quoted.length(); i++) {
      char c = quoted.charAt(i);
      boolean last = i == quoted.length() - 1;
      if (c == '\\' && !last && "\"\\".indexOf(quoted.charAt(i + 1)) >= 0) {
        text.append(quoted.charAt(++i));
      } else if (!last || !(plain ? c == '"' : "\"\u201c\u201d\u00bb".indexOf(c) >= 0)) {
        text.append(c);
      }
    }
    return text.toString();
  }

  DateText date(SyntaxNode node) {
    LocalDate date = MalformedTokens.date(token(node).text());
    if (date == null) {
      throw new Incomplete();
    }
    return new DateText(id(node), date);
  }

  @Nullable DateText asOf(SyntaxNode node) {
    return node.node(NodeKind.AS_OF).map(n -> date(in(n, NodeKind.DATE))).orElse(null);
  }

  /** Returns the date that follows a keyword, or null. */
  @Nullable DateText dateAfter(SyntaxNode node, String keyword) {
    SyntaxNode found = after(node, keyword);
    return found == null ? null : date(found);
  }

  @Nullable CalendarSpan spanIfAny(SyntaxNode node) {
    return node.node(NodeKind.SPAN)
        .map(
            span ->
                new CalendarSpan(
                    id(span),
                    date(in(span, NodeKind.DATE)),
                    dateAfter(span, "to"),
                    amountIfAny(span, "every")))
        .orElse(null);
  }

  CalendarDay day(SyntaxNode node) {
    return new CalendarDay(
        id(node),
        node.node(NodeKind.DATE).isPresent() ? null : word(node),
        node.node(NodeKind.DATE).map(this::date).orElse(null));
  }

  @Nullable ClockTime clockIfAny(SyntaxNode node) {
    return node.node(NodeKind.CLOCK).map(this::clock).orElse(null);
  }

  ClockTime clock(SyntaxNode node) {
    List<String> digits =
        node.children().stream()
            .filter(child -> child instanceof SyntaxToken token && token.kind() == TokenKind.NUMBER)
            .map(child -> ((SyntaxToken) child).text())
            .toList();
    if (digits.size() != 2) {
      throw new Incomplete();
    }
    return new ClockTime(id(node), digits.get(0), digits.get(1));
  }

  Amount amount(SyntaxNode node) {
    int id = id(node);
    SyntaxNode plain = node.kind() == NodeKind.AMOUNT ? in(node, NodeKind.PLAIN_AMOUNT) : node;
    double value = number(plain);
    boolean negative = node.kind() == NodeKind.AMOUNT && node.has("-");
    return new Amount(id, negative && value != 0 ? -value : value, unit(plain));
  }

  Amount amount(SyntaxNode node, String keyword) {
    SyntaxNode found = after(node, keyword);
    if (found == null) {
      throw new Incomplete();
    }
    return amount(found);
  }

  @Nullable Amount amountIfAny(SyntaxNode node, String keyword) {
    SyntaxNode found = after(node, keyword);
    return found == null ? null : amount(found);
  }

  /**
   * Larger numbers are read as this value, so that none is infinite; no valid quantity is near it.
   */
  private static final double GREATEST = 1e15;

  /** Returns the first number in a node, without its unit. */
  static double number(SyntaxNode node) {
    SyntaxToken token = token(node);
    String digits =
        token.kind() == TokenKind.GLUED ? MalformedTokens.number(token.text()) : token.text();
    return Math.min(GREATEST, Double.parseDouble(digits));
  }

  /** Returns the unit of the first number in a node, or null. */
  static @Nullable Unit unit(SyntaxNode node) {
    SyntaxToken token = token(node);
    if (token.kind() == TokenKind.GLUED) {
      String unit = MalformedTokens.unit(token.text());
      if (unit == null) {
        throw new Incomplete();
      }
      return Unit.parse(unit).orElseThrow(Incomplete::new);
    }
    return node.node(NodeKind.UNIT)
        .map(u -> Unit.parse(token(u).readAs()).orElseThrow(Incomplete::new))
        .orElse(null);
  }

  Share share(SyntaxNode nameAmount) {
    return new Share(
        id(nameAmount), word(nameAmount, NodeKind.NAME), amount(in(nameAmount, NodeKind.AMOUNT)));
  }

  Setup setup(SyntaxNode node) {
    return setup(node, NodeKind.SETUP);
  }

  Setup setup(SyntaxNode node, NodeKind kind) {
    SyntaxNode setup = in(node, kind);
    return new Setup(
        id(setup),
        amount(in(setup, NodeKind.AMOUNT)),
        setup.node(NodeKind.HANDEDNESS).map(h -> word(h, NodeKind.SIDE)).orElse(null),
        setup.has("lifting"));
  }

  Note note(SyntaxNode node) {
    return new Note(id(node), text(in(node, NodeKind.TEXT)));
  }

  WarmUp warmUp(SyntaxNode node) {
    return new WarmUp(id(node), amount(in(node, NodeKind.AMOUNT)), textIfAny(node));
  }

  RestBetween restBetween(SyntaxNode node) {
    return new RestBetween(id(node), amount(in(node, NodeKind.AMOUNT)));
  }

  Weigh weigh(SyntaxNode node) {
    return new Weigh(id(node), list(node.nodes(NodeKind.NAME_AMOUNT), this::share));
  }

  Supervised supervised(SyntaxNode node) {
    return new Supervised(id(node), text(in(node, NodeKind.TEXT)));
  }

  Report report(SyntaxNode node) {
    return new Report(id(node), word(node, NodeKind.NAME), text(in(node, NodeKind.TEXT)));
  }

  static <T> List<T> list(List<SyntaxNode> nodes, Function<SyntaxNode, T> reader) {
    List<T> list = new ArrayList<>();
    for (SyntaxNode node : nodes) {
      list.add(reader.apply(node));
    }
    return list;
  }
}
