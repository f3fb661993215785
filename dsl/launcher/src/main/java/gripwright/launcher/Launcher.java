package gripwright.launcher;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
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
   * @throws IllegalArgumentException if no class is named
   * @throws ReflectiveOperationException if there is no such class, or it has no {@code main}
   * @throws Throwable whatever its {@code main} throws
   */
  public static void main(String[] arguments) throws Throwable {
    if (arguments.length == 0) {
      throw new IllegalArgumentException("expected the name of a main class");
    }
    ClassArchive.dropUnused(
        System.getProperty("gripwright.archive"), System.getProperty("java.vm.info", ""));
    Method main = Class.forName(arguments[0]).getMethod("main", String[].class);
    try {
      main.invoke(null, (Object) Arrays.copyOfRange(arguments, 1, arguments.length));
    } catch (InvocationTargetException failed) {
      throw failed.getCause();
    }
  }
}
