package gripwright.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The class data archive that the launcher keeps for a quick start. A JVM that finds it damaged
 * runs without it; this class then deletes it, so that the next run creates a new one.
 */
final class ClassArchive {

  private ClassArchive() {}

  /**
   * Deletes an archive that is not in use.
   *
   * @param archive its path, given by the launcher; null if there is none
   * @param machine the JVM's description of itself, which contains {@code sharing} if it uses an
   *     archive
   */
  static void dropUnused(@Nullable String archive, String machine) {
    if (archive == null || archive.isEmpty() || machine.contains("sharing")) {
      return;
    }
    try {
      Files.deleteIfExists(Path.of(archive));
    } catch (IOException | InvalidPathException e) {
      // in a read-only folder it stays, and every run starts slower
    }
  }
}
