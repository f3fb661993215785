package gripwright.language.finding;

import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/**
 * A finding and its place in the text.
 *
 * @param finding the finding
 * @param file the file it is in
 * @param span the characters it is about, as few as possible
 * @param related other places that help to understand it, such as a first definition
 */
public record LocatedFinding(Finding finding, SourceFile file, Span span, List<Related> related) {

  /**
   * Another place that helps to understand a finding.
   *
   * @param key its description, as a key of the wording, such as {@code first-defined-here}
   * @param file the file it is in
   * @param span the characters
   */
  public record Related(String key, SourceFile file, Span span) {}

  /** Copies the related places. */
  public LocatedFinding {
    related = List.copyOf(related);
  }

  /** Returns a finding at a span. */
  public static LocatedFinding at(SourceFile file, Span span, Finding finding) {
    return new LocatedFinding(finding, file, span, List.of());
  }

  /** Returns this finding with its sentences. */
  public ReportedFinding report(Wording wording) {
    return wording.report(
        finding,
        file.name(),
        file.line(span.start()),
        file.column(span.start()),
        file.line(span.end()),
        file.column(span.end()));
  }

  /** Returns this finding with one more related place. */
  public LocatedFinding related(String key, SourceFile inFile, Span at) {
    List<Related> more = new ArrayList<>(related);
    more.add(new Related(key, inFile, at));
    return new LocatedFinding(finding, file, span, more);
  }
}
