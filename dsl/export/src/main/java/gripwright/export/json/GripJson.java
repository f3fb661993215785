package gripwright.export.json;

import gripwright.export.words.MissingWords;
import gripwright.export.words.Words;
import gripwright.finding.Finding;
import gripwright.finding.ReportedFinding;
import gripwright.grip.Band;
import gripwright.grip.FingerLoss;
import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.grip.FitSpread;
import gripwright.grip.Grip;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.HandShape;
import gripwright.hand.Joint;
import gripwright.hand.Segment;
import gripwright.hand.Side;
import gripwright.quantity.Angle;
import gripwright.quantity.Length;
import gripwright.schedule.Caution;
import gripwright.strength.LoadEstimate;
import gripwright.survey.Gate;
import gripwright.survey.GripSurvey;
import gripwright.tissue.Estimate;
import gripwright.tissue.FingerLoad;
import gripwright.tissue.OwnHang;
import gripwright.tissue.RelativeLoad;
import gripwright.tissue.SlipViews;
import gripwright.tissue.TissueModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Writes every grip on one athlete's hands as JSON. */
final class GripJson {

  private static final int MILLIMETRES = 2;
  private static final int DEGREES = 1;
  private static final int NEWTONS = 1;
  private static final int SHARE = 4;
  private static final int RATIO = 3;
  private static final int MONTHS = 2;
  private static final int KILOGRAMS = 4;

  private final JsonText json;
  private final GripSurvey survey;
  private final Words words;

  private GripJson(JsonText json, GripSurvey survey, Words words) {
    this.words = words;
    this.json = json;
    this.survey = survey;
  }

  static void write(JsonText json, GripSurvey survey, List<ReportedFinding> findings) {
    Words words = new Words(json.wording());
    GripJson grips = new GripJson(json, survey, words);
    json.object(
        () -> {
          grips.head();
          json.list("grips", survey.rows(), row -> json.object(() -> grips.grip(row)));
          json.list("athleteNotes", survey.notes(), n -> json.object(() -> grips.gate(n)));
          json.list(
              "reservations", survey.reservations(), r -> json.text(words.of("grips.caveat", r)));
          json.list("cautions", Caution.general(), c -> json.text(words.of(c)));
          FindingJson.list(json, findings);
        });
  }

  private void head() {
    json.heading();
    json.field("language", JsonDocuments.LANGUAGE);
    json.field("athlete", survey.athlete().name());
    json.field("on", survey.day().toString());
    json.field("ageMonths", survey.athlete().ageInMonths(survey.day()));
    json.field("trainedMonths", survey.trainedMonths(), MONTHS);
    json.field("abilityIrcra", survey.athlete().ability().ircra());
    json.field("edgeMm", survey.edge().millimetres(), MILLIMETRES);
    json.field("totalLoadKg", survey.total().kilograms(), KILOGRAMS);
    json.object("model", this::model);
    json.object("ownHang", this::ownHang);
    if (survey.handsAreEqual()) {
      json.object("hand", () -> hand(survey.left()));
    } else {
      json.object(
          "hand",
          () -> {
            for (Side side : Side.values()) {
              HandShape shape = side == Side.LEFT ? survey.left() : survey.right();
              json.object(side.word(), () -> hand(shape));
            }
          });
    }
  }

  /** Writes the model parameters that all numbers depend on, by name. */
  private void model() {
    TissueModel model = GripSurvey.MODEL;
    json.field("momentArms", word(model.arms()));
    json.field("sheath", model.sheath().name());
    json.field("horizontalPull", model.horizontalPull(), SHARE);
    json.field("draws", TissueModel.draws());
    json.field("stream", model.stream());
    json.field("handDraws", FitSpread.DRAWS);
    json.field("handStream", FitSpread.STREAM);
  }

  /** Writes the hang that forces are given relative to. */
  private void ownHang() {
    json.field("grip", OwnHang.SETUP.grip().name());
    json.field("edgeMm", OwnHang.SETUP.edge().millimetres(), MILLIMETRES);
    json.field("hands", OwnHang.SETUP.hands().word());
    json.field("bodyMassKg", survey.bodyMass().kilograms(), KILOGRAMS);
    json.list(
        "sides",
        survey.hangs().entrySet(),
        hang ->
            json.line(
                () -> {
                  json.field("side", hang.getKey().word());
                  json.field("taken", hang.getValue().taken());
                }));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private void hand(HandShape shape) {
    json.field("lengthMm", shape.length().millimetres(), MILLIMETRES);
    json.field("breadthMm", shape.breadth().millimetres(), MILLIMETRES);
    json.field("breadthEstimated", shape.breadthEstimated());
    json.list("fingers", List.of(Finger.values()), f -> json.line(() -> bones(shape, f)));
    json.list("jointRanges", ranges(shape), r -> json.line(() -> range(r)));
  }

  /** A joint whose range was measured. */
  private record Range(Finger finger, Joint joint, FlexionRange flexion) {}

  private static List<Range> ranges(HandShape shape) {
    List<Range> ranges = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      for (Joint joint : Joint.values()) {
        shape.limits().of(finger, joint).ifPresent(r -> ranges.add(new Range(finger, joint, r)));
      }
    }
    return ranges;
  }

  private void range(Range range) {
    json.field("finger", range.finger().word());
    json.field("joint", range.joint().word());
    degrees("lowDeg", range.flexion().low());
    degrees("highDeg", range.flexion().high());
  }

  private void bones(HandShape shape, Finger finger) {
    json.field("finger", finger.word());
    boolean estimated = false;
    for (Segment segment : Segment.values()) {
      json.field(segment.word() + "Mm", shape.bone(finger, segment).millimetres(), MILLIMETRES);
      json.field(segment.word() + "Estimated", !shape.measured(finger, segment));
      estimated |= !shape.measured(finger, segment);
    }
    json.field(
        "knuckleBehindMm",
        shape.knuckleAlong(Finger.MIDDLE) - shape.knuckleAlong(finger),
        MILLIMETRES);
    json.field("knuckleEstimated", finger != Finger.MIDDLE && !shape.knuckleMeasured(finger));
    json.field("estimated", estimated);
  }

  private void grip(GripSurvey.Row row) {
    json.field("grip", row.grip().name());
    json.field("edgeMm", survey.edge().millimetres(), MILLIMETRES);
    json.field("side", row.side().map(Side::word).orElse(null));
    json.field("reachable", row.fit().reachable());
    json.field("takenProbability", row.fit().spread().taken(), SHARE);
    json.list("reasons", row.fit().misses(), m -> json.line(() -> miss(m)));
    pose(row);
    json.object("shareOfFourFingers", () -> capacity(row));
    maximum(row);
    json.field("open", row.open());
    json.field("limited", row.limited());
    json.list("gates", row.gates(), g -> json.object(() -> gate(g)));
    json.list("limits", row.limits(), g -> json.object(() -> gate(g)));
    json.list("advice", row.fit().advice(), a -> json.line(() -> advice(a)));
    json.list("cautions", row.grip().cautions(), json::text);
  }

  /** Writes the pose; for a grip that the hand can't take, only the nearest pose. */
  private void pose(GripSurvey.Row row) {
    boolean taken = row.fit().reachable();
    List<FingerLoad> loads = row.load().fingers();
    List<RelativeLoad> relative = row.relative();
    json.list(
        "fingers",
        taken ? relative : List.<RelativeLoad>of(),
        f -> json.object(() -> finger(row, f)));
    json.list(
        "nearestPose",
        taken ? List.<FingerLoad>of() : loads,
        f -> json.line(() -> nearest(row, f.finger())));
    json.field("totalForceN", survey.total().newtons(), NEWTONS);
    json.field("handForceN", row.load().newtons(), NEWTONS);
    if (taken) {
      range("wristRoll", row.fit().wristRoll(), row.fit().spread().wristRoll());
    } else {
      nothing("wristRollDeg", "wristRollLowDeg", "wristRollHighDeg");
    }
    json.list(
        "slip", taken ? row.slips() : List.<SlipViews>of(), s -> json.line(() -> slip(row, s)));
    for (String name : List.of("lumbricalIndex", "lumbricalIndexPulledLow")) {
      if (taken) {
        boolean low = name.endsWith("PulledLow");
        estimate(name, "", low ? row.lumbricalPulledLow() : row.lumbrical(), MILLIMETRES);
      } else {
        nothing(name, name + "Low", name + "High");
      }
    }
  }

  private void nearest(GripSurvey.Row row, Finger finger) {
    json.field("finger", finger.word());
    for (Joint joint : Joint.values()) {
      degrees(joint.word() + "FlexionDeg", row.fit().flexion(finger, joint).orElseThrow());
    }
  }

  private void nothing(String... names) {
    for (String name : names) {
      json.nothing(name);
    }
  }

  /** Writes what both hands can hold for 7 s by the tests, with its 20th and 80th percentiles. */
  private void maximum(GripSurvey.Row row) {
    if (row.maximum().isEmpty()) {
      nothing("maximumKg", "maximumLowKg", "maximumHighKg", "aboveMaximum");
      return;
    }
    LoadEstimate load = row.maximum().get().load();
    json.field("maximumKg", load.best().kilograms(), KILOGRAMS);
    json.field("maximumLowKg", load.low().kilograms(), KILOGRAMS);
    json.field("maximumHighKg", load.high().kilograms(), KILOGRAMS);
    json.field("aboveMaximum", survey.aboveMaximum(row).orElseThrow());
  }

  /** Writes one reason; fields that do not apply to it are null. */
  private void miss(FitMiss miss) {
    json.field("finger", miss.finger().word());
    Missed missed = miss.accept(MISSED);
    json.field("reason", missed.reason());
    Band required = missed.required();
    FlexionRange limit = missed.limit();
    degrees("askedLowDeg", required == null ? null : required.low());
    degrees("askedHighDeg", required == null ? null : required.high());
    degrees("nearestFlexionDeg", missed.nearest());
    degrees("limitLowDeg", limit == null ? null : limit.low());
    degrees("limitHighDeg", limit == null ? null : limit.high());
    Length by = missed.by();
    if (by == null) {
      json.nothing("tooShortMm");
    } else {
      json.field("tooShortMm", by.millimetres(), MILLIMETRES);
    }
  }

  private record Missed(
      String reason,
      @Nullable Band required,
      @Nullable Angle nearest,
      @Nullable FlexionRange limit,
      @Nullable Length by) {}

  private static final FitMiss.Visitor<Missed> MISSED =
      new FitMiss.Visitor<>() {
        @Override
        public Missed tooShort(FitMiss.TooShort miss) {
          return new Missed("too-short", null, null, null, miss.by());
        }

        @Override
        public Missed outOfBand(FitMiss.OutOfBand miss) {
          return new Missed("out-of-band", miss.required(), miss.nearest(), null, null);
        }

        @Override
        public Missed beyondLimit(FitMiss.BeyondLimit miss) {
          return new Missed("beyond-joint-limit", miss.required(), null, miss.limit(), null);
        }
      };

  private void degrees(String name, @Nullable Angle angle) {
    if (angle == null) {
      json.nothing(name);
    } else {
      json.field(name, angle.degrees(), DEGREES);
    }
  }

  private void finger(GripSurvey.Row row, RelativeLoad relative) {
    FingerLoad load = row.load().finger(relative.finger()).orElseThrow();
    json.field("finger", load.finger().word());
    for (Joint joint : Joint.values()) {
      range(
          joint.word() + "Flexion",
          row.fit().flexion(load.finger(), joint).orElseThrow(),
          row.fit().spread().flexion(load.finger(), joint).orElseThrow());
    }
    Band own = row.fit().personalBands().get(new Grip.At(load.finger(), Joint.PIP));
    degrees("personalBandLowDeg", own == null ? null : own.low());
    degrees("personalBandHighDeg", own == null ? null : own.high());
    estimate("share", "", load.share(), SHARE);
    estimate("fingertip", "N", load.fingertip(), NEWTONS);
    estimate("fdp", "N", load.fdp(), NEWTONS);
    estimate("fds", "N", load.fds(), NEWTONS);
    estimate("a2", "N", load.a2(), NEWTONS);
    estimate("a4", "N", load.a4(), NEWTONS);
    estimate("a2Use", "", load.a2Utilization(), RATIO);
    estimate("a4Use", "", load.a4Utilization(), RATIO);
    estimate("fdpTimesOwnHang", "", relative.fdp(), RATIO);
    estimate("fdsTimesOwnHang", "", relative.fds(), RATIO);
    estimate("a2TimesOwnHang", "", relative.a2(), RATIO);
    estimate("a4TimesOwnHang", "", relative.a4(), RATIO);
  }

  private void range(String name, Angle angle, FlexionRange range) {
    degrees(name + "Deg", angle);
    degrees(name + "LowDeg", range.low());
    degrees(name + "HighDeg", range.high());
  }

  /**
   * Writes a value with the ends of its interval: {@code fdpN}, {@code fdpLowN}, {@code fdpHighN}.
   */
  private void estimate(String name, String unit, Estimate estimate, int decimals) {
    json.field(name + unit, estimate.value(), decimals);
    json.field(name + "Low" + unit, estimate.low(), decimals);
    json.field(name + "High" + unit, estimate.high(), decimals);
  }

  private void slip(GripSurvey.Row row, SlipViews slip) {
    json.field("finger", slip.leaving().word());
    ratios("", row.load().ratios(slip.momentKept()));
    json.field("momentKept", slip.momentKept().momentKept());
    ratios("ArmSwings", row.load().ratios(slip.armSwings()));
    json.object(
        "ratiosWorse",
        () -> slip.remaining().forEach(f -> json.field(f.word(), slip.ratio(f), RATIO)));
  }

  private void ratios(String view, Map<Finger, Estimate> ratios) {
    ratios("ratios" + view, ratios, Estimate::value);
    ratios("ratios" + view + "Low", ratios, Estimate::low);
    ratios("ratios" + view + "High", ratios, Estimate::high);
  }

  private void ratios(String name, Map<Finger, Estimate> ratios, ToDoubleFunction<Estimate> end) {
    json.object(
        name,
        () -> ratios.forEach((f, ratio) -> json.field(f.word(), end.applyAsDouble(ratio), RATIO)));
  }

  private void capacity(GripSurvey.Row row) {
    json.field("exclusion", FingerLoss.EXCLUSION.capacity(row.grip().fingers()), SHARE);
    json.field("gripWeights", FingerLoss.GRIP_WEIGHTS.capacity(row.grip().fingers()), SHARE);
    json.field("forceDeficit", FingerLoss.FORCE_DEFICIT.capacity(row.grip().fingers()), SHARE);
  }

  private void gate(Gate gate) {
    json.field("rule", gate.rule());
    json.field("severity", gate.breach().severity().word());
    json.field("closed", gate.closes());
    json.field("message", words.written(gate.message()));
    json.field("was", argument(gate.breach(), "was"));
    json.field("limit", argument(gate.breach(), "limit"));
    json.list("missing", gate.missing(), m -> json.line(() -> missing(m)));
    json.field("source", argument(gate.breach(), "source"));
  }

  private void missing(Gate.Missing missing) {
    MissingWords said = MissingWords.of(missing, words);
    json.field("what", said.what());
    json.field("has", said.has());
    json.field("asked", said.required());
  }

  private @Nullable String argument(Finding finding, String name) {
    Object value = finding.arguments().get(name);
    return value == null ? null : json.wording().fact(value);
  }

  private void advice(FitAdvice advice) {
    json.field("finger", advice.finger().word());
    json.field("joint", advice.joint().word());
    json.field("reason", word(advice.reason()));
    json.field("degrees", advice.degrees(), DEGREES);
  }
}
