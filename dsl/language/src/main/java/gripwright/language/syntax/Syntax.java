package gripwright.language.syntax;

/**
 * A part of a file as a record, without white space or comments.
 *
 * <p>Parts have an id and no position; {@link ParsedFile#span(int)} returns the place of an id. A
 * part is complete: statements that could not be parsed were reported and left out, and their body
 * is {@code damaged}, so that nothing is reported as missing there.
 */
public sealed interface Syntax
    permits Declaration,
        AthleteItem,
        AthleteItem.FamiliarGrip,
        AthleteItem.DaySlot,
        CalendarSpan,
        CalendarDay,
        ClockTime,
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
        PlannedKind,
        PlannedTime,
        TestPart,
        DoneLine,
        DonePart,
        CohortItem,
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
