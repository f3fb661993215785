package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.tools.Main;
import gripwright.tools.command.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The event that the page on calendars shows is the one that the command writes. */
class CalendarPageTest {

  private static final String MARK = "<!-- first event of: examples/plans/first-weeks.grip -->";

  @Test
  void theEventIsReal(@TempDir Path folder) throws IOException {
    Page page = Page.read("docs/calendar.md");
    Page.Block block =
        page.blocks().stream().filter(b -> b.before().equals(MARK)).findFirst().orElseThrow();
    Blessing.block(page, block, firstEvent(folder.resolve("out")));
  }

  /** Returns day, heading and text of an event as a calendar shows them. */
  private static String firstEvent(Path folder) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> arguments =
        List.of("calendar", "examples/plans/first-weeks.grip", "--to", folder.toString());
    assertEquals(
        0,
        Main.run(arguments, new Console(out, out, Page.root(), false), Map.of()),
        () -> out.toString(StandardCharsets.UTF_8));
    String text = Files.readString(folder.resolve("randi.ics")).replace("\r\n ", "");
    StringBuilder shown = new StringBuilder();
    for (String property : List.of("DTSTART;VALUE=DATE:", "SUMMARY:", "DESCRIPTION:")) {
      Stream<String> lines = text.lines().filter(line -> line.startsWith(property));
      shown.append(lines.findFirst().orElseThrow().substring(property.length())).append('\n');
    }
    return shown.toString().replace("\\n", "\n").replaceAll("\\\\(.)", "$1");
  }
}
