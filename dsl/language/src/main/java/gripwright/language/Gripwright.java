package gripwright.language;

import gripwright.budget.Meter;
import gripwright.budget.OverBudget;
import gripwright.finding.ModelPath;
import gripwright.grip.StandardGrips;
import gripwright.language.build.ModelBuilder;
import gripwright.language.check.Checked;
import gripwright.language.check.Checker;
import gripwright.language.check.Standard;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.format.Formatted;
import gripwright.language.format.Formatter;
import gripwright.language.resolve.LoadProblem;
import gripwright.language.resolve.Names;
import gripwright.language.resolve.Project;
import gripwright.language.resolve.Resolver;
import gripwright.language.source.Folder;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.source.SourceLoader;
import gripwright.language.source.Span;
import gripwright.language.syntax.Reader;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.StandardRules;
import gripwright.season.BudgetFindings;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads plans: from a file on disk, or from a text.
 *
 * <p>Mistakes in the text never throw: see {@link Reading#findings()}. Reading is bounded by {@link
 * ReadOptions#limits()} and {@link ReadOptions#budget()}; a file is refused by its size before it
 * is read. A reading stopped by the budget contains the catalogue and one finding, and nothing
 * else. Thread-safe.
 */
public final class Gripwright {

  private static final Standard CATALOGUE =
      new Standard(StandardGrips.byName(), StandardProtocols.byName(), StandardRules.sets());

  private Gripwright() {}

  /** Reads a file and the files it uses, which must lie in its folder or below. */
  public static Reading read(Path file) {
    return read(file, ReadOptions.standard());
  }

  /**
   * Reads a file and the files it uses.
   *
   * @param file the file; if it cannot be read, {@link Reading#fileRead()} is false
   * @param options the folder {@code use} may read from, and limits
   */
  public static Reading read(Path file, ReadOptions options) {
    Path parent = file.toAbsolutePath().getParent();
    Path root = options.root().orElse(parent == null ? file.toAbsolutePath() : parent);
    Folder folder = Folder.at(root);
    return read(folder.relative(file), options.files().orElse(folder), options, CATALOGUE);
  }

  /**
   * Reads a text that uses no files.
   *
   * @param name name of the text in findings
   * @param text the text
   */
  public static Reading read(String name, String text) {
    return read(name, text, ReadOptions.standard());
  }

  /**
   * Reads a text.
   *
   * @param name name of the text in findings; files it uses are looked up relative to it
   * @param text the text
   * @param options the source of the files it uses, and limits
   */
  public static Reading read(String name, String text, ReadOptions options) {
    SourceLoader others =
        options
            .files()
            .orElseGet(
                () -> options.root().<SourceLoader>map(Folder::at).orElse(SourceLoader.none()));
    SourceLoader loader =
        (path, maxBytes) ->
            path.equals(name)
                ? new SourceLoader.Loaded.Found(name, text)
                : others.load(path, maxBytes);
    return read(name, loader, options, CATALOGUE);
  }

  /**
   * Formats a file's text in the canonical layout; files it uses are not read, and nothing is
   * written.
   *
   * @param file the file; if it cannot be read, {@link Formatted#fileRead()} is false
   * @param options the folder that the file lies in, and limits
   */
  public static Formatted format(Path file, ReadOptions options) {
    Path parent = file.toAbsolutePath().getParent();
    Path root = options.root().orElse(parent == null ? file.toAbsolutePath() : parent);
    Folder folder = Folder.at(root);
    String path = folder.relative(file);
    Limits limits = limits(options);
    SourceLoader.Loaded loaded = options.files().orElse(folder).load(path, limits.maxCharacters());
    if (loaded instanceof SourceLoader.Loaded.Found found) {
      return Formatter.format(SourceFile.of(found.name(), found.text()), limits);
    }
    SourceFile unread = SourceFile.of(path, "");
    return LoadProblem.of(loaded, path, unread, new Span(0, 0), limits)
        .map(
            problem ->
                Formatted.refused(problem.file(), List.of(problem), problem.file() != unread))
        .orElseThrow();
  }

  static Reading read(String name, SourceLoader loader, ReadOptions options, Standard catalogue) {
    Meter meter = options.budget().meter();
    try {
      Project project = Resolver.resolve(name, loader, limits(options), catalogue.names(), meter);
      Checked checked = Checker.check(project, catalogue, meter);
      return new Reading(ModelBuilder.build(project, checked), project.mainRead(), options);
    } catch (OverBudget stop) {
      return stopped(name, stop, options, catalogue);
    }
  }

  /** Returns a reading that contains only the catalogue and the reason. */
  private static Reading stopped(
      String name, OverBudget stop, ReadOptions options, Standard catalogue) {
    SourceFile unread = SourceFile.of(name, "");
    LocatedFinding why =
        LocatedFinding.at(unread, new Span(0, 0), BudgetFindings.of(stop, ModelPath.ROOT));
    Names nothing =
        new Names(
            List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    Project project =
        new Project(List.of(Reader.parse(unread)), nothing, false, true, List.of(why));
    Checked checked = Checker.check(project, catalogue, Meter.unbounded());
    return new Reading(ModelBuilder.build(project, checked), true, options);
  }

  /** Returns the limits, with room for the requested number of findings of a file. */
  private static Limits limits(ReadOptions options) {
    Limits limits = options.limits();
    return new Limits(
        limits.maxCharacters(),
        limits.maxTokens(),
        limits.maxNesting(),
        limits.maxOperators(),
        Math.max(limits.maxFindings(), options.maxFindingsPerFile()));
  }
}
