package example.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.compare.RunOptions;
import gripwright.language.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs on two local workers give what one machine gives, byte for byte. */
class ClusterTest {

  @SuppressWarnings("NullAway.Init")
  private static SparkSession spark;

  @TempDir Path folder;

  @BeforeAll
  static void start() {
    spark =
        SparkSession.builder()
            .master("local[2]")
            .appName("test")
            .config("spark.ui.enabled", "false")
            .config("spark.driver.bindAddress", "127.0.0.1")
            .config("spark.driver.host", "127.0.0.1")
            .config("spark.sql.shuffle.partitions", "4")
            .getOrCreate();
  }

  @AfterAll
  static void stop() {
    spark.stop();
  }

  /** An athlete of the invented club; the load of the test differs from one to the next. */
  private static String athlete(int number) {
    String name = "member-" + number;
    return """
        language 1
        athlete NAME {
          born       1995-03-03
          body-mass  60 kg
          trained    70 months
          ability    french 7c+
          hand       { length 178 mm }
          familiar   half-crimp 60 months
          available  mon 90 min, wed 90 min, fri 90 min
          equipment  { edges 20 mm  added 0.5 kg steps to 60 kg  assist 0.5 kg steps to 40 kg }
        }
        log NAME { 2027-01-04 test half-crimp edge 20 mm hold 7 s load LOAD kg }
        plan NAME-winter {
          for  NAME
          from 2027-01-11
          block all 4 weeks {
            session holds 2 per week { do repeaters with level 50 % max on half-crimp edge 20 mm }
          }
        }
        """
        .replace("NAME", name)
        .replace("LOAD", Double.toString(70 + number / 2.0));
  }

  @Test
  void everyPlanIsThatOfOneMachine() throws IOException {
    Path texts = Files.createDirectory(folder.resolve("texts"));
    TreeMap<String, String> written = new TreeMap<>();
    for (int number = 0; number < 40; number++) {
      written.put("member-" + number + ".grip", athlete(number));
    }
    written.put("broken.grip", "language 1\nplan {\n");
    for (var text : written.entrySet()) {
      Files.writeString(texts.resolve(text.getKey()), text.getValue());
    }
    Files.writeString(texts.resolve("notes.txt"), "no plan");
    List<String> expected = new ArrayList<>();
    written.forEach(
        (file, text) ->
            Replan.of(file, text)
                .forEach(
                    each -> expected.add(each.file() + "\n" + each.plan() + "\n" + each.json())));
    assertEquals(41, expected.size());
    assertTrue(expected.get(1).contains("\"sessions\""), expected.get(1));

    String table = folder.resolve("plans").toString();
    NightlyPlans.run(spark, texts.toString(), table);
    NightlyPlans.run(spark, texts.toString(), table);

    List<String> rows = new ArrayList<>();
    for (Row row : spark.read().parquet(table).sort("file", "plan").collectAsList()) {
      rows.add(row.getString(0) + "\n" + row.getString(1) + "\n" + row.getString(2));
    }
    assertEquals(expected, rows);
  }

  private static final String STUDY =
      """
      language 1
      cohort adults {
        size             5000
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
        draws    20000 stream 2027
        measure  impulse, impulse-above-cf, end-reserve, completed, first-failure, a2-exposure
        prefer   less a2-exposure, more impulse
      }
      """;

  @Test
  void aComparisonByRangesOfDrawsIsThatOfOneMachine() {
    Reading reading = ComparedDraws.read(STUDY);
    String alone =
        ComparedDraws.document(
            reading,
            reading.run(reading.comparisons().get("long-or-dense")).run(RunOptions.standard()));
    assertTrue(alone.contains("\"draws\": 20000"), alone);
    assertEquals(alone, ComparedDraws.run(spark, STUDY, "long-or-dense"));
  }
}
