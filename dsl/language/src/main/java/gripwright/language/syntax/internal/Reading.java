package gripwright.language.syntax.internal;

import gripwright.budget.Meter;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.SyntaxTree;
import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.List;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/**
 * The result of parsing a text.
 *
 * <p>A text without mistakes is parsed once in a fast mode without error recovery. Only if that
 * fails are the same tokens parsed again, more slowly, with {@link Recovery}.
 *
 * @param tree every character of the text
 * @param declarations the declarations that could be read
 * @param spans the place of each part, by id
 * @param findings the findings, in the order of the text
 */
public record Reading(
    SyntaxTree tree,
    List<Declaration> declarations,
    List<Span> spans,
    List<LocatedFinding> findings) {

  /** Number of tokens read between two checks for deadline and cancellation. */
  private static final int LOOK_EVERY = 1024;

  /** Reads a text as far as the limits allow. */
  public static Reading of(SourceFile source, Limits limits, Meter meter) {
    Mistakes mistakes = new Mistakes(source, limits.maxFindings());
    if (source.text().length() > limits.maxCharacters()) {
      return tooLarge(source, mistakes);
    }
    Scan scan = Scan.of(source, limits.maxTokens());
    if (!scan.complete()) {
      return tooLarge(source, mistakes);
    }
    Token deep = scan.tooDeep(limits);
    if (deep != null) {
      mistakes.add(
          scan.span(deep), Mistakes.error("syntax.too-deep").with("most", limits.maxNesting()));
      return refused(new TreeBuilder(scan).flat(), mistakes);
    }
    TreeBuilder builder = new TreeBuilder(scan);
    SyntaxTree tree = builder.build(parse(scan, mistakes, meter));
    meter.look();
    new MalformedTokens(scan, builder, mistakes).report();
    meter.look();
    Parts parts = new Parts();
    List<Declaration> declarations =
        new DeclarationRecords(parts, mistakes, limits).declarations(tree.root());
    return new Reading(tree, declarations, parts.spans(), mistakes.inOrder());
  }

  private static Reading tooLarge(SourceFile source, Mistakes mistakes) {
    mistakes.add(new Span(0, 0), Mistakes.error("syntax.too-large"));
    return refused(TreeBuilder.unread(source.text()), mistakes);
  }

  private static Reading refused(SyntaxTree tree, Mistakes mistakes) {
    return new Reading(tree, List.of(), List.of(), mistakes.inOrder());
  }

  private static ParserRuleContext parse(Scan scan, Mistakes mistakes, Meter meter) {
    CommonTokenStream tokens =
        new CommonTokenStream(new ListTokenSource(scan.tokens())) {
          @Override
          public void consume() {
            super.consume();
            if (index() % LOOK_EVERY == 0) {
              meter.look();
            }
          }
        };
    GripParser parser = new GripParser(tokens);
    parser.removeErrorListeners();
    parser.setErrorHandler(new BailErrorStrategy());
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    try {
      return parser.file();
    } catch (ParseCancellationException mistake) {
      tokens.seek(0);
      parser.reset();
      parser.setErrorHandler(new Recovery(scan, mistakes));
      parser.getInterpreter().setPredictionMode(PredictionMode.LL);
      return parser.file();
    }
  }
}
