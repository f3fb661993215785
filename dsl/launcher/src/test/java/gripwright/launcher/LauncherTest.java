package gripwright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher in a folder of its own, with an empty build and a fake Java that prints its
 * arguments.
 */
final class LauncherTest {

  private static final String JAVA =
      """
      #!/bin/sh
      for a in "$@"; do
        case $a in
          -XX:SharedArchiveFile=*) archive=${a#*=} ;;
          -Xshare:dump) dump=yes ;;
          *.Prelinker) link=yes ;;
        esac
      done
      [ -z "${dump-}" ] || echo 'what Java keeps' >"$archive"
      [ -z "${link-}" ] || mkdir "$a"
      [ -z "${link-}" ] || : >"$a/one.jar"
      case " $*" in
        *' -XshowSettings:properties '*) echo "    java.specification.version = ${FAKE_VERSION-17}" ;;
      esac
      echo "LC_ALL=${LC_ALL-}" "$@"
      """;

  /** Stands for Maven: builds what the launcher looks for. */
  private static final String MAVEN =
      """
      #!/bin/sh
      mkdir -p dsl/tools/target/app dsl/launcher/target/run
      : >dsl/tools/target/app/one.jar
      : >dsl/launcher/target/run/own.jar
      """;

  @TempDir Path folder;
  private Path root = Path.of("");
  private Path target = Path.of("");

  @BeforeEach
  void layOut() throws IOException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no shell here");
    layOut(folder.resolve("club"));
  }

  private void layOut(Path place) throws IOException {
    root = place;
    target = root.resolve("dsl/launcher/target");
    Path app = Files.createDirectories(root.resolve("dsl/tools/target/app"));
    Path run = Files.createDirectories(target.resolve("run"));
    Path scripts = Files.createDirectories(root.resolve("dsl/launcher/src/main/sh"));
    Path jdk = Files.createDirectories(root.resolve("jdk/bin"));
    copy(Path.of("../../gripwright"), root.resolve("gripwright"));
    for (String script : List.of("run.sh", "build.sh", "store.sh")) {
      copy(Path.of("src/main/sh", script), scripts.resolve(script));
    }
    Files.writeString(root.resolve("pom.xml"), "");
    Files.writeString(app.resolve("one.jar"), "");
    Files.writeString(run.resolve("own.jar"), "");
    Path java = Files.writeString(jdk.resolve("java"), JAVA);
    assertTrue(java.toFile().setExecutable(true));
    Files.writeString(target.resolve("built"), "");
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
  }

  private int exit;

  private String run(Map<String, String> environment) throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder("/bin/sh", root.resolve("gripwright").toString(), "--version");
    builder.environment().putAll(environment);
    builder.environment().put("JAVA_HOME", root.resolve("jdk").toString());
    Process process = builder.redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    exit = process.exitValue();
    return said;
  }

  private void lock(String said) throws IOException {
    Path lock = Files.createDirectory(target.resolve("lock"));
    Files.writeString(lock.resolve("pid"), said);
  }

  @Test
  void aLockOfAnEndedProcessIsRemoved() throws Exception {
    lock("99999999\n5\n");
    run(Map.of());
    assertEquals(0, exit);
    assertFalse(Files.exists(target.resolve("lock")));
    assertTrue(Files.exists(target.resolve("classes.jsa")));
  }

  @Test
  void aLockWhoseNumberAnotherProcessHasNowIsRemoved() throws Exception {
    lock(ProcessHandle.current().pid() + "\nlong ago\n");
    run(Map.of());
    assertEquals(0, exit);
    assertFalse(Files.exists(target.resolve("lock")));
  }

  @Test
  void anEmptyLockIsRemovedAfterAWhile() throws Exception {
    Files.createDirectory(target.resolve("lock"));
    Path noTime = Files.writeString(root.resolve("jdk/bin/sleep"), "#!/bin/sh\n");
    assertTrue(noTime.toFile().setExecutable(true));
    String path = noTime.getParent() + ":" + System.getenv("PATH");
    assertTrue(run(Map.of("PATH", path)).startsWith("gripwright: waiting for a build"));
    assertEquals(0, exit);
    assertFalse(Files.exists(target.resolve("lock")));
  }

  @Test
  void anArchiveOfAnotherLengthIsMadeAgain() throws Exception {
    run(Map.of());
    assertFalse(run(Map.of()).contains("storing classes"));
    Files.writeString(target.resolve("classes.jsa"), "half");
    assertTrue(run(Map.of()).contains("storing classes"));
    assertEquals("what Java keeps\n", Files.readString(target.resolve("classes.jsa")));
    assertFalse(run(Map.of()).contains("storing classes"));
  }

  @Test
  void javaGetsThePathOfTheArchiveUnlessTheCallerHasOptions() throws Exception {
    run(Map.of());
    assertTrue(run(Map.of()).contains("-Dgripwright.archive=" + target.toRealPath()));
    assertFalse(run(Map.of("JAVA_TOOL_OPTIONS", "-Xshare:off")).contains("gripwright.archive"));
  }

  @Test
  void aPathThatJavaReadsAsTwoIsRefused() throws Exception {
    layOut(folder.resolve("a:b"));
    assertTrue(run(Map.of()).contains("Java reads ':' as a separator of paths"));
    assertEquals(2, exit);
  }

  @Test
  void anAsciiLocaleIsReplacedByUtf8() throws Exception {
    run(Map.of());
    assertTrue(run(Map.of("LC_ALL", "C")).startsWith("LC_ALL=C.UTF-8 "));
    assertTrue(run(Map.of("LC_ALL", "POSIX")).startsWith("LC_ALL=C.UTF-8 "));
    assertTrue(run(Map.of("LC_ALL", "de_DE.UTF-8")).startsWith("LC_ALL=de_DE.UTF-8 "));
  }

  @Test
  void aJavaThatIsTooOldIsNamed() throws Exception {
    assertTrue(run(Map.of("FAKE_VERSION", "11")).contains("needs Java 17 or newer"));
    assertEquals(2, exit);
    assertFalse(Files.exists(target.resolve("lock")));
  }

  @Test
  void aJavaWithoutACompilerCannotBuild() throws Exception {
    Files.delete(target.resolve("built"));
    assertTrue(run(Map.of()).contains("needs a JDK to build"));
    assertEquals(2, exit);
  }

  @Test
  void aNewerSourceIsBuilt() throws Exception {
    Path maven = Files.writeString(root.resolve("mvnw"), MAVEN);
    assertTrue(maven.toFile().setExecutable(true));
    Path javac = Files.writeString(root.resolve("jdk/bin/javac"), "");
    assertTrue(javac.toFile().setExecutable(true));
    run(Map.of());
    assertFalse(run(Map.of()).contains("building once"));
    Path source = root.resolve("dsl/launcher/src/main/sh/run.sh");
    Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(1)));
    assertTrue(run(Map.of()).contains("building once"));
    assertEquals(0, exit);
  }

  @Test
  void theProgramIsStartedFromLinkedJarsThroughTheLauncher() throws Exception {
    run(Map.of());
    String started = run(Map.of());
    Path real = target.toRealPath();
    String classPath = real.resolve("linked/one.jar") + ":" + real.resolve("run/own.jar");
    assertTrue(
        started.contains(
            " -cp " + classPath + " gripwright.launcher.Launcher gripwright.tools.Main --version"),
        started);
  }
}
