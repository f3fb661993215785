package gripwright.language.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.source.Limits;
import gripwright.language.source.SourceFile;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class FormatterTest {

  private static Formatted format(String text) {
    return Formatter.format(SourceFile.of("a.grip", text));
  }

  private static void assertFormatted(String expected, String text) {
    Formatted formatted = format(text);
    assertEquals(expected, formatted.text().orElseThrow(() -> refused(formatted)));
    assertEquals(!expected.equals(text), formatted.changed());
    assertFalse(format(expected).changed());
  }

  private static AssertionError refused(Formatted formatted) {
    return new AssertionError(formatted.findings());
  }

  @Test
  void aPlanOnOneLine() {
    assertFormatted(
        """
        language 1
        plan a "A" {
          for      tove
          from     2027-01-11
          weekly-rise at most 15 %
          rest between exercises 4 min
          block base 2 weeks {
            session s 2 per week at least 48 h apart {
              prefer tue, thu
              do tens with level 75 % max, sets 4 on half-crimp edge 20 mm
            }
            advance load 2 % weekly
          }
          retest half-crimp edge 20 mm hold 7 s every 4 weeks
        }
        """,
        "language 1 plan a \"A\"{for tove from 2027-01-11 weekly-rise at most 15 % rest between"
            + " exercises 4 min block base 2 weeks{session s 2 per week at least 48 h apart{prefer"
            + " tue , thu do tens with level 75 % max,sets 4 on half-crimp edge 20 mm}advance load"
            + " 2 % weekly}retest half-crimp edge 20 mm hold 7 s every 4 weeks}");
  }

  @Test
  void commentsStayWhereTheyAre() {
    assertFormatted(
        """
        # first
        language 1  # the first

        # of the protocol
        protocol p {  # opens
          # before the aim
          aim    strength  # why
          given  sets 3    # how many

          # before the steps
          repeat sets resting  # broken
              # inside
              2 min {
            hold 7 s at 60 % max
            # before the brace
          }  # closes
        }
        # last
        """,
        """
        # first\t
        language 1 # the first



        # of the protocol
        protocol p { # opens

        # before the aim
        aim strength # why
        given sets 3# how many


        # before the steps
        repeat sets resting # broken
        # inside
        2 min{hold 7 s at 60 % max
        # before the brace

        } # closes
        }


        # last"""
            .replace("\n\n\n# last", "\n# last"));
  }

  @Test
  void longLinesBreakBetweenClauses() {
    assertFormatted(
        """
        language 1
        athlete a "A" {
          familiar   half-crimp 30 months, open-four 18 months, three-finger-drag 12 months,
                     front-three 12 months
          injury     ring a2 left from 2026-02-03 cleared 2026-06-20
                     "partial strain, a splint for six weeks, and then a long way back"
        }
        plan p {
          block b 2 weeks {
            session s 2 per week {
              do tens with work 7 s, level 84 % max, sets 5
                  on best of half-crimp, front-three, eased-front-three edge 20 mm
            }
          }
          waive small-edges in sharpen week 3 session limit exercise 2
              because "she has trained 16 mm for years; reviewed by the coach"
        }
        rules r {

          rule long {
            require  athlete.trained >= 36 months and athlete.ability >= french 7b
                     and sum(time-under-load of exercises where grip.family is split) <= 60 s
          }
        }
        """,
        """
        language 1
        athlete a "A" {
        familiar half-crimp 30 months,
        open-four 18 months, three-finger-drag 12 months, front-three 12 months
        injury ring a2 left from 2026-02-03 cleared 2026-06-20 \
        "partial strain, a splint for six weeks, and then a long way back"
        }
        plan p { block b 2 weeks { session s 2 per week {
        do tens with work 7 s, level 84 % max, sets 5 on best of half-crimp, front-three, \
        eased-front-three edge 20 mm } }
        waive small-edges in sharpen week 3 session limit exercise 2 because \
        "she has trained 16 mm for years; reviewed by the coach" }
        rules r {

        rule long { require athlete.trained>=36 months and athlete.ability>=french 7b and \
        sum ( time-under-load of exercises where grip . family is split )<=60 s } }
        """);
  }

  @Test
  void signsHaveTheirUsualSpaces() {
    assertFormatted(
        """
        language 1
        rules r {
          rule x {
            when     -(a + -b) * 2 / (c.d - -5 kg) <= 60 % of e and not (f or g)
            require  every(weeks where eased: count(days) >= 1 or largest(load of days) > 3 kg)
          }
        }
        log a {
          2027-01-03 session s {
            tens on half-crimp edge 20 mm: sets 5 of 5, pain 0
          }
        }
        """,
        """
        language 1
        rules r { rule x { when - ( a+ - b )*2/( c . d - - 5 kg )<=60 % of e and not( f or g )
        require every( weeks where eased :count ( days )>=1 or largest (load of days)>3 kg ) } }
        log a { 2027-01-03 session s { tens on half-crimp edge 20 mm :sets 5 of 5 ,pain 0 } }
        """);
  }

  @Test
  void byteOrderMarksAndLineEndsAreNormalized() {
    assertFormatted("language 1\n\n# a\n", "\uFEFF\r\n\r\nlanguage 1\r\n\r\n\r\n\t# a \r\n\r\n");
  }

  @Test
  void aBrokenTextIsLeftAlone() {
    Formatted formatted = format("language 1\nplan {\n");
    assertTrue(formatted.text().isEmpty());
    assertFalse(formatted.changed());
    assertFalse(formatted.findings().isEmpty());
    assertTrue(
        format("language 2\n").text().isEmpty(), "a later language may be laid out otherwise");
  }

  @Test
  void unknownNamesDoNotPreventFormatting() {
    assertFormatted("language 1\nlog nobody {\n}\n", "language 1\nlog nobody {}");
  }

  @Test
  void aResultTooLargeToReadIsRefused() {
    String text = "language 1 log a{2027-01-01 skipped s 2027-01-01 skipped s}";
    Limits tight = new Limits(text.length(), 100, 10, 10, 10);
    Formatted formatted = Formatter.format(SourceFile.of("a.grip", text), tight);
    assertEquals("syntax.too-large", formatted.findings().get(0).finding().code());
    assertTrue(formatted.text().isEmpty());
  }

  @TestFactory
  Stream<DynamicTest> examplesAndCatalogueAreInTheirLayout() {
    return Stream.of(PlanTexts.EXAMPLES, PlanTexts.EXAMPLES.resolve("changes"), PlanTexts.CATALOGUE)
        .flatMap(FormatterTest::unchanged);
  }

  @TestFactory
  Stream<DynamicTest> samplesAreInTheirLayout() {
    return unchanged(PlanTexts.SAMPLES);
  }

  private static Stream<DynamicTest> unchanged(Path folder) {
    return PlanTexts.in(folder).entrySet().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getKey().getFileName().toString(),
                    () ->
                        assertEquals(
                            format(file.getValue()).text().orElseThrow(), file.getValue())));
  }
}
