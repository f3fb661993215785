package gripwright.language.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.Reading;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.source.Folder;
import gripwright.language.source.Limits;
import gripwright.language.source.SourceLoader;
import gripwright.language.source.SourceLoader.Loaded;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which files are read, how often, and which are not. */
class ResolverTest {

  private static final StandardNames NOTHING = new StandardNames(Set.of(), Set.of(), Set.of());
  private static final String GRIP = "language 1\ngrip g {\n  fingers index\n  family single\n}\n";

  private static List<String> codes(Project project) {
    return project.findings().stream().map(LocatedFinding::finding).map(f -> f.code()).toList();
  }

  private static List<String> codes(Reading reading) {
    return reading.findings().stream().map(f -> f.code()).toList();
  }

  private static Project resolve(String main, SourceLoader loader) {
    return Resolver.resolve(main, loader, Limits.standard(), NOTHING);
  }

  @Test
  void eachFileIsReadOnce() {
    Map<String, String> texts = new HashMap<>();
    texts.put("main.grip", "language 1\nuse \"a/b.grip\"\nuse \"a/../a/c.grip\"\n");
    texts.put("a/b.grip", "language 1\nuse \"c.grip\"\nuse \"./c.grip\"\n");
    texts.put("a/c.grip", GRIP);
    List<String> asked = new ArrayList<>();
    SourceLoader memory = SourceLoader.of(texts);
    Project project =
        resolve(
            "main.grip",
            (path, most) -> {
              asked.add(path);
              return memory.load(path, most);
            });
    assertEquals(List.of("main.grip", "a/b.grip", "a/c.grip"), asked);
    assertEquals(List.of(), codes(project));
    assertEquals(1, project.names().grips().size());
    assertEquals(
        List.of("a/c.grip", "a/b.grip", "main.grip"),
        project.files().stream().map(f -> f.source().name()).toList());
  }

  @Test
  void aPathOutOfTheRootIsNeverRequested() {
    List<String> asked = new ArrayList<>();
    Project project =
        resolve(
            "plans/main.grip",
            (path, most) -> {
              asked.add(path);
              return new Loaded.Found(
                  path,
                  "language 1\nuse \"../../x.grip\"\nuse \"/etc/hosts\"\nuse \"C:/x.grip\"\n");
            });
    assertEquals(List.of("plans/main.grip"), asked);
    assertEquals(
        List.of("name.outside-root", "name.outside-root", "name.outside-root"), codes(project));
  }

  @Test
  void aLinkOutOfTheRootIsNotFollowed(@TempDir Path folder) throws IOException {
    Path root = Files.createDirectory(folder.resolve("root"));
    Path outside = Files.writeString(folder.resolve("outside.grip"), GRIP);
    Files.writeString(root.resolve("main.grip"), "language 1\nuse \"link.grip\"\n");
    try {
      Files.createSymbolicLink(root.resolve("link.grip"), outside);
    } catch (UnsupportedOperationException e) {
      assumeTrue(false, "no links on this file system");
    }
    assertEquals(List.of("name.outside-root"), codes(Gripwright.read(root.resolve("main.grip"))));
  }

  @Test
  void twoLinksToOneFileAreOneFile(@TempDir Path root) throws IOException {
    Files.writeString(root.resolve("grip.grip"), GRIP);
    Files.writeString(
        root.resolve("main.grip"), "language 1\nuse \"grip.grip\"\nuse \"link.grip\"\n");
    Files.createSymbolicLink(root.resolve("link.grip"), Path.of("grip.grip"));
    assertEquals(List.of(), codes(Gripwright.read(root.resolve("main.grip"))));
  }

  @Test
  void aHugeFileIsRefusedByItsSize(@TempDir Path root) throws IOException {
    Path huge = root.resolve("huge.grip");
    try (FileChannel channel =
        FileChannel.open(huge, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(new byte[] {'#'}), 100L << 20);
    }
    Reading reading = Gripwright.read(huge);
    assertEquals(List.of("syntax.too-large"), codes(reading));
    Files.writeString(root.resolve("main.grip"), "language 1\nuse \"huge.grip\"\n");
    assertEquals(List.of("syntax.too-large"), codes(Gripwright.read(root.resolve("main.grip"))));
  }

  @Test
  void whatIsNotAFileIsNotRead(@TempDir Path root) throws IOException {
    Reading missing = Gripwright.read(root.resolve("missing.grip"));
    assertFalse(missing.fileRead());
    assertFalse(missing.usable());
    assertEquals(List.of("name.file-missing"), codes(missing));
    Reading folder = Gripwright.read(root);
    assertFalse(folder.fileRead());
    assertEquals(List.of("name.not-a-file"), codes(folder));
    Path outside = Files.writeString(root.resolve("main.grip"), GRIP);
    Path inner = Files.createDirectory(root.resolve("inner"));
    Reading beyond = Gripwright.read(outside, ReadOptions.standard().withRoot(inner));
    assertFalse(beyond.fileRead());
    assertEquals(List.of("name.outside-root"), codes(beyond));
  }

  @Test
  void unreadableFilesAreReported() {
    Project project =
        resolve("main.grip", (path, most) -> new Loaded.Refused(SourceLoader.Reason.UNREADABLE));
    assertEquals(List.of("name.unreadable"), codes(project));
    assertFalse(project.mainRead());
  }

  @Test
  void theNumberOfFilesIsLimited() {
    SourceLoader endless =
        (path, most) ->
            new Loaded.Found(path, "language 1\nuse \"x" + path.substring(0, 6) + "\"\n");
    Project round = resolve("a.grip", endless);
    assertFalse(round.findings().isEmpty());
    SourceLoader chain =
        (path, most) -> {
          int number = Integer.parseInt(path.substring(0, path.indexOf('.')));
          return new Loaded.Found(path, "language 1\nuse \"" + (number + 1) + ".grip\"\n");
        };
    Project project = resolve("0.grip", chain);
    assertEquals(List.of("name.too-many-files"), codes(project));
    assertEquals(Resolver.MOST_FILES, project.files().size());
  }

  @Test
  void allFilesTogetherHaveALimit() {
    String filler = "#" + "x".repeat((3 << 20) + 100) + "\n";
    Map<String, String> texts = new HashMap<>();
    StringBuilder main = new StringBuilder("language 1\n");
    for (int i = 0; i < 8; i++) {
      main.append("use \"").append(i).append(".grip\"\n");
      texts.put(i + ".grip", "language 1\n" + filler);
    }
    texts.put("main.grip", main.toString());
    Project project = resolve("main.grip", SourceLoader.of(texts));
    assertEquals(Set.of("name.too-many-files"), Set.copyOf(codes(project)));
    assertEquals(6, project.files().size());
  }

  @Test
  void aFileOfAnInnerFolderIsNamedFromTheOuterFolder(@TempDir Path root) throws IOException {
    Path inner = Files.createDirectory(root.resolve("inner"));
    Files.writeString(inner.resolve("a.grip"), GRIP);
    Files.writeString(root.resolve("b.grip"), GRIP);
    SourceLoader loader = Folder.at(root).within(inner);
    assertEquals(
        new Loaded.Found("inner/a.grip", GRIP), loader.load("inner/a.grip", GRIP.length()));
    assertEquals(
        new Loaded.Refused(SourceLoader.Reason.OUTSIDE_ROOT), loader.load("b.grip", 1_000));
  }

  @Test
  void theFilesOfACycleAreListed() {
    Project project =
        resolve(
            "a.grip",
            SourceLoader.of(
                Map.of(
                    "a.grip", "language 1\nuse \"b.grip\"\n",
                    "b.grip", "language 1\nuse \"c.grip\"\n",
                    "c.grip", "language 1\nuse \"b.grip\"\n")));
    assertEquals(1, project.findings().size());
    LocatedFinding finding = project.findings().get(0);
    assertEquals("c.grip", finding.file().name());
    assertEquals("b.grip → c.grip → b.grip", finding.finding().arguments().get("cycle"));
  }

  @Test
  void aTextHasNoFilesUnlessTheyAreGiven() {
    String text = "language 1\nuse \"grips.grip\"\n";
    assertEquals(List.of("name.file-missing"), codes(Gripwright.read("main.grip", text)));
    Reading reading =
        Gripwright.read(
            "main.grip",
            text,
            ReadOptions.standard().withFiles(SourceLoader.of(Map.of("grips.grip", GRIP))));
    assertEquals(List.of(), codes(reading));
    assertTrue(reading.grips().containsKey("g"));
  }
}
