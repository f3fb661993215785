package gripwright.language.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.Gripwright;
import gripwright.language.ReadOptions;
import gripwright.language.Reading;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.ParsedFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Properties of the layout of every text. */
class FormatterProperties {

  private static final List<String> TEXTS = PlanTexts.wellWritten();

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.of(TEXTS);
  }

  private static String formatted(String text) {
    Formatted formatted = Formatter.format(SourceFile.of("a.grip", text));
    return formatted
        .text()
        .orElseThrow(() -> new AssertionError(formatted.findings() + "\n" + text));
  }

  @Property(tries = 300)
  void formattedTwiceIsFormattedOnce(@ForAll("texts") String text, @ForAll Random random) {
    String once = formatted(PlanTexts.laidOut(text, random));
    assertEquals(once, formatted(once));
  }

  @Property(tries = 300)
  void everyWordAndCommentStaysInItsOrder(@ForAll("texts") String text, @ForAll Random random) {
    String mixed = PlanTexts.laidOut(text, random);
    assertEquals(PlanTexts.words(text), PlanTexts.words(mixed));
    assertEquals(PlanTexts.wordsAndComments(mixed), PlanTexts.wordsAndComments(formatted(mixed)));
  }

  @Property(tries = 300)
  void declarationsStayTheSame(@ForAll("texts") String text, @ForAll Random random) {
    String mixed = PlanTexts.laidOut(text, random);
    ParsedFile parsed = PlanTexts.parse(formatted(mixed));
    assertEquals(List.of(), parsed.findings());
    assertEquals(PlanTexts.parse(mixed).declarations(), parsed.declarations());
  }

  /** Without comments and blank lines there is one layout, however a text was written. */
  @Property(tries = 300)
  void whiteSpaceBetweenWordsLeavesNoTrace(@ForAll("texts") String text) {
    String oneLine = String.join(" ", PlanTexts.words(text));
    String lines = String.join("\r\n\t", PlanTexts.words(text));
    assertEquals(formatted(oneLine), formatted(lines));
  }

  @Property(tries = 300)
  void linesAreClean(@ForAll("texts") String text, @ForAll Random random) {
    String out = formatted(PlanTexts.laidOut(text, random));
    assertTrue(out.endsWith("\n") && !out.endsWith("\n\n"), out);
    assertFalse(out.startsWith("\n"), out);
    assertFalse(out.contains("\n\n\n"), out);
    assertFalse(out.contains("\n\n }"), out);
    for (String line : out.split("\n", -1)) {
      assertEquals(line.stripTrailing(), line);
      assertFalse(line.startsWith("\t") || line.contains("\r"), line);
    }
  }

  /** A text with a mistake is refused without an exception. */
  @Property(tries = 300)
  void anyTextIsFormattedOrRefused(
      @ForAll("texts") String text, @ForAll Random random, @ForAll String other) {
    int at = random.nextInt(text.length());
    int end = Math.min(text.length(), at + 1 + random.nextInt(4));
    String middle = random.nextBoolean() ? "" : random.nextBoolean() ? other : "}";
    String mistaken = text.substring(0, at) + middle + text.substring(end);
    for (String any : List.of(mistaken, other)) {
      Formatted formatted = Formatter.format(SourceFile.of("a.grip", any));
      assertEquals(PlanTexts.parse(any).findings().isEmpty(), formatted.text().isPresent());
      assertEquals(formatted.text().isEmpty(), !formatted.findings().isEmpty());
      formatted.text().ifPresent(once -> assertEquals(once, formatted(once)));
    }
  }

  @Property(tries = 12)
  void aSeasonStaysTheSame(@ForAll Random random) {
    Path season = PlanTexts.EXAMPLES.resolve("season.grip");
    ReadOptions options = ReadOptions.standard().withRoot(PlanTexts.EXAMPLES);
    String text = PlanTexts.in(PlanTexts.EXAMPLES).get(season);
    Reading written = Gripwright.read("season.grip", text, options);
    Reading laidOut =
        Gripwright.read("season.grip", formatted(PlanTexts.laidOut(text, random)), options);
    assertTrue(written.usable());
    assertEquals(written.plans(), laidOut.plans());
    assertEquals(written.compile().plans(), laidOut.compile().plans());
  }
}
