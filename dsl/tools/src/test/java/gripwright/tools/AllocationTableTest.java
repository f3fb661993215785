package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** {@code allocation.csv} of a study's folder: who was revealed, and nobody else. */
class AllocationTableTest extends CommandLine {

  private static final String STUDY =
      """
      language 1
      cohort adults {
        size     20
        maximum  100 kg spread 15 % on half-crimp edge 20 mm "our own"
      }
      compare two-ways {
        for      adults
        arm long do max-holds on half-crimp edge 20 mm
        arm dense do repeaters on half-crimp edge 20 mm
        draws    100 stream 1
        measure  impulse
      }
      """;

  private String log = "";

  @BeforeEach
  void revealThree() throws IOException {
    Files.createDirectories(folder.resolve("project"));
    Files.writeString(folder.resolve("project/study.grip"), STUDY);
    assertEquals(0, run("allocate", "--new-key", "trial.key"), err());
    for (int number = 1; number <= 3; number++) {
      List<String> reveal = new ArrayList<>(List.of("allocate", "project/study.grip", "two-ways"));
      reveal.addAll(List.of("--key", "trial.key", "--participants", "12", "--log", "log.csv"));
      reveal.addAll(List.of("--reveal", "" + number));
      assertEquals(0, run(reveal.toArray(String[]::new)), err());
    }
    log = Files.readString(folder.resolve("log.csv"));
  }

  @Test
  void thoseWhoWereRevealedAreInItAndNobodyElse() throws IOException {
    assertEquals(0, run("compare", "project/study.grip", "--to", "out", "--log", "log.csv"), err());
    String expected =
        log.replace("stratum,", "comparison,stratum,")
            .replace("all,", "two-ways,all,")
            .replace("\n", "\r\n");
    assertEquals(expected, Files.readString(folder.resolve("out/allocation.csv")));
    assertEquals(4, expected.lines().count(), expected);
    String described = Files.readString(folder.resolve("out/datapackage.json"));
    for (String column : List.of("stratum", "number", "commitment")) {
      assertTrue(described.contains("{\"name\": \"" + column + "\""), described);
    }
    assertTrue(described.contains("\"path\": \"allocation.csv\""), described);
  }

  @Test
  void withoutALogThereIsNone() throws IOException {
    assertEquals(0, run("compare", "project/study.grip", "--to", "out"), err());
    assertFalse(Files.exists(folder.resolve("out/allocation.csv")));
  }

  @Test
  void aTrialBeforeItsFirstParticipantHasAnEmptyTable() throws IOException {
    Files.writeString(folder.resolve("log.csv"), log.lines().findFirst().orElseThrow() + "\n");
    assertEquals(0, run("compare", "project/study.grip", "--to", "out", "--log", "log.csv"), err());
    assertEquals(
        "comparison,stratum,number,arm,commitment\r\n",
        Files.readString(folder.resolve("out/allocation.csv")));
  }

  private void assertRefused(String text, String why) throws IOException {
    Files.writeString(folder.resolve("log.csv"), text);
    assertEquals(2, run("compare", "project/study.grip", "--to", "out", "--log", "log.csv"), text);
    assertTrue(err().contains(why), err());
    assertFalse(Files.exists(folder.resolve("out")), text);
  }

  @Test
  void aLogOfAnotherTrialIsRefused() throws IOException {
    List<String> lines = log.lines().toList();
    assertRefused(
        log.replace("all,2,long", "all,2,heavy").replace("all,2,dense", "all,2,heavy"),
        "has an arm `heavy` that the comparison hasn't: it has long, dense");
    assertRefused(log.replace(lines.get(2) + "\n", ""), "lacks participant 2 of `all`");
    assertRefused(log + lines.get(3) + "\n", "lacks participant 4 of `all`, or has one twice");
    String other = lines.get(3).substring(0, lines.get(3).length() - 64) + "0".repeat(64);
    assertRefused(log.replace(lines.get(3), other), "was begun with another list");
    assertRefused(log.replace(lines.get(1), "all,1,long,secret"), "no revealed participant");
    assertRefused("stratum,number,block,arm\nall,1,1,long\n", "is not a log of revealed");
  }

  @Test
  void wrongUsageIsExplained() throws IOException {
    assertEquals(2, run("compare", "project/study.grip", "--log", "log.csv"));
    assertTrue(err().contains("--log needs --to FOLDER"), err());
    assertEquals(2, run("compare", "project/study.grip", "--to", "out", "--log", "lg.csv"));
    assertTrue(err().contains("`lg.csv`: there is no such file"), err());
    String second = STUDY.substring(STUDY.indexOf("compare")).replace("two-ways", "again");
    Files.writeString(folder.resolve("project/study.grip"), STUDY + second);
    assertEquals(2, run("compare", "project/study.grip", "--to", "out", "--log", "log.csv"));
    assertTrue(err().contains("--log belongs to one comparison"), err());
  }
}
