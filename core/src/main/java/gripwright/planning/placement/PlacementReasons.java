package gripwright.planning.placement;

import gripwright.athlete.Athlete;
import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.quantity.Numbers;
import gripwright.schedule.HardThing;
import gripwright.schedule.PlacementReason;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;

/** Explains why a session is on its day, or what prevents all days of a week. */
public final class PlacementReasons {

  private final Placement.Week fixed;
  private final Athlete athlete;
  private final int number;

  /**
   * Prepares reasons for a week.
   *
   * @param number the week's number in the plan
   */
  public PlacementReasons(Placement.Week fixed, Athlete athlete, int number) {
    this.fixed = fixed;
    this.athlete = athlete;
    this.number = number;
  }

  /** Returns an explanation of the facts of a conflict, such as which days are left. */
  public Message conflict(Placement.Request request, Set<Conflict.Fact> facts) {
    return conflict(request, facts, false);
  }

  /**
   * Returns an explanation of the facts of a conflict.
   *
   * @param tooYoung whether days would be shared if the athlete were old enough
   */
  public Message conflict(Placement.Request request, Set<Conflict.Fact> facts, boolean tooYoung) {
    if (facts.isEmpty()) {
      return Clause.of("placement.costs-later");
    }
    List<Message> parts = new ArrayList<>();
    boolean onlyOn = facts.contains(new Conflict.OnlyOn());
    if (!onlyOn || some(facts, Conflict.TimeOn.class).findAny().isPresent()) {
      parts.add(daysLeft(request, facts));
    }
    if (onlyOn) {
      parts.add(
          Clause.of(
              "placement.only-on",
              "days",
              listed(request.onlyOn().stream().sorted().map(PlacementReasons::weekday).toList())));
    }
    if (facts.contains(new Conflict.OnlyAt())) {
      parts.add(
          Clause.of(
              "placement.only-at",
              "places",
              listed(request.places().stream().sorted().map(PlacementReasons::place).toList())));
    }
    if (facts.contains(new Conflict.Gap())) {
      parts.add(Clause.of("placement.gap", "hours", request.gap().toHours()));
    }
    if (facts.contains(new Conflict.Apart())) {
      request
          .share()
          .ifPresent(time -> parts.add(Clause.of("placement.apart", "hours", hours(time))));
    }
    if (tooYoung) {
      parts.add(Clause.of("placement.too-young"));
    }
    some(facts, Conflict.Since.class)
        .forEach(since -> parts.add(Clause.of("placement.last-one", "day", named(since.last()))));
    parts.addAll(hard(facts));
    List<LocalDate> times = some(facts, Conflict.TimeOn.class).map(Conflict.TimeOn::day).toList();
    List<LocalDate> away = times.stream().filter(athlete::losesDayAway).toList();
    if (!away.isEmpty()) {
      parts.add(Clause.of("placement.away", "days", weekdays(away)));
    }
    for (LocalDate day : times) {
      long minutes = fixed.longestOn(day);
      if (minutes > 0 && minutes < request.minutes()) {
        parts.add(
            new Clause(
                "placement.too-short",
                Map.of("day", weekday(day), "free", minutes, "needed", request.minutes())));
      }
    }
    return listed(parts);
  }

  private Message daysLeft(Placement.Request request, Set<Conflict.Fact> facts) {
    boolean everyDay =
        some(facts, Conflict.TimeOn.class).allMatch(t -> minutesOn(t.day()) >= request.minutes());
    List<LocalDate> left =
        fixed
            .first()
            .datesUntil(fixed.first().plusDays(7))
            .filter(day -> minutesOn(day) >= request.minutes())
            .toList();
    if (everyDay && some(facts, Conflict.TimeOn.class).findAny().isEmpty()) {
      return Clause.of("placement.seven-days", "week", number);
    }
    return switch (left.size()) {
      case 0 -> Clause.of("placement.no-day-left", "week", number);
      case 1 -> new Clause("placement.only-day", Map.of("days", weekdays(left), "week", number));
      default -> new Clause("placement.only-days", Map.of("days", weekdays(left), "week", number));
    };
  }

  private static Message place(String name) {
    return name.isEmpty()
        ? Clause.of("placement.no-place")
        : Clause.of("placement.at-place", "place", name);
  }

  private static Object hours(Duration time) {
    return Numbers.rounded(time.toSeconds() / 3600.0, 2);
  }

  private long minutesOn(LocalDate day) {
    return fixed.longestOn(day);
  }

  /**
   * Returns whether hard work is the goal; a session that is not hard avoids the goal day but needs
   * no gap to it.
   */
  private static boolean isGoal(Conflict.HardOn on) {
    return on.day().what() instanceof HardThing.Goal;
  }

  private List<Message> hard(Set<Conflict.Fact> facts) {
    List<Message> parts = new ArrayList<>();
    List<HardThing> others =
        some(facts, Conflict.Other.class)
            .<HardThing>map(other -> new HardThing.Session(other.name()))
            .toList();
    boolean hard = facts.contains(new Conflict.Hard());
    some(facts, Conflict.HardOn.class)
        .filter(on -> !hard && isGoal(on))
        .forEach(on -> parts.add(Clause.of("placement.fresh-day", "day", named(on.day().date()))));
    List<Message> apartFrom =
        Stream.<Message>concat(
                some(facts, Conflict.HardOn.class)
                    .filter(on -> hard || !isGoal(on))
                    .map(Conflict.HardOn::day)
                    .sorted(Comparator.comparing(Placement.HardDay::date))
                    .map(
                        h ->
                            new Clause(
                                "placement.on-day",
                                Map.of("what", h.what(), "day", named(h.date())))),
                others.stream().filter(o -> hard))
            .toList();
    if (!apartFrom.isEmpty()) {
      parts.add(Clause.of("placement.kept-from", "things", listed(apartFrom)));
    } else if (hard) {
      parts.add(Clause.of("placement.hard-itself"));
    }
    if (!hard && !others.isEmpty()) {
      parts.add(Clause.of("placement.takes-time", "things", listed(others)));
    }
    return parts;
  }

  private static <F extends Conflict.Fact> Stream<F> some(Set<Conflict.Fact> facts, Class<F> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast);
  }

  private Message named(LocalDate day) {
    boolean inWeek = !day.isBefore(fixed.first()) && day.isBefore(fixed.first().plusDays(7));
    return inWeek
        ? weekday(day)
        : new Clause("placement.dated", Map.of("weekday", weekday(day), "date", day));
  }

  private static Message weekdays(Collection<LocalDate> days) {
    return listed(days.stream().map(PlacementReasons::weekday).toList());
  }

  private static Message listed(List<? extends Message> parts) {
    return Listing.of(Listing.Style.AND, parts);
  }

  private static Message weekday(LocalDate day) {
    return weekday(day.getDayOfWeek());
  }

  private static Message weekday(DayOfWeek day) {
    return Clause.of("placement." + day.name().substring(0, 3).toLowerCase(Locale.ROOT));
  }

  /** Returns why a session is on a day. */
  public PlacementReason.Found because(Placement.Request request, Placement.Spot spot) {
    LocalDate day = spot.date();
    LocalDate last = fixed.lastOfName().get(request.name());
    return new PlacementReason.Found(
        spot.slot().time().toMinutes(),
        request.minutes(),
        request.prefer().contains(day.getDayOfWeek()),
        last == null ? OptionalLong.empty() : OptionalLong.of(ChronoUnit.DAYS.between(last, day)),
        request
            .hardFingers()
            .flatMap(
                fingers ->
                    fixed.hardDays().stream()
                        .filter(h -> h.fingers().overlaps(fingers) && h.date().isBefore(day))
                        .max(Comparator.comparing(Placement.HardDay::date)))
            .map(
                hard ->
                    new PlacementReason.HardBefore(
                        ChronoUnit.DAYS.between(hard.date(), day), hard.what())),
        false);
  }
}
