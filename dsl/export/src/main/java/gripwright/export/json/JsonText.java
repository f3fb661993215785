package gripwright.export.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import gripwright.quantity.Numbers;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Builds JSON text. Callers never see an exception or a type of the JSON library. Not thread-safe.
 */
final class JsonText {

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private final StringWriter text = new StringWriter();
  private final Layout layout = new Layout();
  private final JsonGenerator json;
  private final Wording wording;
  private final @Nullable Provenance provenance;
  private boolean headed;

  /** Starts a document whose format is another's, such as SARIF. */
  JsonText(Wording wording) {
    this(wording, null);
  }

  JsonText(Wording wording, @Nullable Provenance provenance) {
    this.wording = wording;
    this.provenance = provenance;
    try {
      json = FACTORY.createGenerator(text);
    } catch (IOException e) {
      throw impossible(e);
    }
    json.setPrettyPrinter(layout);
  }

  /** Returns the wording that turns data into words. */
  Wording wording() {
    return wording;
  }

  /** Writes the version of the documents and, once in a document, its provenance. */
  void heading() {
    field("schemaVersion", JsonDocuments.SCHEMA_VERSION);
    if (!headed) {
      provenance(() -> {});
    }
    headed = true;
  }

  /**
   * Writes the provenance.
   *
   * @param more writes further fields of it
   */
  void provenance(Runnable more) {
    if (provenance != null) {
      provenance.write(this, more);
    }
    headed = true;
  }

  /** A step of writing. */
  private interface Step {
    void run() throws IOException;
  }

  /** Writes one element of a list. */
  interface Element<T> {
    void write(T element);
  }

  private void write(Step step) {
    try {
      step.run();
    } catch (IOException e) {
      throw impossible(e);
    }
  }

  private static UncheckedIOException impossible(IOException e) {
    return new UncheckedIOException("writing to memory failed", e);
  }

  void object(Runnable fields) {
    write(json::writeStartObject);
    fields.run();
    write(json::writeEndObject);
  }

  void object(String name, Runnable fields) {
    write(() -> json.writeFieldName(name));
    object(fields);
  }

  /** Writes an object on one line, whatever its contents. */
  void line(Runnable fields) {
    boolean outermost = layout.startLine();
    object(fields);
    if (outermost) {
      layout.endLine();
    }
  }

  <T> void list(String name, Collection<T> elements, Element<? super T> element) {
    write(() -> json.writeFieldName(name));
    write(json::writeStartArray);
    elements.forEach(element::write);
    write(json::writeEndArray);
  }

  /** Writes a text as an element of a list. */
  void text(String value) {
    write(() -> json.writeString(value));
  }

  void field(String name, @Nullable String value) {
    write(() -> json.writeStringField(name, value));
  }

  void field(String name, boolean value) {
    write(() -> json.writeBooleanField(name, value));
  }

  void field(String name, long value) {
    write(() -> json.writeNumberField(name, value));
  }

  /** Writes a number with this many decimals at most. */
  void field(String name, double value, int decimals) {
    write(
        () -> {
          json.writeFieldName(name);
          json.writeNumber(Numbers.rounded(value, decimals));
        });
  }

  /** Writes a number with this many decimals at most, or null. */
  void field(String name, OptionalDouble value, int decimals) {
    if (value.isPresent()) {
      field(name, value.getAsDouble(), decimals);
    } else {
      nothing(name);
    }
  }

  void nothing(String name) {
    write(() -> json.writeNullField(name));
  }

  /** Returns the text, closed by a line feed. */
  String close() {
    write(json::close);
    return text.append('\n').toString();
  }
}
