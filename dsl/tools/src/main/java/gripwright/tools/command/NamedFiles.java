package gripwright.tools.command;

import gripwright.language.ReadOptions;
import gripwright.language.source.Folder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The files named on the command line, and how each is read. Files of several folders are named by
 * their path from the common folder, so that no two files have the same name in findings. The files
 * that a file uses must still be in its own folder, unless {@code --root} allows more.
 */
final class NamedFiles {

  private final Arguments given;
  private final Optional<Path> common;

  private NamedFiles(Arguments given, Optional<Path> common) {
    this.given = given;
    this.common = common;
  }

  static NamedFiles of(Arguments given) throws UsageException {
    Set<Path> folders = new LinkedHashSet<>();
    for (String file : given.rest()) {
      folders.add(folder(given.path(file)));
    }
    boolean several = folders.size() > 1 && given.value(Arguments.ROOT).isEmpty();
    return new NamedFiles(given, several ? common(new ArrayList<>(folders)) : Optional.empty());
  }

  /** Returns how a file is to be read. */
  ReadOptions options(String file) throws UsageException {
    ReadOptions options = given.readOptions();
    if (common.isEmpty()) {
      return options;
    }
    Folder files = Folder.at(common.get()).within(folder(given.path(file)));
    return options.withRoot(common.get()).withFiles(files);
  }

  private static Path folder(Path file) {
    Path absolute = file.toAbsolutePath();
    Path parent = absolute.getParent();
    Path folder = parent == null ? absolute : parent;
    try {
      return folder.toRealPath();
    } catch (IOException e) {
      return folder.normalize();
    }
  }

  /** Returns the innermost common folder; empty if they are on two drives. */
  private static Optional<Path> common(List<Path> folders) {
    @Nullable Path shared = folders.get(0);
    for (Path folder : folders) {
      while (shared != null && !folder.startsWith(shared)) {
        shared = shared.getParent();
      }
    }
    return Optional.ofNullable(shared);
  }
}
