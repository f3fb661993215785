package gripwright.language.resolve;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.syntax.ParsedFile;
import java.util.List;

/**
 * A file with all files it uses, read once each, and the names they declare. Immutable.
 *
 * @param files what was read; a file comes after those it uses
 * @param names what is declared
 * @param complete false if a file could not be read, so that a name that is not known here may be
 *     declared there
 * @param mainRead false if the file that was named could not be read
 * @param findings what is wrong with the text, the files and the names
 */
public record Project(
    List<ParsedFile> files,
    Names names,
    boolean complete,
    boolean mainRead,
    List<LocatedFinding> findings) {

  /** Copies the lists. */
  public Project {
    files = List.copyOf(files);
    findings = List.copyOf(findings);
  }
}
