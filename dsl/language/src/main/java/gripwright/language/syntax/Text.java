package gripwright.language.syntax;

/** A quoted text, without its quotes and with its escapes undone. */
public record Text(int id, String value) implements Expr {
  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.text(this);
  }
}
