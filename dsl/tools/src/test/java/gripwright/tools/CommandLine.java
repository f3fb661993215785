package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import gripwright.tools.command.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;

/** A folder of plans, and the command line run in it. */
abstract class CommandLine {

  @TempDir Path folder;

  final ByteArrayOutputStream out = new ByteArrayOutputStream();
  final ByteArrayOutputStream err = new ByteArrayOutputStream();

  int run(String... arguments) {
    out.reset();
    err.reset();
    return Main.run(List.of(arguments), new Console(out, err, folder, false), Map.of());
  }

  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }

  /** Validates the output against a published schema. */
  void assertKeeps(String schema) throws IOException {
    String text = Files.readString(Path.of("../../docs/schema/" + schema + ".schema.json"));
    assertEquals(
        List.of(),
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text, InputFormat.JSON)
            .validate(out(), InputFormat.JSON));
  }
}
