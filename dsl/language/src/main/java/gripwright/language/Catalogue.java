package gripwright.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The source text of the catalogue: grips, protocols and rules that every file may use without
 * declaring them. Tests prove that this text and the Java form in core are equal.
 */
public final class Catalogue {

  private static final String FOLDER = "catalogue/";

  private Catalogue() {}

  /** Returns the names of the catalogue's files. */
  public static List<String> files() {
    return List.of("grips.grip", "protocols.grip", "rules.grip");
  }

  /**
   * Returns the text of a file of the catalogue.
   *
   * @param file one of {@link #files()}
   * @throws IllegalArgumentException if there is no such file
   */
  public static String text(String file) {
    try (InputStream in = Catalogue.class.getResourceAsStream(FOLDER + file)) {
      if (in == null || !files().contains(file)) {
        throw new IllegalArgumentException("no " + file + " in the catalogue");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
