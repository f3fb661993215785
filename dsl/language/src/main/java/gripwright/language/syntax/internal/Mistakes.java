package gripwright.language.syntax.internal;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is wrong with a text, as it is found out. */
final class Mistakes {

  private final SourceFile source;
  private final int most;
  private final List<LocatedFinding> findings = new ArrayList<>();

  Mistakes(SourceFile source, int most) {
    this.source = source;
    this.most = most;
  }

  /** Returns an error without facts yet. */
  static Finding error(String code) {
    return Finding.error(code, ModelPath.ROOT);
  }

  /** Adds a finding, unless more are known already than will be told. */
  void add(Span span, Finding finding) {
    if (findings.size() < 2L * most) {
      findings.add(LocatedFinding.at(source, span, finding));
    }
  }

  /** Tells whether enough is wrong that wording more of it is wasted. */
  boolean isFull() {
    return findings.size() >= most;
  }

  /** Returns the first findings in the order of the text, as many as are told. */
  List<LocatedFinding> inOrder() {
    return findings.stream()
        .sorted(Comparator.comparingInt(f -> f.span().start()))
        .limit(most)
        .toList();
  }

  /** Quotes what stands in a text, shortened where it is long. */
  static String quote(String text) {
    int points = text.codePointCount(0, text.length());
    return "`"
        + (points <= 30 ? text : text.substring(0, text.offsetByCodePoints(0, 29)) + "\u2026")
        + "`";
  }
}
