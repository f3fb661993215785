package gripwright.testkit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.ReadOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;

final class FindingCorpusTest {

  private static final String TWICE =
      """
      language 1
      use "shared/grips.grip"
      grip bent { fingers index, middle, ring, little  family four }
      grip bent { fingers index, middle, ring, little  family four }
      """;

  @TempDir Path folder;

  @BeforeEach
  void shared() throws IOException {
    Files.createDirectories(folder.resolve("shared"));
    Files.writeString(
        folder.resolve("shared/grips.grip"),
        "language 1\ngrip other { fingers index, middle, ring, little  family four }\n");
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  /** Runs every test of the corpus; returns what failed, each with its message. */
  private List<String> failures(FindingCorpus corpus) {
    return corpus
        .tests()
        .flatMap(
            test -> {
              try {
                test.getExecutable().execute();
                return Stream.of();
              } catch (AssertionFailedError e) {
                return Stream.of(test.getDisplayName() + ": " + e.getMessage());
              } catch (Throwable e) {
                throw new IllegalStateException(e);
              }
            })
        .toList();
  }

  private FindingCorpus corpus() {
    return FindingCorpus.in(folder).blessed(false);
  }

  @Test
  void aFindingThatIsListedPasses() throws IOException {
    write("twice.grip", TWICE);
    write("twice.expected", "# the second of two\n\n4:6 error  name.doubled # here\n");
    assertEquals(List.of(), failures(corpus()));
    assertEquals(List.of("twice"), corpus().tests().map(DynamicTest::getDisplayName).toList());
  }

  @Test
  void aFindingThatIsNotListedFails() throws IOException {
    write("twice.grip", TWICE);
    write("twice.expected", "");
    List<String> failures = failures(corpus());
    assertEquals(1, failures.size());
    assertTrue(failures.get(0).contains("not listed: 4:6 error name.doubled  ("), failures.get(0));
  }

  @Test
  void aListedFindingThatIsNotFoundFails() throws IOException {
    write("twice.grip", TWICE);
    write("twice.expected", "4:6 error name.doubled\n4:6 error name.doubled\n");
    List<String> failures = failures(corpus());
    assertEquals(1, failures.size());
    assertTrue(failures.get(0).contains("not found:  4:6 error name.doubled"), failures.get(0));
  }

  @Test
  void anotherPlaceOrSeverityIsAnotherFinding() throws IOException {
    write("twice.grip", TWICE);
    write("twice.expected", "4:6 warning name.doubled\n");
    assertEquals(1, failures(corpus()).size());
    write("twice.expected", "4:7 error name.doubled\n");
    assertEquals(1, failures(corpus()).size());
  }

  @Test
  void aFindingInASharedFileNamesIt() throws IOException {
    write("shared/grips.grip", TWICE.replace("use \"shared/grips.grip\"\n", ""));
    write("uses.grip", "language 1\nuse \"shared/grips.grip\"\n");
    write("uses.expected", "shared/grips.grip:3:6 error name.doubled\n");
    assertEquals(List.of(), failures(corpus()));
  }

  @Test
  void blessingWritesTheFindingsAndKeepsTheFirstComments() throws IOException {
    write("twice.grip", TWICE);
    write("twice.expected", "# why this file is here\n1:1 error name.gone\n");
    write("fine.grip", "language 1\n");
    assertEquals(2, failures(corpus()).size());
    assertEquals(List.of(), failures(corpus().blessed(true)));
    assertEquals(
        "# why this file is here\n4:6 error name.doubled\n",
        Files.readString(folder.resolve("twice.expected")));
    assertEquals("", Files.readString(folder.resolve("fine.expected")));
    assertEquals(List.of(), failures(corpus()));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(5, files.count());
    }
  }

  @Test
  void aFileWithoutItsCounterpartFails() throws IOException {
    write("alone.grip", "language 1\n");
    write("lost.expected", "");
    assertEquals(2, failures(corpus()).size());
  }

  @Test
  void anEmptyFolderFails() {
    assertEquals(1, failures(corpus()).size());
    assertThrows(
        java.io.UncheckedIOException.class,
        () -> FindingCorpus.in(folder.resolve("nowhere")).tests());
  }

  @Test
  void optionsAreUsed() throws IOException {
    Files.createDirectories(folder.resolve("below"));
    Files.writeString(
        folder.resolve("below/up.grip"), "language 1\nuse \"../shared/grips.grip\"\n");
    Files.writeString(folder.resolve("below/up.expected"), "");
    FindingCorpus below = FindingCorpus.in(folder.resolve("below")).blessed(false);
    assertEquals(1, failures(below).size());
    ReadOptions wider = ReadOptions.standard().withRoot(folder);
    assertDoesNotThrow(() -> assertEquals(List.of(), failures(below.with(wider))));
  }

  /** The corpus as coaches use it. */
  @TestFactory
  Stream<DynamicTest> aCorpusOfACoach() {
    return FindingCorpus.in(Path.of("src/test/corpus")).tests();
  }
}
