package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The files of those who measure, and must not know who has which arm. */
class AssessorFolderTest extends CommandLine {

  private static final String STUDY =
      """
      language 1
      cohort adults {
        size     100
        maximum  100 kg spread 15 % on half-crimp edge 20 mm "our own"
      }
      compare heavy-or-dense "heavy or dense?" {
        for      adults
        arm heavy do max-holds on half-crimp edge 20 mm
        arm dense do repeaters on half-crimp edge 20 mm
        measure  impulse
      }
      """;

  /** The arms in another order, with another name and one more: another list from the same key. */
  private static final String OTHER =
      STUDY
          .replace("arm heavy do", "arm thick do")
          .replace("  arm dense", "  arm waiting no training\n  arm dense");

  @BeforeEach
  void write() throws IOException {
    for (String project : List.of("project", "other")) {
      Files.createDirectories(folder.resolve(project));
    }
    Files.writeString(folder.resolve("project/study.grip"), STUDY);
    Files.writeString(folder.resolve("other/renamed.grip"), OTHER);
    assertEquals(0, run("allocate", "--new-key", "trial.key"), err());
    assertEquals(0, run("allocate", "--new-key", "other.key"), err());
  }

  private int allocate(String file, String key, String... more) {
    List<String> all =
        new ArrayList<>(
            List.of("allocate", file, "heavy-or-dense", "--key", key, "--participants", "20"));
    all.addAll(List.of("--strata", "women,men"));
    all.addAll(List.of(more));
    return run(all.toArray(String[]::new));
  }

  private int assess(String... more) {
    return allocate("project/study.grip", "trial.key", more);
  }

  private Map<String, String> texts(String name) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder.resolve(name))) {
      for (Path file : files.toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return texts;
  }

  private List<String> labels(String name) throws IOException {
    return texts(name)
        .get("assessments.csv")
        .lines()
        .skip(1)
        .map(line -> line.substring(0, line.indexOf(',')))
        .toList();
  }

  @Test
  void everyParticipantHasALabelAndTheSameVisits() throws IOException {
    assertEquals(0, assess("--assessor", "desk"), err());
    assertEquals("2 files written to desk\n", out());
    Map<String, String> texts = texts("desk");
    assertEquals(List.of("assessments.csv", "datapackage.json", "manifest.json"), sorted(texts));
    List<String> lines = texts.get("assessments.csv").lines().toList();
    assertEquals("label,visit,name", lines.get(0));
    assertEquals(1 + 40 * 2, lines.size());
    List<String> labels = labels("desk");
    assertEquals(40, new HashSet<>(labels).size());
    assertEquals(labels.stream().sorted().toList(), labels);
    for (int i = 0; i < labels.size(); i++) {
      assertEquals(labels.get(i) + (i % 2 == 0 ? ",1,before" : ",2,after"), lines.get(i + 1));
    }
    assertTrue(texts.get("datapackage.json").contains("\"path\": \"assessments.csv\""));
  }

  private static List<String> sorted(Map<String, String> texts) {
    return List.copyOf(texts.keySet());
  }

  @Test
  void noByteDependsOnTheAllocation() throws IOException {
    assertEquals(0, assess("--list"), err());
    String blocks = out().replaceAll("(?m),[a-z]+$", "");
    assertEquals(0, allocate("other/renamed.grip", "trial.key", "--list"), err());
    assertNotEquals(blocks, out().replaceAll("(?m),[a-z]+$", ""), "other blocks");
    assertEquals(0, assess("--assessor", "desk"), err());
    assertEquals(0, allocate("other/renamed.grip", "trial.key", "--assessor", "again"), err());
    assertEquals(texts("desk"), texts("again"));
  }

  @Test
  void anotherKeyChangesTheLabelsAlone() throws IOException {
    assertEquals(0, assess("--assessor", "desk"), err());
    assertEquals(0, allocate("project/study.grip", "other.key", "--assessor", "second"), err());
    assertEquals(unlabelled("desk"), unlabelled("second"));
    assertNotEquals(labels("desk"), labels("second"));
  }

  /** The files with a place holder for labels and hashes. */
  private Map<String, String> unlabelled(String name) throws IOException {
    Map<String, String> texts = texts(name);
    texts.replaceAll(
        (file, text) ->
            text.replaceAll("(?m)^[2-9B-DF-HJ-NP-TV-XZ]{6},", "LABEL,")
                .replaceAll("[0-9a-f]{64}", "HASH"));
    return texts;
  }

  @Test
  void neitherArmsNorBlocksNorStrataAreInAnyFile() throws IOException {
    assertEquals(0, assess("--assessor", "desk", "--visits", "2027-01-11,2027-03-15"), err());
    assertTrue(texts("desk").get("assessments.csv").startsWith("label,visit,day\r\n"));
    assertTrue(texts("desk").get("datapackage.json").contains("\"type\": \"date\""));
    Pattern telling = Pattern.compile("heavy|dense|block|women|\\bmen\\b|strat|study|commitment");
    texts("desk").forEach((file, text) -> assertFalse(telling.matcher(text).find(), text));
  }

  @Test
  void labelsAreListedWithoutArmsForThoseWhoInclude() throws IOException {
    assertEquals(0, assess("--assessor", "desk"), err());
    assertEquals(0, assess("--labels"), err());
    List<String> lines = out().lines().toList();
    assertEquals("stratum,number,label", lines.get(0));
    assertEquals(41, lines.size());
    assertTrue(lines.get(1).startsWith("women,1,"), lines.get(1));
    assertTrue(lines.get(40).startsWith("men,20,"), lines.get(40));
    assertEquals(
        new HashSet<>(labels("desk")),
        new HashSet<>(lines.stream().skip(1).map(line -> line.replaceAll(".*,", "")).toList()));
    assertFalse(out().contains("heavy") || out().contains("dense"), out());
  }

  @Test
  void aFileOfSomebodyElseIsKept() throws IOException {
    assertEquals(0, assess("--assessor", "desk"), err());
    Path table = folder.resolve("desk/assessments.csv");
    String filled = Files.readString(table).replace("before", "before, by hand");
    Files.writeString(table, filled);
    assertEquals(2, allocate("project/study.grip", "other.key", "--assessor", "desk"));
    assertTrue(err().contains("was changed after it was written"), err());
    assertEquals(filled, Files.readString(table));
  }

  @Test
  void wrongUsageIsExplained() throws IOException {
    assertEquals(2, assess("--assessor", "."));
    assertTrue(err().contains("lies in the folder of those who measure"), err());
    Files.createDirectories(folder.resolve("desk"));
    Files.move(folder.resolve("trial.key"), folder.resolve("desk/trial.key"));
    assertEquals(2, allocate("project/study.grip", "desk/trial.key", "--assessor", "desk"));
    assertTrue(err().contains("lies in the folder of those who measure"), err());
    Files.move(folder.resolve("desk/trial.key"), folder.resolve("trial.key"));
    assertEquals(2, assess("--visits", "before"));
    assertTrue(err().contains("--visits needs --assessor FOLDER"), err());
    for (String visits : List.of("a,a", "a,", "2027-03-15,2027-01-11")) {
      assertEquals(2, assess("--assessor", "desk", "--visits", visits), visits);
      assertTrue(err().contains("--visits can't be read"), err());
    }
    assertEquals(2, assess("--assessor", "desk", "--list"));
    assertTrue(err().contains("--assessor and --list are for different people"), err());
    assertEquals(2, assess("--labels", "--log", "log.csv"));
    assertTrue(err().contains("--labels reveals nobody"), err());
  }
}
