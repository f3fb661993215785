package gripwright.language.finding;

import gripwright.finding.ModelPath;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Many places in words, grouped by athlete, block and week. */
final class Where {

  /** Weeks written out; a rule broken more often is broken everywhere. */
  private static final int MOST_WEEKS = 12;

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private Where() {}

  /** One group of places; a part that is no help is empty. */
  private record Week(String athlete, String block, String week) {}

  static String inWords(List<ModelPath> places) {
    boolean manyAthletes = differ(places, "for");
    boolean manyBlocks = differ(places, "block");
    Map<Week, Set<LocalDate>> weeks = new LinkedHashMap<>();
    for (ModelPath place : places) {
      Week week =
          new Week(
              manyAthletes ? name(place, "for").orElse("") : "",
              manyBlocks ? name(place, "block").orElse("") : "",
              name(place, "week").orElse(""));
      Set<LocalDate> dates = weeks.computeIfAbsent(week, w -> new TreeSet<>());
      date(place).ifPresent(dates::add);
    }
    return join(weeks, places);
  }

  private static String join(Map<Week, Set<LocalDate>> weeks, List<ModelPath> places) {
    List<String> parts = new ArrayList<>();
    String athlete = "";
    String block = "";
    for (Map.Entry<Week, Set<LocalDate>> entry : weeks.entrySet()) {
      if (parts.size() == MOST_WEEKS) {
        parts.add((weeks.size() - MOST_WEEKS) + " more");
        break;
      }
      Week week = entry.getKey();
      StringBuilder part = new StringBuilder();
      if (!week.athlete().equals(athlete)) {
        part.append("for ").append(week.athlete()).append(": ");
        athlete = week.athlete();
        block = "";
      }
      if (!week.block().equals(block)) {
        part.append("block ").append(week.block()).append(' ');
        block = week.block();
      }
      parts.add(part.append(describe(week.week(), entry.getValue())).toString().strip());
    }
    parts.removeIf(String::isEmpty);
    return parts.isEmpty()
        ? String.join(", ", places.stream().map(ModelPath::toString).distinct().toList())
        : String.join(", ", parts);
  }

  private static String describe(String week, Set<LocalDate> dates) {
    String days = String.join(", ", dates.stream().map(DAY::format).toList());
    if (week.isEmpty()) {
      return days;
    }
    return "week " + week + (days.isEmpty() ? "" : " (" + days + ")");
  }

  private static boolean differ(List<ModelPath> places, String kind) {
    return places.stream().map(p -> name(p, kind)).filter(Optional::isPresent).distinct().count()
        > 1;
  }

  private static Optional<String> name(ModelPath place, String kind) {
    return place.steps().stream()
        .filter(s -> s.kind().equals(kind))
        .map(ModelPath.Step::name)
        .filter(Objects::nonNull)
        .findFirst();
  }

  private static Optional<LocalDate> date(ModelPath place) {
    try {
      return name(place, "date").map(LocalDate::parse);
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
