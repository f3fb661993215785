package gripwright.tools.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
final class Output {

  private Output() {}

  /**
   * Replaces a file: readers see the old one or the new one, never a half.
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
    try {
      // A link stays a link: what it leads to is replaced.
      Path real = Files.exists(target) ? target.toRealPath() : target;
      Path home = real.getParent() == null ? folder : real.getParent();
      Path half = home.resolve("." + real.getFileName() + "." + ProcessHandle.current().pid());
      if (Files.exists(real) && !Files.isWritable(real)) {
        throw new AccessDeniedException(real.toString());
      }
      try {
        Files.writeString(half, text, StandardCharsets.UTF_8);
        keepPermissions(real, half);
        move(half, real);
      } finally {
        Files.deleteIfExists(half);
      }
    } catch (IOException e) {
      throw new UsageException("cannot write `" + path + "`: " + reason(e));
    }
  }

  /**
   * Lets the new file be read and written by those who may the old one, where systems know that.
   */
  private static void keepPermissions(Path old, Path fresh) throws IOException {
    if (Files.exists(old) && Files.getFileStore(old).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(fresh, Files.getPosixFilePermissions(old));
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static String reason(IOException e) {
    return e instanceof AccessDeniedException
        ? "no permission"
        : e instanceof java.nio.file.FileSystemException f && f.getReason() != null
            ? f.getReason()
            : "the system refuses";
  }
}
