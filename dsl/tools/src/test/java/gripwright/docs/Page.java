package gripwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A page of Markdown and its fenced blocks. */
record Page(Path path, List<String> lines) {

  /**
   * A fenced block.
   *
   * @param heading the nearest heading above, without its signs
   * @param before the nearest line above that is not blank
   * @param first index of the first line inside
   * @param end index of the closing fence
   * @param info the text after the opening fence
   * @param text the lines inside, each with its line feed
   */
  record Block(String heading, String before, int first, int end, String info, String text) {}

  /** The root of the checkout. */
  static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("DEVELOPERS.md"))) {
      folder = folder.getParent();
    }
    return folder;
  }

  /** Reads a page by its path from the root. */
  static Page read(String path) {
    Path file = root().resolve(path);
    try {
      return new Page(file, Files.readAllLines(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the headings of a level without their signs. */
  List<String> headings(int level) {
    String signs = "#".repeat(level) + " ";
    List<String> headings = new ArrayList<>();
    boolean fenced = false;
    for (String line : lines) {
      fenced ^= line.startsWith("```");
      if (!fenced && line.startsWith(signs)) {
        headings.add(line.substring(signs.length()));
      }
    }
    return headings;
  }

  /** Returns the fenced blocks in order. */
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    String heading = "";
    String before = "";
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith("```")) {
        int end = i + 1;
        StringBuilder text = new StringBuilder();
        while (!lines.get(end).startsWith("```")) {
          text.append(lines.get(end++)).append('\n');
        }
        blocks.add(
            new Block(heading, before, i + 1, end, line.substring(3).strip(), text.toString()));
        i = end;
      } else if (line.startsWith("#")) {
        heading = line.replaceFirst("^#+ ", "");
      } else if (!line.isBlank()) {
        before = line;
      }
    }
    return blocks;
  }
}
