package gripwright.export.text;

import gripwright.grip.Band;
import gripwright.grip.FitAdvice;
import gripwright.grip.FitMiss;
import gripwright.hand.Joint;
import gripwright.quantity.Numbers;
import gripwright.survey.GripSurvey;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a fitted grip lacks and which finger not to force, in words. */
final class GripWords {

  private GripWords() {}

  /** Returns the grip's name, with the hand where the two differ. */
  static String name(GripSurvey.Row row) {
    return row.grip().name() + row.side().map(side -> " " + side.word()).orElse("");
  }

  /** Returns why the hand does not take the grip, one sentence; none if it does. */
  static List<String> misses(GripSurvey.Row row) {
    List<String> parts = row.fit().misses().stream().map(GripWords::miss).toList();
    return parts.isEmpty() ? List.of() : List.of(String.join("; ", parts));
  }

  private static String miss(FitMiss miss) {
    if (miss instanceof FitMiss.TooShort shorter) {
      return shorter.finger()
          + " too short by "
          + Numbers.plain(Math.max(0.1, shorter.by().millimetres()), 1)
          + " mm even when straight";
    }
    if (miss instanceof FitMiss.BeyondLimit stiff) {
      return stiff.finger()
          + " moves from "
          + degrees(stiff.limit().low().degrees())
          + " to "
          + degrees(stiff.limit().high().degrees())
          + " deg, the grip asks "
          + band(stiff.asked());
    }
    FitMiss.OutOfBand out = (FitMiss.OutOfBand) miss;
    return out.finger()
        + " comes to "
        + degrees(out.nearest().degrees())
        + " deg, the grip asks "
        + band(out.asked());
  }

  private static String band(Band band) {
    String low = degrees(band.low().degrees());
    return band.low().equals(band.high()) ? low : low + " to " + degrees(band.high().degrees());
  }

  /** Returns which fingers not to force, and why, in one sentence; none if there are none. */
  static List<String> advice(GripSurvey.Row row) {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (FitAdvice advice : row.fit().advice()) {
      byReason.computeIfAbsent(reason(advice), r -> new ArrayList<>()).add(finger(advice));
    }
    return byReason.isEmpty()
        ? List.of()
        : List.of(
            byReason.entrySet().stream()
                .map(entry -> entry.getKey() + " " + String.join(", ", entry.getValue()))
                .collect(Collectors.joining("; ")));
  }

  private static String reason(FitAdvice advice) {
    return switch (advice.reason()) {
      case WRIST_ROLL -> "only with the palm rolled beyond neutral:";
      case AWAY_FROM_NATURAL -> "at the end of the grip's band:";
      case BEYOND_OWN_LIMIT -> joint(advice.joint()) + " beyond what it moves:";
      case AT_OWN_LIMIT -> joint(advice.joint()) + " at the end of what it moves:";
      case WISH_NOT_MET -> joint(advice.joint()) + " roughly so far outside the grip's band:";
    };
  }

  private static String finger(FitAdvice advice) {
    return advice.finger()
        + switch (advice.reason()) {
          case AWAY_FROM_NATURAL, AT_OWN_LIMIT -> "";
          default -> " by " + degrees(advice.degrees()) + " deg";
        };
  }

  private static String joint(Joint joint) {
    return switch (joint) {
      case MCP -> "knuckle";
      case PIP -> "middle joint";
      case DIP -> "end joint";
    };
  }

  static String degrees(double degrees) {
    return Numbers.plain(degrees, 0);
  }
}
