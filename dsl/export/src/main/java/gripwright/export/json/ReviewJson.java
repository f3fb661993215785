package gripwright.export.json;

import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Setup;
import gripwright.log.LogEntry;
import gripwright.log.LogEntry.Done;
import gripwright.review.Exposure;
import gripwright.review.PainCourse;
import gripwright.review.PainStops;
import gripwright.review.Progress;
import gripwright.review.Review;
import gripwright.review.ReviewedSession;
import gripwright.review.SideDifference;
import gripwright.review.TrainingLoad;
import gripwright.schedule.Caution;
import gripwright.schedule.PlannedExercise;
import gripwright.tissue.Estimate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** Writes a review as JSON. */
final class ReviewJson {

  private static final int KILOGRAMS = 4;
  private static final int NEWTONS = 1;
  private static final int MILLIMETRES = 2;
  private static final int SECONDS = 3;
  private static final int LOAD = 3;
  private static final int IMPULSE = 1;
  private static final int SCORE = 2;

  private final JsonText json;

  private ReviewJson(JsonText json) {
    this.json = json;
  }

  static void write(JsonText json, Review review, List<ReportedFinding> findings) {
    ReviewJson writer = new ReviewJson(json);
    json.object(
        () -> {
          json.heading();
          json.field("language", JsonDocuments.LANGUAGE);
          json.field("athlete", review.athlete().name());
          json.field("on", review.day().map(Object::toString).orElse(null));
          json.field("lines", review.log().entries().size());
          json.list("next", review.next(), step -> json.line(() -> writer.step(step)));
          json.list("sessions", review.sessions(), each -> json.object(() -> writer.session(each)));
          json.list("climbing", review.climbing(), each -> json.line(() -> writer.climbed(each)));
          json.field("withoutEffort", review.withoutEffort());
          json.list("days", review.load().days(), day -> json.line(() -> writer.day(day)));
          json.list("weeks", review.load().weeks(), week -> json.line(() -> writer.week(week)));
          json.list(
              "work", review.exposure().weeks(), week -> json.object(() -> writer.work(week)));
          json.list("tests", review.progress(), each -> json.object(() -> writer.progress(each)));
          json.list("sides", review.sides(), each -> json.line(() -> writer.side(each)));
          PainStops stops = review.stops();
          json.list("pain", review.pain(), each -> json.object(() -> writer.pain(each, stops)));
          json.list("cautions", Caution.general(), c -> json.text(json.wording().say(c)));
          FindingJson.list(json, findings);
        });
  }

  private void step(Finding step) {
    json.field("code", step.code());
    json.field("sentence", json.wording().sentence(step));
  }

  private void session(ReviewedSession session) {
    json.field("date", session.date().toString());
    json.field("session", session.name());
    json.field("outcome", word(session.outcome()));
    json.field("plannedFor", session.planned().map(p -> p.date().toString()).orElse(null));
    json.field("minutes", session.minutes(), SECONDS);
    json.field("effort", session.effort(), SCORE);
    json.field("sessionRpeLoad", session.load(), LOAD);
    json.field("note", session.logged().flatMap(LogEntry.OfSession::note).orElse(null));
    json.list("exercises", session.work(), work -> json.line(() -> work(work)));
  }

  private void work(ReviewedSession.Work work) {
    Optional<PlannedExercise> asked = work.match().planned();
    Optional<Done> done = work.match().done();
    json.field(
        "protocol",
        done.map(Done::protocol).or(() -> asked.map(PlannedExercise::protocol)).orElse(""));
    setup(done.map(Done::setup).or(() -> asked.map(PlannedExercise::setup)).orElseThrow());
    json.field("asked", asked.isPresent());
    json.field("done", done.isPresent());
    count("setsAsked", work.match().setsPlanned());
    count("sets", work.match().setsDone());
    json.field("loadAskedKg", number(asked.map(a -> a.totalLoad().kilograms())), KILOGRAMS);
    json.field("loadKg", number(done.flatMap(Done::load).map(l -> l.kilograms())), KILOGRAMS);
    json.field("effort", done.map(Done::effort).orElseGet(OptionalDouble::empty), SCORE);
    json.field("pain", done.map(Done::pain).orElseGet(OptionalDouble::empty), SCORE);
    json.field("inFull", work.match().inFull());
    json.field("timeUnderLoadSeconds", work.seconds(), SECONDS);
    json.field("impulseNs", work.impulse(), IMPULSE);
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  private void count(String name, OptionalInt value) {
    if (value.isPresent()) {
      json.field(name, value.getAsInt());
    } else {
      json.nothing(name);
    }
  }

  private void setup(Setup setup) {
    json.field("grip", setup.grip().name());
    json.field("edgeMm", setup.edge().millimetres(), MILLIMETRES);
    json.field("hands", setup.hands().word());
    json.field("lifting", setup.lifting());
  }

  private void climbed(LogEntry.Climbed climbed) {
    json.field("date", climbed.date().toString());
    json.field("how", climbed.how());
    json.field("minutes", climbed.time().toSeconds() / 60.0, SECONDS);
    json.field("effort", climbed.effort(), SCORE);
    json.field("pain", climbed.pain(), SCORE);
    json.field("sessionRpeLoad", Review.load(climbed), LOAD);
  }

  private void day(TrainingLoad.Day day) {
    json.field("date", day.date().toString());
    json.field("sessionRpeLoad", day.load(), LOAD);
    json.field("acuteLoad", day.acute(), LOAD);
    json.field("chronicLoad", day.chronic(), LOAD);
    json.field("fitness", day.response().fitness(), LOAD);
    json.field("fatigue", day.response().fatigue(), LOAD);
  }

  private void week(TrainingLoad.Week week) {
    json.field("from", week.from().toString());
    json.field("whole", week.whole());
    json.field("sessionRpeLoad", week.load(), LOAD);
    json.field("monotony", week.monotony(), LOAD);
    json.field("strain", week.strain(), LOAD);
  }

  private void work(Exposure.Week week) {
    json.field("from", week.from().toString());
    json.list("grips", week.grips(), grip -> json.line(() -> work(grip)));
    json.list("fingers", week.fingers(), finger -> json.line(() -> work(finger)));
  }

  private void work(Exposure.OfGrip grip) {
    json.field("grip", grip.grip());
    json.field("timeUnderLoadSeconds", grip.seconds(), SECONDS);
    json.field("impulseNs", grip.impulse(), IMPULSE);
  }

  private void work(Exposure.OfFinger finger) {
    json.field("hand", finger.side().toString());
    json.field("finger", finger.finger().toString());
    json.field("timeUnderLoadSeconds", finger.seconds(), SECONDS);
    estimate("impulse", finger.impulse());
    estimate("a2", finger.a2());
    estimate("a4", finger.a4());
    ownHang("a2", finger.a2OwnHang());
    ownHang("a4", finger.a4OwnHang());
  }

  private void ownHang(String pulley, Optional<Estimate> hang) {
    json.field(pulley + "OwnHangSeconds", seconds(hang, Estimate::value), SECONDS);
    json.field(pulley + "OwnHangLowSeconds", seconds(hang, Estimate::low), SECONDS);
    json.field(pulley + "OwnHangHighSeconds", seconds(hang, Estimate::high), SECONDS);
  }

  private static OptionalDouble seconds(Optional<Estimate> hang, ToDoubleFunction<Estimate> end) {
    return hang.isPresent()
        ? OptionalDouble.of(end.applyAsDouble(hang.get()))
        : OptionalDouble.empty();
  }

  private void estimate(String name, Estimate estimate) {
    json.field(name + "Ns", estimate.value(), IMPULSE);
    json.field(name + "LowNs", estimate.low(), IMPULSE);
    json.field(name + "HighNs", estimate.high(), IMPULSE);
  }

  private void progress(Progress progress) {
    setup(progress.setup());
    json.field("holdSeconds", progress.how(), SECONDS);
    json.field("series", progress.series());
    json.list("points", progress.points(), point -> json.line(() -> point(point)));
    StrengthJson.change(json, progress.change());
    change("sinceFirst", progress.sinceFirst());
    change("sinceLast", progress.sinceLast());
    json.field("trendKgPerMonth", progress.trend(), KILOGRAMS);
  }

  private void point(Progress.Point point) {
    json.field("date", point.date().toString());
    json.field("loadKg", point.load().kilograms(), KILOGRAMS);
    if (point.inForce()) {
      json.field("forceN", point.load().newtons(), NEWTONS);
    }
    json.field("fits", point.odd().isEmpty());
    json.field("expectedKg", number(point.odd().map(o -> o.best().kilograms())), KILOGRAMS);
  }

  private void change(String name, Optional<Progress.Change> change) {
    if (change.isEmpty()) {
      json.nothing(name);
      return;
    }
    json.object(
        name,
        () -> {
          json.field("from", change.get().from().date().toString());
          json.field("to", change.get().to().date().toString());
          json.field("changeKg", change.get().change(), KILOGRAMS);
          json.field("detectableKg", change.get().detectable(), KILOGRAMS);
          json.field("verdict", word(change.get().verdict()));
        });
  }

  private void side(SideDifference side) {
    json.field("grip", side.setup().grip().name());
    json.field("edgeMm", side.setup().edge().millimetres(), MILLIMETRES);
    json.field("lifting", side.setup().lifting());
    json.field("leftKg", side.left().load().kilograms(), KILOGRAMS);
    json.field("leftDate", side.left().date().toString());
    json.field("rightKg", side.right().load().kilograms(), KILOGRAMS);
    json.field("rightDate", side.right().date().toString());
    json.field("rightMorePercent", side.percent(), LOAD);
    json.field("detectablePercent", side.detectablePercent(), LOAD);
    json.field("beyondNoise", side.beyondNoise());
  }

  private void pain(PainCourse course, PainStops stops) {
    json.field("place", course.place().toString());
    if (course.place() instanceof PainCourse.InFinger finger) {
      json.field("finger", finger.finger().toString());
      json.field("structure", finger.structure().map(Object::toString).orElse(null));
      json.field("hand", finger.side().map(Object::toString).orElse(null));
    } else {
      json.nothing("finger");
      json.nothing("structure");
      json.nothing("hand");
    }
    json.field("rule", word(course.rule()));
    json.field("because", word(course.because()));
    json.field(
        "stoppedBy",
        Optional.of(course)
            .filter(each -> each.rule() != PainCourse.Rule.STOP)
            .flatMap(each -> stops.of(each.place()))
            .map(Object::toString)
            .orElse(null));
    json.list(
        "scores",
        course.scores(),
        score ->
            json.line(
                () -> {
                  json.field("date", score.date().toString());
                  json.field("score", score.value(), SCORE);
                  json.field("kind", word(score.kind()));
                }));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
