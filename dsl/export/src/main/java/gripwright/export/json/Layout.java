package gripwright.export.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/**
 * Puts one field on a line, indents by two spaces a level and uses line feeds on every system.
 * Small objects such as a hold stay on one line, so that a changed load is one changed line. Not
 * thread-safe.
 */
final class Layout implements PrettyPrinter {

  private int depth;
  private boolean oneLine;

  /** Starts writing without line feeds; returns false if that was already so. */
  boolean startLine() {
    boolean outermost = !oneLine;
    oneLine = true;
    // The line feed before the first item of this line has not been written yet.
    due = outermost;
    return outermost;
  }

  void endLine() {
    oneLine = false;
  }

  private boolean due;

  private void feed(JsonGenerator json) throws IOException {
    if (!oneLine || due) {
      json.writeRaw('\n');
      json.writeRaw("  ".repeat(depth));
    }
    due = false;
  }

  @Override
  public void writeRootValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw('\n');
  }

  @Override
  public void writeStartObject(JsonGenerator json) throws IOException {
    json.writeRaw('{');
    depth++;
  }

  @Override
  public void beforeObjectEntries(JsonGenerator json) throws IOException {
    feed(json);
  }

  @Override
  public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw(": ");
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
    json.writeRaw(oneLine ? ", " : ",");
    feed(json);
  }

  @Override
  public void writeEndObject(JsonGenerator json, int fields) throws IOException {
    depth--;
    if (fields > 0) {
      feed(json);
    }
    json.writeRaw('}');
  }

  @Override
  public void writeStartArray(JsonGenerator json) throws IOException {
    json.writeRaw('[');
    depth++;
  }

  @Override
  public void beforeArrayValues(JsonGenerator json) throws IOException {
    feed(json);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
    boolean inner = oneLine && !due;
    json.writeRaw(inner ? ", " : ",");
    feed(json);
  }

  @Override
  public void writeEndArray(JsonGenerator json, int values) throws IOException {
    depth--;
    if (values > 0) {
      feed(json);
    }
    json.writeRaw(']');
  }
}
