package gripwright.language.syntax;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.List;

/**
 * The result of parsing a file: its tree, its declarations, the place of each part, and findings.
 * Immutable.
 */
public final class ParsedFile {

  private final SourceFile source;
  private final SyntaxTree tree;
  private final List<Declaration> declarations;
  private final Span[] spans;
  private final List<LocatedFinding> findings;
  private final Lost lost;

  ParsedFile(
      SourceFile source,
      SyntaxTree tree,
      List<Declaration> declarations,
      List<Span> spans,
      List<LocatedFinding> findings) {
    this.source = source;
    this.tree = tree;
    this.declarations = List.copyOf(declarations);
    this.spans = spans.toArray(new Span[0]);
    this.findings = List.copyOf(findings);
    this.lost = Lost.from(tree.root());
  }

  /** Returns the file that was read. */
  public SourceFile source() {
    return source;
  }

  /** Returns the tree, which contains every character of the file. */
  public SyntaxTree tree() {
    return tree;
  }

  /** Returns the declarations that could be read, in the order of the text. */
  public List<Declaration> declarations() {
    return declarations;
  }

  /**
   * Returns the place of a part of the file.
   *
   * @param id the part's number, see {@link Syntax#id()}
   * @throws IndexOutOfBoundsException if no part of this file has the number
   */
  public Span span(int id) {
    return spans[id];
  }

  /** Returns the number of parts; their ids start at 0. */
  public int parts() {
    return spans.length;
  }

  /** Returns the findings about the text, in the order of the text. */
  public List<LocatedFinding> findings() {
    return findings;
  }

  /** Returns the declarations lost to mistakes in headings. */
  public Lost lost() {
    return lost;
  }
}
