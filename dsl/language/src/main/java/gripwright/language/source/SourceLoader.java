package gripwright.language.source;

import java.util.Map;

/**
 * The source of file texts: a folder, memory, an archive.
 *
 * <p>Files are requested by a path relative to the project root, with {@code /} between folders and
 * without {@code .} or {@code ..}. A loader never gives anything from outside its root. Loaders
 * must be safe for use by several threads.
 */
@FunctionalInterface
public interface SourceLoader {

  /**
   * Reads a file.
   *
   * @param path the file, relative to the root
   * @param maxBytes the largest file that is read; for a larger one only the size is returned
   */
  Loaded load(String path, long maxBytes);

  /** The result of reading a file. */
  sealed interface Loaded {

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind of outcome.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits a text. */
      R found(Found loaded);

      /** Visits bytes that are not UTF-8. */
      R notUtf8(NotUtf8 loaded);

      /** Visits a file over the limit. */
      R tooLarge(TooLarge loaded);

      /** Visits nothing to read. */
      R refused(Refused loaded);
    }

    /**
     * The text.
     *
     * @param name the canonical name relative to the root, the same for every path to the file
     * @param text the whole text, including a byte order mark
     */
    record Found(String name, String text) implements Loaded {
      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.found(this);
      }
    }

    /**
     * Bytes that are not UTF-8.
     *
     * @param name the canonical name relative to the root
     * @param textBefore the text before the first invalid byte
     */
    record NotUtf8(String name, String textBefore) implements Loaded {
      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.notUtf8(this);
      }
    }

    /**
     * A file over the limit, which was not read.
     *
     * @param bytes its size, or one more than the limit where the size is not known
     */
    record TooLarge(long bytes) implements Loaded {
      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.tooLarge(this);
      }
    }

    /**
     * Nothing to read.
     *
     * @param why the reason
     */
    record Refused(Reason why) implements Loaded {
      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.refused(this);
      }
    }
  }

  /** Why there is nothing to read. */
  enum Reason {
    /** No such file. */
    MISSING,
    /** A folder, or something else that is not a file. */
    NOT_A_FILE,
    /** Outside the root, by its path or by a link. */
    OUTSIDE_ROOT,
    /** The system denies access. */
    UNREADABLE,
    /** The path has characters that Java can't encode in file names under its startup locale. */
    UNNAMEABLE
  }

  /** Returns a loader without files. */
  static SourceLoader none() {
    return of(Map.of());
  }

  /**
   * Returns a loader of texts in memory. Sizes are compared in UTF-16 units.
   *
   * @param texts text by path relative to the root
   */
  static SourceLoader of(Map<String, String> texts) {
    Map<String, String> copy = Map.copyOf(texts);
    return (path, maxBytes) -> {
      String text = copy.get(path);
      if (text == null) {
        return new Loaded.Refused(Reason.MISSING);
      }
      return text.length() > maxBytes
          ? new Loaded.TooLarge(text.length())
          : new Loaded.Found(path, text);
    };
  }
}
