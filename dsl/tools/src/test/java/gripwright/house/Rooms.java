package gripwright.house;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The table of the house: each room with the rooms it may use. What those may use, it may use too.
 * A room has its sub-packages in it, except where a sub-package has a row of its own.
 */
public final class Rooms {

  /** Stands for all rooms of the core. */
  public static final String CORE = "core";

  /** Rooms that every other room of the core may use without an arrow. */
  private static final List<String> OPEN = List.of("quantity", "ability", "finding", "budget");

  private static final Map<String, List<String>> ROOMS = new LinkedHashMap<>();

  static {
    OPEN.forEach(Rooms::room);
    room("hand");
    room("protocol");
    room("athlete", "hand");
    room("statics", "hand");
    room("trial", "hand");
    room("pose", "statics");
    room("grip", "pose");
    room("tissue", "grip");
    room("strength", "athlete", "grip");
    room("plan", "grip", "protocol");
    room("expression", "grip");

    room("log", "strength");
    room("schedule", "athlete", "plan");
    room("change", "schedule");
    room("history", "log", "schedule");
    room("plausibility", "history");
    room("fatigue", "schedule", "strength");
    room("planning.load", "log", "schedule");
    room("planning.placement", "history");
    room("rule.view", "expression", "history", "tissue");
    room("planning.progression", "history", "planning.load");
    room("rule", "rule.view");
    room("planning.mix", "rule");
    room("survey", "rule");
    room("planning", "fatigue", "planning.mix", "planning.placement", "planning.progression");
    room("season", "change", "planning", "plausibility");
    room("review", "season");
    room("compare", "season");
    room("diff", "compare");
    room("wording", "rule");

    room("language.source", "budget");
    room("language.finding", "language.source", "wording");
    room("language.syntax", "language.finding");
    room("language.format", "language.syntax");
    room("language.resolve", "language.syntax");
    room("language.check", "language.resolve", "compare");
    room("language.build", "language.check");
    room("language.write", CORE);
    room("language", "language.build", "language.format", "language.write");

    room("export", CORE);
    room("testkit", "language");
    room("tools.command", "export", "language");
    room("tools", "tools.command");
    room("launcher");
    room("launcher.prelink");
  }

  private Rooms() {}

  private static void room(String name, String... mayUse) {
    ROOMS.put(name, List.of(mayUse));
  }

  /** Returns the rooms, each after those it may use. */
  public static Set<String> all() {
    return ROOMS.keySet();
  }

  /** Returns the rooms to which an arrow of the table leads from a room. */
  public static List<String> mayUse(String room) {
    return ROOMS.getOrDefault(room, List.of());
  }

  /** Returns whether every room of the core may use a room without an arrow. */
  public static boolean isOpen(String room) {
    return OPEN.contains(room);
  }

  /** Returns whether a room is one of the core. */
  public static boolean isCore(String room) {
    return ROOMS.containsKey(room)
        && Stream.of("language", "export", "testkit", "tools", "launcher")
            .noneMatch(outer -> room.equals(outer) || room.startsWith(outer + "."));
  }

  /** Returns the rooms that a name of the table stands for. */
  static Set<String> of(String name) {
    Set<String> rooms = new LinkedHashSet<>();
    if (name.equals(CORE)) {
      all().stream().filter(Rooms::isCore).forEach(rooms::add);
    } else {
      rooms.add(name);
    }
    return rooms;
  }

  /** Returns all that a room may use, itself included. */
  static Set<String> reachableFrom(String room) {
    Set<String> reached = new LinkedHashSet<>();
    of(room).forEach(each -> collect(each, reached));
    return reached;
  }

  private static void collect(String room, Set<String> reached) {
    if (reached.add(room)) {
      if (isCore(room) && !isOpen(room)) {
        reached.addAll(OPEN);
      }
      mayUse(room).forEach(name -> of(name).forEach(each -> collect(each, reached)));
    }
  }

  /** Returns the room of a package: the longest row that is the package or a parent of it. */
  static String roomOf(String packageName) {
    String name = packageName;
    while (name.startsWith("gripwright.")) {
      String room = name.substring("gripwright.".length());
      // The facade's row has no sub-packages: a new stage needs a row of its own.
      if (ROOMS.containsKey(room) && (!room.equals("language") || name.equals(packageName))) {
        return room;
      }
      name = name.substring(0, name.lastIndexOf('.'));
    }
    return "";
  }

  /** Draws the table for Mermaid: from each room of the core an arrow to those it may use. */
  public static String picture() {
    StringBuilder picture = new StringBuilder("```mermaid\nflowchart BT\n");
    picture.append("  subgraph core\n");
    all().stream().filter(Rooms::isCore).forEach(room -> draw(room, "    ", picture));
    picture.append("  end\n");
    all().stream().filter(room -> !isCore(room)).forEach(room -> draw(room, "  ", picture));
    return picture.append("```\n").toString();
  }

  private static void draw(String room, String indent, StringBuilder picture) {
    List<String> arrows = mayUse(room);
    picture.append(indent).append(room);
    if (!arrows.isEmpty()) {
      picture.append(" --> ").append(String.join(" & ", arrows));
    }
    picture.append('\n');
  }
}
