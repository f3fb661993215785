package gripwright.export.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The files that the program wrote into a folder, by which a later run recognizes them. Immutable.
 *
 * @param version of the program
 * @param files SHA-256 by file name, as 64 hexadecimal digits
 * @since 1.0
 */
public record Manifest(String version, SortedMap<String, String> files) {

  /** Copies the files. */
  public Manifest {
    Objects.requireNonNull(version, "version");
    files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** Returns the manifest of texts by file name. */
  public static Manifest of(String version, Map<String, String> texts) {
    SortedMap<String, String> files = new TreeMap<>();
    texts.forEach((name, text) -> files.put(name, Provenance.sha256(text)));
    return new Manifest(version, files);
  }

  /** Returns the manifest with a text; empty if the text is no manifest. */
  public static Optional<Manifest> parse(String text) {
    try (JsonParser json = new JsonFactory().createParser(text)) {
      Optional<Manifest> manifest = manifest(json);
      return json.nextToken() == null ? manifest : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Optional<Manifest> manifest(JsonParser json) throws IOException {
    if (json.nextToken() != JsonToken.START_OBJECT) {
      return Optional.empty();
    }
    Optional<String> version = Optional.empty();
    Optional<SortedMap<String, String>> files = Optional.empty();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      JsonToken value = json.nextToken();
      if (field.equals("version") && value == JsonToken.VALUE_STRING) {
        version = Optional.of(json.getText());
      } else if (field.equals("files") && value == JsonToken.START_OBJECT) {
        files = files(json);
      } else {
        json.skipChildren();
      }
    }
    return version.isPresent() && files.isPresent()
        ? Optional.of(new Manifest(version.get(), files.get()))
        : Optional.empty();
  }

  private static Optional<SortedMap<String, String>> files(JsonParser json) throws IOException {
    SortedMap<String, String> files = new TreeMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String name = json.currentName();
      if (json.nextToken() != JsonToken.VALUE_STRING) {
        return Optional.empty();
      }
      files.put(name, json.getText());
    }
    return Optional.of(files);
  }

  void write(JsonText json) {
    json.object(
        () -> {
          json.field("schemaVersion", JsonDocuments.SCHEMA_VERSION);
          json.field("version", version);
          json.object("files", () -> files.forEach(json::field));
        });
  }
}
