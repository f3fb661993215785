package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.protocol.Extent;
import gripwright.protocol.Scheme;
import gripwright.protocol.Scheme.Hold;
import gripwright.quantity.Numbers;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Describes sets, holds and hold times: {@code 4 x 6 x 7 s}, with {@code up to} where a number is a
 * bound. A scheme with another structure is described step by step: {@code 2 holds of 10 s then 4 x
 * 3 x 7 s}.
 */
final class WorkWords {

  private final Words words;

  WorkWords(Words words) {
    this.words = words;
  }

  String of(Scheme scheme) {
    List<Scheme.Step> steps = scheme.steps();
    boolean sets = steps.size() == 1 && steps.get(0) instanceof Scheme.Repeat;
    List<Scheme.Step> inside = sets ? ((Scheme.Repeat) steps.get(0)).steps() : steps;
    return isSimple(scheme, inside) ? simple(scheme, inside) : steps(steps);
  }

  /** Returns whether a set is a row of holds, or repeats one hold, and all holds end alike. */
  private static boolean isSimple(Scheme scheme, List<Scheme.Step> set) {
    boolean alike = scheme.written().stream().map(Hold::extent).distinct().count() < 2;
    return alike
        && (set.stream().noneMatch(Scheme.Repeat.class::isInstance)
            || (set.size() == 1
                && ((Scheme.Repeat) set.get(0))
                    .steps().stream().noneMatch(Scheme.Repeat.class::isInstance)
                && holds(((Scheme.Repeat) set.get(0)).steps()).size() == 1));
  }

  private String simple(Scheme scheme, List<Scheme.Step> set) {
    boolean bound = set.size() == 1 && set.get(0) instanceof Scheme.Repeat inner && inner.upTo();
    String repetitions =
        scheme.repetitionsPerSet() == 1 && !bound
            ? ""
            : times(scheme.repetitionsPerSet(), bound) + " x ";
    return times(scheme.sets(), scheme.setsUpTo()) + " x " + repetitions + time(scheme.written());
  }

  private String times(int number, boolean upTo) {
    return upTo ? words.say("season.work-up-to", "what", number) : Integer.toString(number);
  }

  private static List<Hold> holds(List<Scheme.Step> steps) {
    return steps.stream()
        .flatMap(step -> step instanceof Hold hold ? Stream.of(hold) : Stream.empty())
        .toList();
  }

  /** Returns the time of holds that end alike. */
  private String time(List<Hold> holds) {
    List<Duration> times = holds.stream().map(Hold::time).distinct().sorted().toList();
    String seconds =
        (times.size() == 1 ? "" : seconds(times.get(0)) + "-")
            + seconds(times.get(times.size() - 1))
            + " s";
    return switch (holds.get(0).extent()) {
      case WHOLE -> seconds;
      case UP_TO -> words.say("season.work-up-to", "what", seconds);
      case TO_FAILURE -> words.say("season.work-to-failure", "most", seconds);
    };
  }

  private static String seconds(Duration time) {
    return Numbers.plain(time.getSeconds() + time.getNano() / 1e9, 1);
  }

  private String steps(List<Scheme.Step> steps) {
    List<String> parts = new ArrayList<>();
    List<Hold> row = new ArrayList<>();
    for (Scheme.Step step : steps) {
      if (step instanceof Hold hold) {
        if (!row.isEmpty() && row.get(0).extent() != hold.extent()) {
          add(row, parts);
        }
        row.add(hold);
      } else if (step instanceof Scheme.Repeat repeat) {
        add(row, parts);
        parts.add(repeat(repeat));
      }
    }
    add(row, parts);
    return parts.stream()
        .reduce((first, then) -> words.say("season.work-then", "first", first, "then", then))
        .orElse("");
  }

  private void add(List<Hold> row, List<String> parts) {
    if (row.isEmpty()) {
      return;
    }
    Extent extent = row.get(0).extent();
    String key = extent == Extent.WHOLE ? "season.work-holds" : "season.work-holds-bound";
    parts.add(words.count(key, row.size(), "time", time(row)));
    row.clear();
  }

  private String repeat(Scheme.Repeat repeat) {
    String times = times(repeat.times(), repeat.upTo()) + " x ";
    List<Scheme.Step> inside = repeat.steps();
    boolean repeats = inside.stream().anyMatch(Scheme.Repeat.class::isInstance);
    if (!repeats && holds(inside).size() == 1) {
      return times + time(holds(inside));
    }
    return inside.size() == 1
        ? times + steps(inside)
        : times + words.say("season.work-group", "work", steps(inside));
  }
}
