package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/** {@code warm-up 15 min "skip, shoulders"}: how long the warm-up of each session takes. */
public record WarmUp(int id, Amount time, @Nullable Text text) implements DefaultItem, TestPart {
  @Override
  public <R> R accept(DefaultItem.Visitor<R> visitor) {
    return visitor.warmUp(this);
  }

  @Override
  public void accept(TestPart.Visitor visitor) {
    visitor.warmUp(this);
  }
}
