package gripwright.language.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Random texts from the grammar published in the language reference. */
final class Derivations {

  private static final Path PAGE = Path.of("../../docs/language.md");
  private static final Pattern PIECE =
      Pattern.compile("'(?:[^']|'')*?'(?=[\\s)*+?]|$)|[A-Za-z_]+|[()*+?|]");
  private static final int DEEP = 12;

  private static final List<String> NAMES =
      List.of(
          "tove",
          "brit",
          "half-crimp",
          "front-three",
          "bent",
          "tens",
          "max-holds",
          "our-tens",
          "winter",
          "base",
          "strength",
          "level",
          "work",
          "sets",
          "pause",
          "index",
          "ring",
          "pip",
          "mon",
          "tue",
          "easy",
          "hard",
          "match",
          "margin",
          "load",
          "edge",
          "max",
          "four",
          "single",
          "error",
          "session",
          "week",
          "minutes",
          "exercises",
          "club",
          "x",
          "short-rest",
          "plan",
          "age",
          "previous",
          "finger-strength",
          "time-under-load",
          "impulse",
          "sets",
          "a2",
          "fdp");
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "1",
          "2",
          "3",
          "4",
          "5",
          "7",
          "10",
          "20",
          "48",
          "60",
          "88",
          "100",
          "140",
          "0.5",
          "62.5",
          "7.125",
          "1000",
          "10000",
          "999999999",
          "1e5",
          "00012",
          "0.0000001",
          "99999999999999999999999999");
  private static final List<String> DATES =
      List.of(
          "2027-01-11",
          "2027-02-28",
          "2028-02-29",
          "1990-05-05",
          "2027-02-30",
          "0001-01-01",
          "9999-12-31",
          "2026-12-30");
  private static final List<String> GRADES = List.of("7c+", "7a", "5.12d", "8+", "18", "9z", "6");
  private static final List<String> TEXTS =
      List.of("\"a\"", "\"\"", "\"two \\\" quotes\"", "\"\u00E5 \uD83E\uDDD7\"", "\"{name} }\"");

  /** A piece of the right side of a rule. */
  private sealed interface Part {
    record Choice(List<Part> parts) implements Part {}

    record Row(List<Part> parts) implements Part {}

    record Times(Part part, char sign) implements Part {}

    record Word(String text) implements Part {}

    record Rule(String name) implements Part {}
  }

  private final Map<String, Part> rules = new TreeMap<>();
  private final Map<String, Integer> depths = new TreeMap<>();
  private List<String> pieces = List.of();
  private int at;

  Derivations() {
    for (Map.Entry<String, String> rule : published().entrySet()) {
      pieces = PIECE.matcher(rule.getValue()).results().map(r -> r.group()).toList();
      at = 0;
      rules.put(rule.getKey(), choice());
      if (at != pieces.size()) {
        throw new IllegalStateException(rule.getKey() + " is not understood at " + pieces.get(at));
      }
    }
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Map.Entry<String, Part> rule : rules.entrySet()) {
        int depth = least(rule.getValue()) + 1;
        if (depth < depths.getOrDefault(rule.getKey(), Integer.MAX_VALUE / 4)) {
          depths.put(rule.getKey(), depth);
          changed = true;
        }
      }
    }
  }

  private static Map<String, String> published() {
    try {
      String page = Files.readString(PAGE);
      String grammar = page.substring(page.indexOf("```ebnf") + 7);
      Map<String, String> sides = new TreeMap<>();
      Matcher rule =
          Pattern.compile("(?m)^([a-zA-Z_]+) *= (.*(?:\\R {3,}.*)*)$")
              .matcher(grammar.substring(0, grammar.indexOf("```")));
      while (rule.find()) {
        sides.put(rule.group(1), rule.group(2));
      }
      return sides;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the names of the productions. */
  List<String> names() {
    return List.copyOf(rules.keySet());
  }

  private Part choice() {
    List<Part> parts = new ArrayList<>(List.of(row()));
    while (at < pieces.size() && pieces.get(at).equals("|")) {
      at++;
      parts.add(row());
    }
    return parts.size() == 1 ? parts.get(0) : new Part.Choice(parts);
  }

  private Part row() {
    List<Part> parts = new ArrayList<>();
    while (at < pieces.size() && !pieces.get(at).equals("|") && !pieces.get(at).equals(")")) {
      String piece = pieces.get(at++);
      Part part;
      if (piece.equals("(")) {
        part = choice();
        at++;
      } else if (piece.startsWith("'")) {
        part = new Part.Word(piece.substring(1, piece.length() - 1));
      } else {
        part = new Part.Rule(piece);
      }
      if (at < pieces.size() && "*+?".contains(pieces.get(at))) {
        part = new Part.Times(part, pieces.get(at++).charAt(0));
      }
      parts.add(part);
    }
    return new Part.Row(parts);
  }

  private int least(Part part) {
    if (part instanceof Part.Choice choice) {
      return choice.parts().stream().mapToInt(this::least).min().orElse(0);
    }
    if (part instanceof Part.Row row) {
      return row.parts().stream().mapToInt(this::least).max().orElse(0);
    }
    if (part instanceof Part.Times times) {
      return times.sign() == '+' ? least(times.part()) : 0;
    }
    return part instanceof Part.Rule rule && rules.containsKey(rule.name())
        ? depths.getOrDefault(rule.name(), Integer.MAX_VALUE / 4)
        : 0;
  }

  /** Returns a random text of a production. */
  String of(String production, Random random) {
    StringBuilder text = new StringBuilder();
    write(new Part.Rule(production), text, random, 0);
    return text.toString();
  }

  private void write(Part part, StringBuilder text, Random random, int depth) {
    if (text.length() > 20_000) {
      return;
    }
    if (part instanceof Part.Choice choice) {
      write(chosen(choice, random, depth), text, random, depth);
    } else if (part instanceof Part.Row row) {
      row.parts().forEach(each -> write(each, text, random, depth));
    } else if (part instanceof Part.Times times) {
      int least = times.sign() == '+' ? 1 : 0;
      int more = depth > DEEP || times.sign() == '?' ? random.nextInt(2) : random.nextInt(4);
      int count = depth > 2 * DEEP ? least : times.sign() == '?' ? more : least + more;
      for (int i = 0; i < count; i++) {
        write(times.part(), text, random, depth);
      }
    } else if (part instanceof Part.Word word) {
      text.append(word.text());
      text.append("{}".contains(word.text()) ? "\n" : word.text().equals(".") ? "" : " ");
    } else if (part instanceof Part.Rule rule) {
      rule(rule.name(), text, random, depth);
    }
  }

  private Part chosen(Part.Choice choice, Random random, int depth) {
    List<Part> parts = choice.parts();
    if (depth > DEEP) {
      int least = parts.stream().mapToInt(this::least).min().orElse(0);
      parts = parts.stream().filter(p -> least(p) == least).toList();
    }
    return parts.get(random.nextInt(parts.size()));
  }

  private void rule(String name, StringBuilder text, Random random, int depth) {
    switch (name) {
      case "EOF" -> text.append('\n');
      case "NUMBER" -> text.append(pick(NUMBERS, random)).append(' ');
      case "DATE" -> text.append(pick(DATES, random)).append(' ');
      case "GRADE" -> text.append(pick(GRADES, random)).append(' ');
      case "NEWTON" -> text.append("N ");
      case "text", "STRING" -> text.append(pick(TEXTS, random)).append('\n');
      case "WORD" -> text.append(pick(NAMES, random)).append(' ');
      case "name", "head" -> {
        if (random.nextInt(8) > 0) {
          text.append(pick(NAMES, random)).append(' ');
        } else {
          write(rules.get(name), text, random, depth + 1);
        }
      }
      default -> {
        Part side = rules.get(name);
        if (side == null) {
          throw new IllegalStateException("no production " + name);
        }
        write(side, text, random, depth + 1);
        text.append(name.endsWith("Item") || name.endsWith("Line") ? "\n" : "");
      }
    }
  }

  private static String pick(List<String> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }
}
