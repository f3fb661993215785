package gripwright.language.format;

import java.util.ArrayList;
import java.util.List;

/** Puts the words of one statement on as few lines as possible. */
final class Filling {

  /** Indent of a statement's second line beside its first, in characters. */
  private static final int CONTINUED = 4;

  private final Sheet sheet;
  private final int column;
  private final int continued;
  private int indent;
  private StringBuilder line = new StringBuilder();

  /**
   * Prepares a statement.
   *
   * @param indent indent of its first line, in characters
   * @param column column of the second word, from the beginning of the first; 0 if right after it
   */
  Filling(Sheet sheet, int indent, int column) {
    this.sheet = sheet;
    this.indent = indent;
    this.column = column;
    this.continued = indent + (column == 0 ? CONTINUED : column);
  }

  /** Writes the words; the gap before the first one is ignored. */
  void put(List<Word> words) {
    int from = 0;
    for (int i = 1; i <= words.size(); i++) {
      if (i == words.size()) {
        fill(words, from, i);
        end();
      } else if (words.get(i).gap().breaks()) {
        fill(words, from, i);
        Gap gap = words.get(i).gap();
        end();
        gap.trailing().ifPresent(sheet::comment);
        gap.comments().forEach(comment -> sheet.line(continued, comment.text()));
        from = i;
      }
    }
  }

  private void end() {
    sheet.line(indent, line.toString());
    line = new StringBuilder();
    indent = continued;
  }

  /** Fills lines with words that have no comment between them. */
  private void fill(List<Word> words, int from, int to) {
    if (fits(joined(words, from, to))) {
      line.append(joined(words, from, to));
      return;
    }
    for (Part clause : parts(words, from, to, Word.Break.CLAUSE)) {
      if (!place(words, clause)) {
        parts(words, clause.from(), clause.to(), Word.Break.ITEM).forEach(p -> force(words, p));
      }
    }
  }

  /** Words that stay together. */
  private record Part(int from, int to) {}

  private static List<Part> parts(List<Word> words, int from, int to, Word.Break where) {
    List<Part> parts = new ArrayList<>();
    int start = from;
    for (int i = from + 1; i < to; i++) {
      if (words.get(i).mayBreak(words.get(i - 1), i == 1) == where) {
        parts.add(new Part(start, i));
        start = i;
      }
    }
    parts.add(new Part(start, to));
    return parts;
  }

  /**
   * Puts words on this line or a new one without a break; returns false if no line has room for
   * them.
   */
  private boolean place(List<Word> words, Part part) {
    if (fits(joined(words, part.from(), part.to()))) {
      line.append(joined(words, part.from(), part.to()));
      return true;
    }
    if (line.length() > 0) {
      end();
      return place(words, part);
    }
    return false;
  }

  private void force(List<Word> words, Part part) {
    if (!place(words, part)) {
      line.append(joined(words, part.from(), part.to()));
    }
  }

  private boolean fits(String more) {
    int width = line.codePointCount(0, line.length()) + more.codePointCount(0, more.length());
    return indent + width <= Formatter.WIDTH;
  }

  /** Returns words joined as a continuation of the current line. */
  private String joined(List<Word> words, int from, int to) {
    StringBuilder text = new StringBuilder();
    for (int i = from; i < to; i++) {
      Word word = words.get(i);
      boolean starts = text.length() == 0 && line.length() == 0;
      if (!starts && i > 0 && word.spaced(words.get(i - 1))) {
        int pad = i == 1 ? column - text.length() - line.length() : 1;
        text.append(" ".repeat(Math.max(1, pad)));
      }
      text.append(word.text());
    }
    return text.toString();
  }
}
