package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;
import static gripwright.language.syntax.internal.Parts.list;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.Condition;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.OnlyAt;
import gripwright.language.syntax.OnlyOn;
import gripwright.language.syntax.Place;
import gripwright.language.syntax.PlanItem;
import gripwright.language.syntax.Progress;
import gripwright.language.syntax.ProtocolItem;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Step;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.Target;
import gripwright.language.syntax.Word;
import gripwright.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Reads protocols and plans. */
final class PlanRecords {

  private final Parts parts;
  private final ExpressionRecords expressions;
  private final TestRecords tests;

  PlanRecords(Parts parts, ExpressionRecords expressions) {
    this.parts = parts;
    this.expressions = expressions;
    this.tests = new TestRecords(parts, expressions, this::exercise);
  }

  ProtocolItem protocolItem(SyntaxNode node) {
    return switch (node.kind()) {
      case AIM -> new ProtocolItem.Aim(parts.id(node), parts.word(node, NodeKind.NAME));
      case GIVEN -> new ProtocolItem.Given(parts.id(node), expressions.parameters(node));
      case REPORT -> parts.report(node);
      case NOTE -> parts.note(node);
      default -> step(node);
    };
  }

  private Step step(SyntaxNode node) {
    return switch (node.kind()) {
      case REPEAT -> {
        int id = parts.id(node);
        SyntaxNode heading = in(node, NodeKind.REPEAT_HEADING);
        SyntaxNode resting = Parts.after(heading, "resting");
        boolean upTo = heading.node(NodeKind.UP_TO).isPresent();
        var times = expressions.expression(in(heading, upTo ? 1 : 0));
        var pause = resting == null ? null : expressions.expression(resting);
        Parts.Body<Step> body = parts.body(node, NodeKind.REPEAT_BODY, this::step);
        yield new Step.RepeatStep(id, upTo, times, pause, body.items(), body.damaged());
      }
      case HOLD_STEP -> {
        int first = node.node(NodeKind.UP_TO).isPresent() ? 1 : 0;
        yield new Step.HoldStep(
            parts.id(node),
            bound(node, first > 0),
            expressions.expression(in(node, first)),
            expressions.expression(in(node, first + 1)));
      }
      case REST_STEP ->
          new Step.RestStep(
              parts.id(node), expressions.expression(in(node, 0)), parts.textIfAny(node));
      default -> throw new Parts.Incomplete();
    };
  }

  private static Step.Bound bound(SyntaxNode hold, boolean upTo) {
    if (!upTo) {
      return Step.Bound.NONE;
    }
    return hold.has("to-failure") ? Step.Bound.TO_FAILURE : Step.Bound.UP_TO;
  }

  PlanItem planItem(SyntaxNode node) {
    return switch (node.kind()) {
      case FOR_ATHLETES -> new PlanItem.ForItem(parts.id(node), parts.names(node));
      case FIRST_DAY -> new PlanItem.FromItem(parts.id(node), parts.date(in(node, NodeKind.DATE)));
      case TOWARDS ->
          new PlanItem.Towards(
              parts.id(node), parts.date(in(node, NodeKind.DATE)), parts.textIfAny(node));
      case TAPER -> {
        List<SyntaxNode> amounts = node.nodes(NodeKind.AMOUNT);
        yield new PlanItem.TaperItem(
            parts.id(node), parts.amount(amounts.get(0)), parts.amount(amounts.get(1)));
      }
      case DEMAND ->
          new PlanItem.Demand(parts.id(node), list(node.nodes(NodeKind.NAME_AMOUNT), parts::share));
      case RULE_SETS -> new PlanItem.RulesItem(parts.id(node), parts.names(node));
      case BLOCK -> block(node);
      case RETEST ->
          new PlanItem.RetestItem(
              parts.id(node),
              parts.names(node),
              parts.setup(node),
              parts.amount(node, "hold"),
              parts.amount(node, "every"));
      case TEST -> tests.of(node);
      case WAIVE ->
          new PlanItem.WaiveItem(
              parts.id(node),
              parts.word(node, NodeKind.NAME),
              place(in(node, NodeKind.PLACE)),
              parts.text(in(node, NodeKind.TEXT)));
      case WEEKLY_RISE -> new PlanItem.WeeklyRise(parts.id(node), only(node));
      case WARM_UP -> parts.warmUp(node);
      case REST_BETWEEN -> parts.restBetween(node);
      case WEIGH -> parts.weigh(node);
      case SUPERVISED -> parts.supervised(node);
      case REPORT -> parts.report(node);
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private Place place(SyntaxNode node) {
    return new Place(
        parts.id(node),
        parts.word(node, NodeKind.NAME),
        node.node(NodeKind.PLACE_WEEK).map(this::only).orElse(null),
        node.node(NodeKind.PLACE_SESSION).map(s -> parts.word(s, NodeKind.NAME)).orElse(null),
        node.node(NodeKind.PLACE_EXERCISE).map(this::only).orElse(null));
  }

  private PlanItem block(SyntaxNode node) {
    int id = parts.id(node);
    SyntaxNode heading = in(node, NodeKind.BLOCK_HEADING);
    Word name = parts.word(heading, NodeKind.NAME);
    Amount length = only(heading);
    Parts.Body<BlockPart> body = parts.body(node, NodeKind.BLOCK_BODY, this::blockPart);
    return new PlanItem.BlockItem(id, name, length, body.items(), body.damaged());
  }

  private BlockPart blockPart(SyntaxNode node) {
    return switch (node.kind()) {
      case SESSION -> session(node);
      case ADVANCE -> advance(node);
      case EASE -> ease(node);
      case INTRODUCE ->
          new BlockPart.IntroduceItem(
              parts.id(node),
              parts.word(in(node, 0)),
              expressions.expression(in(node, 1)),
              parts.amount(node, "over"));
      case NO_TRAINING -> new BlockPart.NoTraining(parts.id(node));
      case BLOCK_ONLY_FOR -> {
        int id = parts.id(node);
        List<Word> athletes = parts.names(in(node, NodeKind.ONLY_FOR_HEADING));
        Parts.Body<BlockPart> body = parts.body(node, NodeKind.BLOCK_BODY, this::blockPart);
        yield new BlockPart.BlockOnlyFor(id, athletes, body.items(), body.damaged());
      }
      case WARM_UP -> parts.warmUp(node);
      case REST_BETWEEN -> parts.restBetween(node);
      case WEIGH -> parts.weigh(node);
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private BlockPart advance(SyntaxNode node) {
    List<SyntaxNode> progress = node.nodes(NodeKind.PROGRESS);
    if (progress.isEmpty()) {
      throw new Parts.Incomplete();
    }
    return new BlockPart.AdvanceItem(
        parts.id(node),
        progress(progress.get(0)),
        progress.size() > 1 ? progress(progress.get(1)) : null,
        node.node(NodeKind.ON_GRIP).map(g -> parts.word(g, NodeKind.NAME)).orElse(null));
  }

  private Progress progress(SyntaxNode node) {
    int id = parts.id(node);
    Optional<SyntaxNode> variable = node.node(NodeKind.VARIABLE);
    Word name =
        variable.map(parts::word).orElseGet(() -> new Word(parts.id(Parts.token(node)), "load"));
    Amount to = parts.amountIfAny(node, "to");
    Amount by = parts.amount(node, to == null ? "load" : "by");
    return new Progress(
        id,
        name,
        by,
        to,
        node.node(NodeKind.CADENCE).map(this::cadence).orElse(null),
        node.node(NodeKind.CONDITION).map(this::condition).orElse(null));
  }

  private Amount cadence(SyntaxNode node) {
    return node.has("weekly") ? new Amount(parts.id(node), 1, Unit.WEEK) : only(node);
  }

  private Condition condition(SyntaxNode node) {
    int id = parts.id(node);
    boolean full = false;
    Amount effort = null;
    Amount pain = null;
    for (SyntaxNode clause : node.nodes(NodeKind.CLAUSE)) {
      if (clause.has("effort")) {
        effort = only(clause);
      } else if (clause.has("pain")) {
        pain = only(clause);
      } else {
        full = true;
      }
    }
    return new Condition(id, full, effort, pain, node.has("twice"));
  }

  private BlockPart ease(SyntaxNode node) {
    int id = parts.id(node);
    List<SyntaxNode> amounts = node.nodes(NodeKind.AMOUNT);
    int last = amounts.size() - 1;
    return new BlockPart.EaseItem(
        id, list(amounts.subList(0, last), parts::amount), parts.amount(amounts.get(last)));
  }

  private BlockPart session(SyntaxNode node) {
    int id = parts.id(node);
    SyntaxNode heading = in(node, NodeKind.SESSION_HEADING);
    Word name = parts.word(heading, NodeKind.NAME);
    Amount perWeek = parts.amount(heading.nodes(NodeKind.AMOUNT).get(0));
    Amount apart = parts.amountIfAny(heading, "least");
    Parts.Body<SessionPart> body = parts.body(node, NodeKind.SESSION_BODY, this::sessionPart);
    return new BlockPart.SessionItem(id, name, perWeek, apart, body.items(), body.damaged());
  }

  private SessionPart sessionPart(SyntaxNode node) {
    return switch (node.kind()) {
      case EXERCISE -> exercise(node);
      case SESSION_ONLY_FOR -> {
        int id = parts.id(node);
        List<Word> athletes = parts.names(in(node, NodeKind.ONLY_FOR_HEADING));
        Parts.Body<SessionPart> body = parts.body(node, NodeKind.SESSION_BODY, this::sessionPart);
        yield new SessionPart.SessionOnlyFor(id, athletes, body.items(), body.damaged());
      }
      case PREFER -> new SessionPart.Prefer(parts.id(node), parts.names(node));
      case SHARE_DAYS ->
          new SessionPart.ShareDays(parts.id(node), parts.amount(Parts.in(node, NodeKind.AMOUNT)));
      case ONLY_ON -> new OnlyOn(parts.id(node), parts.names(node));
      case ONLY_AT -> new OnlyAt(parts.id(node), parts.names(node));
      case WARM_UP -> parts.warmUp(node);
      case REST_BETWEEN -> parts.restBetween(node);
      case WEIGH -> parts.weigh(node);
      case SUPERVISED -> parts.supervised(node);
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  SessionPart.DoItem exercise(SyntaxNode node) {
    return new SessionPart.DoItem(
        parts.id(node),
        parts.word(node, NodeKind.NAME),
        node.node(NodeKind.WITH).map(expressions::parameters).orElse(List.of()),
        target(in(node, NodeKind.TARGET)),
        parts.setup(node, NodeKind.EXERCISE_SETUP),
        in(node, NodeKind.EXERCISE_SETUP).node(NodeKind.ALTERNATING).isPresent(),
        parts.wordIfAny(node, NodeKind.AS_WARM_UP),
        node.node(NodeKind.REHABILITATION).map(r -> parts.text(in(r, NodeKind.TEXT))).orElse(null),
        parts.textIfAny(node));
  }

  private Target target(SyntaxNode node) {
    return node.has("best")
        ? new Target.BestOf(parts.id(node), parts.names(node))
        : new Target.OnGrip(parts.id(node), parts.word(node, NodeKind.NAME));
  }

  private Amount only(SyntaxNode node) {
    return parts.amount(in(node, NodeKind.AMOUNT));
  }
}
