package gripwright.language.syntax;

import java.time.LocalDate;

/** A day of the calendar, written as year, month and day. */
public record DateText(int id, LocalDate value) implements Expr {
  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.dateText(this);
  }
}
