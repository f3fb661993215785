package gripwright.tools;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

/** What can be known of the terminal. */
final class Terminal {

  private Terminal() {}

  /** Tells whether colours will be seen as colours: on a terminal, unless the user wants none. */
  static boolean showsColours(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !"dumb".equals(environment.get("TERM"))
        && isTerminal();
  }

  /** Tells whether messages about the run are shown on a terminal that can erase a line. */
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

  @SuppressWarnings("SystemConsoleNull") // asked for below, where it can be asked
  private static boolean isTerminal() {
    return System.console() != null && isTerminal(System.console());
  }

  /** From Java 22 on there is a console without a terminal too, and a method that tells. */
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
