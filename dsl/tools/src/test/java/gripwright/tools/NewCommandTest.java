package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.athlete.Athlete;
import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code new}: every starter project compiles as it is, and nothing is overwritten. */
final class NewCommandTest extends CommandLine {

  private static final List<String> FILES = List.of("athletes.grip", "log.grip", "plan.grip");
  private static final LocalDate FROM = LocalDate.of(2027, 1, 11);
  private static final int LONGEST_LINE = 100;

  private static final Pattern LEVEL = Pattern.compile("(?m) ([0-9.]+) %$");
  private static final Pattern NEXT = Pattern.compile("(?m)^ +gripwright compile (.*)$");

  private String read(String file) throws IOException {
    return Files.readString(folder.resolve("start").resolve(file));
  }

  private Set<String> there(Path where) throws IOException {
    try (Stream<Path> files = Files.list(where)) {
      return new HashSet<>(files.map(file -> file.getFileName().toString()).toList());
    }
  }

  /** Asserts that the project has no finding at all, not even advice. */
  private void assertNoFinding() {
    for (String file : FILES) {
      assertEquals(0, run("check", "start/" + file));
      assertEquals("start/" + file + ": no findings\n", out());
    }
  }

  @ParameterizedTest
  @CsvSource({"1, kg", "3, kg", "8, kg", "30, kg", "1, lb", "3, lb", "8, lb", "30, lb"})
  void everyProjectIsRightAsItIs(String squad, String units) throws IOException {
    assertEquals(0, run("new", "start", "--squad", squad, "--units", units), err());
    assertEquals("", err());
    assertEquals(new HashSet<>(FILES), there(folder.resolve("start")));
    assertNoFinding();
    assertEquals(0, run("format", "--check", "start/" + FILES.get(0), "start/" + FILES.get(1)));
    assertEquals(0, run("format", "--check", "start/" + FILES.get(2)));
    for (String file : FILES) {
      assertTrue(
          read(file).lines().allMatch(line -> line.length() <= LONGEST_LINE && ascii(line)),
          () -> file + " has a line that is too long or not ASCII");
    }
    assertEquals(0, run("compile", "start/plan.grip"));
    assertEquals("", err());
    assertLevelsAreOrdinary(out());
  }

  private static boolean ascii(String line) {
    return line.chars().allMatch(c -> c < 0x80);
  }

  private static void assertLevelsAreOrdinary(String text) {
    Matcher level = LEVEL.matcher(text);
    int levels = 0;
    while (level.find()) {
      double share = Double.parseDouble(level.group(1));
      assertTrue(share >= 45 && share < 80, level.group());
      levels++;
    }
    assertTrue(levels >= 8, text);
  }

  private Collection<Athlete> athletes() {
    return Gripwright.read(folder.resolve("start/plan.grip"), ReadOptions.standard())
        .athletes()
        .values();
  }

  @Test
  void everybodyIsGrownUpAndDifferent() {
    run("new", "start", "--squad", "30");
    Set<LocalDate> born = new HashSet<>();
    Set<Integer> ages = new HashSet<>();
    for (Athlete athlete : athletes()) {
      born.add(athlete.born());
      ages.add(athlete.born().until(FROM).getYears());
    }
    assertEquals(30, born.size());
    assertEquals(30, ages.size());
    assertTrue(ages.stream().allMatch(age -> age >= 18), ages::toString);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 8, 30})
  void aSquadHasOnePlanForAllThatDiffersForSome(int size) throws IOException {
    run("new", "start", "--squad", Integer.toString(size));
    assertEquals(size, athletes().size());
    assertEquals(size > 1, read("plan.grip").contains("only for bruno"));
    run("compile", "start/plan.grip");
    assertEquals(size, out().split("FIRST BLOCK", -1).length - 1);
  }

  @Test
  void withPoundsNoMassIsInKilograms() throws IOException {
    run("new", "start", "--units", "lb");
    for (String file : FILES) {
      assertFalse(read(file).contains(" kg"), file);
    }
    assertTrue(read("athletes.grip").contains("length    6.9 inch"), read("athletes.grip"));
    assertTrue(read("athletes.grip").contains("ability    yds 5.11d"), read("athletes.grip"));
  }

  /** The comment in the log shows lines that work. */
  @ParameterizedTest
  @ValueSource(strings = {"kg", "lb"})
  void theLinesInTheLogsCommentAreRight(String units) throws IOException {
    run("new", "start", "--units", units);
    List<String> lines = new ArrayList<>();
    boolean example = false;
    for (String line : read("log.grip").lines().toList()) {
      lines.add(example ? line.replaceFirst("# ", "") : line);
      example |= line.startsWith("  # After each session");
    }
    String log = String.join("\n", lines) + "\n";
    assertTrue(log.contains("\n  2027-01-11 session fingers {\n"), log);
    Files.writeString(folder.resolve("start/log.grip"), log);
    assertNoFinding();
    run("compile", "start/plan.grip");
    assertTrue(out().contains("Mon 11 Jan  fingers, done"), out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2000-01-01", "2026-12-30", "2031-09-05", "2199-12-31"})
  void aPlanMayBeginOnAnyDay(String from) throws IOException {
    assertEquals(0, run("new", "start", "--squad", "8", "--from", from), err());
    assertTrue(read("plan.grip").contains("  from     " + from + "\n"), read("plan.grip"));
    assertFalse(read("log.grip").contains("2027"), read("log.grip"));
    assertNoFinding();
  }

  @Test
  void thePrintedLineIsRunAsItIs() {
    assertEquals(0, run("new", "start/"));
    Matcher next = NEXT.matcher(out());
    assertTrue(next.find(), out());
    assertEquals("start/plan.grip", next.group(1));
    assertEquals(0, run("compile", next.group(1)));
  }

  @Test
  void aPathWithSpacesIsPrintedInQuotes() {
    assertEquals(0, run("new", "my squad"));
    assertTrue(out().contains("gripwright compile \"my squad/plan.grip\"\n"), out());
    assertEquals(0, run("new", "5$ $(a)"));
    assertTrue(out().contains("gripwright compile '5$ $(a)/plan.grip'\n"), out());
  }

  @Test
  void anEmptyFolderIsTaken() throws IOException {
    Files.createDirectory(folder.resolve("start"));
    assertEquals(0, run("new", "start"));
    assertNoFinding();
  }

  @Test
  void aFolderWithFilesIsRefused() throws IOException {
    Files.createDirectory(folder.resolve("start"));
    Files.writeString(folder.resolve("start/notes.txt"), "mine");
    assertEquals(2, run("new", "start"));
    assertEquals("", out());
    assertTrue(err().contains("start` is not empty; name a new or an empty folder"), err());
    assertEquals(Set.of("notes.txt"), there(folder.resolve("start")));
  }

  @Test
  void aSecondProjectReplacesNoChange() throws IOException {
    run("new", "start");
    Files.writeString(folder.resolve("start/plan.grip"), "mine");
    assertEquals(2, run("new", "start", "--squad", "3"));
    assertEquals("mine", read("plan.grip"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--squad 0        | --squad is a number from 1 to 30, not `0`",
        "--squad 31       | --squad is a number from 1 to 30, not `31`",
        "--squad many     | --squad is a number from 1 to 30, not `many`",
        "--units stone    | --units is kg or lb, not `stone`",
        "--from tomorrow  | --from needs a day such as 2027-01-31, not `tomorrow`",
        "--from 1950-01-02 | --from is a day from 2000-01-01 on, not `1950-01-02`",
        "other            | new takes one folder, not 2",
        "--as json        | unknown option `--as`",
      })
  void wrongUsageIsRefused(String arguments, String sentence) throws IOException {
    List<String> all = new ArrayList<>(List.of("new", "start"));
    all.addAll(List.of(arguments.split(" ", -1)));
    assertEquals(2, run(all.toArray(String[]::new)));
    assertTrue(err().contains(sentence), err());
    assertTrue(err().contains("See `gripwright new --help`."), err());
    assertEquals(Set.of(), there(folder));
  }

  @Test
  void aFolderIsNeeded() {
    assertEquals(2, run("new"));
    assertTrue(err().contains("new needs a folder: gripwright new FOLDER"), err());
  }

  @Test
  void aFolderWithoutParentIsRefused() throws IOException {
    assertEquals(2, run("new", "deep/start"));
    assertTrue(err().contains("there is no folder"), err());
    assertEquals(Set.of(), there(folder));
  }
}
