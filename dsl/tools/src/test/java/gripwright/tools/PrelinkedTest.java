package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.launcher.prelink.Prelinker;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The command line behaves the same when the launcher has linked its classes. */
@Tag("full-build")
final class PrelinkedTest {

  private static final List<String> LINKERS =
      List.of("java/lang/invoke/LambdaMetafactory", "java/lang/runtime/ObjectMethods");

  private static final Map<String, byte[]> OURS = new TreeMap<>();
  private static Map<String, byte[]> linked = Map.of();

  /** Defines the linked classes instead of those of the same names that the tests run in. */
  private static final class Loader extends ClassLoader {

    Loader() {
      super(PrelinkedTest.class.getClassLoader());
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      byte[] bytes = linked.get(name.replace('.', '/'));
      if (bytes == null) {
        return super.loadClass(name, resolve);
      }
      synchronized (getClassLoadingLock(name)) {
        Class<?> known = findLoadedClass(name);
        return known != null ? known : defineClass(name, bytes, 0, bytes.length);
      }
    }
  }

  /** Links our classes on the class path, whether they lie in folders or in jars. */
  @BeforeAll
  static void link() throws IOException {
    long t = System.nanoTime();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path path = Path.of(entry).toAbsolutePath();
      if (path.toString().matches(".*/(core|language|export|tools)/target/.*classes|.*/gripwright-(core|language|export|tools)-[^/]*jar")
          && !path.endsWith("test-classes")) {
        if (Files.isDirectory(path)) {
          collect(path);
        } else {
          try (FileSystem jar = FileSystems.newFileSystem(path)) {
            collect(jar.getPath("/"));
          }
        }
      }
    }
    System.err.println("collect " + (System.nanoTime() - t) / 1000000); t = System.nanoTime();
    linked = Prelinker.prelinked(OURS);
    System.err.println("link " + (System.nanoTime() - t) / 1000000);
  }

  private static void collect(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace(File.separatorChar, '/');
        if (name.endsWith(".class") && !name.endsWith("module-info.class")) {
          OURS.put(name.substring(0, name.length() - ".class".length()), Files.readAllBytes(file));
        }
      }
    }
  }

  @Test
  void noLambdaAndNoRecordIsLeftToLink() {
    assertTrue(linked.size() > OURS.size() + 1000, linked.size() + " classes");
    linked.forEach(
        (name, bytes) -> {
          String text = new String(bytes, StandardCharsets.ISO_8859_1);
          LINKERS.forEach(linker -> assertTrue(!text.contains(linker), name));
        });
  }

  /** Every class is checked by the verifier when it is initialised. */
  @Test
  void javaAcceptsEveryClass() throws ClassNotFoundException {
    long t = System.nanoTime();
    Loader loader = new Loader();
    for (String name : linked.keySet()) {
      Class.forName(name.replace('/', '.'), true, loader);
    }
    System.err.println("accept " + (System.nanoTime() - t) / 1000000);
  }

  /** Runs the same command with the original classes and with the linked ones. */
  @Test
  void aSeasonIsCompiledToTheSameText() throws Exception {
    String season = Path.of("../../examples/plans/season.grip").toString();
    Loader loader = new Loader();
    for (String format : List.of("text", "json")) {
      List<String> arguments = List.of("compile", "--as", format, season);
      long t = System.nanoTime();
      String plain = output(getClass().getClassLoader(), arguments);
    System.err.println("plain " + format + (System.nanoTime() - t) / 1000000); t = System.nanoTime();
      assertTrue(plain.length() > 1000, plain);
      assertEquals(plain, output(loader, arguments));
    System.err.println("linked " + format + (System.nanoTime() - t) / 1000000);
    }
  }

  private static String output(ClassLoader loader, List<String> arguments) throws Exception {
    Class<?> consoles = loader.loadClass("gripwright.tools.command.Console");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Object console =
        consoles
            .getConstructor(OutputStream.class, OutputStream.class, Path.class, boolean.class)
            .newInstance(out, err, Path.of(""), false);
    Object exit =
        loader
            .loadClass("gripwright.tools.Main")
            .getMethod("run", List.class, consoles, Map.class)
            .invoke(null, arguments, console, Map.of());
    assertEquals(0, exit, err.toString(StandardCharsets.UTF_8));
    return out.toString(StandardCharsets.UTF_8);
  }
}
