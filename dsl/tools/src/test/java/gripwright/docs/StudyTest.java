package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.tools.Main;
import gripwright.tools.command.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The study among the examples gives its folder of results, byte for byte. */
class StudyTest {

  private static final Path STUDY = Page.root().resolve("examples").resolve("study");

  @Test
  void theComparisonGivesItsFolder(@TempDir Path folder) throws IOException {
    assertFolder("comparison", folder, "compare", "study.grip", "--log", "revealed.csv");
  }

  @Test
  void theSameBytesComeFromEveryNumberOfThreads(@TempDir Path folder) throws IOException {
    assertFolder(
        "comparison", folder, "compare", "study.grip", "--log", "revealed.csv", "--threads", "3");
  }

  @Test
  void thePlansGiveTheirFolderWithCodesForNames(@TempDir Path folder) throws IOException {
    Path key = folder.resolve("key.csv");
    Files.writeString(key, "athlete,code\ntove,P-01\narne,P-02\n");
    assertFolder("plans", folder, "compile", "plans.grip", "--codes", key.toString());
    for (Path file : files(STUDY.resolve("results").resolve("plans"))) {
      String text = Files.readString(file);
      for (String name : List.of("Tove", "tove", "Arne", "arne", "Lind", "Holt")) {
        assertEquals(-1, text.indexOf(name), name + " in " + file);
      }
    }
  }

  private static void assertFolder(String name, Path folder, String... command) throws IOException {
    Path written = folder.resolve(name);
    List<String> arguments = new ArrayList<>(List.of(command));
    arguments.addAll(List.of("--to", written.toString()));
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    Console console =
        new Console(
            new ByteArrayOutputStream(), errors, STUDY, false, () -> false, System::nanoTime);
    assertEquals(
        0, Main.run(arguments, console, Map.of()), () -> errors.toString(StandardCharsets.UTF_8));
    Path expected = STUDY.resolve("results").resolve(name);
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.createDirectories(expected);
    }
    TreeSet<String> names = new TreeSet<>();
    for (Path file : files(written)) {
      names.add(file.getFileName().toString());
      Blessing.file(expected.resolve(file.getFileName().toString()), Files.readString(file));
    }
    TreeSet<String> kept = new TreeSet<>();
    files(expected).forEach(file -> kept.add(file.getFileName().toString()));
    assertEquals(kept, names);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
