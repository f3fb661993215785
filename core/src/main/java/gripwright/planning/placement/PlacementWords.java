package gripwright.planning.placement;

import gripwright.athlete.Athlete;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** Says why a session is on its day, or what keeps it from all days of a week. */
public final class PlacementWords {

  private final Placement.Week fixed;
  private final Athlete athlete;
  private final int number;

  /**
   * Prepares to speak of a week.
   *
   * @param number the week's number in the plan
   */
  public PlacementWords(Placement.Week fixed, Athlete athlete, int number) {
    this.fixed = fixed;
    this.athlete = athlete;
    this.number = number;
  }

  /**
   * Says what the facts of a conflict come to, such as which days are left and how long the gap is.
   */
  public String reason(Placement.Request request, Set<Conflict.Fact> facts) {
    if (facts.isEmpty()) {
      return "every way to place it would cost as many sessions in the weeks after";
    }
    List<String> words = new ArrayList<>();
    words.add(daysLeft(request, facts));
    if (facts.contains(new Conflict.Gap())) {
      words.add("the gap is " + request.gap().toHours() + " h");
    }
    some(facts, Conflict.Since.class)
        .forEach(since -> words.add("the last one was on " + named(since.last())));
    words.addAll(hard(facts));
    List<LocalDate> times = some(facts, Conflict.TimeOn.class).map(Conflict.TimeOn::day).toList();
    List<LocalDate> away = times.stream().filter(this::wouldTrain).filter(athlete::isAway).toList();
    if (!away.isEmpty()) {
      words.add("away on " + weekdays(away));
    }
    for (LocalDate day : times) {
      long minutes = fixed.available().apply(day).toMinutes();
      if (minutes > 0 && minutes < request.minutes()) {
        words.add(weekday(day) + " has " + minutes + " min for " + request.minutes() + " min");
      }
    }
    return listed(words);
  }

  private String daysLeft(Placement.Request request, Set<Conflict.Fact> facts) {
    boolean everyDay =
        some(facts, Conflict.TimeOn.class).allMatch(t -> minutesOn(t.day()) >= request.minutes());
    List<LocalDate> left =
        fixed
            .first()
            .datesUntil(fixed.first().plusDays(7))
            .filter(day -> minutesOn(day) >= request.minutes())
            .toList();
    if (everyDay && some(facts, Conflict.TimeOn.class).findAny().isEmpty()) {
      return "week " + number + " has seven days";
    }
    return switch (left.size()) {
      case 0 -> "no day is left in week " + number;
      case 1 -> weekdays(left) + " is the only day left in week " + number;
      default -> weekdays(left) + " are the only days left in week " + number;
    };
  }

  private boolean wouldTrain(LocalDate day) {
    return athlete.available().containsKey(day.getDayOfWeek());
  }

  private long minutesOn(LocalDate day) {
    return fixed.available().apply(day).toMinutes();
  }

  private List<String> hard(Set<Conflict.Fact> facts) {
    List<String> words = new ArrayList<>();
    List<String> others = some(facts, Conflict.Other.class).map(Conflict.Other::name).toList();
    boolean hard = facts.contains(new Conflict.Hard());
    List<String> apartFrom =
        Stream.concat(
                some(facts, Conflict.HardOn.class)
                    .map(Conflict.HardOn::day)
                    .sorted(Comparator.comparing(Placement.HardDay::date))
                    .map(h -> h.what() + " on " + named(h.date())),
                others.stream().filter(o -> hard).map(o -> "session " + o))
            .toList();
    if (!apartFrom.isEmpty()) {
      words.add("48 h are kept from " + listed(apartFrom));
    } else if (hard) {
      words.add("it is hard, so 48 h are kept");
    }
    if (!hard && !others.isEmpty()) {
      words.add(listed(others.stream().map(o -> "session " + o).toList()) + " takes time as well");
    }
    return words;
  }

  private static <F extends Conflict.Fact> Stream<F> some(Set<Conflict.Fact> facts, Class<F> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast);
  }

  private String named(LocalDate day) {
    boolean inWeek = !day.isBefore(fixed.first()) && day.isBefore(fixed.first().plusDays(7));
    return inWeek ? weekday(day) : weekday(day) + " " + day;
  }

  private static String weekdays(Collection<LocalDate> days) {
    return listed(days.stream().map(PlacementWords::weekday).toList());
  }

  /** Joins with commas and a last {@code and}. */
  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  private static String weekday(LocalDate day) {
    return day.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
  }

  public String because(Placement.Request request, LocalDate day) {
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
