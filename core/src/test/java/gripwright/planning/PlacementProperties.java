package gripwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.grip.FingerSet;
import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;

/** Placement against a search that tries every day for every session and knows no shortcuts. */
class PlacementProperties {

  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  @Provide
  Arbitrary<List<Placement.Request>> requests() {
    return Combinators.combine(some("a"), some("b"), some("c"))
        .as(
            (a, b, c) -> {
              List<Placement.Request> all = new ArrayList<>(a);
              all.addAll(b);
              all.addAll(c);
              return all;
            });
  }

  /** Sessions of one name, all alike, as a plan has them. */
  private static Arbitrary<List<Placement.Request>> some(String name) {
    return Combinators.combine(
            Arbitraries.of(30, 60),
            Arbitraries.of(24, 48, 72),
            Arbitraries.of(0, 0b0111, 0b1000, 0b1111),
            Arbitraries.of(0, 1, 1, 2))
        .as(
            (minutes, gap, fingers, count) ->
                Collections.nCopies(
                    count,
                    new Placement.Request(
                        name,
                        minutes,
                        Duration.ofHours(gap),
                        fingers == 0 ? Optional.empty() : Optional.of(new FingerSet(fingers)),
                        List.of())));
  }

  private static Placement.Week week(List<Integer> minutes) {
    return new Placement.Week(
        MONDAY,
        day -> Duration.ofMinutes(minutes.get((int) ChronoUnit.DAYS.between(MONDAY, day))),
        List.of(new Placement.HardDay(MONDAY.plusDays(6), FingerSet.FOUR, "hard climbing")),
        Map.of("a", MONDAY.minusDays(1)));
  }

  @Provide
  Arbitrary<Integer> minutes() {
    return Arbitraries.of(0, 30, 60, 90);
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void asManyArePlacedAsCanBe(
      @ForAll("requests") List<Placement.Request> requests,
      @ForAll @Size(7) List<@From("minutes") Integer> minutes) {
    Placement.Week week = week(minutes);
    List<Optional<LocalDate>> days = Placement.place(week, requests);
    assertTrue(keepsRules(week, requests, days));
    long placed = days.stream().filter(Optional::isPresent).count();
    assertEquals(most(week, requests, new ArrayList<>()), placed);
    Statistics.label("placed of asked").collect(placed + " of " + requests.size());
  }

  private static long most(
      Placement.Week week, List<Placement.Request> requests, List<Optional<LocalDate>> days) {
    if (!keepsRules(week, requests, days)) {
      return -1;
    }
    if (days.size() == requests.size()) {
      return days.stream().filter(Optional::isPresent).count();
    }
    long most = -1;
    for (int d = -1; d < 7; d++) {
      days.add(d < 0 ? Optional.empty() : Optional.of(MONDAY.plusDays(d)));
      most = Math.max(most, most(week, requests, days));
      days.remove(days.size() - 1);
    }
    return most;
  }

  private static boolean keepsRules(
      Placement.Week week, List<Placement.Request> requests, List<Optional<LocalDate>> days) {
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).isEmpty()) {
        continue;
      }
      Placement.Request one = requests.get(i);
      LocalDate day = days.get(i).get();
      int minutes = 0;
      if (Placement.obstacle(week, one, day).isPresent()) {
        return false;
      }
      for (int j = 0; j < days.size(); j++) {
        if (days.get(j).isEmpty()) {
          continue;
        }
        Placement.Request other = requests.get(j);
        long apart = Math.abs(ChronoUnit.DAYS.between(day, days.get(j).get()));
        minutes += apart == 0 ? other.minutes() : 0;
        boolean sameName = i != j && one.name().equals(other.name());
        boolean bothHard =
            i != j
                && one.hardFingers().isPresent()
                && other.hardFingers().isPresent()
                && one.hardFingers().get().overlaps(other.hardFingers().get());
        if ((sameName && apart < Math.max(one.gapDays(), other.gapDays()))
            || (bothHard && apart < 2)) {
          return false;
        }
      }
      if (minutes > week.available().apply(day).toMinutes()) {
        return false;
      }
    }
    return true;
  }

  @Property(edgeCases = EdgeCasesMode.NONE)
  void theOrderOfTheRequestsDoesNotMatter(
      @ForAll("requests") List<Placement.Request> requests,
      @ForAll @Size(7) List<@From("minutes") Integer> minutes,
      @ForAll @IntRange(min = 0, max = 1000) int seed) {
    Placement.Week week = week(minutes);
    List<Placement.Request> shuffled = new ArrayList<>(requests);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(days(requests, week), days(shuffled, week));
  }

  private static List<String> days(List<Placement.Request> requests, Placement.Week week) {
    List<Optional<LocalDate>> days = Placement.place(week, requests);
    List<String> words = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      words.add(requests.get(i).name() + " " + days.get(i));
    }
    Collections.sort(words);
    return words;
  }
}
