package gripwright.language.finding;

import gripwright.finding.Finding;
import gripwright.finding.Severity;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes findings for people: the sentence, the line in question with the characters marked, and
 * how to correct it.
 *
 * <pre>
 * error: unknown grip `half-crmp`
 *   autumn.grip:9:22 (name.unknown)
 *     9:       do near-max on half-crmp edge 20 mm
 *                             ~~~~~~~~~ no grip of this name here or in the catalogue
 *   fix: did you mean `half-crimp`?
 * </pre>
 *
 * <p>The findings of one file are together, in the order of the file; the last line counts them. A
 * finding about a model without text shows its path in the model instead. Control characters are
 * replaced. Lines are broken at 80 columns. Immutable and thread-safe.
 */
public final class FindingText {

  private static final String RESET = "\u001B[0m";
  private static final String BOLD = "\u001B[1m";
  private static final String DIM = "\u001B[2m";
  private static final String BLUE = "\u001B[34m";

  private static final int WIDTH = 80;
  private static final String INDENT = "  ";

  private final boolean colour;
  private final Wording wording;

  private FindingText(boolean colour, Wording wording) {
    this.colour = colour;
    this.wording = wording;
  }

  /** Returns a text without colours. */
  public static FindingText plain() {
    return new FindingText(false, Wording.english());
  }

  /** Returns a text with the colours of an ANSI terminal. */
  public static FindingText coloured() {
    return new FindingText(true, Wording.english());
  }

  /** Returns the same with another wording. */
  public FindingText with(Wording other) {
    return new FindingText(colour, other);
  }

  /** Returns all findings with their lines, and a count at the end; empty if there are none. */
  public String render(List<LocatedFinding> findings) {
    List<Finding> all = findings.stream().map(LocatedFinding::finding).toList();
    return closed(new StringBuilder(body(findings)), all);
  }

  /** Returns all findings with their lines, each followed by an empty line, without a count. */
  public String body(List<LocatedFinding> findings) {
    Map<String, List<LocatedFinding>> byFile = new LinkedHashMap<>();
    for (LocatedFinding finding : findings) {
      byFile.computeIfAbsent(finding.file().name(), f -> new ArrayList<>()).add(finding);
    }
    StringBuilder out = new StringBuilder();
    for (List<LocatedFinding> ofFile : byFile.values()) {
      ofFile.sort(Comparator.comparingInt(f -> f.span().start()));
      for (LocatedFinding finding : ofFile) {
        one(out, finding);
      }
    }
    return out.toString();
  }

  /** Returns the findings of a model without text, and a count at the end. */
  public String renderModel(List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    for (Finding finding : findings) {
      title(out, finding);
      String path = finding.place().steps().isEmpty() ? "" : finding.place() + " ";
      place(out, Glyphs.printable(path), finding);
      notes(out, finding);
      out.append('\n');
    }
    return closed(out, findings);
  }

  private String closed(StringBuilder out, List<Finding> findings) {
    return findings.isEmpty() ? "" : out.append(count(findings)).append('\n').toString();
  }

  /** Returns how many findings there are, such as {@code 2 errors, 1 warning; 1 waived}. */
  public String count(Collection<Finding> findings) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long number =
          findings.stream()
              .filter(f -> f.severity() == severity && f.waivedBecause().isEmpty())
              .count();
      if (number > 0) {
        String key = "common." + severity.word() + (number == 1 ? "-one" : "-many");
        parts.add(wording.say(key, Map.of("count", number)));
      }
    }
    long waived = findings.stream().filter(f -> f.waivedBecause().isPresent()).count();
    String open = parts.isEmpty() ? wording.say("common.no-findings") : String.join(", ", parts);
    if (waived == 0) {
      return open;
    }
    String some = wording.say("common.waived-many", Map.of("count", waived));
    return parts.isEmpty() ? some : open + "; " + some;
  }

  private void one(StringBuilder out, LocatedFinding located) {
    Finding finding = located.finding();
    MarkedLine line = MarkedLine.of(located.file(), located.span());
    int digits = Integer.toString(line.number()).length();
    for (LocatedFinding.Related related : located.related()) {
      int number = related.file().line(related.span().start());
      digits = Math.max(digits, Integer.toString(number).length());
    }
    title(out, finding);
    place(out, position(located, line) + " ", finding);
    if (!located.file().text().isEmpty()) {
      marked(out, line, digits, "~", severityColour(finding), wording.label(finding));
    }
    notes(out, finding);
    for (LocatedFinding.Related related : located.related()) {
      LocatedFinding place = LocatedFinding.at(related.file(), related.span(), finding);
      MarkedLine other = MarkedLine.of(related.file(), related.span());
      String words = wording.related(related.key());
      note(out, "note", Optional.of(words + ", " + position(place, other)));
      marked(out, other, digits, "-", BLUE, Optional.empty());
    }
    out.append('\n');
  }

  private void title(StringBuilder out, Finding finding) {
    boolean waived = finding.waivedBecause().isPresent();
    String head =
        (waived ? wording.say("common.waived") + " " : "")
            + wording.say("common." + finding.severity().word())
            + ":";
    List<String> lines =
        wrapped(head + " " + Glyphs.printable(wording.sentence(finding)), WIDTH, INDENT);
    out.append(paint(head, waived ? DIM : severityColour(finding)));
    out.append(paint(lines.get(0).substring(head.length()), waived ? DIM : BOLD)).append('\n');
    lines.stream().skip(1).forEach(l -> out.append(paint(l, waived ? DIM : BOLD)).append('\n'));
  }

  /** Appends the place of a finding, and its code. */
  private void place(StringBuilder out, String where, Finding finding) {
    out.append(INDENT)
        .append(paint(where, BLUE))
        .append(paint("(" + finding.code() + ")", DIM))
        .append('\n');
  }

  private static String position(LocatedFinding located, MarkedLine line) {
    return Glyphs.printable(located.file().name())
        + ":"
        + line.number()
        + ":"
        + located.file().column(located.span().start());
  }

  private void marked(
      StringBuilder out,
      MarkedLine line,
      int digits,
      String mark,
      String colourOfMarks,
      Optional<String> label) {
    String number = Integer.toString(line.number());
    String left = INDENT + INDENT + " ".repeat(digits - number.length()) + number + ":";
    out.append(paint(left, BLUE)).append(line.text().isEmpty() ? "" : " " + line.text());
    String marks = mark.repeat(line.marks()) + label.map(l -> " " + Glyphs.printable(l)).orElse("");
    out.append('\n').append(" ".repeat(left.length() + 1 + line.indent()));
    out.append(paint(marks, colourOfMarks)).append('\n');
  }

  private void notes(StringBuilder out, Finding finding) {
    note(out, "where", wording.where(finding));
    note(out, "fix", wording.advice(finding));
    note(out, "source", wording.source(finding));
    note(out, "waived", finding.waivedBecause());
  }

  private void note(StringBuilder out, String kind, Optional<String> text) {
    if (text.isEmpty()) {
      return;
    }
    String head = wording.say("common." + kind) + ":";
    String all = INDENT + head + " " + Glyphs.printable(text.get());
    List<String> lines = wrapped(all, WIDTH, INDENT + INDENT);
    int after = INDENT.length() + head.length();
    out.append(INDENT).append(paint(head, BOLD)).append(lines.get(0).substring(after)).append('\n');
    lines.stream().skip(1).forEach(l -> out.append(l).append('\n'));
  }

  /**
   * Breaks a text at blanks; a word longer than a line is not broken.
   *
   * @param indent start of each line but the first
   */
  private static List<String> wrapped(String text, int width, String indent) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > width) {
      int start = rest.length() - rest.stripLeading().length();
      int at = rest.lastIndexOf(' ', width);
      at = at <= start ? rest.indexOf(' ', width) : at;
      if (at < 0) {
        break;
      }
      lines.add(rest.substring(0, at));
      rest = indent + rest.substring(at + 1);
    }
    lines.add(rest);
    return lines;
  }

  private static String severityColour(Finding finding) {
    return switch (finding.severity()) {
      case ERROR -> "\u001B[1;31m";
      case WARNING -> "\u001B[1;33m";
      case ADVICE -> "\u001B[1;36m";
    };
  }

  private String paint(String text, String with) {
    return colour ? with + text + RESET : text;
  }
}
