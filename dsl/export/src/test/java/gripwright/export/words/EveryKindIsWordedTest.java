package gripwright.export.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.change.PlanChange;
import gripwright.change.SessionChange;
import gripwright.diff.FactChange;
import gripwright.diff.Redefinition;
import gripwright.finding.Severity;
import gripwright.grip.FitAdvice;
import gripwright.hand.Finger;
import gripwright.hand.Hands;
import gripwright.hand.Joint;
import gripwright.hand.Side;
import gripwright.hand.Structure;
import gripwright.review.PainCourse;
import gripwright.review.ReviewedSession;
import gripwright.schedule.Happened;
import gripwright.schedule.MissedSession;
import gripwright.statics.MomentArms;
import gripwright.strength.CriticalForce;
import gripwright.strength.ForceTime;
import gripwright.strength.StrengthChange;
import gripwright.survey.ModelCaveat;
import gripwright.survey.StrengthSurvey;
import gripwright.wording.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keys that are made of the name of a kind: no example has all kinds. */
final class EveryKindIsWordedTest {

  private static final Map<String, Enum<?>[]> KINDS =
      Map.ofEntries(
          Map.entry("page.hands", Hands.values()),
          Map.entry("season.happened", Happened.Kind.values()),
          Map.entry("season.missed", MissedSession.Kind.values()),
          Map.entry("grips.letter", Finger.values()),
          Map.entry("grips.joint", Joint.values()),
          Map.entry("grips.advice", FitAdvice.Reason.values()),
          Map.entry("grips.advice-joint", Joint.values()),
          Map.entry("grips.arms", MomentArms.values()),
          Map.entry("grips.caveat", ModelCaveat.values()),
          Map.entry("strength.unused", StrengthSurvey.Reason.values()),
          Map.entry("strength.form", ForceTime.Form.values()),
          Map.entry("strength.definition", CriticalForce.Definition.values()),
          Map.entry("reviewed.outcome", ReviewedSession.Outcome.values()),
          Map.entry("strength.verdict", StrengthChange.Verdict.values()),
          Map.entry("reviewed.because", PainCourse.Because.values()),
          Map.entry("diff.fact", FactChange.Fact.values()),
          Map.entry("diff.kind", Redefinition.Kind.values()),
          Map.entry("diff.defined", Redefinition.State.values()),
          Map.entry("diff.part", PlanChange.Part.values()),
          Map.entry(
              "diff.measure",
              new Enum<?>[] {
                SessionChange.Measure.EDGE,
                SessionChange.Measure.HOLD,
                SessionChange.Measure.REST,
                SessionChange.Measure.SET_REST,
                SessionChange.Measure.ORDER
              }));

  @Test
  void everyKindHasAMessage() {
    List<String> missing = new ArrayList<>();
    KINDS.forEach(
        (key, kinds) -> {
          for (Enum<?> kind : kinds) {
            missing.add(Words.key(key, kind));
          }
        });
    Stream.of(Finger.values()).forEach(finger -> missing.add(finger.key()));
    Stream.of(Side.values()).forEach(side -> missing.add(side.key()));
    Stream.of(Structure.values()).forEach(structure -> missing.add(structure.key()));
    Stream.of(Severity.values()).forEach(severity -> missing.add("common." + severity.word()));
    missing.removeIf(key -> Messages.english().find(key).isPresent());
    assertEquals(List.of(), missing);
  }
}
