package gripwright.language.check;

import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tells what is written twice where once is meant, and what is not written at all. */
final class Once {

  private final Ledger ledger;
  private final Map<List<Object>, Syntax> seen = new HashMap<>();

  Once(Ledger ledger) {
    this.ledger = ledger;
  }

  /** Tells whether this is the first of its kind and name; reports it if it is not. */
  boolean first(Syntax at, String kind, String name) {
    return first(at, Terms.kind(kind), name);
  }

  /** Tells the same of a kind whose words have facts in them. */
  boolean first(Syntax at, Message kind, String name) {
    Syntax before = seen.putIfAbsent(List.of(kind, name), at);
    if (before == null) {
      return true;
    }
    ledger.errorBeside(
        at, before, "first-written-here", "value.doubled", "kind", kind, "name", name);
    return false;
  }

  /** Tells whether this is the first statement of its keyword; reports it if it is not. */
  boolean first(Syntax item, String keyword) {
    return first(item, "statement", keyword);
  }

  /** Notes a statement that may be written several times. */
  void seen(Syntax item, String keyword) {
    seen.putIfAbsent(statement(keyword), item);
  }

  /** Tells whether a statement of a keyword was seen. */
  boolean has(String keyword) {
    return seen.containsKey(statement(keyword));
  }

  private static List<Object> statement(String keyword) {
    return List.of(Terms.kind("statement"), keyword);
  }

  /**
   * Reports required statements that were not seen, unless something did not parse: the statement
   * may be in there.
   */
  void require(Word name, String kind, boolean damaged, String... keywords) {
    List<String> missing = new ArrayList<>();
    for (String keyword : keywords) {
      if (!has(keyword)) {
        missing.add("`" + keyword + "`");
      }
    }
    if (missing.isEmpty()) {
      return;
    }
    if (damaged) {
      ledger.spoil();
    } else {
      ledger.error(
          name,
          "value.missing",
          "kind",
          Terms.kind(kind),
          "name",
          name.text(),
          "missing",
          Listing.of(Listing.Style.COMMAS, missing));
    }
  }
}
