package gripwright.launcher;

import java.util.Arrays;

/**
 * Starts another program in this JVM. It finds the program by name, so that this module depends on
 * no other.
 */
public final class Launcher {

  private Launcher() {}

  /**
   * Starts a program.
   *
   * @param arguments the name of its main class, then its arguments
   * @throws ReflectiveOperationException if there is no such class, it has no {@code main}, or its
   *     {@code main} fails
   */
  public static void main(String[] arguments) throws ReflectiveOperationException {
    ClassArchive.dropUnused(
        System.getProperty("gripwright.archive"), System.getProperty("java.vm.info", ""));
    Class.forName(arguments[0])
        .getMethod("main", String[].class)
        .invoke(null, (Object) Arrays.copyOfRange(arguments, 1, arguments.length));
  }
}
