package gripwright.tools.command;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.UUID;

/** Writes files atomically. */
final class Output {

  /** Most links that are followed, as in operating systems. */
  private static final int MOST_LINKS = 40;

  private Output() {}

  /**
   * Replaces a file: readers see the old or the new file, never a part of it. A link stays a link:
   * its target is replaced. A device, a pipe or a file that a process has open is written to
   * directly.
   *
   * @throws UsageException if it cannot be written
   */
  static void replace(Path path, String text) throws UsageException {
    Path target = path.toAbsolutePath();
    Path folder = target.getParent();
    if (folder == null || Files.isDirectory(target)) {
      throw new UsageException("cannot write `" + path + "`: it is a folder");
    }
    if (!Files.isDirectory(folder)) {
      throw new UsageException("cannot write `" + path + "`: there is no folder `" + folder + "`");
    }
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    try {
      if (isStream(target)) {
        // Append, so that the output of other processes to the same file is kept.
        write(target, bytes, StandardOpenOption.WRITE, StandardOpenOption.APPEND);
      } else {
        replaceFile(Files.exists(target) ? target.toRealPath() : target, bytes);
      }
    } catch (IOException e) {
      throw new UsageException("cannot write `" + path + "`: " + reason(e));
    }
  }

  /**
   * Returns a folder, which is created if its parent exists.
   *
   * @throws UsageException if it is a file or can't be created
   */
  static Path folder(Path path) throws UsageException {
    if (Files.isDirectory(path)) {
      return path;
    }
    if (Files.exists(path)) {
      throw new UsageException("cannot write into `" + path + "`: it is not a folder");
    }
    try {
      return Files.createDirectory(path);
    } catch (IOException e) {
      throw new UsageException("cannot create the folder `" + path + "`: " + reason(e));
    }
  }

  /**
   * Returns whether a path is a device, a pipe or a file descriptor of a process, rather than a
   * file in a folder.
   */
  private static boolean isStream(Path target) throws IOException {
    if (!Files.exists(target)) {
      return false;
    }
    Path at = target.normalize();
    for (int links = 0; links < MOST_LINKS; links++) {
      if (at.startsWith("/proc") || at.startsWith("/dev/fd")) {
        return true;
      }
      if (!Files.isSymbolicLink(at)) {
        break;
      }
      at = at.resolveSibling(Files.readSymbolicLink(at)).normalize();
    }
    return !Files.isRegularFile(target);
  }

  private static void replaceFile(Path file, ByteBuffer bytes) throws IOException {
    if (Files.exists(file) && !Files.isWritable(file)) {
      throw new AccessDeniedException(file.toString());
    }
    Path fresh = fresh(file, bytes);
    try {
      move(fresh, file);
    } finally {
      Files.deleteIfExists(fresh);
    }
    flushFolder(file);
  }

  /**
   * Writes a new file beside another, which it is to replace, and returns its path. Nothing is left
   * of it if it can't be written.
   */
  static Path fresh(Path file, ByteBuffer bytes) throws IOException {
    boolean old = Files.exists(file);
    // A random name, so that nobody can place a file or a link there beforehand.
    Path fresh = temporary(file);
    try {
      create(fresh, old);
      write(fresh, bytes, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
      if (old) {
        keepOwnerAndMode(file, fresh);
      }
    } catch (IOException e) {
      Files.deleteIfExists(fresh);
      throw e;
    }
    return fresh;
  }

  /** Returns a random name beside a file. */
  static Path temporary(Path file) {
    return file.resolveSibling("." + UUID.randomUUID() + ".tmp");
  }

  /**
   * Creates a file; one that replaces another has no permissions for others until they are copied.
   */
  private static void create(Path fresh, boolean closed) throws IOException {
    boolean posix = fresh.getFileSystem().supportedFileAttributeViews().contains("posix");
    FileAttribute<?>[] mode =
        closed && posix
            ? new FileAttribute<?>[] {
              PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
            }
            : new FileAttribute<?>[0];
    Files.createFile(fresh, mode);
    fresh.toFile().deleteOnExit(); // in case the program is stopped before the file is moved
  }

  private static void write(Path file, ByteBuffer bytes, OpenOption... how) throws IOException {
    try (FileChannel channel = FileChannel.open(file, how)) {
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      if (Files.isRegularFile(file)) {
        channel.force(true);
      }
    }
  }

  /**
   * Copies owner and permissions of the old file, where the system has them. Only an administrator
   * can change the owner.
   */
  private static void keepOwnerAndMode(Path old, Path fresh) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
    if (view == null || !Files.getFileStore(old).supportsFileAttributeView("posix")) {
      return;
    }
    PosixFileAttributes was = Files.readAttributes(old, PosixFileAttributes.class);
    Set<PosixFilePermission> mode = was.permissions();
    try {
      view.setGroup(was.group());
      view.setOwner(was.owner());
    } catch (IOException e) {
      // keeps the current user as its owner
    }
    Files.setPosixFilePermissions(fresh, mode);
  }

  static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Flushes the folder entry to disk, where a folder can be opened for that. */
  static void flushFolder(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // the file itself has been written
    }
  }

  static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no permission";
    }
    String said = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return said == null ? "the system refuses" : said;
  }
}
