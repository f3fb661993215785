package gripwright.tools;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

/** Detects the properties of the terminal. */
final class Terminal {

  private Terminal() {}

  /** Returns whether to use colours: on a terminal, unless the user disabled them. */
  static boolean showsColours(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !"dumb".equals(environment.get("TERM"))
        && isTerminal();
  }

  /** Returns whether messages about the run are shown on a terminal that can erase a line. */
  static boolean showsMessages(Map<String, String> environment) {
    if ("dumb".equals(environment.get("TERM"))) {
      return false;
    }
    try {
      String stream = Path.of("/dev/stderr").toRealPath().toString();
      return stream.startsWith("/dev/pts/") || stream.startsWith("/dev/tty");
    } catch (IOException e) {
      return isTerminal(); // a platform without such files
    }
  }

  @SuppressWarnings("SystemConsoleNull") // checked below where possible
  private static boolean isTerminal() {
    return System.console() != null && isTerminal(System.console());
  }

  /** From Java 22 on, a console may exist without a terminal; a method added there tells. */
  private static boolean isTerminal(java.io.Console console) {
    try {
      return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
