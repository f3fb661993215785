package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
      [ -z "${link-}" ] || cp "${a%.linked.new}/one.jar" "$a"
      echo "LC_ALL=${LC_ALL-}" "$@"
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
    target = root.resolve("dsl/tools/target");
    Files.createDirectories(target.resolve("app"));
    Files.createDirectories(root.resolve("jdk/bin"));
    Files.copy(
        Path.of("../../gripwright"),
        root.resolve("gripwright"),
        StandardCopyOption.REPLACE_EXISTING,
        StandardCopyOption.COPY_ATTRIBUTES);
    Files.writeString(root.resolve("pom.xml"), "");
    Files.writeString(target.resolve("app/one.jar"), "");
    Path java = Files.writeString(root.resolve("jdk/bin/java"), JAVA);
    assertTrue(java.toFile().setExecutable(true));
    Files.writeString(target.resolve("app.built"), "");
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
    Path lock = Files.createDirectory(target.resolve("app.lock"));
    Files.writeString(lock.resolve("pid"), said);
  }

  @Test
  void aLockOfAnEndedProcessIsRemoved() throws Exception {
    lock("99999999\n5\n");
    run(Map.of());
    assertEquals(0, exit);
    assertFalse(Files.exists(target.resolve("app.lock")));
    assertTrue(Files.exists(target.resolve("app.jsa")));
  }

  @Test
  void aLockWhoseNumberAnotherProcessHasNowIsRemoved() throws Exception {
    lock(ProcessHandle.current().pid() + "\nlong ago\n");
    run(Map.of());
    assertEquals(0, exit);
    assertFalse(Files.exists(target.resolve("app.lock")));
  }

  @Test
  void anEmptyLockIsRemovedAfterAWhile() throws Exception {
    Files.createDirectory(target.resolve("app.lock"));
    assertTrue(run(Map.of()).startsWith("gripwright: waiting for a build"));
    assertEquals(0, exit);
    assertFalse(Files.exists(target.resolve("app.lock")));
  }

  @Test
  void anArchiveOfAnotherLengthIsMadeAgain() throws Exception {
    run(Map.of());
    assertFalse(run(Map.of()).contains("storing classes"));
    Files.writeString(target.resolve("app.jsa"), "half");
    assertTrue(run(Map.of()).contains("storing classes"));
    assertEquals("what Java keeps\n", Files.readString(target.resolve("app.jsa")));
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
    assertTrue(run(Map.of()).contains("Java takes a path with ':' for two"));
    assertEquals(2, exit);
  }

  @Test
  void anAsciiLocaleIsReplacedByUtf8() throws Exception {
    run(Map.of());
    assertTrue(run(Map.of("LC_ALL", "C")).startsWith("LC_ALL=C.UTF-8 "));
    assertTrue(run(Map.of("LC_ALL", "POSIX")).startsWith("LC_ALL=C.UTF-8 "));
    assertTrue(run(Map.of("LC_ALL", "de_DE.UTF-8")).startsWith("LC_ALL=de_DE.UTF-8 "));
  }
}
