package gripwright.tools.command;

import gripwright.export.json.Provenance;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes a set of files into a folder, all or none. A manifest says which files are ours, each with
 * its SHA-256: in a folder that exists only files that the manifest names and that nobody changed
 * are replaced, and everything else is left.
 */
final class OutputFolder {

  /** The file that says which files are ours. */
  static final String MANIFEST = "manifest.json";

  private static final Pattern ENTRY =
      Pattern.compile("\\{\"file\": \"([^\"]+)\", \"sha256\": \"([0-9a-f]{64})\"\\}");

  private OutputFolder() {}

  /**
   * Writes the files.
   *
   * @param texts texts of the files by name
   * @throws UsageException if the folder is not ours, a file in it was changed, or it can't be
   *     written; then nothing is written
   */
  static void write(Path folder, Map<String, String> texts) throws UsageException {
    Map<String, String> ours = new TreeMap<>();
    if (Files.exists(folder)) {
      if (!Files.isDirectory(folder)) {
        throw new UsageException("cannot write into `" + folder + "`: it is not a folder");
      }
      ours.putAll(manifest(folder));
      refuseStrangers(folder, ours, texts);
    }
    Map<String, String> all = new LinkedHashMap<>(texts);
    all.put(MANIFEST, manifest(texts));
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UsageException("cannot create the folder `" + folder + "`: " + reason(e));
    }
    moveAll(folder, all);
    removeOld(folder, ours, texts);
  }

  private static Map<String, String> manifest(Path folder) throws UsageException {
    Path file = folder.resolve(MANIFEST);
    Map<String, String> entries = new TreeMap<>();
    try {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
        Matcher found = ENTRY.matcher(Files.readString(file));
        while (found.find()) {
          entries.put(found.group(1), found.group(2));
        }
        return entries;
      }
      try (Stream<Path> inside = Files.list(folder)) {
        if (inside.findAny().isPresent()) {
          throw new UsageException(
              "the folder `"
                  + folder
                  + "` has files that this program did not write; name an empty or a new one");
        }
      }
      return entries;
    } catch (IOException e) {
      throw new UsageException("cannot read the folder `" + folder + "`: " + reason(e));
    }
  }

  private static void refuseStrangers(
      Path folder, Map<String, String> ours, Map<String, String> texts) throws UsageException {
    for (String name : texts.keySet()) {
      Path file = folder.resolve(name);
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        continue;
      }
      String known = ours.get(name);
      if (known == null || !known.equals(hash(file))) {
        throw new UsageException(
            "`"
                + file
                + "` "
                + (known == null ? "is not from this program" : "was changed since")
                + "; move it away, or name another folder");
      }
    }
  }

  private static String hash(Path file) throws UsageException {
    try {
      return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          ? Provenance.sha256(new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
          : "";
    } catch (IOException e) {
      throw new UsageException("cannot read `" + file + "`: " + reason(e));
    }
  }

  private static String manifest(Map<String, String> texts) {
    StringBuilder json = new StringBuilder("{\n  \"version\": \"");
    json.append(Version.text()).append("\",\n  \"files\": [\n");
    int left = texts.size();
    for (Map.Entry<String, String> each : texts.entrySet()) {
      json.append("    {\"file\": \"").append(each.getKey()).append("\", \"sha256\": \"");
      json.append(Provenance.sha256(each.getValue())).append("\"}");
      json.append(--left > 0 ? ",\n" : "\n");
    }
    return json.append("  ]\n}\n").toString();
  }

  /** Writes every file beside its place first, so that a full disk leaves all as it was. */
  private static void moveAll(Path folder, Map<String, String> texts) throws UsageException {
    Map<Path, Path> fresh = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> each : texts.entrySet()) {
        Path file = folder.resolve(each.getKey());
        Path beside = folder.resolve("." + UUID.randomUUID() + ".tmp");
        fresh.put(beside, file);
        Files.writeString(beside, each.getValue());
      }
      for (Map.Entry<Path, Path> each : fresh.entrySet()) {
        Files.move(each.getKey(), each.getValue(), StandardCopyOption.REPLACE_EXISTING);
      }
    } catch (IOException e) {
      throw new UsageException("cannot write into `" + folder + "`: " + reason(e));
    } finally {
      fresh.keySet().forEach(OutputFolder::delete);
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      // nothing more can be done for a temporary file
    }
  }

  /** Removes files of an earlier run that this one has no more, unless they were changed. */
  private static void removeOld(Path folder, Map<String, String> ours, Map<String, String> texts)
      throws UsageException {
    for (Map.Entry<String, String> each : ours.entrySet()) {
      Path file = folder.resolve(each.getKey()).normalize();
      if (!texts.containsKey(each.getKey())
          && file.startsWith(folder.normalize())
          && each.getValue().equals(hash(file))) {
        delete(file);
      }
    }
  }

  private static String reason(IOException e) {
    String said = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return said == null ? "the system refuses" : said;
  }
}
