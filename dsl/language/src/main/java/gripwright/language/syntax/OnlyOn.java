package gripwright.language.syntax;

import java.util.List;

/** {@code only on tue, thu}: the only weekdays on which a session or a test may be. */
public record OnlyOn(int id, List<Word> days) implements SessionPart, TestPart {
  /** Copies the list. */
  public OnlyOn {
    days = List.copyOf(days);
  }

  @Override
  public void accept(SessionPart.Visitor visitor) {
    visitor.onlyOn(this);
  }

  @Override
  public void accept(TestPart.Visitor visitor) {
    visitor.onlyOn(this);
  }
}
