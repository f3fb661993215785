package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.quantity.Numbers;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published training trials as plans for a trained athlete: the findings of each are listed here
 * with their reasons. Each file cites its trial and says what we filled in. Two trials are missing,
 * since the text we read gives neither holds nor sets: Hermans 2022 and Medernach 2015.
 */
class TrialPlansTest {

  private static final Path TRIALS = Path.of("src/test/resources/trials");

  private static Compilation trial(String name) {
    return Gripwright.read(TRIALS.resolve(name + ".grip"), ReadOptions.standard().withRoot(TRIALS))
        .compile();
  }

  private static CompiledPlan plan(String trial, String name) {
    return trial(trial).plans().stream()
        .filter(p -> p.plan().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Returns a value of the last session of each week. */
  private static List<Double> weekly(CompiledPlan plan, ToDoubleFunction<PlannedExercise> value) {
    Map<Integer, Double> byWeek = new TreeMap<>();
    plan.sessions().forEach(s -> byWeek.put(s.week(), value.applyAsDouble(s.exercises().get(0))));
    return new ArrayList<>(byWeek.values());
  }

  private static void assertWeekly(
      List<Double> expected, CompiledPlan plan, ToDoubleFunction<PlannedExercise> value) {
    double[] found = weekly(plan, value).stream().mapToDouble(v -> v).toArray();
    assertEquals(expected.size(), found.length);
    for (int i = 0; i < found.length; i++) {
      assertEquals(expected.get(i), found[i], 1e-6, Arrays.toString(found));
    }
  }

  /** No findings, unless a reason is given. */
  @ParameterizedTest
  @CsvSource({
    "added-weight-then-edges-2012, ''",
    "intermittent-holds-2019, ''",
    // At 80 % the sets that we filled in end a second early by the fatigue model; 79 % would not.
    // The groups are plans of one athlete over the same weeks.
    "three-intensities-2022, 'warning plan.overlap, warning plan.hold-doubtful, warning plan.overlap'",
    "weekly-added-weight-2021, ''",
    "maximal-holds-2019, warning plan.overlap",
    // One set more is a third more, then a quarter: one smallest step of one exercise.
    "dynamic-flexion-2024, ''",
    "load-after-two-full-sessions-2009, ''",
  })
  void findingsAreThoseThatCanBeDefended(String name, String expected) {
    Compilation compiled = trial(name);
    assertEquals(
        expected,
        compiled.findings().stream()
            .map(f -> f.severity().word() + " " + f.code())
            .collect(Collectors.joining(", ")));
  }

  /** Weeks and sessions a week as published; what each file fills in is marked there. */
  @ParameterizedTest
  @CsvSource({
    "added-weight-then-edges-2012, strength-then-edges, 8, 2",
    "intermittent-holds-2019, intermittent, 8, 2",
    "three-intensities-2022, at-100, 4, 2",
    "three-intensities-2022, at-80, 4, 2",
    "three-intensities-2022, at-60, 4, 2",
    "weekly-added-weight-2021, added-weight, 8, 2",
    "maximal-holds-2019, twice, 4, 2",
    "maximal-holds-2019, three-times, 4, 3",
    "dynamic-flexion-2024, five-weeks, 5, 3",
    "load-after-two-full-sessions-2009, by-the-log, 6, 2",
  })
  void everySessionFindsItsDay(String trial, String name, int weeks, int perWeek) {
    CompiledPlan plan = plan(trial, name);
    for (int week = 1; week <= weeks; week++) {
      assertEquals(perWeek, plan.sessionsOf(week).size());
    }
    assertEquals(weeks * perWeek, plan.sessions().size());
  }

  /** 1.25 kg more each week, as published; 0.25 kg steps build each. */
  @Test
  void addedWeightRisesAsPublished() {
    CompiledPlan plan = plan("weekly-added-weight-2021", "added-weight");
    double first = weekly(plan, e -> e.totalLoad().kilograms()).get(0);
    List<Double> rising = new ArrayList<>();
    for (int week = 0; week < 8; week++) {
      rising.add(first + 1.25 * week);
    }
    assertWeekly(rising, plan, e -> e.totalLoad().kilograms());
  }

  /** From 3 to 5 sets over the five weeks, as published; when each comes is ours. */
  @Test
  void setsRiseAsPublished() {
    assertWeekly(
        List.of(3.0, 3.0, 4.0, 4.0, 5.0),
        plan("dynamic-flexion-2024", "five-weeks"),
        e -> e.scheme().sets());
  }

  /** Two easy sessions in a row earn 2 %; one that is too hard starts the count again. */
  @Test
  void loadRisesAfterTwoEasySessionsInARow() {
    assertWeekly(
        List.of(75.0, 76.5, 76.5, 78.03, 78.03, 78.03),
        plan("load-after-two-full-sessions-2009", "by-the-log"),
        e -> e.percentOfMax().orElseThrow());
  }

  /** A row of the page: a trial, one of its plans, what its text prints and what we filled in. */
  private record Row(String trial, String plan, String published, String filledIn) {}

  private static final List<Row> ROWS =
      List.of(
          new Row(
              "added-weight-then-edges-2012",
              "strength-then-edges",
              "4 weeks of added weight on 18 mm, then 4 on small edges; 10 s with 3 s in reserve†",
              "4 sets, 3 min between, twice a week; 10 mm and its load"),
          new Row(
              "intermittent-holds-2019",
              "intermittent",
              "8 weeks on 18 mm; 10 s on and 5 s off, 4 to 5 in a set, 60 s between†",
              "60 % max, 4 sets of 5, twice a week"),
          new Row(
              "three-intensities-2022",
              "at-100",
              "4 weeks, twice a week, on 12 mm, at 100 %",
              "6 x 6 s, 3 min between"),
          new Row(
              "three-intensities-2022",
              "at-80",
              "the same at 80 %",
              "4 x 6 x 7 s, 3 s and 3 min between"),
          new Row("three-intensities-2022", "at-60", "the same at 60 %", "the same"),
          new Row(
              "weekly-added-weight-2021",
              "added-weight",
              "8 weeks, 1.25 kg more each week, on 23 mm",
              "from 80 % max, 5 x 10 s, 3 min between, twice a week"),
          new Row(
              "maximal-holds-2019",
              "twice",
              "4 weeks of maximal hangs, twice a week (journal)",
              "6 x 6 s, 3 min between; open four on 20 mm"),
          new Row("maximal-holds-2019", "three-times", "three times (ahead of print)", "the same"),
          new Row(
              "dynamic-flexion-2024",
              "five-weeks",
              "5 weeks, three times a week, 3 to 5 sets of 4 to 10",
              "holds of 5 s in place of lifts, 70 % max, a set more every two weeks"),
          new Row(
              "load-after-two-full-sessions-2009",
              "by-the-log",
              "2 to 10 % more after two sessions with something to spare",
              "2 %, at an effort of at most 8; 4 x 10 s at 75 %"));

  private static String compiled(CompiledPlan plan) {
    List<Double> tension = weekly(plan, e -> e.scheme().timeUnderLoad().toMillis() / 1000.0);
    List<Double> load = weekly(plan, e -> e.totalLoad().kilograms());
    int weeks = plan.weeks().size();
    return String.format(
        Locale.ROOT,
        "%d x %d | %s s | %s kg",
        weeks,
        plan.sessions().size() / weeks,
        range(tension),
        range(load));
  }

  private static String range(List<Double> byWeek) {
    double first = byWeek.get(0);
    double last = byWeek.get(byWeek.size() - 1);
    String from = Numbers.plain(first, 2);
    return first == last ? from : from + " to " + Numbers.plain(last, 2);
  }

  /** The table of docs/researchers.md; rewritten with {@code -Dgripwright.bless=true}. */
  @Test
  void thePageSaysWhatTheTrialsCompileTo() throws IOException {
    StringBuilder table = new StringBuilder();
    table.append("| plan | in the text we read | filled in | weeks x sessions | tension a session");
    table.append(" | load |\n|---|---|---|---|---|---|\n");
    for (Row row : ROWS) {
      table.append(
          String.format(
              "| `%s`, `%s` | %s | %s | %s |\n",
              row.trial(),
              row.plan(),
              row.published(),
              row.filledIn(),
              compiled(plan(row.trial(), row.plan()))));
    }
    Path page = Path.of("../../docs/researchers.md");
    String text = Files.readString(page);
    String opening = "<!-- table: trials -->\n";
    int from = text.indexOf(opening) + opening.length();
    int to = text.indexOf("<!-- end -->", from);
    if (Boolean.getBoolean("gripwright.bless")) {
      Files.writeString(page, text.substring(0, from) + table + text.substring(to));
    } else {
      assertEquals(table.toString(), text.substring(from, to));
    }
  }
}
