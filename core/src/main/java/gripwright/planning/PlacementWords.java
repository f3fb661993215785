package gripwright.planning;

import gripwright.athlete.Athlete;
import gripwright.plan.DatedSession;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says why a session is on its day, or why no day of a week serves. */
final class PlacementWords {

  private final Placement.Week fixed;
  private final Athlete athlete;

  PlacementWords(Placement.Week fixed, Athlete athlete) {
    this.fixed = fixed;
    this.athlete = athlete;
  }

  /** Says of each day of the week why it does not serve. */
  String reason(Placement.Request request, List<DatedSession> placed) {
    List<String> words = new ArrayList<>();
    for (int d = 0; d < 7; d++) {
      LocalDate day = fixed.first().plusDays(d);
      Duration time = athlete.available().get(day.getDayOfWeek());
      if (time == null) {
        continue;
      }
      String why =
          athlete.isAway(day)
              ? "away"
              : Placement.obstacle(fixed, request, day)
                  .or(() -> taken(request, placed, day))
                  .orElse("clashes with another day");
      words.add(weekday(day) + ": " + why);
    }
    return words.isEmpty() ? "no day is available" : String.join("; ", words);
  }

  private static Optional<String> taken(
      Placement.Request request, List<DatedSession> placed, LocalDate day) {
    for (DatedSession other : placed) {
      long apart = Math.abs(ChronoUnit.DAYS.between(other.date(), day));
      if (other.name().equals(request.name()) && apart < request.gapDays()) {
        return Optional.of(
            apart == 0
                ? "taken by " + other.name()
                : "the gap of "
                    + request.gap().toHours()
                    + " h to "
                    + weekday(other.date())
                    + " is not kept");
      }
      if (other.hard() && request.hardFingers().isPresent() && apart < Placement.HARD_GAP_DAYS) {
        return Optional.of("less than 48 h from " + other.name() + " on " + weekday(other.date()));
      }
    }
    return Optional.empty();
  }

  private static String weekday(LocalDate day) {
    return day.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
  }

  String because(Placement.Request request, LocalDate day) {
    StringBuilder words = new StringBuilder();
    words
        .append(fixed.available().apply(day).toMinutes())
        .append(" min free for ")
        .append(request.minutes())
        .append(" min");
    if (request.prefer().contains(day.getDayOfWeek())) {
      words.append(", a preferred day");
    }
    LocalDate last = fixed.lastOfName().get(request.name());
    if (last != null) {
      words
          .append("; ")
          .append(ChronoUnit.DAYS.between(last, day))
          .append(" days after the last one");
    }
    request
        .hardFingers()
        .flatMap(
            fingers ->
                fixed.hardDays().stream()
                    .filter(h -> h.fingers().overlaps(fingers) && h.date().isBefore(day))
                    .max(Comparator.comparing(Placement.HardDay::date)))
        .ifPresent(
            hard ->
                words
                    .append("; ")
                    .append(ChronoUnit.DAYS.between(hard.date(), day))
                    .append(" days after ")
                    .append(hard.what()));
    return words.toString();
  }
}
