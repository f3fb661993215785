package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the mistakes of a text while it is read. */
final class Mistakes {

  private final SourceFile source;
  private final int most;
  private final List<LocatedFinding> findings = new ArrayList<>();

  Mistakes(SourceFile source, int most) {
    this.source = source;
    this.most = most;
  }

  /** Returns an error without arguments. */
  static Finding error(String code) {
    return Finding.error(code, ModelPath.ROOT);
  }

  /** Adds a finding, unless there are already more than will be reported. */
  void add(Span span, Finding finding) {
    if (findings.size() < 2L * most) {
      findings.add(LocatedFinding.at(source, span, finding));
    }
  }

  /** Returns whether there are already more findings than will be reported. */
  boolean isFull() {
    return findings.size() >= most;
  }

  /** Returns the first findings in the order of the text, up to the limit. */
  List<LocatedFinding> inOrder() {
    return findings.stream()
        .sorted(Comparator.comparingInt(f -> f.span().start()))
        .limit(most)
        .toList();
  }

  /** Quotes a part of the text, shortened if it is long. */
  static String quote(String text) {
    int points = text.codePointCount(0, text.length());
    return "`"
        + (points <= 30 ? text : text.substring(0, text.offsetByCodePoints(0, 29)) + "\u2026")
        + "`";
  }
}
