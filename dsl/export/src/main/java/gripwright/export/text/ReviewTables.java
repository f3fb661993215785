package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
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
import java.util.stream.Stream;

/**
 * Writes the numbers of a review: load, work, tests, sides and pain. Unknown values are left out.
 */
final class ReviewTables {

  private static final int WEEKS = 8;
  private static final int BARS = 26;
  private static final int DAYS = 28;
  private static final int LABEL = 11;
  private static final int SCORES = 6;
  private static final double WORST_PAIN = 10;
  private static final double NEWTONS_PER_KILONEWTON = 1000;

  private final Review review;
  private final Page page;
  private final Words words;

  ReviewTables(Review review, Page page, Words words) {
    this.review = review;
    this.page = page;
    this.words = words;
  }

  void write() {
    load();
    work();
    fingers();
    progress();
    sides();
    pain();
  }

  private void heading(String key) {
    page.gap();
    page.line(words.say(key));
  }

  private void headingAndLegend(String key) {
    heading(key);
    page.wrapped("", words.say(key + "-legend"));
  }

  /** Returns a table with the words of these keys as headings; an empty key gives no heading. */
  private TextTable table(List<String> keys, Integer... left) {
    return new TextTable(
        keys.stream().map(key -> key.isEmpty() ? "" : words.say("reviewed.column-" + key)).toList(),
        left);
  }

  private void bars(String key, String bars) {
    int width =
        Stream.of("reviewed.by-week", "reviewed.by-day")
            .mapToInt(label -> words.say(label).length())
            .reduce(LABEL, Math::max);
    page.line(Page.padRight(words.say(key), width) + "  " + bars);
  }

  private void load() {
    TrainingLoad load = review.load();
    Optional<TrainingLoad.Day> last = load.lastDay();
    if (last.isEmpty() || load.days().stream().allMatch(day -> day.load() == 0)) {
      return;
    }
    headingAndLegend("reviewed.load");
    TextTable table = table(List.of("week", "load", "monotony", "strain", ""), 4);
    List<TrainingLoad.Week> weeks = load.weeks();
    for (TrainingLoad.Week week : weeks.subList(Math.max(0, weeks.size() - WEEKS), weeks.size())) {
      table.row(
          words.day(week.from()),
          Numbers.plain(week.load(), 0),
          number(week.monotony(), 2),
          number(week.strain(), 0),
          week.whole() ? "" : words.say("reviewed.not-whole"));
    }
    table.add(page);
    bars(
        "reviewed.by-week",
        Sparkline.of(weeks.stream().map(TrainingLoad.Week::load).toList(), BARS));
    bars(
        "reviewed.by-day",
        Sparkline.of(load.days().stream().map(TrainingLoad.Day::load).toList(), DAYS));
    page.wrapped(
        "",
        words.say(
            "reviewed.weighted",
            "acute",
            Numbers.plain(last.get().acute(), 0),
            "chronic",
            Numbers.plain(last.get().chronic(), 0),
            "fitness",
            Numbers.plain(last.get().response().fitness(), 0),
            "fatigue",
            Numbers.plain(last.get().response().fatigue(), 0)));
    if (review.withoutEffort() > 0) {
      page.wrapped("", words.count("reviewed.without-effort", review.withoutEffort()));
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
    headingAndLegend("reviewed.work-by-grip");
    TextTable table = table(List.of("", "holds", "impulse", "by-week"), 3);
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
    headingAndLegend("reviewed.work-by-finger");
    TextTable table = table(List.of("", "holds", "pad", "a2", "", "a4", "", "a2-by-week"), 4, 6, 7);
    for (Exposure.OfFinger finger : all) {
      table.row(
          words.say("reviewed.finger", "side", finger.side(), "finger", finger.finger()),
          Numbers.plain(finger.seconds(), 0) + " s",
          kilonewtons(finger.impulse().value()),
          seconds(finger.a2OwnHang()),
          range(finger.a2OwnHang()),
          seconds(finger.a4OwnHang()),
          range(finger.a4OwnHang()),
          Sparkline.of(byWeek(finger.side(), finger.finger()), BARS));
    }
    table.add(page);
  }

  private static String seconds(Optional<Estimate> hang) {
    return hang.map(estimate -> whole(estimate.value()) + " s").orElse("-");
  }

  private String range(Optional<Estimate> hang) {
    return hang.map(estimate -> words.range(whole(estimate.low()), whole(estimate.high())))
        .orElse("");
  }

  private static String whole(double seconds) {
    return Numbers.plain(seconds, 0);
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
    headingAndLegend("reviewed.tests");
    for (Progress each : review.progress()) {
      page.wrapped(
          "",
          words.say(
              each.series() ? "reviewed.test-series" : "reviewed.test",
              "setup",
              each.setup(),
              "seconds",
              Numbers.plain(each.how(), 1),
              "loads",
              shown(each.points())));
      each.change().ifPresent(change -> page.wrapped("  ", StrengthText.change(change, words)));
      OptionalDouble trend = each.trend();
      if (trend.isPresent()) {
        page.wrapped("  ", words.say("reviewed.trend", "change", signed(trend.getAsDouble())));
      }
      for (Progress.Point point : each.points()) {
        point
            .odd()
            .ifPresent(
                expected ->
                    page.wrapped(
                        "  ",
                        words.say(
                            "reviewed.odd-test",
                            "date",
                            words.dayAndYear(point.date()),
                            "low",
                            kilograms(expected.low()),
                            "high",
                            kilograms(expected.high()))));
      }
    }
  }

  private String shown(List<Progress.Point> points) {
    List<Progress.Point> last = points.subList(Math.max(0, points.size() - SCORES), points.size());
    String loads =
        words.commas(
            last.stream()
                .map(
                    point ->
                        words.say(
                            point.inForce() ? "reviewed.test-force" : "reviewed.test-load",
                            "newtons",
                            Numbers.plain(point.load().newtons(), 0),
                            "load",
                            kilograms(point.load()),
                            "date",
                            words.day(point.date())))
                .toList());
    return last.size() < points.size() ? words.say("reviewed.tests-last", "loads", loads) : loads;
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
    heading("reviewed.sides");
    for (SideDifference each : review.sides()) {
      page.wrapped(
          "",
          words.say(
              each.percent() > 0 ? "reviewed.stronger-right" : "reviewed.stronger-left",
              "setup",
              each.setup().withHands(Hands.BOTH),
              "left",
              kilograms(each.left().load()),
              "right",
              kilograms(each.right().load()),
              "percent",
              Numbers.plain(Math.abs(each.percent()), 1),
              "verdict",
              words.say(
                  each.beyondNoise()
                      ? "reviewed.sides-beyond-noise"
                      : "reviewed.sides-within-noise"),
              "detectable",
              Numbers.plain(each.detectablePercent(), 1)));
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
    heading("reviewed.pains");
    TextTable table = table(List.of("", "last", "on", "course", "so"), 2, 3, 4);
    for (PainCourse course : courses) {
      table.row(
          words.of(course.place()),
          Numbers.plain(course.last().value(), 1),
          words.day(course.last().date()),
          Sparkline.of(
              course.scores().stream().map(PainCourse.Score::value).toList(), BARS, WORST_PAIN),
          action(course));
    }
    table.add(page);
    List<String> stopped = review.stoppedGrips();
    if (!stopped.isEmpty()) {
      page.wrapped("", words.say("reviewed.stopped", "grips", words.commas(stopped)));
    }
  }

  /** Returns what follows from the scores of a place, or from those of the place that stops it. */
  private String action(PainCourse course) {
    return Optional.of(course)
        .filter(each -> each.rule() != PainCourse.Rule.STOP)
        .flatMap(each -> review.stops().of(each.place()))
        .map(by -> course.place().accept(new StoppedBy(by)))
        .orElseGet(() -> words.of("reviewed.because", course.because()));
  }

  /** Says that a place is stopped because of another one. */
  private final class StoppedBy implements PainCourse.Place.Visitor<String> {
    private final PainCourse.Place by;

    StoppedBy(PainCourse.Place by) {
      this.by = by;
    }

    @Override
    public String inFinger(PainCourse.InFinger place) {
      return words.say("reviewed.because-stopped", "place", by);
    }

    @Override
    public String inGrip(PainCourse.InGrip place) {
      return by instanceof PainCourse.InFinger finger
          ? words.say("reviewed.because-finger-stopped", "finger", finger.finger())
          : words.say("reviewed.because-stopped", "place", by);
    }

    @Override
    public String whileClimbing(PainCourse.WhileClimbing place) {
      return words.say("reviewed.because-climbing");
    }
  }
}
