package gripwright.language.resolve;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.syntax.ParsedFile;
import java.util.List;

/**
 * A file and all files it uses, each read once, and the names they declare. Immutable.
 *
 * @param files the files read; a file comes after those it uses
 * @param names the declarations
 * @param complete false if a file could not be read, so that an unknown name may be declared there
 * @param mainRead false if the main file could not be read
 * @param findings findings about the text, the files and the names
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
