package gripwright.language.syntax;

import gripwright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** A number with its unit; null if none is written, as for counts and scores. */
public record Amount(int id, double value, @Nullable Unit unit) implements Expr {
  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.amount(this);
  }
}
