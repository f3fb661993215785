package gripwright.language.syntax;

/** {@code rest between exercises 4 min}: the rest from one exercise to the next. */
public record RestBetween(int id, Amount time) implements DefaultItem {
  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.restBetween(this);
  }
}
