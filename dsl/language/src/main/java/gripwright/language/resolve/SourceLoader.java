package gripwright.language.resolve;

import java.util.Map;

/**
 * Where the text of files comes from: a folder, memory, an archive.
 *
 * <p>Files are asked for by a path relative to the project root, with {@code /} between folders and
 * without {@code .} or {@code ..}. A loader never gives anything from outside its root. Loaders
 * must be safe for use by several threads.
 */
@FunctionalInterface
public interface SourceLoader {

  /**
   * Reads a file.
   *
   * @param path the file, relative to the root
   * @param maxBytes the largest file that is read; a larger one is told by its size alone
   */
  Loaded load(String path, long maxBytes);

  /** What came of reading a file. */
  sealed interface Loaded {

    /**
     * The text.
     *
     * @param name the file's one true name relative to the root, the same by whatever path it was
     *     reached
     * @param text all of it, byte order mark included
     */
    record Found(String name, String text) implements Loaded {}

    /**
     * Bytes that are not UTF-8.
     *
     * @param name the file's one true name relative to the root
     * @param textBefore what stands before the first byte that is not
     */
    record NotUtf8(String name, String textBefore) implements Loaded {}

    /**
     * A file over the limit, which was not read.
     *
     * @param bytes its size, or one more than the limit where the size is not known
     */
    record TooLarge(long bytes) implements Loaded {}

    /**
     * Nothing to read.
     *
     * @param why the reason
     */
    record Refused(Reason why) implements Loaded {}
  }

  /** Why there is nothing to read. */
  enum Reason {
    /** No such file. */
    MISSING,
    /** A folder, or something else that is no file. */
    NOT_A_FILE,
    /** Outside the root, by its path or by a link. */
    OUTSIDE_ROOT,
    /** The system does not let us. */
    UNREADABLE
  }

  /** Returns a loader that has no files. */
  static SourceLoader none() {
    return of(Map.of());
  }

  /**
   * Returns a loader of texts held in memory. Sizes are compared in UTF-16 units.
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
