package gripwright.language.syntax;

import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import java.util.List;

/**
 * What was read from a file: its tree, its declarations, where each part stands, and what is wrong
 * with it. Immutable.
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

  /** Returns the tree with every character of the file in it. */
  public SyntaxTree tree() {
    return tree;
  }

  /** Returns the declarations that could be read, in the order of the text. */
  public List<Declaration> declarations() {
    return declarations;
  }

  /**
   * Returns where a part of the file stands.
   *
   * @param id the part's number, see {@link Syntax#id()}
   * @throws IndexOutOfBoundsException if no part of this file has the number
   */
  public Span span(int id) {
    return spans[id];
  }

  /** Returns how many parts there are; their ids run from 0 to one less. */
  public int parts() {
    return spans.length;
  }

  /** Returns what is wrong with the text, in the order of the text. */
  public List<LocatedFinding> findings() {
    return findings;
  }

  /** Returns what a mistake in a heading took from the declarations. */
  public Lost lost() {
    return lost;
  }
}
