package gripwright.language.syntax;

/** {@code supervised by "..."}: who supervises sessions. */
public record Supervised(int id, Text by) implements PlanItem, SessionPart {
  @Override
  public void accept(PlanItem.Visitor visitor) {
    visitor.supervised(this);
  }

  @Override
  public void accept(SessionPart.Visitor visitor) {
    visitor.supervised(this);
  }
}
