package gripwright.launcher.prelink;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Copies jars and links in the copies what Java would otherwise link at run time: the call sites of
 * lambdas and of the generated methods of records.
 *
 * <p>Such a call site is slow on its first call. A command runs most of them once, so that linking
 * took a quarter of a short command's time. The copies do what the originals do; only class names
 * in stack traces differ. Lambdas that can be serialized, version-specific classes and class files
 * older than Java 11 are not changed. Jars must not be signed.
 */
public final class Prelinker {

  private static final String CLASS = ".class";

  /** Prefix of version-specific entries of jars, which are left as they are. */
  private static final String VERSIONS = "META-INF/versions/";

  private Prelinker() {}

  /**
   * Copies the jars of a folder.
   *
   * @param arguments the folder and the folder of the copies, which is created if needed
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2) {
      throw new IllegalArgumentException("expected two folders: the jars, and their copies");
    }
    Path from = Path.of(arguments[0]);
    Path to = Files.createDirectories(Path.of(arguments[1]));
    List<Path> jars;
    try (Stream<Path> files = Files.list(from)) {
      jars = files.filter(file -> file.toString().endsWith(".jar")).sorted().toList();
    }
    for (Path jar : jars) {
      try (InputStream in = Files.newInputStream(jar);
          OutputStream out = Files.newOutputStream(to.resolve(jar.getFileName()))) {
        copy(in, out);
      }
    }
  }

  /** Copies one jar. */
  static void copy(InputStream jar, OutputStream copy) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    ZipInputStream in = new ZipInputStream(jar);
    for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
      entries.put(entry.getName(), in.readAllBytes());
    }
    Map<String, byte[]> classes = new TreeMap<>();
    entries.forEach(
        (name, bytes) -> {
          if (name.endsWith(CLASS) && !name.startsWith(VERSIONS)) {
            classes.put(name.substring(0, name.length() - CLASS.length()), bytes);
          }
        });
    prelinked(classes).forEach((name, bytes) -> entries.put(name + CLASS, bytes));
    ZipOutputStream out = new ZipOutputStream(copy);
    for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
      ZipEntry made = new ZipEntry(entry.getKey());
      made.setTime(0);
      out.putNextEntry(made);
      out.write(entry.getValue());
      out.closeEntry();
    }
    out.finish();
  }

  /**
   * Links classes.
   *
   * @param classes class files by internal name; the members of a nest are all in it or all missing
   * @return the linked classes and the generated ones
   */
  public static Map<String, byte[]> prelinked(Map<String, byte[]> classes) {
    Map<String, byte[]> linked = new TreeMap<>();
    Map<String, List<String>> members = new TreeMap<>();
    classes.forEach(
        (name, bytes) -> {
          ClassPrelinker linker = ClassPrelinker.of(bytes);
          linked.put(name, linker.linked());
          linked.putAll(linker.made());
          if (!linker.made().isEmpty()) {
            members
                .computeIfAbsent(linker.host(), host -> new ArrayList<>())
                .addAll(linker.made().keySet());
          }
        });
    members.forEach(
        (host, more) -> linked.computeIfPresent(host, (name, bytes) -> withMembers(bytes, more)));
    return linked;
  }

  /** Returns the host of a nest with more members, which may use each other's private methods. */
  private static byte[] withMembers(byte[] host, List<String> more) {
    ClassWriter writer = new ClassWriter(0);
    new ClassReader(host)
        .accept(
            new ClassVisitor(Opcodes.ASM9, writer) {
              @Override
              public void visitEnd() {
                more.forEach(this::visitNestMember);
                super.visitEnd();
              }
            },
            0);
    return writer.toByteArray();
  }
}
