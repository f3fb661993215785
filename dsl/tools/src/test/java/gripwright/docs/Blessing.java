package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts of pages that tests generate. With {@code -Dgripwright.bless=true} they are rewritten for
 * review in a diff; otherwise they are compared.
 */
final class Blessing {

  private static final String END = "<!-- end -->";

  private Blessing() {}

  private static boolean blesses() {
    return Boolean.getBoolean("gripwright.bless");
  }

  /** Compares or rewrites the text between {@code <!-- generated: NAME -->} and the end mark. */
  static void generated(Page page, String name, String text) {
    int first = page.lines().indexOf("<!-- generated: " + name + " -->") + 1;
    int end = first;
    while (!page.lines().get(end).equals(END)) {
      end++;
    }
    replace(page, first, end, text);
  }

  /** Compares or rewrites the inside of a fenced block. */
  static void block(Page page, Page.Block block, String text) {
    replace(page, block.first(), block.end(), text);
  }

  /** Compares or rewrites a whole file. */
  static void file(Path file, String text) throws IOException {
    if (blesses()) {
      Files.writeString(file, text);
    }
    assertEquals(text, Files.readString(file), file + ": bless to write it anew");
  }

  private static void replace(Page page, int first, int end, String text) {
    List<String> lines = page.lines();
    String written = String.join("\n", lines.subList(first, end));
    String wanted = text.stripTrailing();
    if (!blesses() || written.equals(wanted)) {
      assertEquals(wanted, written, page.path() + " line " + first + ": bless to write it anew");
      return;
    }
    List<String> changed = new ArrayList<>(lines.subList(0, first));
    changed.addAll(wanted.lines().toList());
    changed.addAll(lines.subList(end, lines.size()));
    try {
      Files.writeString(page.path(), String.join("\n", changed) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
