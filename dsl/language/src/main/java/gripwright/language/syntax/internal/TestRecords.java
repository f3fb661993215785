package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;
import static gripwright.language.syntax.internal.Parts.list;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.OnlyAt;
import gripwright.language.syntax.OnlyOn;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.PlannedKind;
import gripwright.language.syntax.PlannedTime;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.TestPart;
import java.util.List;
import java.util.function.Function;

/** Reads the tests of a plan. */
final class TestRecords {

  private final Parts parts;
  private final ExpressionRecords expressions;

  private final Function<SyntaxNode, TestPart> exercise;

  /**
   * Creates a reader.
   *
   * @param exercise reads an exercise
   */
  TestRecords(Parts parts, ExpressionRecords expressions, Function<SyntaxNode, TestPart> exercise) {
    this.parts = parts;
    this.expressions = expressions;
    this.exercise = exercise;
  }

  PlanItem of(SyntaxNode node) {
    int id = parts.id(node);
    SyntaxNode heading = in(node, NodeKind.TEST_HEADING);
    PlanItem.TestBody body = new PlanItem.TestBody(List.of(), false);
    if (node.node(NodeKind.TEST_BODY).isPresent()) {
      Parts.Body<TestPart> written = parts.body(node, NodeKind.TEST_BODY, this::part);
      body = new PlanItem.TestBody(written.items(), written.damaged());
    }
    return new PlanItem.TestItem(
        id,
        parts.names(heading),
        parts.setup(heading),
        kind(in(heading, NodeKind.TEST_KIND)),
        list(heading.nodes(NodeKind.TEST_TIME), this::time),
        body);
  }

  private PlannedKind kind(SyntaxNode node) {
    int id = parts.id(node);
    if (node.has("hold")) {
      return new PlannedKind.HoldKind(id, parts.amount(node, "hold"));
    }
    if (node.has("to-failure")) {
      SyntaxNode level = Parts.after(node, "at");
      if (level == null) {
        throw new Parts.Incomplete();
      }
      return new PlannedKind.FailureKind(id, expressions.expression(level));
    }
    List<SyntaxNode> amounts = node.nodes(NodeKind.AMOUNT);
    if (amounts.size() < 3) {
      throw new Parts.Incomplete();
    }
    return new PlannedKind.SeriesKind(
        id,
        parts.amount(amounts.get(0)),
        parts.amount(amounts.get(1)),
        parts.amount(amounts.get(2)));
  }

  private PlannedTime time(SyntaxNode node) {
    int id = parts.id(node);
    if (node.has("every")) {
      return new PlannedTime.Every(id, only(node));
    }
    if (node.has("in")) {
      return new PlannedTime.InWeeks(id, list(node.nodes(NodeKind.AMOUNT), parts::amount));
    }
    if (node.has("before")) {
      return new PlannedTime.BeforeFirst(id);
    }
    return node.has("after")
        ? new PlannedTime.AfterLast(id)
        : new PlannedTime.Later(id, only(node));
  }

  private TestPart part(SyntaxNode node) {
    return switch (node.kind()) {
      case ATTEMPTS ->
          new TestPart.Attempts(
              parts.id(node), parts.amount(node, "attempts"), parts.amount(node, "resting"));
      case ATTEMPTS_COUNT -> new TestPart.AttemptsCount(parts.id(node), node.has("best"));
      case RESTED -> new TestPart.Rested(parts.id(node), only(node));
      case ONLY_ON -> new OnlyOn(parts.id(node), parts.names(node));
      case ONLY_AT -> new OnlyAt(parts.id(node), parts.names(node));
      case WARM_UP -> parts.warmUp(node);
      case EXERCISE -> exercise.apply(node);
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private Amount only(SyntaxNode node) {
    return parts.amount(in(node, NodeKind.AMOUNT));
  }
}
