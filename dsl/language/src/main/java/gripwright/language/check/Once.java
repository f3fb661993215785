package gripwright.language.check;

import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reports statements written twice and required statements that are missing. */
final class Once {

  private final Diagnostics diagnostics;
  private final Map<List<Object>, Syntax> seen = new HashMap<>();

  Once(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Returns whether this is the first of its kind and name; reports it if it is not. */
  boolean first(Syntax at, String kind, String name) {
    return first(at, Terms.kind(kind), name);
  }

  /** Tells the same for a kind given as a message with arguments. */
  boolean first(Syntax at, Message kind, String name) {
    Syntax before = seen.putIfAbsent(List.of(kind, name), at);
    if (before == null) {
      return true;
    }
    diagnostics.errorBeside(
        at, before, "first-written-here", "value.doubled", "kind", kind, "name", name);
    return false;
  }

  /** Returns whether this is the first statement of its keyword; reports it if it is not. */
  boolean first(Syntax item, String keyword) {
    return first(item, "statement", keyword);
  }

  /** Records a statement that may be written several times. */
  void seen(Syntax item, String keyword) {
    seen.putIfAbsent(statement(keyword), item);
  }

  /** Returns whether a statement with this keyword was seen. */
  boolean has(String keyword) {
    return seen.containsKey(statement(keyword));
  }

  private static List<Object> statement(String keyword) {
    return List.of(Terms.kind("statement"), keyword);
  }

  /**
   * Reports required statements that are missing, unless part of the text could not be parsed and
   * may contain them.
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
      diagnostics.markInvalid();
    } else {
      diagnostics.error(
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
