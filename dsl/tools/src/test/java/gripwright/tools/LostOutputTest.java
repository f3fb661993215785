package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.tools.command.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Reports of results that can't be written. */
final class LostOutputTest {

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private static OutputStream refusing(String reason) {
    return new OutputStream() {
      @Override
      public void write(int one) throws IOException {
        throw new IOException(reason);
      }
    };
  }

  private int run(OutputStream out, OutputStream messages, String... arguments) {
    return Main.run(List.of(arguments), new Console(out, messages, Path.of(""), false), Map.of());
  }

  @Test
  void aFullDiskGivesExitCodeTwoAndAMessage() {
    assertEquals(2, run(refusing("No space left on device"), err, "--version"));
    assertEquals(
        "gripwright: the output could not be written: no space left on device\n",
        err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aClosedPipeGivesNoMessage() {
    assertEquals(2, run(refusing("Broken pipe"), err, "--help"));
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void lostMessagesGiveExitCodeTwoToo() {
    assertEquals(2, run(refusing("Bad file descriptor"), refusing("so is this"), "--version"));
    assertEquals(2, run(new ByteArrayOutputStream(), refusing("no"), "unknown"));
  }
}
