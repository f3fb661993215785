package gripwright.export.text;

import gripwright.hand.Finger;
import gripwright.hand.Side;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.review.Exposure;
import gripwright.review.PainCourse;
import gripwright.review.Progress;
import gripwright.review.Review;
import gripwright.review.SideDifference;
import gripwright.review.TrainingLoad;
import gripwright.tissue.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The numbers of a review: load, work, tests, sides and pain. What is not known is left out. */
final class ReviewTables {

  private static final int WEEKS = 8;
  private static final int BARS = 26;
  private static final int DAYS = 28;
  private static final int SCORES = 6;
  private static final double WORST_PAIN = 10;
  private static final double NEWTONS_PER_KILONEWTON = 1000;

  private static final String LOAD =
      "Effort times minutes, climbing included; days without count as 0. Monotony is the mean of the"
          + " days of a week by their standard deviation, strain load times monotony: both take a"
          + " whole week whose days differ.";

  private static final String WORK =
      "In sessions; climbing and tests are not in it. Impulse is total load times hold time.";

  private static final String FINGERS =
      "Estimated force times hold time, in kN s: on the pad, and on the pulleys A2 and A4 with the"
          + " range that holds 90 % of draws.";

  private static final String TESTS =
      "A change is more than noise where it exceeds what 95 of 100 retests of nothing new would"
          + " show.";

  private final Review review;
  private final Page page;

  ReviewTables(Review review, Page page) {
    this.review = review;
    this.page = page;
  }

  void write() {
    load();
    work();
    fingers();
    progress();
    sides();
    pain();
  }

  private void heading(String heading, String legend) {
    page.gap();
    page.line(heading);
    if (!legend.isEmpty()) {
      page.wrapped("", legend);
    }
  }

  private void load() {
    TrainingLoad load = review.load();
    Optional<TrainingLoad.Day> last = load.lastDay();
    if (last.isEmpty() || load.days().stream().allMatch(day -> day.load() == 0)) {
      return;
    }
    heading("LOAD", LOAD);
    TextTable table = new TextTable(List.of("week of", "load", "monotony", "strain", ""), 4);
    List<TrainingLoad.Week> weeks = load.weeks();
    for (TrainingLoad.Week week : weeks.subList(Math.max(0, weeks.size() - WEEKS), weeks.size())) {
      table.row(
          Page.day(week.from()),
          Numbers.plain(week.load(), 0),
          number(week.monotony(), 2),
          number(week.strain(), 0),
          week.whole() ? "" : "not whole");
    }
    table.add(page);
    page.line(
        "by week      " + Sparkline.of(weeks.stream().map(TrainingLoad.Week::load).toList(), BARS));
    page.line(
        "by day       "
            + Sparkline.of(load.days().stream().map(TrainingLoad.Day::load).toList(), DAYS));
    page.wrapped(
        "",
        "Weighted load a day: "
            + Numbers.plain(last.get().acute(), 0)
            + " over 7 days, "
            + Numbers.plain(last.get().chronic(), 0)
            + " over 28. Fitness "
            + Numbers.plain(last.get().response().fitness(), 0)
            + ", fatigue "
            + Numbers.plain(last.get().response().fatigue(), 0)
            + " by Banister's model, which was made for runners.");
    if (review.withoutEffort() > 0) {
      page.wrapped(
          "",
          Page.count(review.withoutEffort(), "session or climbing line")
              + " without effort counted as 0.");
    }
  }

  private static String number(OptionalDouble value, int decimals) {
    return value.isPresent() ? Numbers.plain(value.getAsDouble(), decimals) : "-";
  }

  private void work() {
    List<Exposure.Week> weeks = review.exposure().weeks();
    if (review.exposure().grips().isEmpty()) {
      return;
    }
    heading("WORK BY GRIP", WORK);
    TextTable table = new TextTable(List.of("", "holds", "impulse", "by week"), 3);
    for (String grip : review.exposure().grips()) {
      List<Double> seconds = new ArrayList<>();
      double impulse = 0;
      for (Exposure.Week week : weeks) {
        double ofWeek = 0;
        for (Exposure.OfGrip each : week.grips()) {
          if (each.grip().equals(grip)) {
            ofWeek += each.seconds();
            impulse += each.impulse();
          }
        }
        seconds.add(ofWeek);
      }
      table.row(
          grip,
          Numbers.plain(seconds.stream().mapToDouble(Double::doubleValue).sum(), 0) + " s",
          kilonewtons(impulse) + " kN s",
          Sparkline.of(seconds, BARS));
    }
    table.add(page);
  }

  private static String kilonewtons(double newtons) {
    return String.format(Locale.ROOT, "%.1f", newtons / NEWTONS_PER_KILONEWTON);
  }

  private void fingers() {
    List<Exposure.OfFinger> all = review.exposure().fingers();
    if (all.isEmpty()) {
      return;
    }
    heading("WORK BY FINGER", FINGERS);
    TextTable table =
        new TextTable(List.of("", "holds", "pad", "A2", "", "A4", "", "A2 by week"), 4, 6, 7);
    for (Exposure.OfFinger finger : all) {
      table.row(
          finger.side() + " " + finger.finger(),
          Numbers.plain(finger.seconds(), 0) + " s",
          kilonewtons(finger.impulse().value()),
          kilonewtons(finger.a2().value()),
          range(finger.a2()),
          kilonewtons(finger.a4().value()),
          range(finger.a4()),
          Sparkline.of(byWeek(finger.side(), finger.finger()), BARS));
    }
    table.add(page);
  }

  private static String range(Estimate estimate) {
    return kilonewtons(estimate.low()) + " to " + kilonewtons(estimate.high());
  }

  private List<Double> byWeek(Side side, Finger finger) {
    return review.exposure().weeks().stream()
        .map(
            week ->
                week.fingers().stream()
                    .filter(each -> each.side() == side && each.finger() == finger)
                    .mapToDouble(each -> each.a2().value())
                    .sum())
        .toList();
  }

  private void progress() {
    if (review.progress().isEmpty()) {
      return;
    }
    heading("TESTS", TESTS);
    for (Progress each : review.progress()) {
      page.wrapped(
          "",
          each.setup()
              + (each.series() ? ", series of " : ", ")
              + Numbers.plain(each.how(), 1)
              + " s holds: "
              + shown(each.points()));
      each.sinceFirst().ifPresent(change -> page.wrapped("  ", words(change)));
      OptionalDouble trend = each.trend();
      if (trend.isPresent()) {
        page.wrapped(
            "  ", "straight line through them: " + signed(trend.getAsDouble()) + " kg a month");
      }
      for (Progress.Point point : each.points()) {
        point
            .odd()
            .ifPresent(
                expected ->
                    page.wrapped(
                        "  ",
                        "that of "
                            + Page.dayAndYear(point.date())
                            + " does not fit the others, which say "
                            + kilograms(expected.low())
                            + " to "
                            + kilograms(expected.high())
                            + ": left out here, kept in the log"));
      }
    }
  }

  private static String shown(List<Progress.Point> points) {
    List<Progress.Point> last = points.subList(Math.max(0, points.size() - SCORES), points.size());
    return (last.size() < points.size() ? "... " : "")
        + last.stream()
            .map(point -> kilograms(point.load()) + " on " + Page.day(point.date()))
            .collect(Collectors.joining(", "));
  }

  private static String words(Progress.Change change) {
    String verdict =
        switch (change.verdict()) {
          case HIGHER -> "more than noise";
          case WITHIN_NOISE -> "within noise";
          case LOWER -> "lower, and more than noise";
        };
    return signed(change.change())
        + " kg from first to last: "
        + verdict
        + ", which is up to "
        + Numbers.plain(change.detectable(), 1)
        + " kg";
  }

  private static String signed(double value) {
    String plain = Numbers.plain(value, 1);
    return value > 0 && !plain.equals("0") ? "+" + plain : plain;
  }

  private static String kilograms(Load load) {
    return Numbers.plain(load.kilograms(), 1) + " kg";
  }

  private void sides() {
    if (review.sides().isEmpty()) {
      return;
    }
    heading("LEFT AND RIGHT", "");
    for (SideDifference each : review.sides()) {
      String stronger = each.percent() > 0 ? "right" : "left";
      page.wrapped(
          "",
          each.setup().grip().name()
              + " edge "
              + each.setup().edge()
              + (each.setup().lifting() ? " lifting" : "")
              + ": left "
              + kilograms(each.left().load())
              + ", right "
              + kilograms(each.right().load())
              + "; "
              + Numbers.plain(Math.abs(each.percent()), 1)
              + " % more on the "
              + stronger
              + ", "
              + (each.beyondNoise() ? "more than noise" : "within noise")
              + ", which is up to "
              + Numbers.plain(each.detectablePercent(), 1)
              + " %");
    }
  }

  private void pain() {
    List<PainCourse> courses =
        review.pain().stream()
            .filter(c -> c.scores().stream().anyMatch(score -> score.value() > 0))
            .toList();
    if (courses.isEmpty()) {
      return;
    }
    heading("PAIN", "");
    TextTable table = new TextTable(List.of("", "last", "on", "course", "so"), 2, 3, 4);
    for (PainCourse course : courses) {
      table.row(
          course.place().toString(),
          Numbers.plain(course.last().value(), 1),
          Page.day(course.last().date()),
          Sparkline.of(
              course.scores().stream().map(PainCourse.Score::value).toList(), BARS, WORST_PAIN),
          rule(course));
    }
    table.add(page);
  }

  private static String rule(PainCourse course) {
    return switch (course.because()) {
      case MILD -> "go on";
      case MODERATE -> "same or less for two sessions";
      case RISING -> "stop: it rises week on week";
      case SHARP -> "stop: sharp or sudden";
      case ABOVE_LIMIT -> "stop: above 5 of 10";
    };
  }
}
