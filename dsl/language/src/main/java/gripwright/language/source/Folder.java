package gripwright.language.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Files below a folder on disk. A link that leads out of the folder counts as missing; two paths to
 * one file give the same name. Immutable and thread-safe.
 */
public final class Folder implements SourceLoader {

  private static final char LAST_OF_ASCII = 0x7F;

  private final Path root;
  private final Path inner;

  private Folder(Path root, Path inner) {
    this.root = root;
    this.inner = inner;
  }

  /**
   * Returns the files below a folder.
   *
   * @param root the folder, if it does not exist, there are no files
   */
  public static Folder at(Path root) {
    Path real = real(root);
    return new Folder(real, real);
  }

  /**
   * Returns the files below an inner folder, with paths relative to this folder; files outside the
   * inner folder count as missing.
   */
  public Folder within(Path innerFolder) {
    return new Folder(root, real(innerFolder));
  }

  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      return path.toAbsolutePath().normalize();
    }
  }

  /**
   * Returns the path of a file relative to this folder, with {@code /} between folders; a file
   * outside starts with {@code ..}.
   */
  public String relative(Path file) {
    Path absolute = file.toAbsolutePath();
    Path parent = absolute.getParent();
    Path name = absolute.getFileName();
    if (parent == null || name == null) {
      return "..";
    }
    Path there = real(parent).resolve(name);
    return there.startsWith(root) ? slashed(root.relativize(there)) : "../" + name;
  }

  private static String slashed(Path relative) {
    StringBuilder text = new StringBuilder();
    for (Path part : relative) {
      text.append(text.length() == 0 ? "" : "/").append(part);
    }
    return text.toString();
  }

  @Override
  public Loaded load(String path, long maxBytes) {
    Path file;
    try {
      file = root.resolve(path).normalize();
    } catch (InvalidPathException e) {
      boolean letters = path.chars().anyMatch(c -> c > LAST_OF_ASCII);
      return new Loaded.Refused(letters ? Reason.UNNAMEABLE : Reason.MISSING);
    }
    if (!file.startsWith(inner)) {
      return new Loaded.Refused(Reason.OUTSIDE_ROOT);
    }
    try {
      Path real = file.toRealPath();
      if (!real.startsWith(inner)) {
        return new Loaded.Refused(Reason.OUTSIDE_ROOT);
      }
      if (!Files.isRegularFile(real)) {
        return new Loaded.Refused(Reason.NOT_A_FILE);
      }
      return read(real, maxBytes);
    } catch (NoSuchFileException e) {
      return new Loaded.Refused(Reason.MISSING);
    } catch (IOException e) {
      return new Loaded.Refused(Reason.UNREADABLE);
    }
  }

  private Loaded read(Path real, long maxBytes) throws IOException {
    long size = Files.size(real);
    if (size > maxBytes) {
      return new Loaded.TooLarge(size);
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(real)) {
      bytes = in.readNBytes((int) Math.min(maxBytes + 1, Integer.MAX_VALUE));
    }
    if (bytes.length > maxBytes) {
      return new Loaded.TooLarge(bytes.length);
    }
    return decode(slashed(root.relativize(real)), bytes);
  }

  private static Loaded decode(String name, byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer text = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
    text.flip();
    return result.isError()
        ? new Loaded.NotUtf8(name, text.toString())
        : new Loaded.Found(name, text.toString());
  }
}
