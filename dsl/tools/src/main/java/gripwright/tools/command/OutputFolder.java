package gripwright.tools.command;

import gripwright.export.json.Manifest;
import gripwright.export.json.Provenance;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A folder for the files of one run. A list of them, {@value #MANIFEST}, lets a later run replace
 * them; a file that somebody else wrote or changed is never touched. The files of a new project
 * have no such list, since they belong to the user from then on.
 */
final class OutputFolder {

  /** Name of the list of files. */
  static final String MANIFEST = "manifest.json";

  /** How files are written, so that a test can let it fail. */
  interface Disk {
    /** Writes a new file beside another and returns its path; leaves nothing if that fails. */
    Path fresh(Path file, ByteBuffer bytes) throws IOException;

    /** Moves a file, replacing another. */
    void move(Path from, Path to) throws IOException;
  }

  private static final Disk REAL =
      new Disk() {
        @Override
        public Path fresh(Path file, ByteBuffer bytes) throws IOException {
          return Output.fresh(file, bytes);
        }

        @Override
        public void move(Path from, Path to) throws IOException {
          Output.move(from, to);
        }
      };

  private final Path folder;
  private final Map<String, String> texts;
  private final boolean replaces;
  private final Disk disk;

  private OutputFolder(Path folder, Map<String, String> texts, boolean replaces, Disk disk) {
    this.folder = folder;
    this.texts = texts;
    this.replaces = replaces;
    this.disk = disk;
  }

  /**
   * Checks that a new project may be written into a folder, without writing anything.
   *
   * @param folder a new or an empty folder; its parent exists
   * @param files texts by file name
   * @throws UsageException if the folder has files or can't be used
   */
  static OutputFolder empty(Path folder, Map<String, String> files) throws UsageException {
    return empty(folder, files, REAL);
  }

  static OutputFolder empty(Path folder, Map<String, String> files, Disk disk)
      throws UsageException {
    if (isThere(folder) && !isEmpty(folder)) {
      throw new UsageException(
          "the folder `" + folder + "` is not empty; name a new or an empty folder");
    }
    return new OutputFolder(folder, new LinkedHashMap<>(files), false, disk);
  }

  /**
   * Checks that files may be written into a folder, without writing anything.
   *
   * @param folder the folder; its parent exists
   * @param files texts by file name; none is called {@value #MANIFEST}
   * @throws UsageException if the folder can't be used, or a file in it isn't ours to replace
   */
  static OutputFolder checked(Path folder, Map<String, String> files) throws UsageException {
    return checked(folder, files, REAL);
  }

  static OutputFolder checked(Path folder, Map<String, String> files, Disk disk)
      throws UsageException {
    if (files.containsKey(MANIFEST)) {
      throw new IllegalArgumentException("a file called " + MANIFEST);
    }
    Manifest known = Manifest.of(Version.text(), Map.of());
    if (isThere(folder) && !isEmpty(folder)) {
      known = manifest(folder);
      for (Map.Entry<String, String> file : files.entrySet()) {
        checkFile(folder.resolve(file.getKey()), file.getValue(), known);
      }
    }
    Map<String, String> all = new LinkedHashMap<>(files);
    all.put(MANIFEST, manifest(known, files));
    return new OutputFolder(folder, all, true, disk);
  }

  /** Returns whether the folder exists; if it doesn't, it can be created. */
  private static boolean isThere(Path folder) throws UsageException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      if (!Files.isDirectory(folder)) {
        throw new UsageException("cannot write into `" + folder + "`: it is not a folder");
      }
      return true;
    }
    Path parent = folder.toAbsolutePath().getParent();
    if (parent == null || !Files.isDirectory(parent)) {
      throw new UsageException(
          "cannot create the folder `" + folder + "`: there is no folder `" + parent + "`");
    }
    return false;
  }

  private static boolean isEmpty(Path folder) throws UsageException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.findAny().isEmpty();
    } catch (IOException e) {
      throw new UsageException("cannot read the folder `" + folder + "`: " + Output.reason(e));
    }
  }

  /** Returns the list of the files that an earlier run wrote. */
  private static Manifest manifest(Path folder) throws UsageException {
    Path file = folder.resolve(MANIFEST);
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UsageException(
          "`"
              + folder
              + "` has files and no "
              + MANIFEST
              + ", so they were not written by this program; name a new or an empty folder");
    }
    return Manifest.parse(read(file))
        .orElseThrow(
            () ->
                new UsageException(
                    "`"
                        + file
                        + "` is not a list that this program wrote; restore it, or name a new"
                        + " folder"));
  }

  /** Refuses a file that an earlier run didn't write, or that was changed since. */
  private static void checkFile(Path file, String text, Manifest known) throws UsageException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UsageException(
          "`" + file + "` is in the way: it is no ordinary file; move it, or name a new folder");
    }
    String now = read(file);
    if (now.equals(text)) {
      return;
    }
    String hash = known.files().get(String.valueOf(file.getFileName()));
    if (hash == null) {
      throw new UsageException(
          "`"
              + file
              + "` is in the way: it was not written by this program; move it, or name a new"
              + " folder");
    }
    if (!hash.equals(Provenance.sha256(now))) {
      throw new UsageException(
          "`"
              + file
              + "` was changed after it was written; move it to keep the changes, or delete it,"
              + " and run the command again");
    }
    if (!Files.isWritable(file)) {
      throw new UsageException("cannot write `" + file + "`: no permission");
    }
  }

  private static String read(Path file) throws UsageException {
    try {
      // Bytes that are no UTF-8 become other characters, so the file counts as changed.
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UsageException("cannot read `" + file + "`: " + Output.reason(e));
    }
  }

  /** Returns the new list: files of earlier runs that this one doesn't write stay in it. */
  private static String manifest(Manifest known, Map<String, String> files) {
    SortedMap<String, String> all = new TreeMap<>(known.files());
    all.putAll(Manifest.of(Version.text(), files).files());
    return Console.documents(List.of()).manifest(new Manifest(Version.text(), all));
  }

  /**
   * Writes the files: all of them first under temporary names, then each under its own. If one
   * can't be written, the folder is as it was before.
   *
   * @throws UsageException if a file can't be written
   */
  void write() throws UsageException {
    boolean created = !Files.exists(folder);
    Output.folder(folder);
    Map<Path, Path> fresh = new LinkedHashMap<>();
    Replaced replaced = new Replaced();
    Path at = folder;
    try {
      for (Map.Entry<String, String> file : texts.entrySet()) {
        at = folder.resolve(file.getKey());
        byte[] bytes = file.getValue().getBytes(StandardCharsets.UTF_8);
        fresh.put(at, disk.fresh(at, ByteBuffer.wrap(bytes)));
      }
      for (Map.Entry<Path, Path> file : fresh.entrySet()) {
        at = file.getKey();
        replaced.replace(at, file.getValue());
      }
    } catch (IOException e) {
      replaced.undo();
      fresh.values().forEach(OutputFolder::delete);
      if (created) {
        delete(folder);
      }
      throw new UsageException(
          "cannot write `" + at + "`: " + Output.reason(e) + "; nothing was written");
    }
    replaced.forget();
    Output.flushFolder(at);
  }

  /** The files replaced so far, and where the old ones are. */
  private final class Replaced {
    private final Map<Path, Path> olds = new LinkedHashMap<>();
    private final Map<Path, Path> news = new LinkedHashMap<>();

    void replace(Path file, Path fresh) throws IOException {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !replaces) {
        throw new FileSystemException(file.toString(), null, "another program wrote it just now");
      }
      if (Files.exists(file)) {
        Path old = Output.temporary(file);
        disk.move(file, old);
        olds.put(file, old);
      }
      disk.move(fresh, file);
      news.put(file, fresh);
    }

    void undo() {
      news.keySet().forEach(OutputFolder::delete);
      olds.forEach(
          (file, old) -> {
            try {
              Output.move(old, file);
            } catch (IOException e) {
              // the old file stays under its temporary name
            }
          });
    }

    void forget() {
      olds.values().forEach(OutputFolder::delete);
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // stays; the error that led here is reported
    }
  }
}
