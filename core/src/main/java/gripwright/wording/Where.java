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

/** Many places in words: the weeks of each block and, while there are few, their days. */
final class Where {

  /** With more weeks than this, days are left out and weeks in a row are drawn together. */
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

  /** A block, and whose; a part that is no help is empty. */
  private record Group(String athlete, String block) {}

  private String lead(Group group) {
    return (group.athlete().isEmpty()
            ? ""
            : wording.say("common.for-athlete", Map.of("athlete", group.athlete())) + " ")
        + (group.block().isEmpty() ? "" : group.block() + " ");
  }

  /** Returns the weeks and days among the places; empty if there are none. */
  Optional<String> inWords(List<ModelPath> places) {
    boolean manyAthletes = places.stream().map(p -> name(p, "for")).distinct().count() > 1;
    Map<Group, SortedMap<Integer, Set<LocalDate>>> groups = new LinkedHashMap<>();
    for (ModelPath place : places) {
      Optional<Integer> week = name(place, "week").flatMap(Where::number);
      Optional<LocalDate> date = name(place, "date").flatMap(Where::date);
      if (week.isEmpty() && date.isEmpty()) {
        continue;
      }
      Group group =
          new Group(
              manyAthletes ? name(place, "for").orElse("") : "", name(place, "block").orElse(""));
      Set<LocalDate> dates =
          groups
              .computeIfAbsent(group, g -> new TreeMap<>())
              .computeIfAbsent(week.orElse(0), w -> new TreeSet<>());
      date.ifPresent(dates::add);
    }
    int weeks = groups.values().stream().mapToInt(Map::size).sum();
    List<String> parts = new ArrayList<>();
    groups.forEach(
        (group, byWeek) ->
            parts.add(lead(group) + (weeks > WEEKS_WITH_DAYS ? runs(byWeek) : withDays(byWeek))));
    int more = parts.size() - MOST_GROUPS;
    if (more > 0) {
      parts.subList(MOST_GROUPS, parts.size()).clear();
      parts.add(wording.say("common.and-more", Map.of("count", more)));
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", parts));
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

  /** Writes weeks in a row as one, as in {@code weeks 1 to 4, 6}. */
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
