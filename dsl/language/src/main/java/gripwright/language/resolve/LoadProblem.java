package gripwright.language.resolve;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.SourceLoader.Loaded;
import gripwright.language.resolve.SourceLoader.Reason;
import gripwright.language.source.SourceFile;
import gripwright.language.source.Span;
import gripwright.language.syntax.Limits;
import java.util.Optional;

/** Says why a file was not read. */
public final class LoadProblem {

  private LoadProblem() {}

  /**
   * Returns what is wrong with a file, or nothing if it was found.
   *
   * @param loaded what came of reading it
   * @param path as it was asked for
   * @param by the file that asked for it; of a text that isn't UTF-8 the place is in itself
   * @param at where it was asked for
   * @param limits how much of a file is read
   */
  public static Optional<LocatedFinding> of(
      Loaded loaded, String path, SourceFile by, Span at, Limits limits) {
    if (loaded instanceof Loaded.NotUtf8 broken) {
      SourceFile file = SourceFile.of(broken.name(), broken.textBefore());
      Span end = new Span(broken.textBefore().length(), 0);
      return Optional.of(
          LocatedFinding.at(file, end, error("syntax.encoding").with("file", broken.name())));
    }
    if (loaded instanceof Loaded.TooLarge large) {
      Finding tooLarge =
          error("syntax.too-large")
              .with("file", path)
              .with("size", large.bytes())
              .with("limit", limits.maxCharacters());
      return Optional.of(LocatedFinding.at(by, at, tooLarge));
    }
    if (loaded instanceof Loaded.Refused refused) {
      return Optional.of(LocatedFinding.at(by, at, error(code(refused.why())).with("file", path)));
    }
    return Optional.empty();
  }

  private static Finding error(String code) {
    return Finding.error(code, ModelPath.ROOT);
  }

  private static String code(Reason why) {
    return switch (why) {
      case MISSING -> "name.file-missing";
      case NOT_A_FILE -> "name.not-a-file";
      case OUTSIDE_ROOT -> "name.outside-root";
      case UNREADABLE -> "name.unreadable";
    };
  }
}
