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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
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

  private static final Pattern MODULE =
      Pattern.compile(
          ".*/(core|language|export|tools)/target/(.*/)?classes"
              + "|.*/gripwright-(core|language|export|tools)-[^/]*\\.jar");

  /** Links our classes on the class path, whether they lie in folders or in jars. */
  @BeforeAll
  static void link() throws IOException {
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path path = Path.of(entry).toAbsolutePath();
      if (!MODULE.matcher(path.toString().replace(File.separatorChar, '/')).matches()) {
        continue;
      }
      if (Files.isDirectory(path)) {
        collect(path);
      } else {
        try (FileSystem jar = FileSystems.newFileSystem(path)) {
          collect(jar.getPath("/"));
        }
      }
    }
    linked = Prelinker.prelinked(OURS);
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
    assertTrue(naming(OURS).size() > 300, naming(OURS).size() + " classes to link");
    assertEquals(Set.of(), naming(linked));
    assertTrue(linked.size() > OURS.size() + 1000, linked.size() + " classes");
  }

  /** Returns the classes that name what links lambdas or records. */
  private static Set<String> naming(Map<String, byte[]> classes) {
    Set<String> found = new TreeSet<>();
    classes.forEach(
        (name, bytes) -> {
          String text = new String(bytes, StandardCharsets.ISO_8859_1);
          if (LINKERS.stream().anyMatch(text::contains)) {
            found.add(name);
          }
        });
    return found;
  }

  /** Every class is checked by the verifier when it is initialised. */
  @Test
  void javaAcceptsEveryClass() throws ClassNotFoundException {
    Loader loader = new Loader();
    for (String name : linked.keySet()) {
      Class.forName(name.replace('/', '.'), true, loader);
    }
  }

  /** Each format once: everything before the formats is the same for both. */
  @Test
  void aPlanIsCompiledToTheSameText() throws Exception {
    Loader loader = new Loader();
    assertWritesTheSame(loader, "json", "season.grip");
    assertWritesTheSame(loader, "text", "first-weeks.grip");
  }

  private static void assertWritesTheSame(Loader loader, String format, String plan)
      throws Exception {
    List<String> arguments =
        List.of("compile", "--as", format, Path.of("../../examples/plans", plan).toString());
    String expected = output(PrelinkedTest.class.getClassLoader(), arguments);
    assertTrue(expected.length() > 1000, expected);
    assertEquals(expected, output(loader, arguments));
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
