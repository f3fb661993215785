package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;

import gripwright.language.source.Limits;
import gripwright.language.source.Span;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.RuleDecl;
import gripwright.language.syntax.RuleItem;
import gripwright.language.syntax.SyntaxElement;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.SyntaxToken;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.TokenKind;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads the declarations of a file from its tree. */
final class DeclarationRecords {

  private final Parts parts;
  private final Mistakes mistakes;
  private final ExpressionRecords expressions;
  private final AthleteRecords athletes;
  private final PlanRecords plans;
  private final LogRecords logs;
  private final CompareRecords comparisons;

  DeclarationRecords(Parts parts, Mistakes mistakes, Limits limits) {
    this.parts = parts;
    this.mistakes = mistakes;
    this.expressions = new ExpressionRecords(parts, mistakes, limits.maxOperators());
    this.athletes = new AthleteRecords(parts);
    this.plans = new PlanRecords(parts, expressions);
    this.logs = new LogRecords(parts);
    this.comparisons = new CompareRecords(parts, plans);
  }

  /** Returns the declarations that can be read. */
  List<Declaration> declarations(SyntaxNode file) {
    List<Declaration> declarations = new ArrayList<>();
    if (file.node(NodeKind.LANGUAGE).isEmpty() && !saysElsewhere(file)) {
      mistakes.add(beginning(file), Mistakes.error("syntax.language"));
    }
    for (SyntaxNode child : file.nodes()) {
      SyntaxNode node =
          child.kind() == NodeKind.DECLARATION && !child.nodes().isEmpty()
              ? child.nodes().get(0)
              : child;
      try {
        Declaration declaration = declaration(node);
        if (declaration != null) {
          declarations.add(declaration);
        }
      } catch (Parts.Incomplete e) {
        // reported at its place; the others are still read
      }
    }
    return declarations;
  }

  /** Returns whether the language line is misplaced, which was already reported. */
  private static boolean saysElsewhere(SyntaxNode file) {
    for (SyntaxElement child : file.children()) {
      if (child instanceof SyntaxToken token && token.readAs().equals("language")) {
        return true;
      }
    }
    return false;
  }

  private static Span beginning(SyntaxNode file) {
    SyntaxElement at = file;
    while (at instanceof SyntaxNode node && !node.children().isEmpty()) {
      at = node.children().get(0);
    }
    return at instanceof SyntaxToken token && token.kind() != TokenKind.END
        ? token.span()
        : new Span(0, 0);
  }

  private @Nullable Declaration declaration(SyntaxNode node) {
    return switch (node.kind()) {
      case LANGUAGE -> node.broken() ? null : language(node);
      case USE ->
          node.broken()
              ? null
              : new Declaration.Use(parts.id(node), parts.text(in(node, NodeKind.TEXT)));
      case ATHLETE ->
          block(
              node,
              NodeKind.ATHLETE_BODY,
              athletes::athleteItem,
              (id, h, b) ->
                  new Declaration.Athlete(id, h.name(), h.title(), b.items(), b.damaged()));
      case GRIP ->
          block(
              node,
              NodeKind.GRIP_BODY,
              athletes::gripItem,
              (id, h, b) ->
                  new Declaration.Grip(
                      id, h.name(), h.replaces(), h.title(), b.items(), b.damaged()));
      case PROTOCOL ->
          block(
              node,
              NodeKind.PROTOCOL_BODY,
              plans::protocolItem,
              (id, h, b) ->
                  new Declaration.Protocol(
                      id, h.name(), h.replaces(), h.title(), b.items(), b.damaged()));
      case PLAN ->
          block(
              node,
              NodeKind.PLAN_BODY,
              plans::planItem,
              (id, h, b) -> new Declaration.Plan(id, h.name(), h.title(), b.items(), b.damaged()));
      case RULES ->
          block(
              node,
              NodeKind.RULES_BODY,
              this::rule,
              (id, h, b) -> new Declaration.Rules(id, h.name(), h.title(), b.items(), b.damaged()));
      case LOG ->
          block(
              node,
              NodeKind.LOG_BODY,
              logs::logLine,
              (id, h, b) -> new Declaration.Log(id, h.name(), b.items(), b.damaged()));
      case COHORT ->
          block(
              node,
              NodeKind.COHORT_BODY,
              comparisons::cohortItem,
              (id, h, b) ->
                  new Declaration.Cohort(id, h.name(), h.title(), b.items(), b.damaged()));
      case COMPARE ->
          block(
              node,
              NodeKind.COMPARE_BODY,
              comparisons::compareItem,
              (id, h, b) ->
                  new Declaration.Compare(id, h.name(), h.title(), b.items(), b.damaged()));
      default -> null;
    };
  }

  private Declaration language(SyntaxNode node) {
    int id = parts.id(node);
    SyntaxToken number = number(node);
    Amount version = new Amount(parts.id(number), Double.parseDouble(number.text()), null);
    if (version.value() != 1) {
      mistakes.add(number.span(), Mistakes.error("value.language").with("version", number.text()));
    }
    return new Declaration.Language(id, version);
  }

  private static SyntaxToken number(SyntaxNode language) {
    for (SyntaxElement child : language.children()) {
      if (child instanceof SyntaxToken token && token.kind() == TokenKind.NUMBER) {
        return token;
      }
    }
    throw new Parts.Incomplete();
  }

  private record Heading(Word name, boolean replaces, @Nullable Text title, boolean broken) {}

  private interface Maker<T> {
    Declaration make(int id, Heading heading, Parts.Body<T> body);
  }

  private <T> Declaration block(
      SyntaxNode node, NodeKind bodyKind, Function<SyntaxNode, T> items, Maker<T> maker) {
    int id = parts.id(node);
    SyntaxNode heading = in(node, 0);
    Optional<SyntaxNode> name = heading.node(NodeKind.NAME);
    if (name.isEmpty() || name.get().broken()) {
      throw new Parts.Incomplete();
    }
    Heading read =
        new Heading(
            parts.word(name.get()),
            heading.has("replaces"),
            parts.textIfAny(heading),
            heading.broken());
    Parts.Body<T> body = parts.body(node, bodyKind, items);
    boolean damaged = body.damaged() || node.broken();
    return maker.make(id, read, new Parts.Body<>(body.items(), damaged));
  }

  private RuleDecl rule(SyntaxNode node) {
    int id = parts.id(node);
    Word name = parts.word(in(node, NodeKind.RULE_HEADING), NodeKind.NAME);
    Parts.Body<RuleItem> body = parts.body(node, NodeKind.RULE_BODY, this::ruleItem);
    return new RuleDecl(id, name, body.items(), body.damaged());
  }

  private RuleItem ruleItem(SyntaxNode node) {
    return switch (node.kind()) {
      case SEVERITY -> new RuleItem.SeverityItem(parts.id(node), parts.word(node, NodeKind.NAME));
      case SCOPE -> new RuleItem.ScopeItem(parts.id(node), scope(node));
      case WHEN -> new RuleItem.WhenItem(parts.id(node), expressions.expression(in(node, 0)));
      case REQUIRE -> new RuleItem.RequireItem(parts.id(node), expressions.expression(in(node, 0)));
      case MESSAGE -> new RuleItem.MessageItem(parts.id(node), parts.text(in(node, NodeKind.TEXT)));
      case SOURCE -> new RuleItem.SourceItem(parts.id(node), parts.text(in(node, NodeKind.TEXT)));
      case NEVER_WAIVED -> new RuleItem.NeverWaived(parts.id(node));
      default -> throw new Parts.Incomplete();
    };
  }

  private Word scope(SyntaxNode node) {
    return node.has("pair")
        ? new Word(parts.id(node.children().get(1).span().to(node.span())), "pair")
        : parts.word(node, NodeKind.NAME);
  }
}
