package gripwright.language.syntax;

/** {@code note "..."}: a remark that changes nothing. */
public record Note(int id, Text text)
    implements AthleteItem, GripItem, ProtocolItem, PlanItem, BlockPart, SessionPart, CompareItem {}
