package gripwright.tools.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class OutputFolderTest {

  private static final Map<String, String> FIRST = Map.of("a.csv", "a 1\r\n", "b.csv", "b 1\r\n");
  private static final Map<String, String> SECOND = Map.of("a.csv", "a 2\r\n", "b.csv", "b 2\r\n");

  @TempDir Path parent;

  private Path folder() {
    return parent.resolve("out");
  }

  private void write(Map<String, String> files) throws UsageException {
    OutputFolder.checked(folder(), files).write();
  }

  /** Returns texts by name. */
  private Map<String, String> there() {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder())) {
      for (Path file : files.toList()) {
        texts.put(
            file.getFileName().toString(),
            Files.isDirectory(file) ? "a folder" : Files.readString(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  private void put(String name, String text) throws IOException {
    Files.writeString(folder().resolve(name), text);
  }

  /** Asserts that a second run is refused, with nothing written. */
  private void refused(String because) {
    Map<String, String> before = there();
    UsageException refusal = assertThrows(UsageException.class, () -> write(SECOND));
    assertTrue(refusal.sentence().contains(because), refusal.sentence());
    assertEquals(before, there());
  }

  @Test
  void aNewFolderGetsTheFilesAndTheirList() throws UsageException {
    write(FIRST);
    Map<String, String> there = there();
    assertEquals(3, there.size());
    assertEquals("a 1\r\n", there.get("a.csv"));
    assertTrue(there.get("manifest.json").contains("\"a.csv\": \""), there.get("manifest.json"));
  }

  @Test
  void anEmptyFolderIsTaken() throws UsageException, IOException {
    Files.createDirectory(folder());
    write(FIRST);
    assertEquals(3, there().size());
  }

  @Test
  void filesOfAnOlderRunAreReplacedAndOthersStay() throws UsageException, IOException {
    write(FIRST);
    put("notes.txt", "mine");
    write(SECOND);
    assertEquals("a 2\r\n", there().get("a.csv"));
    assertEquals("mine", there().get("notes.txt"));
    assertEquals(4, there().size());
    write(FIRST);
    assertEquals("b 1\r\n", there().get("b.csv"));
  }

  @Test
  void aFileThatIsNoLongerWrittenStaysListed() throws UsageException {
    write(FIRST);
    write(Map.of("a.csv", "a 2\r\n"));
    assertEquals("b 1\r\n", there().get("b.csv"));
    write(SECOND);
    assertEquals("b 2\r\n", there().get("b.csv"));
  }

  @Test
  void aDeletedFileIsWrittenAgain() throws UsageException, IOException {
    write(FIRST);
    Files.delete(folder().resolve("a.csv"));
    write(SECOND);
    assertEquals("a 2\r\n", there().get("a.csv"));
  }

  @Test
  void aChangedFileIsKept() throws UsageException, IOException {
    write(FIRST);
    put("b.csv", "b 1, and a note\r\n");
    refused("was changed after it was written; move it to keep the changes");
  }

  @Test
  void aFileOfSomebodyElseIsKept() throws UsageException, IOException {
    write(Map.of("a.csv", "a 1\r\n"));
    put("b.csv", "mine");
    refused("was not written by this program; move it");
  }

  @Test
  void aFolderInTheWayIsKept() throws UsageException, IOException {
    write(Map.of("a.csv", "a 1\r\n"));
    Files.createDirectory(folder().resolve("b.csv"));
    refused("it is no ordinary file");
  }

  @Test
  void aLinkInTheWayIsKept() throws UsageException, IOException {
    write(Map.of("a.csv", "a 1\r\n"));
    Files.writeString(parent.resolve("elsewhere.csv"), "mine");
    Files.createSymbolicLink(folder().resolve("b.csv"), parent.resolve("elsewhere.csv"));
    refused("it is no ordinary file");
    assertEquals("mine", Files.readString(parent.resolve("elsewhere.csv")));
  }

  @Test
  void aFolderWithFilesAndNoListIsRefused() throws IOException {
    Files.createDirectory(folder());
    put("notes.txt", "mine");
    refused("name a new or an empty folder");
  }

  @Test
  void aListOfAnotherProgramIsRefused() throws IOException {
    Files.createDirectory(folder());
    put("manifest.json", "{\"name\": \"a browser extension\"}");
    refused("is not a list that this program wrote");
  }

  @Test
  void aFileIsNoFolder() throws IOException {
    Files.writeString(folder(), "a file");
    UsageException refusal = assertThrows(UsageException.class, () -> write(FIRST));
    assertTrue(refusal.sentence().endsWith("it is not a folder"), refusal.sentence());
  }

  @Test
  void aFolderWithoutParentIsRefused() {
    UsageException refusal =
        assertThrows(
            UsageException.class,
            () -> OutputFolder.checked(folder().resolve("deeper").resolve("still"), FIRST));
    assertTrue(refusal.sentence().contains("there is no folder"), refusal.sentence());
  }

  /** A disk that fails at one step. */
  private static final class Failing implements OutputFolder.Disk {
    private int left;

    Failing(int steps) {
      left = steps;
    }

    private void step() throws IOException {
      if (left-- == 0) {
        throw new FileSystemException("file", null, "No space left on device");
      }
    }

    @Override
    public Path fresh(Path file, ByteBuffer bytes) throws IOException {
      step();
      return Output.fresh(file, bytes);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      step();
      Output.move(from, to);
    }
  }

  /** Lets each step of writing fail in turn, and returns how many there are. */
  private int failEachStep(Map<String, String> files) {
    for (int steps = 0; ; steps++) {
      boolean existed = Files.exists(folder());
      Map<String, String> before = existed ? there() : Map.of();
      Failing disk = new Failing(steps);
      try {
        OutputFolder.checked(folder(), files, disk).write();
        return steps;
      } catch (UsageException e) {
        assertTrue(
            e.sentence().endsWith("No space left on device; nothing was written"), e.sentence());
        assertEquals(existed, Files.exists(folder()));
        assertEquals(before, existed ? there() : Map.of());
      }
    }
  }

  @Test
  void aFullDiskLeavesNothing() {
    assertEquals(6, failEachStep(FIRST)); // three files to write and to move
    assertEquals(3, there().size());
  }

  @Test
  void aFullDiskLeavesTheFilesOfTheOlderRun() throws UsageException {
    write(FIRST);
    assertEquals(9, failEachStep(SECOND)); // the old ones are moved away first
    assertEquals("a 2\r\n", there().get("a.csv"));
    assertFalse(there().keySet().stream().anyMatch(name -> name.endsWith(".tmp")));
  }

  @Test
  void aProjectIsWrittenWithoutAList() throws UsageException {
    OutputFolder.empty(folder(), FIRST).write();
    assertEquals(new TreeMap<>(FIRST), there());
  }

  @Test
  void aProjectOverwritesNothing() throws UsageException, IOException {
    Files.createDirectory(folder());
    put("notes.txt", "mine");
    UsageException refusal =
        assertThrows(UsageException.class, () -> OutputFolder.empty(folder(), FIRST));
    assertTrue(refusal.sentence().contains("is not empty"), refusal.sentence());
    assertEquals(Map.of("notes.txt", "mine"), there());
  }

  @Test
  void aFileThatAppearsAfterTheCheckIsKept() throws UsageException, IOException {
    Files.createDirectory(folder());
    OutputFolder project = OutputFolder.empty(folder(), FIRST);
    put("b.csv", "mine");
    UsageException refusal = assertThrows(UsageException.class, project::write);
    assertTrue(refusal.sentence().endsWith("nothing was written"), refusal.sentence());
    assertEquals(Map.of("b.csv", "mine"), there());
  }

  @Test
  void aProjectThatCannotBeWrittenLeavesNothing() throws UsageException {
    int steps = 0;
    while (true) {
      OutputFolder project = OutputFolder.empty(folder(), FIRST, new Failing(steps));
      try {
        project.write();
        break;
      } catch (UsageException e) {
        assertTrue(e.sentence().endsWith("nothing was written"), e.sentence());
        assertFalse(Files.exists(folder()), "step " + steps);
        steps++;
      }
    }
    assertEquals(4, steps, "two files, each written and moved");
  }
}
