package gripwright.language.syntax;

/**
 * A part of a file in the shape a coach thinks of it, without white space or comments.
 *
 * <p>Parts carry an id and no position; {@link ParsedFile#span(int)} tells where an id stands. A
 * part is complete: what did not parse was reported and left out, and the body it stood in is
 * {@code damaged}, so that nobody complains again about what is missing there.
 */
public sealed interface Syntax
    permits Declaration,
        AthleteItem,
        AthleteItem.FamiliarGrip,
        AthleteItem.DayTime,
        AthleteItem.ClimbingDayTime,
        HandPart,
        HandPart.FingerMeasure,
        HandPart.KnuckleOffset,
        EquipmentPart,
        GripItem,
        GripItem.JointBand,
        AngleRange,
        Need,
        ProtocolItem,
        PlanItem,
        BlockPart,
        SessionPart,
        Target,
        RuleDecl,
        RuleItem,
        LogLine,
        TestResult,
        DoneLine,
        DonePart,
        CompareItem,
        Expr,
        Word,
        Setup,
        Share,
        Parameter,
        Place,
        Progress,
        Condition {

  /** Returns the number of this part in its file: dense, from 0, in the order of the text. */
  int id();
}
