package gripwright.language.syntax;

import java.util.List;

/** {@code only at home}: the only places at which a session or a test may be. */
public record OnlyAt(int id, List<Word> places) implements SessionPart, TestPart {
  /** Copies the list. */
  public OnlyAt {
    places = List.copyOf(places);
  }

  @Override
  public void accept(SessionPart.Visitor visitor) {
    visitor.onlyAt(this);
  }

  @Override
  public void accept(TestPart.Visitor visitor) {
    visitor.onlyAt(this);
  }
}
