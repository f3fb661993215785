package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;
import static gripwright.language.syntax.internal.Parts.list;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.DoneLine;
import gripwright.language.syntax.DonePart;
import gripwright.language.syntax.LogLine;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.TestResult;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the dated lines of a log. */
final class LogRecords {

  private final Parts parts;

  LogRecords(Parts parts) {
    this.parts = parts;
  }

  LogLine logLine(SyntaxNode node) {
    int id = parts.id(node);
    DateText date = parts.date(in(node, NodeKind.DATE));
    SyntaxNode what = in(node, 1);
    return switch (what.kind()) {
      case TEST_LINE ->
          new LogLine.TestLine(
              id,
              date,
              parts.word(what, NodeKind.NAME),
              parts.setup(what),
              result(in(what, 2)),
              parts.textIfAny(what));
      case SESSION_LINE -> session(id, date, what);
      case CLIMBING_LINE ->
          new LogLine.ClimbingLine(
              id,
              date,
              parts.word(what, NodeKind.NAME),
              only(what),
              what.node(NodeKind.EFFORT).map(this::only).orElse(null),
              what.node(NodeKind.PAIN).map(this::only).orElse(null),
              parts.textIfAny(what));
      case SKIPPED_LINE ->
          new LogLine.SkippedLine(id, date, parts.word(what, NodeKind.NAME), parts.textIfAny(what));
      case BODY_MASS -> new LogLine.BodyMassLine(id, date, only(what));
      case PAIN_LINE ->
          new LogLine.PainLine(
              id,
              date,
              parts.word(what, NodeKind.NAME),
              parts.wordIfAny(what, NodeKind.STRUCTURE),
              parts.wordIfAny(what, NodeKind.SIDE),
              only(what),
              parts.wordIfAny(what, NodeKind.PAIN_KIND),
              parts.textIfAny(what));
      default -> throw new Parts.Incomplete();
    };
  }

  private TestResult result(SyntaxNode node) {
    return switch (node.kind()) {
      case HOLD_TEST ->
          new TestResult.HoldTest(
              parts.id(node),
              parts.amount(node, "hold"),
              parts.amount(node, node.has("force") ? "force" : "load"),
              node.has("force"));
      case FAILURE_TEST ->
          new TestResult.FailureTest(
              parts.id(node), parts.amount(node, "to-failure"), parts.amount(node, "lasting"));
      case SERIES_TEST -> series(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private TestResult series(SyntaxNode node) {
    int id = parts.id(node);
    List<SyntaxNode> amounts = node.nodes(NodeKind.AMOUNT);
    if (amounts.size() < 3) {
      throw new Parts.Incomplete();
    }
    Amount repetitions = parts.amount(amounts.get(0));
    Amount work = parts.amount(amounts.get(1));
    Amount rest = parts.amount(amounts.get(2));
    Optional<SyntaxNode> written = node.node(NodeKind.UNIT);
    List<SyntaxNode> values = node.nodes(NodeKind.SERIES_VALUE);
    Unit common =
        written.isPresent()
            ? Unit.parse(Parts.token(written.get()).readAs()).orElseThrow(Parts.Incomplete::new)
            : Parts.unit(values.get(values.size() - 1));
    List<Amount> means = new ArrayList<>();
    for (SyntaxNode value : values) {
      Unit own = Parts.unit(value);
      means.add(new Amount(parts.id(value), Parts.number(value), own == null ? common : own));
    }
    return new TestResult.SeriesTest(id, repetitions, work, rest, means);
  }

  private LogLine session(int id, DateText date, SyntaxNode node) {
    SyntaxNode heading = in(node, NodeKind.SESSION_LINE_HEADING);
    Word name = parts.word(heading, NodeKind.NAME);
    @Nullable Text note = parts.textIfAny(heading);
    Parts.Body<DoneLine> body = parts.body(node, NodeKind.SESSION_LINE_BODY, this::doneLine);
    return new LogLine.SessionLine(id, date, name, note, body.items(), body.damaged());
  }

  private DoneLine doneLine(SyntaxNode node) {
    return new DoneLine(
        parts.id(node),
        parts.word(in(node, 0)),
        parts.word(in(node, 1)),
        parts.setup(node),
        list(node.nodes(NodeKind.DONE_PART), this::donePart));
  }

  private DonePart donePart(SyntaxNode node) {
    Optional<SyntaxNode> effort = node.node(NodeKind.EFFORT);
    if (effort.isPresent()) {
      return new DonePart.EffortDone(parts.id(node), only(effort.get()));
    }
    Optional<SyntaxNode> pain = node.node(NodeKind.PAIN);
    if (pain.isPresent()) {
      return new DonePart.PainDone(parts.id(node), only(pain.get()));
    }
    return node.has("sets")
        ? new DonePart.SetsDone(
            parts.id(node), parts.amount(node, "sets"), parts.amountIfAny(node, "of"))
        : new DonePart.LoadDone(parts.id(node), only(node));
  }

  private Amount only(SyntaxNode node) {
    return parts.amount(in(node, NodeKind.AMOUNT));
  }
}
