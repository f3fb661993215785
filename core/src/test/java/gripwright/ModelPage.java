package gripwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A page of docs/models with tables that tests write. With {@code -Dgripwright.bless=true} the page
 * is rewritten, for review in a diff; otherwise the table must be there as computed.
 */
public final class ModelPage {

  private ModelPage() {}

  /** Checks the lines between {@code <!-- table: name -->} and {@code <!-- end -->}. */
  public static void check(String page, String name, String table) throws IOException {
    Path path = Path.of(System.getProperty("basedir", "."), "..", "docs", "models", page);
    String text = Files.readString(path);
    String opening = "<!-- table: " + name + " -->\n";
    int start = text.indexOf(opening);
    assertTrue(start >= 0, () -> "no place for " + name + " in " + page);
    int from = start + opening.length();
    int to = text.indexOf("<!-- end -->", from);
    assertTrue(to >= 0, () -> "no end of " + name + " in " + page);
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.writeString(path, text.substring(0, from) + table + text.substring(to));
    } else {
      assertEquals(table, text.substring(from, to), "rewrite with -Dgripwright.bless=true");
    }
  }
}
