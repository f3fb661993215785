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
 * Findings as people read them: the sentence, the line it is about with the characters marked, and
 * what would be right.
 *
 * <pre>
 * error[name.unknown]: unknown grip `half-crmp`
 *   --&gt; autumn.grip:9:22
 *   9 |       do near-max on half-crmp edge 20 mm
 *     |                      ^^^^^^^^^ no grip of this name here or in the catalogue
 *     help: did you mean `half-crimp`?
 * </pre>
 *
 * <p>The findings of one file stand together, in the order of the file; the last line counts them.
 * A finding of a model that was built without text shows its path in the model instead. Characters
 * that a terminal would obey rather than show are replaced. Immutable and thread-safe.
 */
public final class FindingText {

  private static final String RESET = "\u001B[0m";
  private static final String BOLD = "\u001B[1m";
  private static final String DIM = "\u001B[2m";
  private static final String BLUE = "\u001B[34m";

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

  /** Returns the same with other words. */
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

  /** Returns the findings of a model that has no text, and a count at the end. */
  public String renderModel(List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    for (Finding finding : findings) {
      title(out, finding);
      if (!finding.place().steps().isEmpty()) {
        out.append("  --> ").append(Glyphs.printable(finding.place().toString())).append('\n');
      }
      notes(out, finding, "  ");
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
    int gutter = Integer.toString(line.number()).length();
    for (LocatedFinding.Related related : located.related()) {
      int number = related.file().line(related.span().start());
      gutter = Math.max(gutter, Integer.toString(number).length());
    }
    gutter = Math.max(3, gutter + 1);
    title(out, finding);
    position(out, located, line);
    if (!located.file().text().isEmpty()) {
      marked(out, line, gutter, "^", severityColour(finding), wording.label(finding));
    }
    notes(out, finding, " ".repeat(gutter + 2));
    for (LocatedFinding.Related related : located.related()) {
      out.append(" ".repeat(gutter + 2)).append(paint(wording.say("common.note") + ": ", BOLD));
      out.append(wording.related(related.key())).append('\n');
      LocatedFinding place = LocatedFinding.at(related.file(), related.span(), finding);
      MarkedLine other = MarkedLine.of(related.file(), related.span());
      position(out, place, other);
      marked(out, other, gutter, "-", BLUE, Optional.empty());
    }
    out.append('\n');
  }

  private void title(StringBuilder out, Finding finding) {
    String head = wording.say("common." + finding.severity().word()) + "[" + finding.code() + "]";
    boolean waived = finding.waivedBecause().isPresent();
    out.append(
            paint(
                (waived ? wording.say("common.waived") + " " : "") + head,
                waived ? DIM : severityColour(finding)))
        .append(paint(": " + Glyphs.printable(wording.sentence(finding)), waived ? DIM : BOLD))
        .append('\n');
  }

  private void position(StringBuilder out, LocatedFinding located, MarkedLine line) {
    out.append(paint("  --> ", BLUE))
        .append(Glyphs.printable(located.file().name()))
        .append(':')
        .append(line.number())
        .append(':')
        .append(located.file().column(located.span().start()))
        .append('\n');
  }

  private void marked(
      StringBuilder out,
      MarkedLine line,
      int gutter,
      String mark,
      String colourOfMarks,
      Optional<String> label) {
    String number = Integer.toString(line.number());
    String left = " ".repeat(gutter - number.length()) + number + " |";
    out.append(paint(left, BLUE)).append(line.text().isEmpty() ? "" : " " + line.text());
    out.append('\n').append(paint(" ".repeat(gutter) + " |", BLUE));
    String marks = mark.repeat(line.marks()) + label.map(l -> " " + Glyphs.printable(l)).orElse("");
    out.append(" ".repeat(line.indent() + 1)).append(paint(marks, colourOfMarks)).append('\n');
  }

  private void notes(StringBuilder out, Finding finding, String indent) {
    note(out, indent, "where", wording.where(finding));
    note(out, indent, "help", wording.advice(finding));
    note(out, indent, "source", wording.source(finding));
    note(out, indent, "waived", finding.waivedBecause());
  }

  private void note(StringBuilder out, String indent, String kind, Optional<String> text) {
    text.ifPresent(
        t ->
            out.append(indent)
                .append(paint(wording.say("common." + kind) + ": ", BOLD))
                .append(Glyphs.printable(t))
                .append('\n'));
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
