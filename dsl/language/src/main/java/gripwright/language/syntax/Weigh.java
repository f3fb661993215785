package gripwright.language.syntax;

import java.util.List;

/** {@code weigh match 40 %, margin 60 %}: the weights for choosing a grip. */
public record Weigh(int id, List<Share> weights) implements DefaultItem {
  /** Copies the lists. */
  public Weigh {
    weights = List.copyOf(weights);
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.weigh(this);
  }
}
