package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AllocateCommandTest extends CommandLine {

  private static final String STUDY =
      """
      language 1
      cohort adults {
        size     100
        maximum  100 kg spread 15 % on half-crimp edge 20 mm "our own"
      }
      compare two-ways {
        for      adults
        arm long do max-holds on half-crimp edge 20 mm
        arm dense do repeaters on half-crimp edge 20 mm
        measure  impulse
      }
      """;

  @BeforeEach
  void write() throws IOException {
    Files.createDirectories(folder.resolve("project"));
    Files.writeString(folder.resolve("project/study.grip"), STUDY);
    assertEquals(0, run("allocate", "--new-key", "trial.key"), err());
  }

  private int allocate(String... more) {
    String[] all = new String[7 + more.length];
    String[] first = {
      "allocate", "project/study.grip", "two-ways", "--key", "trial.key", "--participants", "20"
    };
    System.arraycopy(first, 0, all, 0, first.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return run(all);
  }

  @Test
  void participantsAreRevealedOneAfterTheOther() throws IOException {
    assertEquals(0, allocate("--strata", "women,men"), err());
    String design = out();
    assertTrue(design.contains("arms: long, dense"), design);
    String commitment = design.replaceAll("(?s).*commitment: ([0-9a-f]{64}).*", "$1");
    Set<String> arms = new HashSet<>();
    for (int number = 1; number <= 6; number++) {
      assertEquals(
          0,
          allocate(
              "--strata",
              "women,men",
              "--reveal",
              "" + number,
              "--stratum",
              "men",
              "--log",
              "revealed.csv"),
          err());
      arms.add(out().replaceAll(".*: ", "").strip());
    }
    assertEquals(Set.of("long", "dense"), arms);
    assertEquals(
        2,
        allocate(
            "--strata", "women,men", "--reveal", "8", "--stratum", "men", "--log", "revealed.csv"));
    assertTrue(err().contains("participant 7 of `men` is next"), err());
    String log = Files.readString(folder.resolve("revealed.csv"));
    assertEquals(7, log.lines().count(), log);
    assertTrue(log.contains(commitment), log);
    assertEquals(0, allocate("--strata", "women,men", "--list"), err());
    assertEquals(41, out().lines().count(), out());
    assertEquals("commitment " + commitment + "\n", err());
    log.lines()
        .skip(1)
        .forEach(
            line -> {
              String[] fields = line.split(",");
              assertTrue(
                  out().contains("men," + fields[1] + ",")
                      && out()
                          .lines()
                          .anyMatch(
                              each ->
                                  each.startsWith("men," + fields[1] + ",")
                                      && each.endsWith("," + fields[2])),
                  line);
            });
  }

  @Test
  void theListStaysTheSameWhileParticipantsAreRevealed() {
    assertEquals(0, allocate("--reveal", "1", "--log", "log.csv"), err());
    assertEquals(
        2,
        run(
            "allocate",
            "project/study.grip",
            "two-ways",
            "--key",
            "trial.key",
            "--participants",
            "24",
            "--reveal",
            "2",
            "--log",
            "log.csv"));
    assertTrue(err().contains("`log.csv` was begun with another list"), err());
    assertEquals(0, allocate("--reveal", "2", "--log", "log.csv"), err());
  }

  @Test
  void theLogKeepsItsBytesAndIsReadAgainFromASpreadsheet() throws IOException {
    assertEquals(0, allocate(), err());
    String commitment = out().replaceAll("(?s).*commitment: ([0-9a-f]{64}).*", "$1");
    StringBuilder expected = new StringBuilder("stratum,number,arm,commitment\n");
    for (int number = 1; number <= 3; number++) {
      assertEquals(0, allocate("--reveal", "" + number, "--log", "log.csv"), err());
      String arm = out().replaceAll(".*: ", "").strip();
      expected.append("all," + number + "," + arm + "," + commitment + "\n");
      assertEquals(expected.toString(), Files.readString(folder.resolve("log.csv")));
    }
    String saved =
        "\uFEFF" + expected.toString().replace("\n", "\r\n").replace("all", "\"all\"") + "\r\n";
    Files.writeString(folder.resolve("saved.csv"), saved);
    assertEquals(2, allocate("--reveal", "5", "--log", "saved.csv"));
    assertTrue(err().contains("participant 4 of `all` is next"), err());
    assertEquals(0, allocate("--reveal", "4", "--log", "saved.csv"), err());
    String more = Files.readString(folder.resolve("saved.csv"));
    assertTrue(more.startsWith(expected.toString()), more);
    assertEquals(5, more.lines().count(), more);
  }

  @Test
  void aLogWithADamagedLineIsRefusedAndKept() throws IOException {
    assertEquals(0, allocate("--reveal", "1", "--log", "log.csv"), err());
    String log = Files.readString(folder.resolve("log.csv"));
    for (String damaged :
        new String[] {
          log.replace("all,1,", "all,one,"), log.replace("all,1,", "all,"), log + "\"all,2"
        }) {
      Files.writeString(folder.resolve("log.csv"), damaged);
      assertEquals(2, allocate("--reveal", "2", "--log", "log.csv"), damaged);
      assertTrue(err().contains("`log.csv`"), err());
      assertEquals(damaged, Files.readString(folder.resolve("log.csv")));
    }
  }

  @Test
  void anotherKeyGivesAnotherCommitment() {
    assertEquals(0, allocate(), err());
    String first = out();
    assertEquals(0, run("allocate", "--new-key", "other.key"), err());
    assertEquals(
        0,
        run(
            "allocate",
            "project/study.grip",
            "two-ways",
            "--key",
            "other.key",
            "--participants",
            "20"),
        err());
    assertNotEquals(first, out());
  }

  @Test
  void aKeyIsNeverOverwrittenAndNeverInTheProject() throws IOException {
    assertEquals(2, run("allocate", "--new-key", "trial.key"));
    assertTrue(err().contains("a key is never overwritten"), err());
    Files.copy(folder.resolve("trial.key"), folder.resolve("project/inside.key"));
    assertEquals(
        2,
        run(
            "allocate",
            "project/study.grip",
            "two-ways",
            "--key",
            "project/inside.key",
            "--participants",
            "20"));
    assertTrue(err().contains("keep the key outside it"), err());
    Files.writeString(folder.resolve("bad.key"), "key 123\n");
    assertEquals(
        2,
        run(
            "allocate",
            "project/study.grip",
            "two-ways",
            "--key",
            "bad.key",
            "--participants",
            "20"));
    assertTrue(err().contains("is not a key"), err());
  }

  @Test
  void sampleSizes() {
    assertEquals(0, run("allocate", "--effect", "0.5", "--dropout", "0.2", "--noise", "0.056"));
    assertTrue(
        out()
            .startsWith(
                """
                64 participants of each arm who complete the trial
                80 participants of each arm to begin with
                minimal detectable change of one person: 15.52 % of the value
                """),
        out());
    assertEquals(2, run("allocate", "--effect", "half"));
    assertTrue(err().contains("--effect is a number such as 0.5, not `half`"), err());
    assertEquals(2, run("allocate", "--effect", "0.5", "--power", "1.5"));
    assertTrue(err().contains("power is above 0 and below 1"), err());
  }

  @Test
  void wrongUsageIsExplained() {
    assertEquals(2, run("allocate"));
    assertEquals(2, run("allocate", "project/study.grip", "two-wys", "--key", "trial.key"));
    assertTrue(err().contains("did you mean `two-ways`?"), err());
    assertEquals(2, allocate("--reveal", "1"));
    assertTrue(err().contains("--reveal needs --log FILE"), err());
    assertEquals(2, allocate("--strata", "a,a"));
    assertEquals(2, allocate("--strata", "a,b", "--reveal", "1", "--log", "r.csv"));
    assertTrue(err().contains("--stratum is one of a, b"), err());
  }
}
