package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.schedule.Caution;
import gripwright.tools.command.Console;
import gripwright.wording.Wording;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

final class MainTest extends CommandLine {

  private static final String SEASON =
      """
      language 1
      grip bent "Bent four" {
        fingers index, middle, ring, little
        family four
        index pip 75 deg to 105 deg
      }
      protocol hangs {
        aim strength
        given sets 4, hold 10 s, level 84 % max, rest 3 min
        repeat sets resting rest { hold hold at level }
      }
      athlete eir "Eir \u00C5s" {
        born 1994-03-02
        body-mass 61 kg
        trained 48 months
        ability french 7c
        hand { length 175 mm }
        familiar bent 40 months
        available tue 90 min, fri 90 min
        equipment { edges 20 mm  added 1.25 kg steps to 40 kg  assist 2.5 kg steps to 30 kg }
      }
      log eir {
        2026-12-28 test bent edge 20 mm hold 7 s load 80 kg
      }
      plan thaw "Before the thaw" {
        for eir
        from 2027-01-04
        block base 2 weeks {
          session strength 2 per week { do hangs on bent edge 20 mm }
        }
      }
      """;

  private static final String HURT =
      """
      athlete liv "Liv Aas" {
        born 1995-06-11
        body-mass 64 kg
        trained 48 months
        ability french 7c
        hand { length 170 mm }
        injury ring a2 left from 2026-12-20
        available tue 90 min, fri 90 min
        equipment { edges 20 mm  added 1.25 kg steps to 40 kg  assist 2.5 kg steps to 30 kg }
      }
      log liv {
        2026-12-10 test bent edge 20 mm hold 7 s load 78 kg
      }
      """;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("thaw.grip"), SEASON);
    Files.writeString(folder.resolve("wrong.grip"), SEASON.replace("for eir", "for eri"));
  }

  @Test
  void checkFindsNothingWrong() throws IOException {
    assertEquals(0, run("check", "thaw.grip"), out() + err());
    assertTrue(out().endsWith("thaw.grip: no findings\n"), out());
    assertEquals(0, run("check", "--as", "json", "thaw.grip"));
    assertKeeps("check");
  }

  @Test
  void checkFindsAMistake() throws IOException {
    assertEquals(1, run("check", "thaw.grip", "wrong.grip"));
    assertTrue(out().contains("error: unknown athlete `eri`\n"), out());
    assertTrue(out().contains("\n  wrong.grip:26:7 ("), out());
    assertTrue(out().endsWith("wrong.grip: 1 error\n"), out());
    assertEquals(1, run("check", "--as=json", "thaw.grip", "wrong.grip"));
    assertKeeps("check");
    assertKeeps("findings");
  }

  @Test
  void compileWritesTheSeasonWithItsCautions() {
    assertEquals(0, run("compile", "thaw.grip"), out() + err());
    assertTrue(out().startsWith("BEFORE THE THAW\nfor Eir \u00C5s, body mass 61 kg\n"), out());
    assertTrue(out().contains("WEEK 2 of 2"), out());
    String flat = out().replaceAll("\\s+", " ");
    for (Caution caution : Caution.general()) {
      assertTrue(flat.contains(Wording.english().say(caution)), caution.key());
    }
    assertFalse(
        Pattern.compile("\\b(safe|protect|prevent)", Pattern.CASE_INSENSITIVE)
            .matcher(out())
            .find());
    assertEquals("", err());
  }

  @Test
  void compileWritesJson() throws IOException {
    assertEquals(0, run("compile", "thaw.grip", "--as", "json"));
    assertKeeps("compile");
    assertTrue(out().contains("\"plan\": \"thaw\""), out());
  }

  @Test
  void aPlanForACohortIsCheckedButNotCompiled() throws IOException {
    String cohort =
        """
        language 1
        cohort adults {
          size     1000
          maximum  100 kg spread 15 % on half-crimp edge 20 mm "our own"
        }
        plan dense {
          for   adults
          from  2027-01-11
          block base 4 weeks {
            session s 2 per week {
              do repeaters on half-crimp edge 20 mm
            }
          }
        }
        """;
    Files.writeString(folder.resolve("cohort.grip"), cohort);
    assertEquals(0, run("check", "cohort.grip"), out());
    assertEquals(1, run("compile", "cohort.grip"), out());
    assertTrue(err().contains("(plan.for-cohort)"), err());
    assertEquals(1, run("compile", "cohort.grip", "--plan", "dense"), out());
    assertTrue(err().contains("for the cohort `adults`"), err());
  }

  @Test
  void severalPlansAreAList() throws IOException {
    String second = SEASON.substring(SEASON.indexOf("plan thaw")).replace("plan thaw", "plan next");
    Files.writeString(folder.resolve("two.grip"), SEASON + second);
    assertEquals(0, run("compile", "two.grip", "--as", "json"), out());
    assertKeeps("compile");
    assertTrue(out().contains("\"plans\": ["), out());
    assertEquals(0, run("compile", "two.grip", "--plan", "next", "--as", "json"));
    assertKeeps("compile");
    assertFalse(out().contains("\"plans\": ["), out());
    assertEquals(2, run("compile", "two.grip", "--plan", "nxt"));
    assertEquals(
        """
        gripwright: there is no plan `nxt` in two.grip; did you mean `next`?
        See `gripwright compile --help`.
        """,
        err());
  }

  @Test
  void errorsWriteNoFileButStillTheFindings() throws IOException {
    Path target = folder.resolve("season.json");
    assertEquals(1, run("compile", "wrong.grip", "--as", "json", "--output", "season.json"));
    assertFalse(Files.exists(target));
    assertKeeps("findings");
    assertKeeps("compile");
    assertEquals(1, run("compile", "wrong.grip"));
    assertEquals("", out());
    assertTrue(err().contains("unknown athlete `eri`"), err());
    Files.writeString(target, "old");
    assertEquals(2, run("compile", "nothing.grip", "--as", "json", "--output", "season.json"));
    assertKeeps("findings");
    assertEquals("old", Files.readString(target));
  }

  @Test
  void anErrorOfOneAthleteDoesNotStopOthers() throws IOException {
    String two =
        Files.readString(folder.resolve("thaw.grip"))
            .replace("for eir", "for eir, liv")
            .replace("log eir {", HURT + "log eir {");
    Files.writeString(folder.resolve("squad.grip"), two);
    assertEquals(1, run("compile", "squad.grip"), err());
    assertTrue(out().contains("for Liv Aas, body mass 64 kg\n\nNo sessions: "), out());
    assertTrue(out().contains("WEEK 1 of 2"), out());
    assertTrue(err().contains("where: for liv: "), err());
    assertEquals(1, run("compile", "squad.grip", "--as", "json"), err());
    assertKeeps("compile");
    assertTrue(out().contains("\"athlete\": \"eir\""), out());
    assertFalse(out().contains("\"athlete\": \"liv\""), out());
    assertTrue(out().contains("\"liv\""), out());
  }

  @Test
  void aFileIsReplacedAtomically() throws IOException {
    Files.writeString(folder.resolve("season.txt"), "old");
    assertEquals(0, run("compile", "thaw.grip", "--output", "season.txt"));
    assertEquals("", out());
    assertTrue(Files.readString(folder.resolve("season.txt")).startsWith("BEFORE"));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(3, files.count());
    }
    assertEquals(2, run("compile", "thaw.grip", "--output", "."));
    assertEquals(2, run("compile", "thaw.grip", "--output", "none/season.txt"));
    assertTrue(err().contains("there is no folder"), err());
  }

  @Test
  void wrongUsageIsReportedInOneSentence() throws IOException {
    assertEquals(2, run());
    assertEquals(2, run("chek", "thaw.grip"));
    assertEquals("gripwright: unknown command `chek`; did you mean `check`?\n", err());
    assertEquals(2, run("season", "thaw.grip"));
    assertTrue(err().startsWith("gripwright: unknown command `season`; "), err());
    assertEquals(2, run("check"));
    assertEquals(2, run("check", "--al", "thaw.grip"));
    assertTrue(err().startsWith("gripwright: unknown option `--al`; did you mean `--all`?"), err());
    assertEquals(2, run("check", "--as", "yaml", "thaw.grip"));
    assertEquals(2, run("check", "--root", "thaw.grip", "thaw.grip"));
    assertEquals(2, run("compile", "thaw.grip", "wrong.grip"));
    assertEquals(2, run("compile", "thaw.grip", "--as", "json", "--output"));
    assertKeeps("findings");
    assertEquals(2, run("check", "a\u0000b"));
    assertEquals(2, run("--hepl"));
  }

  @Test
  void explainShowsThePageOfACode() {
    assertEquals(0, run("explain", "plan.no-day"));
    assertTrue(out().startsWith("plan.no-day\n\n  only <placed> of <wanted>"), out());
    assertEquals(2, run("explain", "plan.noday"));
    assertTrue(err().contains("did you mean `plan.no-day`?"), err());
  }

  @Test
  void explainIsADocumentToo() {
    assertEquals(0, run("explain", "plan.no-day", "--as", "json"));
    assertTrue(
        out().contains("\"code\" : \"plan.no-day\"") || out().contains("\"code\": \"plan.no-day\""),
        out());
  }

  @Test
  void explainShowsTheDerivationOfADaysNumbers() throws IOException {
    assertEquals(0, run("explain", "thaw.grip", "--date", "2027-01-12"), err());
    assertTrue(out().contains("\n  on this day because: "), out());
    assertTrue(out().contains("\n    maximum, lower bound "), out());
    assertTrue(out().contains("\n    total load "), out());
    assertTrue(out().contains("estimates, not measurements"), out());
    assertEquals(0, run("explain", "thaw.grip", "--date", "2027-01-12", "--as", "json"));
    assertKeeps("compile");
    assertFalse(out().contains("2027-01-15"), out());
    assertEquals(0, run("explain", "thaw.grip", "--date", "2027-01-13"));
    assertTrue(out().contains("nothing is planned on this day; "), out());
  }

  @Test
  void explainReportsAMissingDayOrPlan() {
    assertEquals(2, run("explain", "thaw.grip"));
    assertTrue(err().contains("--date 2027-01-12"), err());
    assertEquals(2, run("explain", "thaw.grip", "--date", "12.1.2027"));
    assertTrue(err().contains("not `12.1.2027`"), err());
    assertEquals(2, run("explain", "thaw.grip", "--date", "2030-01-01"));
    assertTrue(err().contains("no plan of thaw.grip covers 2030-01-01; "), err());
    assertEquals(2, run("explain", "thaw.grip", "--date", "2027-01-12", "--athlete", "nobody"));
    assertTrue(err().contains("there is no plan for `nobody`"), err());
    assertEquals(1, run("explain", "wrong.grip", "--date", "2027-01-12"));
    assertTrue(err().startsWith("error: "), err());
    assertEquals(2, run("explain", "missing.grip", "--date", "2027-01-12"));
  }

  @Test
  void helpAndVersionAreResults() {
    for (String command : List.of("new", "check", "compile", "format", "grips", "explain")) {
      assertEquals(0, run(command, "--help"));
      assertTrue(out().startsWith("gripwright " + command), out());
    }
    assertEquals(0, run("--help"));
    assertEquals(0, run("--version"));
    assertTrue(out().startsWith("gripwright "), out());
    assertEquals("", err());
  }

  @Test
  void theSameBytesInEveryLocaleAndTimeZone() {
    run("compile", "thaw.grip", "--as", "json");
    String json = out();
    run("compile", "thaw.grip");
    String text = out();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(new Locale("tr", "TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      run("compile", "thaw.grip", "--as", "json");
      assertEquals(json, out());
      run("compile", "thaw.grip");
      assertEquals(text, out());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void anInternalFailureIsOneSentence() {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int b) {
            throw new IllegalStateException("broken");
          }
        };
    Console console = new Console(broken, err, folder, false);
    assertEquals(2, Main.run(List.of("--help"), console, Map.of()));
    assertEquals(1, err().lines().count(), err());
    err.reset();
    assertEquals(2, Main.run(List.of("--help"), console, Map.of("GRIPWRIGHT_DEBUG", "1")));
    assertTrue(err().contains("\tat gripwright.tools"), err());
  }

  @Test
  void coloursAreForTerminalsThatWantThem() {
    assertFalse(Terminal.showsColours(Map.of("NO_COLOR", "1")));
    assertFalse(Terminal.showsColours(Map.of("TERM", "dumb")));
  }
}
