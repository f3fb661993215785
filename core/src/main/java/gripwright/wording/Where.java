package gripwright.wording;

import gripwright.finding.ModelPath;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Writes a list of places: athletes, the weeks of each block and, if there are few, their days. */
final class Where {

  /** With more weeks than this, days are left out and consecutive weeks are written as ranges. */
  private static final int WEEKS_WITH_DAYS = 6;

  /** With more blocks and athletes than this, the rest are counted. */
  private static final int MOST_GROUPS = 12;

  private final Wording wording;
  private final DateTimeFormatter day;

  Where(Wording wording) {
    this.wording = wording;
    this.day =
        DateTimeFormatter.ofPattern(wording.say("common.day-format"), wording.messages().locale());
  }

  /** Weeks by block: {@code base} week 1 and so on. An unknown block is empty. */
  private static final class Blocks {
    private final Map<String, SortedMap<Integer, Set<LocalDate>>> byBlock = new LinkedHashMap<>();

    void add(ModelPath place) {
      Optional<Integer> week = name(place, "week").flatMap(Where::number);
      Optional<LocalDate> date = name(place, "date").flatMap(Where::date);
      if (week.isEmpty() && date.isEmpty()) {
        return;
      }
      Set<LocalDate> dates =
          byBlock
              .computeIfAbsent(name(place, "block").orElse(""), block -> new TreeMap<>())
              .computeIfAbsent(week.orElse(0), w -> new TreeSet<>());
      date.ifPresent(dates::add);
    }
  }

  /**
   * Returns the athletes of the places with their weeks and days; empty if there are neither
   * athletes nor weeks. Athletes with the same weeks are listed together.
   */
  Optional<String> inWords(List<ModelPath> places) {
    Map<String, Blocks> byAthlete = new LinkedHashMap<>();
    for (ModelPath place : places) {
      byAthlete.computeIfAbsent(place.athlete().orElse(""), a -> new Blocks()).add(place);
    }
    Map<Map<String, SortedMap<Integer, Set<LocalDate>>>, List<String>> athletesByWeeks =
        new LinkedHashMap<>();
    byAthlete.forEach(
        (athlete, blocks) ->
            athletesByWeeks.computeIfAbsent(blocks.byBlock, b -> new ArrayList<>()).add(athlete));
    int weeks =
        athletesByWeeks.keySet().stream()
            .flatMap(b -> b.values().stream())
            .mapToInt(Map::size)
            .sum();
    List<String> parts = new ArrayList<>();
    athletesByWeeks.forEach(
        (blocks, athletes) -> {
          String when = when(blocks, weeks > WEEKS_WITH_DAYS);
          List<String> names = athletes.stream().filter(name -> !name.isEmpty()).toList();
          if (names.isEmpty()) {
            parts.add(when);
          } else {
            parts.add(
                wording.say(
                    when.isEmpty() ? "common.of-athlete" : "common.of-athlete-when",
                    Map.of("athlete", shortened(names), "when", when)));
          }
        });
    parts.removeIf(String::isEmpty);
    return parts.isEmpty() ? Optional.empty() : Optional.of(shortened(parts));
  }

  private String when(Map<String, SortedMap<Integer, Set<LocalDate>>> blocks, boolean manyWeeks) {
    List<String> parts = new ArrayList<>();
    blocks.forEach(
        (block, byWeek) ->
            parts.add(
                (block.isEmpty() ? "" : block + " ")
                    + (manyWeeks ? runs(byWeek) : withDays(byWeek))));
    return shortened(parts);
  }

  /** Lists the first few and counts the rest. */
  private String shortened(List<String> all) {
    List<String> parts = new ArrayList<>(all);
    int more = parts.size() - MOST_GROUPS;
    if (more > 0) {
      parts.subList(MOST_GROUPS, parts.size()).clear();
      parts.add(wording.say("common.and-more", Map.of("count", more)));
    }
    return String.join(", ", parts);
  }

  private String withDays(SortedMap<Integer, Set<LocalDate>> byWeek) {
    List<String> parts = new ArrayList<>();
    byWeek.forEach(
        (week, dates) -> {
          String days = String.join(", ", dates.stream().map(day::format).toList());
          if (week == 0) {
            parts.add(days);
          } else {
            parts.add(
                wording.say("common.week", Map.of("week", week))
                    + (days.isEmpty() ? "" : " (" + days + ")"));
          }
        });
    return String.join(", ", parts);
  }

  /** Writes consecutive weeks as ranges, as in {@code weeks 1 to 4, 6}. */
  private String runs(SortedMap<Integer, Set<LocalDate>> byWeek) {
    List<Integer> weeks = new ArrayList<>(byWeek.keySet());
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < weeks.size(); ) {
      int j = i;
      while (j + 1 < weeks.size() && weeks.get(j + 1) == weeks.get(j) + 1) {
        j++;
      }
      parts.add(
          i == j
              ? "" + weeks.get(i)
              : wording.say("common.range", Map.of("from", weeks.get(i), "to", weeks.get(j))));
      i = j + 1;
    }
    return wording.say(
        weeks.size() == 1 ? "common.week" : "common.weeks",
        Map.of("week", String.join(", ", parts)));
  }

  private static Optional<String> name(ModelPath place, String kind) {
    return place.steps().stream()
        .filter(s -> s.kind().equals(kind))
        .map(ModelPath.Step::name)
        .findFirst();
  }

  private static Optional<Integer> number(String text) {
    return text.matches("[0-9]{1,6}") ? Optional.of(Integer.parseInt(text)) : Optional.empty();
  }

  private static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
