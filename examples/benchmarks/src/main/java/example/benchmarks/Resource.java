package example.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads text resources next to the classes. */
final class Resource {

  private Resource() {}

  static String text(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("no " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
