package gripwright.tools;

import java.util.Map;

/** What can be known of the terminal. */
final class Terminal {

  private Terminal() {}

  /** Tells whether colours will be seen as colours: on a terminal, unless the user wants none. */
  @SuppressWarnings("SystemConsoleNull") // asked for below, where it can be asked
  static boolean showsColours(Map<String, String> environment) {
    return environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !"dumb".equals(environment.get("TERM"))
        && System.console() != null
        && isTerminal(System.console());
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
