package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.csv.CsvRows;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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
    String driven = out();
    assertEquals(0, run("compare", "study.grip", "--as=json", "--drivers", "--threads", "3"));
    assertEquals(driven, out());
  }

  @Test
  void driversHaveIntervalsInEveryOutput() throws IOException {
    assertEquals(0, run("compare", "study.grip"), err());
    assertFalse(out().contains("Sobol"), out());
    assertEquals(0, run("compare", "study.grip", "--drivers"), err());
    String text = out().replaceAll("\\s+", " ");
    assertTrue(text.contains("(Sobol indices)"), out());
    assertTrue(
        Pattern.compile("\\(total \\d+ %, \\d+ to \\d+ %; alone \\d+ %, -?\\d+ to \\d+ %\\)")
            .matcher(text)
            .find(),
        out());
    assertEquals(0, run("compare", "study.grip", "--drivers", "--to", "driven"), err());
    assertEquals(0, run("compare", "study.grip", "--to", "plain"), err());
    assertIntervals("driven", true);
    assertIntervals("plain", false);
  }

  private void assertIntervals(String name, boolean some) throws IOException {
    String table = Files.readString(folder.resolve(name + "/sensitivity.csv"));
    List<List<String>> rows = CsvRows.of(table).orElseThrow();
    List<String> head = rows.get(0);
    int checked = 0;
    for (List<String> row : rows.subList(1, rows.size())) {
      if (row.get(head.indexOf("kind")).equals("parameter")) {
        for (String index : List.of("total", "first")) {
          String low = row.get(head.indexOf(index + "Low90"));
          String high = row.get(head.indexOf(index + "High90"));
          assertEquals(some, !low.isEmpty() && !high.isEmpty(), table);
          assertTrue(!some || Double.parseDouble(low) <= Double.parseDouble(high), row.toString());
        }
        checked++;
      }
    }
    assertTrue(checked > 0, table);
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
  void aShareOfATestCountsFromTheCohortsOwnSetupOnly() throws IOException {
    Files.writeString(
        folder.resolve("other.grip"),
        STUDY.replace(
            "of test on half-crimp edge 20 mm\n  arm dense",
            "of test on half-crimp edge 18 mm\n  arm dense"));
    assertEquals(1, run("check", "other.grip"));
    assertTrue(out().contains("(compare.no-maximum)"), out());
    assertTrue(out().replaceAll("\\s+", " ").contains("the cohort has one of"), out());
  }

  @Test
  void withCodesNobodyIsNamedInAnyFile() throws IOException {
    Files.writeString(
        folder.resolve("own.grip"),
        """
        language 1
        athlete tora-vik "Tora Vik" {
          born       1995-03-03
          body-mass  60 kg
          trained    70 months
          ability    french 7c+
          hand       { length 178 mm }
          familiar   half-crimp 60 months
          available  mon 90 min, wed 90 min
          equipment  { edges 20 mm  added 0.5 kg steps to 60 kg  assist 0.5 kg steps to 40 kg }
        }
        log tora-vik { 2027-01-04 test half-crimp edge 20 mm hold 7 s load 84 kg }
        plan tora-vik "the winter of Tora Vik" {
          for  tora-vik
          from 2027-01-11
          supervised by "a friend of Tora Vik"
          report setting "where Tora Vik lives"
          block all 2 weeks {
            session holds 2 per week { do repeaters with level 50 % max on half-crimp edge 20 mm }
          }
        }
        compare tora-vik-winter "Tora Vik, plan or not" {
          for      tora-vik
          arm tora-vik plan tora-vik
          arm shorter do repeaters with level 50 % max, sets 2 on half-crimp edge 20 mm
          each     2 per week
          over     2 weeks
          draws    100 stream 1
          measure  impulse, end-reserve
          prefer   less impulse, more end-reserve
          note     "as Tora Vik wished"
        }
        """);
    assertEquals(0, run("compare", "own.grip", "--to", "out", "--codes", "key.csv"), err());
    assertTrue(Files.readString(folder.resolve("key.csv")).contains("tora-vik"));
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      for (Path file : files.toList()) {
        String all = (file.getFileName() + Files.readString(file)).toLowerCase(Locale.ROOT);
        assertFalse(all.contains("tora") || all.contains("vik") || all.contains("friend"), all);
      }
    }
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
