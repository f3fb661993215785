package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.grip.Band;
import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.hand.Finger;
import gripwright.hand.Joint;
import gripwright.quantity.Numbers;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Describes why a hand can't take a grip and which fingers not to force. */
final class GripWords {

  private final Words words;

  GripWords(Words words) {
    this.words = words;
  }

  /** Returns one letter for each finger, as headings. */
  List<String> letters() {
    return Stream.of(Finger.values()).map(finger -> words.of("grips.letter", finger)).toList();
  }

  /** Returns the grip's name, with the hand where the two differ. */
  String name(GripSurvey.Row row) {
    String grip = row.grip().name();
    return row.side()
        .map(side -> words.say("grips.grip-side", "grip", grip, "side", side))
        .orElse(grip);
  }

  /** Returns why the hand does not take the grip, one sentence; none if it does. */
  List<String> misses(GripSurvey.Row row) {
    List<String> parts =
        row.fit().misses().stream().map(miss -> miss.accept(new Misses())).toList();
    return parts.isEmpty() ? List.of() : List.of(words.semicolons(parts));
  }

  private final class Misses implements FitMiss.Visitor<String> {
    @Override
    public String tooShort(FitMiss.TooShort shorter) {
      return words.say(
          "grips.too-short",
          "finger",
          shorter.finger(),
          "by",
          Numbers.plain(Math.max(0.1, shorter.by().millimetres()), 1));
    }

    @Override
    public String outOfBand(FitMiss.OutOfBand out) {
      return words.say(
          "grips.out-of-band",
          "finger",
          out.finger(),
          "nearest",
          degrees(out.nearest().degrees()),
          "asked",
          band(out.required()));
    }

    @Override
    public String beyondLimit(FitMiss.BeyondLimit stiff) {
      return words.say(
          "grips.beyond-limit",
          "finger",
          stiff.finger(),
          "low",
          degrees(stiff.limit().low().degrees()),
          "high",
          degrees(stiff.limit().high().degrees()),
          "asked",
          band(stiff.required()));
    }
  }

  private String band(Band band) {
    String low = degrees(band.low().degrees());
    return band.low().equals(band.high()) ? low : words.range(low, degrees(band.high().degrees()));
  }

  /** Returns which fingers not to force, and why, in one sentence; none if there are none. */
  List<String> advice(GripSurvey.Row row) {
    Map<Reason, List<String>> byReason = new LinkedHashMap<>();
    for (FitAdvice advice : row.fit().advice()) {
      byReason.computeIfAbsent(Reason.of(advice), r -> new ArrayList<>()).add(finger(advice));
    }
    return byReason.isEmpty()
        ? List.of()
        : List.of(
            words.semicolons(
                byReason.entrySet().stream()
                    .map(entry -> sentence(entry.getKey(), entry.getValue()))
                    .toList()));
  }

  /** Why fingers should not be forced, and at which joint if it is known. */
  private record Reason(FitAdvice.Reason reason, Optional<Joint> joint) {

    static Reason of(FitAdvice advice) {
      return switch (advice.reason()) {
        case WRIST_ROLL, AWAY_FROM_NATURAL -> new Reason(advice.reason(), Optional.empty());
        default -> new Reason(advice.reason(), Optional.of(advice.joint()));
      };
    }
  }

  private String sentence(Reason reason, List<String> fingers) {
    return words.say(
        Words.key("grips.advice", reason.reason()),
        "joint",
        reason.joint().map(joint -> words.of("grips.advice-joint", joint)).orElse(""),
        "fingers",
        words.commas(fingers));
  }

  private String finger(FitAdvice advice) {
    return switch (advice.reason()) {
      case AWAY_FROM_NATURAL, AT_OWN_LIMIT -> words.of(advice.finger());
      default ->
          words.say(
              "grips.finger-by", "finger", advice.finger(), "degrees", degrees(advice.degrees()));
    };
  }

  static String degrees(double degrees) {
    return Numbers.plain(degrees, 0);
  }
}
