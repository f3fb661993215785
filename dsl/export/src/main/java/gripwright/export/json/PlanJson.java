package gripwright.export.json;

import gripwright.athlete.Injury;
import gripwright.grip.GripFit;
import gripwright.grip.Setup;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.hand.Side;
import gripwright.protocol.Extent;
import gripwright.protocol.Scheme;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.schedule.DatedRetest;
import gripwright.schedule.DatedSession;
import gripwright.schedule.Derivation;
import gripwright.schedule.GripMix;
import gripwright.schedule.Note;
import gripwright.schedule.PlanWeek;
import gripwright.schedule.PlannedExercise;
import gripwright.schedule.PlannedExercise.EndReserve;
import gripwright.schedule.PlannedExercise.LoadedStep;
import gripwright.schedule.PlannedExercise.Maximum;
import gripwright.season.CompiledPlan;
import gripwright.tissue.FingerLedger;
import gripwright.tissue.FingerWork;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Writes one compiled plan as JSON. */
final class PlanJson {

  private static final int KILOGRAMS = 4;
  private static final int NEWTONS = 1;
  private static final int SECONDS = 3;
  private static final int NEWTON_SECONDS = 1;
  private static final int PERCENT = 3;
  private static final int MILLIMETRES = 2;
  private static final int DEGREES = 1;
  private static final int KILOGRAM_SECONDS = 3;
  private static final int DERIVED = 4;
  private static final int SHARE = 4;

  private PlanJson() {}

  static void write(JsonText json, PlanDocument document) {
    CompiledPlan plan = document.plan();
    json.object(
        () -> {
          json.heading();
          json.field("language", JsonDocuments.LANGUAGE);
          json.field("plan", plan.plan().name());
          json.field("athlete", plan.athlete().name());
          json.field("from", plan.plan().from().toString());
          json.field("to", plan.plan().to().toString());
          json.field("supervisedBy", plan.plan().supervisedBy().orElse(null));
          json.list("clearances", plan.clearances(), c -> json.line(() -> clearance(json, c)));
          json.list("sessions", plan.sessions(), s -> json.object(() -> session(json, plan, s)));
          FingerLedger ledger = new FingerLedger();
          json.list("weeks", plan.weeks(), w -> json.object(() -> week(json, plan, w, ledger)));
          json.list("retests", plan.retests(), r -> json.object(() -> retest(json, r)));
          json.field("heardUntil", plan.lastKnownDay().map(LocalDate::toString).orElse(null));
          json.list("missed", plan.missed(), m -> json.line(() -> LogJson.missed(json, m)));
          json.list("changes", plan.changes(), c -> json.object(() -> LogJson.change(json, c)));
          json.list("notes", plan.notes(), note -> json.line(() -> note(json, note)));
          json.list("cautions", plan.cautions(), c -> json.text(json.wording().say(c)));
          FindingJson.list(json, document.findings());
        });
  }

  private static void note(JsonText json, Note note) {
    json.field("about", note.about().word());
    json.field("name", note.name());
    json.field("text", note.text());
  }

  private static void clearance(JsonText json, Injury injury) {
    json.field("finger", injury.finger().word());
    json.field("structure", injury.structure().word());
    json.field("side", injury.side().map(Side::word).orElse(null));
    json.field("date", injury.cleared().map(LocalDate::toString).orElse(null));
    json.field("by", injury.clearedBy().orElse(null));
  }

  private static void session(JsonText json, CompiledPlan plan, DatedSession session) {
    json.field("date", session.date().toString());
    session.time().ifPresent(time -> json.field("time", time.toString()));
    session.place().ifPresent(place -> json.field("place", place));
    json.field("week", session.week());
    json.field("block", session.block());
    json.field("session", session.name());
    json.field("supervisedBy", plan.supervisorOf(session).orElse(null));
    json.field("minutes", session.minutes());
    json.field("hard", session.hard());
    json.field("eased", session.eased());
    json.field("bodyMassKg", session.bodyMass().kilograms(), KILOGRAMS);
    json.field("placedBecause", json.wording().say(session.placedBecause()));
    session
        .happened()
        .ifPresentOrElse(
            happened ->
                json.object(
                    "happened",
                    () -> LogJson.happened(json, happened, plan.timeline().line(happened))),
            () -> json.nothing("happened"));
    session.warmUpText().ifPresent(text -> json.field("warmUpText", text));
    json.list("notes", session.notes(), json::text);
    json.list("exercises", session.exercises(), e -> json.object(() -> exercise(json, e)));
  }

  private static void exercise(JsonText json, PlannedExercise exercise) {
    json.field("order", exercise.order());
    json.field("protocol", exercise.protocol());
    setup(json, exercise.setup());
    json.list("fingers", angles(exercise), angle -> json.line(() -> angle(json, angle)));
    json.field("sets", exercise.scheme().sets());
    json.field("repsPerSet", exercise.scheme().repetitionsPerSet());
    json.field(
        "holdSeconds",
        exercise
            .scheme()
            .holdTime()
            .map(t -> OptionalDouble.of(seconds(t)))
            .orElse(OptionalDouble.empty()),
        SECONDS);
    json.field("restSeconds", seconds(exercise.scheme().restBetweenHolds()), SECONDS);
    json.field("setRestSeconds", seconds(exercise.scheme().restBetweenSets()), SECONDS);
    bounds(json, exercise);
    json.field("percentOfMax", exercise.percentOfMax(), PERCENT);
    json.field("builtPercentOfMax", exercise.builtPercentOfMax(), PERCENT);
    json.field("maxUsedKg", kilograms(exercise.maximum(), Maximum::used), KILOGRAMS);
    json.field("maxMeanKg", kilograms(exercise.maximum(), Maximum::mean), KILOGRAMS);
    json.field("totalLoadKg", exercise.totalLoad().kilograms(), KILOGRAMS);
    if (exercise.inForce()) {
      json.field("totalForceN", exercise.totalLoad().newtons(), NEWTONS);
    }
    json.field("addedKg", exercise.added().kilograms(), KILOGRAMS);
    json.list("steps", exercise.steps(), s -> json.line(() -> step(json, s)));
    json.field("timeUnderLoadSeconds", exercise.timeUnderLoadSeconds(), SECONDS);
    json.field("impulseNs", exercise.impulse(), NEWTON_SECONDS);
    json.field("endReserve", reserve(exercise, EndReserve::mean), SHARE);
    json.field("endReserveLow", reserve(exercise, EndReserve::low), SHARE);
    json.field("endReserveHigh", reserve(exercise, EndReserve::high), SHARE);
    exercise
        .mix()
        .ifPresentOrElse(
            mix -> json.object("mix", () -> mix(json, mix)), () -> json.nothing("mix"));
    json.list("why", exercise.why(), w -> json.line(() -> why(json, w)));
  }

  /** Writes what only some exercises have: bounds, a mark as warm-up, and texts. */
  private static void bounds(JsonText json, PlannedExercise exercise) {
    Scheme scheme = exercise.scheme();
    if (scheme.setsUpTo()) {
      json.field("setsUpTo", true);
    }
    List<Extent> extents = scheme.written().stream().map(Scheme.Hold::extent).distinct().toList();
    if (extents.size() == 1 && extents.get(0).isBound()) {
      json.field("holdUpTo", true);
    }
    if (exercise.isToFailure()) {
      json.field("toFailure", true);
    }
    if (exercise.warmUp()) {
      json.field("warmUp", true);
    }
    if (exercise.alternating()) {
      json.field("alternating", true);
    }
    exercise.note().ifPresent(note -> json.field("note", note));
    if (!scheme.restsWithText().isEmpty()) {
      json.list("restTexts", scheme.restsWithText(), rest -> json.line(() -> restText(json, rest)));
    }
  }

  private static void restText(JsonText json, Scheme.Rest rest) {
    json.field("seconds", seconds(rest.time()), SECONDS);
    json.field("text", rest.text().orElse(null));
  }

  private static void mix(JsonText json, GripMix mix) {
    blend(json, mix.best());
    mix.nextBest()
        .ifPresentOrElse(
            next -> json.object("nextBest", () -> blend(json, next)),
            () -> json.nothing("nextBest"));
    json.list("limits", mix.limits(), limit -> json.line(() -> limit(json, limit)));
    json.field("equalMargin", mix.equalMargin(), SHARE);
    json.list(
        "unproven", mix.unproven().map(GripMix.Unproven::grips).orElse(List.of()), json::text);
  }

  private static void blend(JsonText json, GripMix.Blend blend) {
    json.list("shares", blend.shares().entrySet(), share -> json.line(() -> share(json, share)));
    json.field("match", blend.match(), SHARE);
    json.field("margin", blend.margin(), SHARE);
    json.field("carryOver", blend.carryOver(), SHARE);
    json.field("score", blend.score(), SHARE);
  }

  private static void share(JsonText json, Map.Entry<String, Double> share) {
    json.field("grip", share.getKey());
    json.field("share", share.getValue(), SHARE);
  }

  private static void limit(JsonText json, GripMix.Limit limit) {
    json.field("grip", limit.grip());
    json.field("kind", limit.reason().word());
    json.field("reason", json.wording().say(limit.reason().detail()));
    json.field("cost", limit.cost(), SHARE);
  }

  private static void tested(JsonText json, DatedRetest retest, Setup setup) {
    setup(json, setup);
    if (retest.load(setup).isPresent()) {
      json.field("totalLoadKg", retest.load(setup).get().kilograms(), KILOGRAMS);
    }
  }

  private static void setup(JsonText json, Setup setup) {
    json.field("grip", setup.grip().name());
    json.field("edgeMm", setup.edge().millimetres(), MILLIMETRES);
    json.field("hands", setup.hands().word());
    json.field("lifting", setup.lifting());
  }

  /**
   * Flexion of the middle joint of a finger.
   *
   * @param side which hand; empty if both are the same
   * @param range interval that holds 90 % of the sampled hands
   */
  private record FingerAngle(Optional<Side> side, FingerPose pose, FlexionRange range) {}

  /** Returns the angles of the hand in use, or of both hands where they differ, left first. */
  private static List<FingerAngle> angles(PlannedExercise exercise) {
    boolean differ =
        exercise.fits().values().stream().map(PlanJson::written).distinct().count() > 1;
    List<FingerAngle> angles = new ArrayList<>();
    exercise
        .fits()
        .forEach(
            (side, fit) -> {
              if (differ || angles.isEmpty()) {
                Optional<Side> named = differ ? Optional.of(side) : Optional.empty();
                fit.pose()
                    .fingers()
                    .forEach(
                        f ->
                            angles.add(
                                new FingerAngle(
                                    named,
                                    f,
                                    fit.spread().flexion(f.finger(), Joint.PIP).orElseThrow())));
              }
            });
    return angles;
  }

  private static List<BigDecimal> written(GripFit fit) {
    return fit.pose().fingers().stream()
        .map(finger -> Numbers.rounded(finger.pip().degrees(), DEGREES))
        .toList();
  }

  private static void angle(JsonText json, FingerAngle angle) {
    json.field("finger", angle.pose().finger().word());
    json.field("pipFlexionDeg", angle.pose().pip().degrees(), DEGREES);
    json.field("pipFlexionLowDeg", angle.range().low().degrees(), DEGREES);
    json.field("pipFlexionHighDeg", angle.range().high().degrees(), DEGREES);
    angle.side().ifPresent(side -> json.field("side", side.word()));
  }

  private static void step(JsonText json, LoadedStep step) {
    json.field("kind", step.isHold() ? "hold" : "rest");
    json.field("seconds", step.seconds(), SECONDS);
    json.field("totalLoadKg", kilograms(step.load(), load -> load), KILOGRAMS);
    if (step.extent().isBound()) {
      json.field("until", step.extent() == Extent.UP_TO ? "up-to" : "failure-or-up-to");
    }
  }

  private static void why(JsonText json, Derivation link) {
    json.field("step", json.wording().step(link));
    json.field("value", link.value(), DERIVED);
    json.field("unit", json.wording().unit(link));
    json.field("from", json.wording().say(link));
  }

  private static void week(JsonText json, CompiledPlan plan, PlanWeek week, FingerLedger ledger) {
    json.field("week", week.number());
    json.field("from", week.from().toString());
    json.field("eased", week.eased());
    json.field("taper", plan.plan().taperIn(week.from()).isPresent());
    json.field("timeUnderLoadSeconds", week.timeUnderLoadSeconds(), SECONDS);
    json.field("loadIndex", week.loadIndex(), KILOGRAM_SECONDS);
    List<FingerWork> parts = new ArrayList<>();
    Stream.concat(
            plan.sessionsOf(week.number()).stream().flatMap(s -> s.exercises().stream()),
            plan.retests().stream()
                .filter(test -> test.week() == week.number())
                .flatMap(test -> test.exercises().stream()))
        .forEach(e -> parts.addAll(ledger.of(e.fits(), e.timeUnderLoadSeconds(), e.impulse())));
    List<FingerWork> fingers = FingerWork.together(parts);
    json.list("fingers", fingers, f -> json.line(() -> finger(json, f)));
  }

  private static void finger(JsonText json, FingerWork work) {
    json.field("side", work.side().word());
    json.field("finger", work.finger().word());
    json.field("timeUnderLoadSeconds", work.timeUnderLoadSeconds(), SECONDS);
    json.field("impulseEstimateNs", known(work.impulse()), NEWTON_SECONDS);
    json.field("a2ExposureEstimateNs", known(work.a2Exposure()), NEWTON_SECONDS);
    json.field("a4ExposureEstimateNs", known(work.a4Exposure()), NEWTON_SECONDS);
  }

  private static OptionalDouble known(double estimate) {
    return Double.isNaN(estimate) ? OptionalDouble.empty() : OptionalDouble.of(estimate);
  }

  private static void retest(JsonText json, DatedRetest retest) {
    json.field("date", retest.date().toString());
    retest.time().ifPresent(time -> json.field("time", time.toString()));
    retest.place().ifPresent(place -> json.field("place", place));
    json.field("week", retest.week());
    json.field("block", retest.block().isEmpty() ? null : retest.block());
    json.field(
        "holdSeconds",
        retest.hold().isZero() ? OptionalDouble.empty() : OptionalDouble.of(seconds(retest.hold())),
        SECONDS);
    if (!retest.isPlain()) {
      TestJson.kind(json, retest);
    }
    TestJson.warmUp(json, retest.warmUp());
    if (!retest.exercises().isEmpty()) {
      json.list("exercises", retest.exercises(), e -> json.object(() -> exercise(json, e)));
    }
    json.list("grips", retest.setups(), s -> json.line(() -> tested(json, retest, s)));
    json.field("insteadOf", retest.insteadOf().isEmpty() ? null : retest.insteadOf());
    json.field("placedBecause", json.wording().say(retest.placedBecause()));
  }

  private static double seconds(Duration time) {
    return time.getSeconds() + time.getNano() / 1e9;
  }

  private static OptionalDouble reserve(
      PlannedExercise exercise, ToDoubleFunction<EndReserve> end) {
    return exercise
        .endReserve()
        .map(reserve -> OptionalDouble.of(end.applyAsDouble(reserve)))
        .orElse(OptionalDouble.empty());
  }

  private static <T> OptionalDouble kilograms(Optional<T> from, Function<T, Load> load) {
    return from.map(f -> OptionalDouble.of(load.apply(f).kilograms()))
        .orElse(OptionalDouble.empty());
  }
}
