package gripwright.launcher.prelink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Prelinked classes behave like classes linked by Java, which is the reference here. */
final class PrelinkerTest {

  private static final String CLASS = ".class";

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

  /** Returns a test class with the classes inside it. */
  private static Map<String, byte[]> withMembers(Class<?> host) throws Exception {
    Path classes = Path.of(host.getProtectionDomain().getCodeSource().getLocation().toURI());
    String prefix = host.getName().replace('.', '/');
    Path first = classes.resolve(prefix + CLASS);
    Map<String, byte[]> found = new TreeMap<>();
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(first.getParent(), host.getSimpleName() + "{,$*}" + CLASS)) {
      for (Path file : files) {
        String name = file.getFileName().toString();
        found.put(
            prefix + name.substring(host.getSimpleName().length(), name.length() - CLASS.length()),
            Files.readAllBytes(file));
      }
    }
    return found;
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
  void jarsKeepEverythingElse() throws Exception {
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
