package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The classes that a new JVM loads for help and version: no parser, no JSON, no options library.
 */
final class StartTest {

  private static final Pattern HEAVY =
      Pattern.compile(
          "(org\\.antlr|\\.internal\\.antlr|com\\.fasterxml|org\\.apache|org\\.hipparchus)");

  private static String start(String option, List<String> flags)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
    command.add(option);
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), text);
    return text;
  }

  @Test
  void helpAndVersionLoadNothingTheyDoNotNeed() throws IOException, InterruptedException {
    for (String option : List.of("--help", "--version")) {
      List<String> loaded =
          start(option, List.of("-verbose:class"))
              .lines()
              .filter(line -> HEAVY.matcher(line).find())
              .filter(line -> line.contains("source: "))
              .toList();
      assertEquals(List.of(), loaded, option);
    }
  }

  @Test
  void theCheckDetectsLoadedLibraries() throws IOException, InterruptedException {
    String loaded = start("--help", List.of("-verbose:class"));
    assertTrue(loaded.contains("gripwright.tools.Main source: "), loaded);
  }

  @Test
  void anAsciiLocaleIsMentionedWhereAFileIsNotFound(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path main =
        Files.writeString(folder.resolve("m.grip"), "language 1\nuse \"gr\u00E4tz.grip\"\n");
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            "check",
            main.toString());
    builder.environment().put("LC_ALL", "C");
    Process process = builder.redirectErrorStream(true).start();
    String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(1, process.waitFor(), text);
    assertTrue(text.contains("(name.file-missing)\n"), text);
    if (System.getProperty("os.name").equals("Linux")) { // others name files in UTF-8 regardless
      assertTrue(text.contains("LC_ALL=C.UTF-8"), text);
    }
  }
}
