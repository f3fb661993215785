package gripwright.launcher.prelink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Prelinked classes behave like classes linked by Java, which is the reference here. */
final class PrelinkerTest {

  /** Defines classes of its own instead of those of the same names that the tests run in. */
  private static final class Loader extends ClassLoader {
    private final Map<String, byte[]> classes;

    Loader(Map<String, byte[]> classes) {
      super(PrelinkerTest.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      byte[] bytes = classes.get(name.replace('.', '/'));
      if (bytes == null) {
        return super.loadClass(name, resolve);
      }
      synchronized (getClassLoadingLock(name)) {
        Class<?> known = findLoadedClass(name);
        return known != null ? known : defineClass(name, bytes, 0, bytes.length);
      }
    }
  }

  private static boolean isClass(Path file) {
    return file.toString().endsWith(".class") && !file.endsWith("module-info.class");
  }

  private static Map<String, byte[]> classesIn(Path folder) throws IOException {
    Map<String, byte[]> classes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(PrelinkerTest::isClass).toList()) {
        String name = folder.relativize(file).toString().replace(File.separatorChar, '/');
        classes.put(name.substring(0, name.length() - ".class".length()), Files.readAllBytes(file));
      }
    }
    return classes;
  }

  private static Map<String, byte[]> ours() throws IOException {
    return ours(path -> true);
  }

  /** Returns our classes on the class path, whether they lie in folders or in jars. */
  private static Map<String, byte[]> ours(Predicate<Path> wanted) throws IOException {
    Map<String, byte[]> classes = new TreeMap<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path path = Path.of(entry);
      if (!wanted.test(path.getFileName())) {
        continue;
      }
      if (Files.isDirectory(path)) {
        classes.putAll(classesIn(path));
      } else if (path.getFileName().toString().startsWith("gripwright-")) {
        try (InputStream jar = Files.newInputStream(path)) {
          entries(jar.readAllBytes())
              .forEach(
                  (name, bytes) -> {
                    if (isClass(Path.of(name))) {
                      classes.put(name.substring(0, name.length() - ".class".length()), bytes);
                    }
                  });
        }
      }
    }
    return classes;
  }

  private static Map<String, byte[]> entries(byte[] jar) throws IOException {
    Map<String, byte[]> entries = new TreeMap<>();
    ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(jar));
    for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
      entries.put(entry.getName(), in.readAllBytes());
    }
    return entries;
  }

  private static final Set<String> LINKERS =
      Set.of(
          "java/lang/invoke/LambdaMetafactory.metafactory",
          "java/lang/runtime/ObjectMethods.bootstrap");

  /** Returns lambdas and record methods that Java would still have to link. */
  private static List<String> unlinked(Map<String, byte[]> classes) {
    List<String> sites = new ArrayList<>();
    classes.forEach(
        (name, bytes) ->
            new ClassReader(bytes)
                .accept(
                    new ClassVisitor(Opcodes.ASM9) {
                      @Override
                      public MethodVisitor visitMethod(
                          int access,
                          String method,
                          String descriptor,
                          @Nullable String signature,
                          String @Nullable [] exceptions) {
                        return new MethodVisitor(Opcodes.ASM9) {
                          @Override
                          public void visitInvokeDynamicInsn(
                              String called, String type, Handle bootstrap, Object... arguments) {
                            String linker = bootstrap.getOwner() + "." + bootstrap.getName();
                            if (LINKERS.contains(linker)) {
                              sites.add(name + "." + called);
                            }
                          }
                        };
                      }
                    },
                    0));
    return sites;
  }

  private static Map<String, byte[]> withMembers(Class<?> host) throws IOException {
    Map<String, byte[]> classes = ours();
    classes.keySet().removeIf(n -> !(n + "$").startsWith(host.getName().replace('.', '/') + "$"));
    return classes;
  }

  private static void assertTellsTheSame(Class<? extends Callable<String>> type) throws Exception {
    Map<String, byte[]> classes = withMembers(type);
    assertTrue(unlinked(classes).size() > 3, "nothing to link");
    Map<String, byte[]> linked = Prelinker.prelinked(classes);
    assertEquals(List.of(), unlinked(linked));
    Class<?> again = new Loader(linked).loadClass(type.getName());
    assertNotSame(type, again);
    assertEquals(
        type.getConstructor().newInstance().call(),
        ((Callable<?>) again.getConstructor().newInstance()).call());
  }

  @Test
  void lambdasBehaveAsBefore() throws Exception {
    assertTellsTheSame(Shapes.class);
  }

  @Test
  void recordsBehaveAsBefore() throws Exception {
    assertTellsTheSame(Values.class);
  }

  @Test
  void jarsKeepEverythingElse() throws IOException {
    byte[] text = "text".getBytes(StandardCharsets.UTF_8);
    byte[] shapes = withMembers(Shapes.class).get("gripwright/launcher/prelink/Shapes");
    ByteArrayOutputStream jar = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(jar)) {
      for (String name : List.of("META-INF/MANIFEST.MF", "META-INF/versions/21/Shapes.class")) {
        out.putNextEntry(new ZipEntry(name));
        out.write(name.endsWith("F") ? text : shapes);
        out.closeEntry();
      }
    }
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    Prelinker.copy(new ByteArrayInputStream(jar.toByteArray()), copy);
    Map<String, byte[]> before = entries(jar.toByteArray());
    Map<String, byte[]> after = entries(copy.toByteArray());
    assertEquals(before.keySet(), after.keySet());
    before.forEach((name, bytes) -> assertTrue(Arrays.equals(bytes, after.get(name)), name));
  }
}
