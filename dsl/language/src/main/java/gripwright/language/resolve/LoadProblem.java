package gripwright.language.resolve;

import gripwright.finding.Finding;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import gripwright.language.source.SourceLoader.Loaded;
import gripwright.language.source.SourceLoader.Reason;
import gripwright.language.source.Span;
import java.util.Optional;

/** Reports why a file was not read. */
public final class LoadProblem {

  private LoadProblem() {}

  /**
   * Returns the finding about a file; empty if it was read.
   *
   * @param loaded the result of reading it
   * @param path the requested path
   * @param by the file with the {@code use} line; a finding about a text that isn't UTF-8 is placed
   *     in the text itself
   * @param at place of the {@code use} line's path
   * @param limits how much of a file is read
   */
  public static Optional<LocatedFinding> of(
      Loaded loaded, String path, SourceFile by, Span at, Limits limits) {
    return loaded.accept(new Reasons(path, by, at, limits));
  }

  private record Reasons(String path, SourceFile by, Span at, Limits limits)
      implements Loaded.Visitor<Optional<LocatedFinding>> {
    @Override
    public Optional<LocatedFinding> found(Loaded.Found found) {
      return Optional.empty();
    }

    @Override
    public Optional<LocatedFinding> notUtf8(Loaded.NotUtf8 broken) {
      SourceFile file = SourceFile.of(broken.name(), broken.textBefore());
      Span end = new Span(broken.textBefore().length(), 0);
      return Optional.of(
          LocatedFinding.at(file, end, error("syntax.encoding").with("file", broken.name())));
    }

    @Override
    public Optional<LocatedFinding> tooLarge(Loaded.TooLarge large) {
      Finding tooLarge =
          error("syntax.too-large")
              .with("file", path)
              .with("size", large.bytes())
              .with("limit", limits.maxCharacters());
      return Optional.of(LocatedFinding.at(by, at, tooLarge));
    }

    @Override
    public Optional<LocatedFinding> refused(Loaded.Refused refused) {
      Finding finding = error(code(refused.why())).with("file", path);
      boolean locale = refused.why() == Reason.UNNAMEABLE;
      return Optional.of(LocatedFinding.at(by, at, locale ? finding.with("locale", "") : finding));
    }
  }

  private static Finding error(String code) {
    return Finding.error(code, ModelPath.ROOT);
  }

  private static String code(Reason why) {
    return switch (why) {
      case MISSING, UNNAMEABLE -> "name.file-missing";
      case NOT_A_FILE -> "name.not-a-file";
      case OUTSIDE_ROOT -> "name.outside-root";
      case UNREADABLE -> "name.unreadable";
    };
  }
}
