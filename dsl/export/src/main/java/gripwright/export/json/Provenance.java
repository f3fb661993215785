package gripwright.export.json;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Where a document comes from, so that it can be made again: the version of the program, and the
 * files it read with their SHA-256. Immutable.
 *
 * @param version of the program that hosts the library
 * @param sources the files read, those used by others first
 */
public record Provenance(String version, List<Source> sources) {

  /**
   * A file.
   *
   * @param file its name, relative to the project, with {@code /} between folders
   * @param sha256 of its text in UTF-8, as 64 hexadecimal digits
   */
  public record Source(String file, String sha256) {
    /** Refuses null. */
    public Source {
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(sha256, "sha256");
    }
  }

  /** Copies the list. */
  public Provenance {
    Objects.requireNonNull(version, "version");
    sources = List.copyOf(sources);
  }

  /** Returns the provenance of a document that no file is behind. */
  public static Provenance of(String version) {
    return new Provenance(version, List.of());
  }

  /**
   * Returns the provenance of a document with the files behind it.
   *
   * @param texts texts of the files by name, in the order to be written
   */
  public static Provenance of(String version, Map<String, String> texts) {
    List<Source> sources = new ArrayList<>();
    texts.forEach((file, text) -> sources.add(new Source(file, sha256(text))));
    return new Provenance(version, sources);
  }

  /** Returns the SHA-256 of a text in UTF-8, as 64 hexadecimal digits. */
  public static String sha256(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  void write(JsonText json, Runnable more) {
    json.object(
        "provenance",
        () -> {
          json.field("version", version);
          json.list(
              "sources",
              sources,
              source ->
                  json.line(
                      () -> {
                        json.field("file", source.file());
                        json.field("sha256", source.sha256());
                      }));
          more.run();
        });
  }
}
