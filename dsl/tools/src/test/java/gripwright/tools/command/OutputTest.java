package gripwright.tools.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class OutputTest {

  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private void assumePosix() throws IOException {
    assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "no modes here");
  }

  @Test
  void aFileIsReplacedWithItsModeAndWithoutLeftovers() throws Exception {
    assumePosix();
    Path file = folder.resolve("plan.txt");
    Files.writeString(file, "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-x---"));
    Output.replace(file, "new");
    assertEquals("new", Files.readString(file));
    assertEquals("rwxr-x---", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    Output.replace(folder.resolve("fresh.txt"), "fresh");
    assertEquals(List.of("fresh.txt", "plan.txt"), names());
  }

  @Test
  void aLinkAtAPredictableTemporaryNameIsNotFollowed() throws Exception {
    assumePosix();
    Path file = folder.resolve("plan.txt");
    Path other = folder.resolve("other.txt");
    Files.writeString(other, "mine");
    Files.createSymbolicLink(
        folder.resolve(".plan.txt." + ProcessHandle.current().pid()), Path.of("other.txt"));
    Output.replace(file, "new");
    assertEquals("mine", Files.readString(other));
    assertEquals("new", Files.readString(file));
  }

  @Test
  void aDanglingLinkIsReplacedNotFollowed() throws Exception {
    assumePosix();
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("nowhere"));
    Output.replace(link, "new");
    assertFalse(Files.exists(folder.resolve("nowhere")));
    assertEquals("new", Files.readString(link));
    assertEquals(List.of("link"), names());
  }

  @Test
  void aPipeIsWrittenTo() throws Exception {
    Path pipe = folder.resolve("pipe");
    try {
      assumeTrue(
          new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0, "no pipes here");
    } catch (IOException e) {
      assumeTrue(false, "no pipes here");
    }
    CompletableFuture<String> read =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return Files.readString(pipe);
              } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
              }
            });
    Output.replace(pipe, "through");
    assertEquals("through", read.get(60, TimeUnit.SECONDS));
    assertFalse(Files.isRegularFile(pipe));
    assertEquals(List.of("pipe"), names());
  }

  @Test
  void aDeviceStaysOne() throws Exception {
    Path nothing = Path.of("/dev/null");
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(nothing) && Files.exists(full), "no devices here");
    Output.replace(nothing, "gone");
    assertFalse(Files.isRegularFile(nothing));
    UsageException refused =
        assertThrows(UsageException.class, () -> Output.replace(full, "too much"));
    assertTrue(refused.sentence().startsWith("cannot write `/dev/full`: "), refused.sentence());
  }
}
