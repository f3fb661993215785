package example.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.language.Gripwright;
import gripwright.language.Reading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The programs run, and the one without text refers to nothing of the language module. */
final class HostTest {

  private static List<String> printed(Consumer<PrintStream> program) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    program.accept(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    return bytes.toString(StandardCharsets.UTF_8).lines().toList();
  }

  @Test
  void aPlanBuiltInJavaHasEightSessions() {
    List<String> lines = printed(PlanInJava::print);
    assertEquals("2027-01-11 strength, 22 min", lines.get(0));
    assertEquals(8, lines.stream().filter(line -> line.startsWith("2027-")).count());
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("* Stop at once on sharp")));
  }

  @Test
  void aPlanReadFromTextHasSessionsForEveryone() {
    List<String> lines = printed(out -> PlanFromText.print(Path.of("../plans/season.grip"), out));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("2027-01-12 fingers")));
  }

  @Test
  void aPlanWithAMistakeHasItsLineAndNoSessions() throws IOException {
    Path file = Files.createTempFile("plan", ".grip");
    Files.writeString(file, "language 1\nplan p {\n  from 2027-01-11\n}\n");
    List<String> lines = printed(out -> PlanFromText.print(file, out));
    Files.delete(file);
    assertTrue(lines.size() >= 1 && lines.stream().allMatch(l -> l.contains(".grip:2: ")));
  }

  @Test
  void aPlanBuiltInJavaIsWrittenAndReadsBackEqual() {
    List<String> lines = printed(PlanToText::print);
    assertTrue(
        lines.contains("      do max-holds with level 80 % max, sets 4 on half-crimp edge 20 mm"));
    Reading back = Gripwright.read("plan.grip", String.join("\n", lines));
    assertEquals(PlanInJava.athlete(), back.athletes().get("signe"));
    assertEquals(PlanInJava.log(), back.logs().get("signe"));
    assertEquals(PlanInJava.plan(), back.plans().get("first-weeks"));
  }

  @Test
  void buildingInJavaNeedsNothingOfTheLanguage() throws IOException {
    try (Stream<String> lines =
        Files.lines(Path.of("src/main/java/example/host/PlanInJava.java"))) {
      assertTrue(lines.noneMatch(line -> line.contains("gripwright.language")));
    }
  }
}
