package gripwright.language.syntax.internal;

import static gripwright.language.syntax.internal.Parts.in;
import static gripwright.language.syntax.internal.Parts.list;

import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AngleRange;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.EquipmentPart;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.GripItem;
import gripwright.language.syntax.HandPart;
import gripwright.language.syntax.Need;
import gripwright.language.syntax.NodeKind;
import gripwright.language.syntax.SyntaxNode;
import gripwright.language.syntax.Word;
import org.jspecify.annotations.Nullable;

/** Reads statements about athletes, their hands and equipment, and about grips. */
final class AthleteRecords {

  private final Parts parts;

  AthleteRecords(Parts parts) {
    this.parts = parts;
  }

  AthleteItem athleteItem(SyntaxNode node) {
    return switch (node.kind()) {
      case BORN -> new AthleteItem.Born(parts.id(node), parts.date(in(node, NodeKind.DATE)));
      case BODY_MASS -> new AthleteItem.BodyMass(parts.id(node), only(node));
      case TRAINED -> new AthleteItem.Trained(parts.id(node), only(node), parts.asOf(node));
      case ABILITY -> new AthleteItem.AbilityItem(parts.id(node), grade(node));
      case SEX -> new AthleteItem.SexItem(parts.id(node), parts.word(node, NodeKind.NAME));
      case HAND -> hand(node);
      case FAMILIAR ->
          new AthleteItem.Familiar(
              parts.id(node),
              list(
                  node.nodes(NodeKind.NAME_AMOUNT),
                  n -> new AthleteItem.FamiliarGrip(parts.id(n), name(n), only(n))),
              parts.asOf(node));
      case INJURY -> injury(node);
      case AVAILABLE ->
          new AthleteItem.Available(
              parts.id(node),
              parts.spanIfAny(node),
              list(
                  node.nodes(NodeKind.SLOT),
                  n ->
                      new AthleteItem.DaySlot(
                          parts.id(n),
                          parts.day(in(n, NodeKind.DAY)),
                          parts.clockIfAny(n),
                          only(n),
                          place(n))));
      case CLIMBING ->
          new AthleteItem.ClimbingItem(
              parts.id(node),
              list(
                  node.nodes(NodeKind.CLIMBING_DAY),
                  n ->
                      new AthleteItem.ClimbingDayTime(
                          parts.id(n), parts.word(in(n, 0)), parts.word(in(n, 1)), only(n))));
      case AWAY ->
          new AthleteItem.Away(
              parts.id(node),
              parts.date(in(node, 0)),
              parts.dateAfter(node, "to"),
              parts.textIfAny(node));
      case EQUIPMENT -> equipment(node);
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private AthleteItem injury(SyntaxNode node) {
    return new AthleteItem.InjuryItem(
        parts.id(node),
        parts.word(in(node, 0)),
        parts.word(in(node, 1)),
        parts.wordIfAny(node, NodeKind.SIDE),
        parts.date(in(node, NodeKind.DATE)),
        node.node(NodeKind.CLEARED).map(c -> parts.date(in(c, NodeKind.DATE))).orElse(null),
        node.node(NodeKind.CLEARED).map(parts::textIfAny).orElse(null),
        parts.textIfAny(node));
  }

  private AthleteItem hand(SyntaxNode node) {
    int id = parts.id(node);
    Parts.Body<HandPart> body = parts.body(node, NodeKind.HAND_BODY, this::handPart);
    return new AthleteItem.HandItem(id, body.items(), body.damaged());
  }

  private HandPart handPart(SyntaxNode node) {
    return switch (node.kind()) {
      case HAND_LENGTH -> new HandPart.HandLength(parts.id(node), only(node));
      case HAND_BREADTH -> new HandPart.HandBreadth(parts.id(node), only(node));
      case FINGER_MEASURES ->
          new HandPart.FingerMeasures(
              parts.id(node),
              parts.word(node, NodeKind.FINGER),
              list(
                  node.nodes(NodeKind.FINGER_MEASURE),
                  n -> new HandPart.FingerMeasure(parts.id(n), name(n), range(n))));
      case KNUCKLES ->
          new HandPart.Knuckles(
              parts.id(node),
              list(
                  node.nodes(NodeKind.NAME_AMOUNT),
                  n -> new HandPart.KnuckleOffset(parts.id(n), name(n), only(n))));
      case HAND_SIDE -> {
        int id = parts.id(node);
        Word side = parts.word(in(node, NodeKind.HAND_SIDE_HEADING), NodeKind.SIDE);
        Parts.Body<HandPart> body = parts.body(node, NodeKind.HAND_BODY, this::handPart);
        yield new HandPart.HandSide(id, side, body.items(), body.damaged());
      }
      default -> throw new Parts.Incomplete();
    };
  }

  private AthleteItem equipment(SyntaxNode node) {
    int id = parts.id(node);
    Word place = place(in(node, NodeKind.EQUIPMENT_HEADING));
    Parts.Body<EquipmentPart> body = parts.body(node, NodeKind.EQUIPMENT_BODY, this::equipmentPart);
    return new AthleteItem.EquipmentItem(id, place, body.items(), body.damaged());
  }

  private EquipmentPart equipmentPart(SyntaxNode node) {
    return switch (node.kind()) {
      case EDGES ->
          new EquipmentPart.Edges(parts.id(node), list(node.nodes(NodeKind.AMOUNT), parts::amount));
      case LOAD_STEPS ->
          new EquipmentPart.LoadSteps(
              parts.id(node),
              parts.word(node, NodeKind.LOAD_KIND),
              parts.amount(in(node, 1)),
              parts.amount(in(node, 2)));
      default -> throw new Parts.Incomplete();
    };
  }

  GripItem gripItem(SyntaxNode node) {
    return switch (node.kind()) {
      case FINGERS -> new GripItem.Fingers(parts.id(node), parts.names(node));
      case FAMILY -> new GripItem.Family(parts.id(node), name(node));
      case FINGER_BANDS ->
          new GripItem.FingerBands(
              parts.id(node),
              parts.word(node, NodeKind.FINGER),
              list(
                  node.nodes(NodeKind.JOINT_BAND),
                  n -> new GripItem.JointBand(parts.id(n), name(n), range(n))));
      case CAUTION -> new GripItem.Caution(parts.id(node), parts.text(in(node, NodeKind.TEXT)));
      case NEEDS -> new GripItem.Needs(parts.id(node), list(node.nodes(NodeKind.NEED), this::need));
      case NOTE -> parts.note(node);
      default -> throw new Parts.Incomplete();
    };
  }

  private AngleRange range(SyntaxNode joint) {
    SyntaxNode range = in(joint, NodeKind.ANGLE_RANGE);
    return new AngleRange(
        parts.id(range),
        range.has("included"),
        parts.amount(in(range, 0)),
        parts.amountIfAny(range, "to"),
        parts.amountIfAny(range, "within"));
  }

  private Need need(SyntaxNode node) {
    if (node.has("trained")) {
      return new Need.NeedTrained(parts.id(node), only(node));
    }
    if (node.has("ability")) {
      return new Need.NeedAbility(parts.id(node), grade(node));
    }
    return new Need.NeedFamiliar(parts.id(node), name(node), only(node));
  }

  private Expr.GradeLiteral grade(SyntaxNode node) {
    SyntaxNode scale = in(node, NodeKind.NAME);
    SyntaxNode value = in(node, NodeKind.GRADE_VALUE);
    return new Expr.GradeLiteral(
        parts.id(scale.span().to(value.span())), parts.word(scale), parts.word(value));
  }

  private @Nullable Word place(SyntaxNode node) {
    return node.node(NodeKind.AT_PLACE).map(this::name).orElse(null);
  }

  private Word name(SyntaxNode node) {
    return parts.word(node, NodeKind.NAME);
  }

  private Amount only(SyntaxNode node) {
    return parts.amount(in(node, NodeKind.AMOUNT));
  }
}
