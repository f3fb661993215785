package gripwright.launcher;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ClassArchiveTest {

  @TempDir Path folder;

  @Test
  void anArchiveThatIsNotInUseIsDeleted() throws IOException {
    Path archive = Files.createFile(folder.resolve("app.jsa"));
    ClassArchive.dropUnused(null, "mixed mode");
    ClassArchive.dropUnused("", "mixed mode");
    ClassArchive.dropUnused(archive.toString(), "mixed mode, sharing");
    assertTrue(Files.exists(archive));
    ClassArchive.dropUnused(archive.toString(), "mixed mode");
    assertFalse(Files.exists(archive));
    ClassArchive.dropUnused(archive.toString(), "mixed mode");
  }
}
