package gripwright.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.flipkart.zjsonpatch.JsonDiff;
import gripwright.tools.command.Console;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Two plan files that differ in a number, or only in layout. */
final class DiffProperties {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Pattern NUMBER = Pattern.compile("(?<![-\\w.])\\d+(?:\\.\\d+)?(?![-\\w.])");
  private static final Pattern DECLARATION =
      Pattern.compile("(?ms)^(?:athlete|log|plan|rules|grip|protocol) .*?^\\}$");

  /** Fields of a compiled plan that explain or estimate other fields, and their texts. */
  private static final Set<String> NOT_MEANT =
      Set.of(
          "why",
          "placedBecause",
          "mix",
          "fingers",
          "builtPercentOfMax",
          "maxUsedKg",
          "maxMeanKg",
          "endReserve",
          "endReserveLow",
          "endReserveHigh",
          "message",
          "hint",
          "file",
          "line",
          "column",
          "endLine",
          "endColumn");

  /** Changes of the plan's text or of causes, which need not show on any day. */
  private static final Set<String> NOT_COMPILED =
      Set.of(
          "fact-changed",
          "definition-new",
          "definition-gone",
          "definition-changed",
          "goal-changed",
          "part-changed",
          "block-rewritten",
          "waiver-added",
          "waiver-dropped",
          "grip-starts",
          "caution-new",
          "caution-gone");

  private static Path folder = Path.of("");
  private static String season = "";

  @BeforeContainer
  static void write() throws IOException {
    folder = Files.createTempDirectory("diff");
    season =
        Files.readString(Path.of("../../examples/plans/changes/after.grip"))
            .replace(
                "\n}\n\nathlete",
                "\n  waive week-load-rise in base because \"none\"\n  demand half-crimp 60 %,"
                    + " three-finger-drag 40 %\n}\n\nathlete");
  }

  @AfterContainer
  static void remove() throws IOException {
    for (String file : List.of("a.grip", "b.grip")) {
      Files.deleteIfExists(folder.resolve(file));
    }
    Files.delete(folder);
  }

  private static JsonNode run(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("--as", "json"));
    int exit =
        Main.run(all, new Console(out, new ByteArrayOutputStream(), folder, false), Map.of());
    assertTrue(exit < 2, out.toString(StandardCharsets.UTF_8));
    try {
      return MAPPER.readTree(out.toString(StandardCharsets.UTF_8));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void write(String before, String after) throws IOException {
    Files.writeString(folder.resolve("a.grip"), before);
    Files.writeString(folder.resolve("b.grip"), after);
  }

  private static JsonNode changes() {
    return run("diff", "a.grip", "b.grip").get("changes");
  }

  /** Returns the season with one number changed. */
  private static String changed(int which, double factor) {
    List<MatchResult> numbers = NUMBER.matcher(season).results().toList();
    MatchResult number = numbers.get(which % numbers.size());
    double value = Double.parseDouble(number.group()) * factor;
    String text = value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    return season.substring(0, number.start()) + text + season.substring(number.end());
  }

  @Property
  void aStructuralDiffOfTheCompiledPlansAgrees(
      @ForAll @IntRange(max = 200) int which, @ForAll @IntRange(min = 1, max = 12) int eighths)
      throws IOException {
    write(season, changed(which, eighths / 8.0 + 0.125));
    JsonNode before = run("compile", "a.grip");
    JsonNode after = run("compile", "b.grip");
    Assume.that(before.has("sessions") && after.has("sessions"));
    boolean seen = !JsonDiff.asJson(meant(before), meant(after)).isEmpty();
    JsonNode changes = changes();
    if (seen) {
      assertTrue(!changes.isEmpty(), () -> JsonDiff.asJson(meant(before), meant(after)).toString());
    }
    boolean compiled = false;
    for (JsonNode change : changes) {
      compiled |= !NOT_COMPILED.contains(change.get("kind").asText());
    }
    if (compiled) {
      assertTrue(seen, changes::toPrettyString);
    }
    if (days(before).equals(days(after))) {
      assertEquals(daysThatDiffer(before, after), reportedDays(changes), changes::toPrettyString);
    }
  }

  private static List<String> days(JsonNode document) {
    List<String> days = new ArrayList<>();
    document.get("sessions").forEach(s -> days.add(s.get("date") + " " + s.get("session")));
    return days;
  }

  /** Returns the days with changed sessions, apart from a body mass reported as a cause. */
  private static Set<String> daysThatDiffer(JsonNode before, JsonNode after) {
    Set<String> days = new TreeSet<>();
    for (int i = 0; i < before.get("sessions").size(); i++) {
      JsonNode was = session(before, i);
      if (!JsonDiff.asJson(was, session(after, i)).isEmpty()) {
        days.add(was.get("date").asText());
      }
    }
    return days;
  }

  private static JsonNode session(JsonNode document, int index) {
    ObjectNode session = (ObjectNode) meant(document.get("sessions").get(index));
    session.remove(List.of("bodyMassKg", "eased"));
    session.get("exercises").forEach(e -> ((ObjectNode) e).remove("addedKg"));
    return session;
  }

  private static Set<String> reportedDays(JsonNode changes) {
    Set<String> days = new TreeSet<>();
    for (JsonNode change : changes) {
      if (!change.get("session").isNull()) {
        days.add(change.get("date").asText());
      }
    }
    return days;
  }

  private static JsonNode meant(JsonNode document) {
    JsonNode copy = document.deepCopy();
    strip(copy);
    return copy;
  }

  private static void strip(JsonNode node) {
    if (node instanceof ObjectNode object) {
      object.remove(NOT_MEANT);
    }
    node.forEach(DiffProperties::strip);
  }

  @Property
  void layoutAndOrderChangeNothing(@ForAll @IntRange(max = 200) int which, @ForAll long seed)
      throws IOException {
    String text = changed(which, 1.25);
    write(text, shuffled(text, new Random(seed)));
    assertEquals(0, changes().size(), () -> changes().toPrettyString());
    write(text, text);
    assertEquals(0, changes().size());
  }

  /** Returns a file with its declarations in another order, on lines of another length. */
  private static String shuffled(String text, Random random) {
    List<String> declarations =
        new ArrayList<>(DECLARATION.matcher(text).results().map(MatchResult::group).toList());
    Collections.shuffle(declarations, random);
    String heading = text.lines().filter(l -> l.startsWith("language")).findFirst().orElseThrow();
    StringBuilder all = new StringBuilder(heading + "\n");
    for (String declaration : declarations) {
      String[] words = declaration.split("(?<!\") +(?=[^\"]*(?:\"[^\"]*\"[^\"]*)*$)|\n *", -1);
      for (String word : words) {
        all.append(word).append(random.nextInt(8) == 0 ? " # a note\n\n" : "  ");
      }
    }
    return all.toString();
  }

  @Property
  void whatIsAddedInOneDirectionIsRemovedInTheOther(
      @ForAll @IntRange(max = 200) int which, @ForAll @IntRange(min = 1, max = 12) int eighths)
      throws IOException {
    String other = changed(which, eighths / 8.0 + 0.125);
    write(season, other);
    Map<String, Integer> there = kinds(changes(), false);
    write(other, season);
    assertEquals(there, kinds(changes(), true));
  }

  private static Map<String, Integer> kinds(JsonNode changes, boolean back) {
    Map<String, Integer> kinds = new TreeMap<>();
    for (JsonNode change : changes) {
      String kind = change.get("kind").asText() + " " + change.get("measure").asText();
      if (back) {
        kind = swapped(swapped(kind, "-new", "-gone"), "-added", "-dropped");
      }
      kinds.merge(kind, 1, Integer::sum);
    }
    return kinds;
  }

  private static String swapped(String kind, String one, String other) {
    return kind.contains(one) ? kind.replace(one, other) : kind.replace(other, one);
  }
}
