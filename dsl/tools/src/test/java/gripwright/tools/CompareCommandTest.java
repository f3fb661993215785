package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class CompareCommandTest extends CommandLine {

  private static final String STUDY =
      """
      language 1
      cohort adults {
        size             500
        sex              female 50 %
        hand by sex
        body-mass        66 kg spread 14 %
        maximum          100 kg spread 15 % on half-crimp edge 20 mm
        critical-force   41 % max spread 28 %
        correlate        maximum, critical-force 0.6
        correlate        maximum, body-mass 0.4
        correlate        body-mass, critical-force 0
        source           "our own, for the example"
      }
      compare long-or-dense "long holds or repeats?" {
        for      adults
        arm long do max-holds with level 70 % of test on half-crimp edge 20 mm
        arm dense do repeaters with level 45 % of test on half-crimp edge 20 mm
        arm none no training
        match    impulse of long to dense by sets within 20 %
        each     2 per week
        over     8 weeks
        draws    1000 stream 2027
        measure  time-under-load, load-time, impulse, impulse-above-cf, minutes, density, end-reserve,
            fatigue, completed, first-failure, weekly-rise, a2-exposure, a4-exposure, peak-a2-load,
            peak-a4-load
        prefer   less a2-exposure, more impulse
        report   provider "two trainers"
        note     "for the meeting"
      }
      """;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("study.grip"), STUDY);
  }

  @Test
  void comparesAsTextWithinEightyColumns() {
    assertEquals(0, run("compare", "study.grip"), err());
    assertEquals("", err());
    assertTrue(out().startsWith("LONG HOLDS OR REPEATS?\n"), out());
    assertTrue(out().contains("LONG AGAINST DENSE"), out());
    assertTrue(out().contains("nothing is done in none"), out());
    out().lines().forEach(line -> assertTrue(line.length() <= 84, line));
    assertFalse(
        Pattern.compile("\\b(safe|safer|equivalent|protect|prevent)", Pattern.CASE_INSENSITIVE)
            .matcher(out())
            .find(),
        out());
  }

  @Test
  void theDocumentKeepsItsSchemaAndThreadsChangeNothing() throws IOException {
    assertEquals(0, run("compare", "study.grip", "--as", "json"), err());
    assertKeeps("compare");
    String one = out();
    assertEquals(0, run("compare", "study.grip", "long-or-dense", "--as=json", "--threads", "3"));
    assertEquals(one, out());
    assertEquals(0, run("compare", "study.grip", "--as", "json", "--drivers"), err());
    assertKeeps("compare");
    assertTrue(out().contains("\"first\": 1"), out());
  }

  @Test
  void severalComparisonsAreAList() throws IOException {
    String second =
        STUDY.substring(STUDY.indexOf("compare long")).replace("long-or-dense", "again");
    Files.writeString(folder.resolve("two.grip"), STUDY + second);
    assertEquals(0, run("compare", "two.grip", "--as", "json"), err());
    assertKeeps("compare");
    assertTrue(out().contains("\"comparisons\": ["), out());
  }

  @Test
  void csvHasALineForEachPairAndMeasure() {
    assertEquals(0, run("compare", "study.grip", "--as", "csv"), err());
    assertEquals(1 + 3 * 15, out().split("\r\n").length, out());
  }

  @Test
  void whatCannotBeComparedIsAnError() throws IOException {
    Files.writeString(folder.resolve("close.grip"), STUDY.replace("within 20 %", "within 0.1 %"));
    assertEquals(1, run("compare", "close.grip", "--as", "json"));
    assertKeeps("findings");
    assertTrue(out().contains("compare.match-residual"), out());
    assertEquals(1, run("check", "close.grip"));
    assertTrue(out().contains("(compare.match-residual)"), out());
  }

  @Test
  void wrongUsageIsExplained() throws IOException {
    assertEquals(2, run("compare"));
    assertEquals(2, run("compare", "study.grip", "long-or-dnse"));
    assertTrue(err().contains("did you mean `long-or-dense`?"), err());
    assertEquals(2, run("compare", "study.grip", "--threads", "0"));
    assertTrue(err().contains("--threads is a number from 1 to 256, not `0`"), err());
    Files.writeString(folder.resolve("none.grip"), "language 1\n");
    assertEquals(2, run("compare", "none.grip"));
    assertTrue(err().contains("there is no comparison in none.grip"), err());
    assertEquals(0, run("compare", "--help"));
    assertTrue(out().startsWith("gripwright compare FILE [NAME]"), out());
  }
}
