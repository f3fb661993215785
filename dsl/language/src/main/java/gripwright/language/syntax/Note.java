package gripwright.language.syntax;

/** {@code note "..."}: a comment without effect. */
public record Note(int id, Text text)
    implements AthleteItem,
        GripItem,
        ProtocolItem,
        PlanItem,
        BlockPart,
        SessionPart,
        CohortItem,
        TestPart,
        CompareItem {
  @Override
  public void accept(AthleteItem.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(GripItem.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(ProtocolItem.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(PlanItem.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(BlockPart.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(SessionPart.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(CohortItem.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(TestPart.Visitor visitor) {
    visitor.note(this);
  }

  @Override
  public void accept(CompareItem.Visitor visitor) {
    visitor.note(this);
  }
}
