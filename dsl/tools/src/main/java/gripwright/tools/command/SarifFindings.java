package gripwright.tools.command;

import gripwright.export.json.SarifResult;
import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.Reading;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Converts the findings of a reading to SARIF results, with every place in the text and in the
 * model.
 */
final class SarifFindings {

  private SarifFindings() {}

  static SarifResult of(LocatedFinding located, Reading reading) {
    Finding finding = located.finding();
    SourceFile file = located.file();
    List<SarifResult.Related> related = new ArrayList<>();
    located
        .related()
        .forEach(
            other ->
                related.add(
                    related(Console.wording().related(other.key()), other.file(), other.span())));
    for (ModelPath place : finding.places()) {
      LocatedFinding also = reading.located(Finding.error(finding.code(), place));
      SarifResult.Related here =
          related(Console.wording().related("also-here"), also.file(), also.span());
      boolean same = also.file().name().equals(file.name()) && also.span().equals(located.span());
      if (!same && also.span().length() > 0 && !related.contains(here)) {
        related.add(here);
      }
    }
    return new SarifResult(
        located.report(Console.wording()),
        file.text().isEmpty() ? Optional.empty() : Optional.of(region(file, located.span())),
        finding.places().stream().map(ModelPath::toString).toList(),
        related);
  }

  private static SarifResult.Related related(String words, SourceFile file, Span span) {
    return new SarifResult.Related(words, file.name(), region(file, span));
  }

  private static SarifResult.Region region(SourceFile file, Span span) {
    return new SarifResult.Region(
        file.line(span.start()),
        file.unitColumn(span.start()),
        file.line(span.end()),
        file.unitColumn(span.end()));
  }
}
