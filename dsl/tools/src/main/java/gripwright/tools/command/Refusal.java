package gripwright.tools.command;

import gripwright.finding.ReportedFinding;
import gripwright.language.finding.FindingText;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import java.util.List;

/** Writes what replaces the result of a command if a file has errors. */
final class Refusal {

  private Refusal() {}

  static void write(
      List<SourceFile> files,
      List<ReportedFinding> findings,
      List<LocatedFinding> located,
      Arguments given,
      Console console) {
    if (given.asJson()) {
      console.out(Console.documents(files).findings(findings));
    } else {
      FindingText text = console.colour() ? FindingText.coloured() : FindingText.plain();
      console.err(text.render(located));
    }
  }
}
