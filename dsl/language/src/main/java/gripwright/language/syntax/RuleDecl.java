package gripwright.language.syntax;

import java.util.List;

/** {@code rule NAME { ... }}: one rule of a set. */
public record RuleDecl(int id, Word name, List<RuleItem> items, boolean damaged) implements Syntax {
  /** Copies the lists. */
  public RuleDecl {
    items = List.copyOf(items);
  }
}
