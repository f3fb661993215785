package gripwright.language.syntax;

/** {@code report ITEM "..."}: a fact about the delivery of training that can't be derived. */
public record Report(int id, Word item, Text text) implements ProtocolItem, PlanItem, CompareItem {
  @Override
  public void accept(ProtocolItem.Visitor visitor) {
    visitor.report(this);
  }

  @Override
  public void accept(PlanItem.Visitor visitor) {
    visitor.report(this);
  }

  @Override
  public void accept(CompareItem.Visitor visitor) {
    visitor.report(this);
  }
}
