package gripwright.tools.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.budget.Stage;
import gripwright.tools.Main;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgressLineTest {

  private static final String ERASE = "\r\u001b[K";

  private final AtomicLong now = new AtomicLong(Long.MAX_VALUE - 5);
  private final List<String> written = new ArrayList<>();
  private boolean terminal = true;
  private int asked;
  private final ProgressLine line =
      new ProgressLine(
          () -> {
            asked++;
            return terminal;
          },
          now::get,
          written::add);

  private void after(long nanos, long done) {
    now.addAndGet(nanos);
    line.report(Stage.PLANNING, done, 100);
  }

  @Test
  void shortWorkShowsNothing() {
    after(0, 1);
    after(ProgressLine.LONG_NANOS - 1, 2);
    line.clear();
    assertEquals(List.of(), written);
    assertEquals(0, asked);
  }

  @Test
  void longWorkShowsItsProgressAndErasesTheLine() {
    after(0, 1);
    after(ProgressLine.LONG_NANOS, 2);
    after(ProgressLine.STEADY_NANOS - 1, 3);
    after(1, 4);
    line.clear();
    line.clear();
    assertEquals(
        List.of(
            ERASE + "planning: 2 of 100 weeks, about 1 min left",
            ERASE + "planning: 4 of 100 weeks, about 53 s left",
            ERASE),
        written);
  }

  @Test
  void withoutATerminalNothingIsShownAndTheCheckRunsOnce() {
    terminal = false;
    after(0, 1);
    after(ProgressLine.LONG_NANOS, 2);
    after(ProgressLine.LONG_NANOS, 3);
    line.clear();
    assertEquals(List.of(), written);
    assertEquals(1, asked);
  }

  @Test
  void eachStageHasItsWords() {
    after(0, 1);
    now.addAndGet(ProgressLine.LONG_NANOS);
    line.report(Stage.READING, 2, 3);
    now.addAndGet(ProgressLine.STEADY_NANOS);
    line.report(Stage.CHECKING, 4, 5);
    assertEquals(
        List.of(ERASE + "reading: 2 files", ERASE + "checking: 4 of 5 declarations"), written);
  }

  @Test
  void resultsAreTheSameWithAndWithoutProgress(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("p.grip");
    Files.writeString(file, "language 1\nprotocol p {\n hold 7 s at 60 % max\n}\n");
    List<String> results = new ArrayList<>();
    for (boolean shown : List.of(false, true)) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ByteArrayOutputStream err = new ByteArrayOutputStream();
      Console console =
          new Console(
              out, err, folder, false, () -> shown, () -> now.addAndGet(ProgressLine.LONG_NANOS));
      assertEquals(0, Main.run(List.of("check", "p.grip"), console, Map.of()));
      results.add(out.toString(StandardCharsets.UTF_8));
      String messages = err.toString(StandardCharsets.UTF_8);
      assertEquals(shown, messages.contains("checking: 1 of 1 declarations"), messages);
      assertTrue(!shown || messages.endsWith(ERASE), messages);
    }
    assertEquals(results.get(0), results.get(1));
  }
}
