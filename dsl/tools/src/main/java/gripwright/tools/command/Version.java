package gripwright.tools.command;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;

/** The version of the program, read from its jar. */
public final class Version {

  private Version() {}

  /** Returns the version, such as {@code 1.0.0}; {@code in development} outside a jar. */
  public static String text() {
    Properties properties = new Properties();
    try (InputStream in =
        Version.class.getResourceAsStream(
            "/META-INF/maven/gripwright/gripwright-tools/pom.properties")) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException e) {
      return "of unknown version";
    }
    return properties.getProperty("version", "in development");
  }
}
