package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class FormatCommandTest extends CommandLine {

  private static final String MESSY =
      "language 1\r\n\n\nlog  nobody {\n2027-01-05\tskipped s # ill\n}";
  private static final String TIDY =
      """
      language 1

      log nobody {
        2027-01-05 skipped s  # ill
      }
      """;
  private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

  private Path messy;
  private Path tidy;
  private Path broken;

  @BeforeEach
  void write() throws IOException {
    messy = write("messy.grip", MESSY);
    tidy = write("tidy.grip", TIDY);
    broken = write("broken.grip", "language 1\nlog {\n}\n");
  }

  private Path write(String name, String text) throws IOException {
    Path file = Files.writeString(folder.resolve(name), text);
    Files.setLastModifiedTime(file, LONG_AGO);
    return file;
  }

  @Test
  void aFileIsFormattedInPlaceOnce() throws IOException {
    assertEquals(0, run("format", "messy.grip", "tidy.grip"), err());
    assertEquals("messy.grip: formatted\ntidy.grip: unchanged\n", out());
    assertEquals(TIDY, Files.readString(messy));
    assertEquals(LONG_AGO, Files.getLastModifiedTime(tidy));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(3, files.count(), "nothing is left behind");
    }
    Files.setLastModifiedTime(messy, LONG_AGO);
    assertEquals(0, run("format", "messy.grip"));
    assertEquals(LONG_AGO, Files.getLastModifiedTime(messy));
  }

  @Test
  void checkWritesNothing() throws IOException {
    assertEquals(1, run("format", "--check", "messy.grip", "tidy.grip"));
    assertEquals("messy.grip: would change\ntidy.grip: unchanged\n", out());
    assertEquals(MESSY, Files.readString(messy));
    assertEquals(0, run("format", "tidy.grip", "--check"));
    assertEquals(1, run("format", "--check", "messy.grip", "--as", "json"));
    assertKeeps("format");
    assertTrue(out().contains("\"changed\": true"), out());
  }

  @Test
  void errorsInATextLeaveEveryFileAsItIs() throws IOException {
    assertEquals(1, run("format", "messy.grip", "broken.grip"));
    assertTrue(out().startsWith("messy.grip: would change\nerror: "), out());
    assertTrue(out().endsWith("broken.grip: 1 error, left as it is\n"), out());
    assertEquals(MESSY, Files.readString(messy));
    assertEquals(LONG_AGO, Files.getLastModifiedTime(broken));
    assertEquals(1, run("format", "messy.grip", "broken.grip", "--as", "json"));
    assertKeeps("format");
    assertKeeps("findings");
  }

  @Test
  void aFileThatCannotBeReadIsWrongUsage() throws IOException {
    assertEquals(2, run("format", "none.grip", "messy.grip"));
    assertTrue(out().contains("none.grip"), out());
    assertEquals(MESSY, Files.readString(messy));
    assertEquals(2, run("format", ".", "--as", "json"));
    assertKeeps("findings");
    assertEquals(2, run("format"));
    Path inner = Files.createDirectory(folder.resolve("inner"));
    assertEquals(2, run("format", "messy.grip", "--root", inner.toString()));
    Files.write(folder.resolve("latin.grip"), new byte[] {'#', (byte) 0xE5, '\n'});
    assertEquals(1, run("format", "latin.grip"));
    assertTrue(out().contains("(syntax.encoding)\n"), out());
  }

  @Test
  void documentNamesEachFile() throws IOException {
    assertEquals(0, run("format", "messy.grip", "tidy.grip", "--as", "json"));
    assertKeeps("format");
    assertTrue(out().contains("\"messy.grip\""), out());
    assertEquals(TIDY, Files.readString(messy));
  }

  /**
   * The season of the club with changed white space, formatted again: only lines and columns
   * change.
   */
  @Test
  void theDocumentOfASeasonStaysTheSame() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../../examples/plans"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".grip")).toList()) {
        String upset =
            Files.readString(file).replaceAll("(?m)^ +", "\t").replace(" {\n", "\n{\n\n\n");
        Files.writeString(folder.resolve(file.getFileName().toString()), upset);
      }
    }
    assertEquals(0, run("compile", "season.grip", "--as", "json"), err());
    String before = withoutPlaces(out());
    for (String file : List.of("season", "athletes", "grips", "protocols", "club-rules", "logs")) {
      assertEquals(0, run("format", file + ".grip"), out() + err());
      assertEquals(file + ".grip: formatted\n", out());
    }
    assertEquals(0, run("compile", "season.grip", "--as", "json"), err());
    assertEquals(before, withoutPlaces(out()));
  }

  private static String withoutPlaces(String json) {
    return json.replaceAll("\"(line|column|endLine|endColumn)\": \\d+", "")
        .replaceAll("\"sha256\": \"[0-9a-f]+\"", "");
  }

  @Test
  void filesWrittenBeforeAFailureAreNamed() throws IOException {
    assumeTrue(
        Files.getFileStore(folder).supportsFileAttributeView("posix"), "no permissions here");
    Path second = Files.createDirectory(folder.resolve("second"));
    Path last = second.resolve("last.grip");
    Files.writeString(last, MESSY);
    Files.setPosixFilePermissions(second, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      assumeFalse(Files.isWritable(second), "an administrator can write everywhere");
      assertEquals(2, run("format", "messy.grip", "second/last.grip"));
      assertTrue(err().contains("cannot write `second/last.grip`"), err());
      assertTrue(err().contains("; formatted before that: `messy.grip`"), err());
    } finally {
      Files.setPosixFilePermissions(second, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
    assertEquals(MESSY, Files.readString(last));
  }

  @Test
  void permissionsAndLinksAreKept() throws IOException {
    assumeTrue(
        Files.getFileStore(folder).supportsFileAttributeView("posix"), "no permissions here");
    Files.setPosixFilePermissions(messy, PosixFilePermissions.fromString("rw-r-----"));
    Path link = Files.createSymbolicLink(folder.resolve("link.grip"), Path.of("messy.grip"));
    assertEquals(0, run("format", "link.grip"), out() + err());
    assertTrue(Files.isSymbolicLink(link));
    assertFalse(Files.isSymbolicLink(messy));
    assertEquals(TIDY, Files.readString(messy));
    assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(messy)));
    Files.writeString(messy, MESSY);
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Files.createSymbolicLink(inner.resolve("out.grip"), Path.of("../messy.grip"));
    assertEquals(2, run("format", "inner/out.grip"));
    assertEquals(MESSY, Files.readString(messy));
    assertEquals(0, run("format", "inner/out.grip", "--root", folder.toString()), out() + err());
    assertEquals(TIDY, Files.readString(messy));
  }
}
