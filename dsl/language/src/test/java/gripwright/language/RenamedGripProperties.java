package gripwright.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.finding.ReportedFinding;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.StandardGrips;
import gripwright.planning.GeneratedSeason;
import gripwright.planning.Reached;
import gripwright.quantity.Numbers;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The names and families of grips don't change the findings about a plan. */
class RenamedGripProperties {

  private static final String OURS = "ours-";

  @Property(edgeCases = EdgeCasesMode.NONE)
  void renamingGripsChangesNoFinding(@ForAll GeneratedSeason season) {
    String text = SeasonText.of(season);
    Reading written = Gripwright.read("season.grip", text);
    Reading renamed = Gripwright.read("season.grip", renamed(text) + declared());
    assertEquals(written.usable(), renamed.usable(), () -> renamed.findings().toString());
    List<String> findings = List.of();
    if (written.usable()) {
      findings = saying(written.compile());
      assertEquals(findings, saying(renamed.compile()));
    }
    Reached.reached(findings.stream().anyMatch(f -> f.startsWith("error")), 40);
  }

  /** Returns the findings about plan, athlete and log, with the names of the catalogue. */
  private static List<String> saying(Compilation compilation) {
    return compilation.findings().stream()
        .filter(f -> f.place() == null || !f.place().startsWith("grip "))
        .filter(f -> !f.code().equals("syntax.more")) // counts the grips as well
        .map(
            (ReportedFinding f) ->
                f.severity().word() + " " + f.code() + " " + f.line() + " " + f.message())
        .map(said -> said.replace(OURS, ""))
        .sorted()
        .toList();
  }

  private static String renamed(String text) {
    String names =
        StandardGrips.all().stream()
            .map(Grip::name)
            .collect(Collectors.joining("|", "\\b(", ")\\b"));
    return text.replaceAll(names, OURS + "$1");
  }

  /** Returns every grip of the catalogue under its new name, and in another family if possible. */
  private static String declared() {
    return StandardGrips.all().stream()
        .map(grip -> declared(grip, other(grip)))
        .collect(Collectors.joining("\n", "\n", "\n"));
  }

  /** Returns another family that allows this number of fingers, or the same if there is none. */
  private static GripFamily other(Grip grip) {
    return Stream.of(GripFamily.values())
        .filter(family -> family.allows(grip.fingers().count()) && family != grip.family())
        .findFirst()
        .orElse(grip.family());
  }

  private static String declared(Grip grip, GripFamily family) {
    StringBuilder text = new StringBuilder("grip " + OURS + grip.name() + " {\n");
    text.append("fingers ").append(grip.fingers()).append("\nfamily ").append(family).append("\n");
    grip.bands()
        .forEach(
            (at, band) ->
                text.append(at.finger())
                    .append(' ')
                    .append(at.joint())
                    .append(' ')
                    .append(band)
                    .append("\n"));
    if (grip.needs().trainedMonths() > 0) {
      text.append("needs trained ")
          .append(Numbers.plain(grip.needs().trainedMonths(), 2))
          .append(" months\n");
    }
    grip.needs()
        .familiar()
        .forEach(
            (name, months) ->
                text.append("needs familiar " + OURS + name + " ")
                    .append(Numbers.plain(months, 2))
                    .append(" months\n"));
    return text.append("}\n").toString();
  }
}
