package gripwright.language.syntax.internal;

import gripwright.language.syntax.internal.grammar.GripParser;
import java.util.Map;
import org.antlr.v4.runtime.RuleContext;
import org.jspecify.annotations.Nullable;

/** One correct line for each kind of statement, to show in findings. */
final class Examples {

  private static final Map<Integer, String> LINES =
      Map.ofEntries(
          Map.entry(GripParser.RULE_language, "language 1"),
          Map.entry(GripParser.RULE_use, "use \"protocols.grip\""),
          Map.entry(GripParser.RULE_athleteHeading, "athlete tove \"Tove Berg\" {"),
          Map.entry(GripParser.RULE_gripHeading, "grip half-open \"half open\" {"),
          Map.entry(GripParser.RULE_protocolHeading, "protocol near-max \"near-maximal holds\" {"),
          Map.entry(GripParser.RULE_planHeading, "plan winter \"winter base\" {"),
          Map.entry(GripParser.RULE_rulesHeading, "rules club-policy {"),
          Map.entry(GripParser.RULE_ruleHeading, "rule weekly-rise {"),
          Map.entry(GripParser.RULE_logHeading, "log tove {"),
          Map.entry(GripParser.RULE_compareHeading, "compare two-ways {"),
          Map.entry(GripParser.RULE_born, "born 1997-03-14"),
          Map.entry(GripParser.RULE_bodyMass, "body-mass 61.5 kg"),
          Map.entry(GripParser.RULE_trained, "trained 34 months"),
          Map.entry(GripParser.RULE_ability, "ability french 7c"),
          Map.entry(GripParser.RULE_familiar, "familiar half-crimp 30 months"),
          Map.entry(GripParser.RULE_injury, "injury ring a2 left from 2026-02-03"),
          Map.entry(GripParser.RULE_available, "available tue 75 min, thu 60 min"),
          Map.entry(GripParser.RULE_climbing, "climbing wed easy 60 min"),
          Map.entry(GripParser.RULE_away, "away 2027-02-15 to 2027-02-21"),
          Map.entry(GripParser.RULE_note, "note \"anything worth keeping\""),
          Map.entry(GripParser.RULE_handLength, "length 178 mm"),
          Map.entry(GripParser.RULE_handBreadth, "breadth 79 mm"),
          Map.entry(GripParser.RULE_fingerMeasures, "ring proximal 43 mm, pip 0 deg to 95 deg"),
          Map.entry(GripParser.RULE_knuckles, "knuckles index 3 mm, ring 7 mm"),
          Map.entry(GripParser.RULE_edges, "edges 20 mm, 15 mm"),
          Map.entry(GripParser.RULE_loadSteps, "added 1.25 kg steps to 60 kg"),
          Map.entry(GripParser.RULE_fingers, "fingers index, middle, ring"),
          Map.entry(GripParser.RULE_family, "family open"),
          Map.entry(GripParser.RULE_fingerBands, "ring pip 75 deg to 105 deg"),
          Map.entry(GripParser.RULE_given, "given work 10 s, level 84 % max"),
          Map.entry(GripParser.RULE_repeatHeading, "repeat 6 resting 3 s {"),
          Map.entry(GripParser.RULE_holdStep, "hold 7 s at 85 % max"),
          Map.entry(GripParser.RULE_restStep, "rest 30 s"),
          Map.entry(GripParser.RULE_forAthletes, "for tove"),
          Map.entry(GripParser.RULE_firstDay, "from 2027-01-11"),
          Map.entry(GripParser.RULE_towards, "towards 2027-04-17 \"spring trip\""),
          Map.entry(GripParser.RULE_taper, "taper 2 weeks to 50 % sets"),
          Map.entry(GripParser.RULE_demand, "demand half-crimp 60 %, back-three 40 %"),
          Map.entry(GripParser.RULE_retest, "retest half-crimp edge 20 mm hold 7 s every 4 weeks"),
          Map.entry(
              GripParser.RULE_testHeading, "test half-crimp edge 20 mm hold 7 s in week 8, 12 {"),
          Map.entry(GripParser.RULE_attempts, "attempts 3 resting 5 min"),
          Map.entry(GripParser.RULE_attemptsCount, "best counts"),
          Map.entry(GripParser.RULE_rested, "rested 72 h"),
          Map.entry(GripParser.RULE_shareDays, "share days at least 6 h apart"),
          Map.entry(GripParser.RULE_onlyAt, "only at home"),
          Map.entry(GripParser.RULE_equipmentHeading, "equipment at home {"),
          Map.entry(GripParser.RULE_onlyOn, "only on tue, thu"),
          Map.entry(GripParser.RULE_noTraining, "no training"),
          Map.entry(
              GripParser.RULE_waive, "waive split-volume in build week 3 because \"supervised\""),
          Map.entry(GripParser.RULE_weeklyRise, "weekly-rise at most 10 %"),
          Map.entry(GripParser.RULE_warmUp, "warm-up 15 min"),
          Map.entry(GripParser.RULE_restBetween, "rest between exercises 4 min"),
          Map.entry(GripParser.RULE_weigh, "weigh match 40 %, margin 60 %"),
          Map.entry(GripParser.RULE_supervised, "supervised by \"trainer of the juniors\""),
          Map.entry(GripParser.RULE_blockHeading, "block base 4 weeks {"),
          Map.entry(
              GripParser.RULE_sessionHeading, "session strength 2 per week at least 48 h apart {"),
          Map.entry(
              GripParser.RULE_exercise,
              "do max-holds with level 80 % max on half-crimp edge 20 mm"),
          Map.entry(GripParser.RULE_advance, "advance load 2 % weekly"),
          Map.entry(GripParser.RULE_ease, "ease week 4 to 60 % sets"),
          Map.entry(GripParser.RULE_introduce, "introduce front-three from 50 % max over 3 weeks"),
          Map.entry(GripParser.RULE_onlyForHeading, "only for tove {"),
          Map.entry(GripParser.RULE_scope, "for exercise"),
          Map.entry(GripParser.RULE_when, "when grip.family is split"),
          Map.entry(GripParser.RULE_require, "require gap >= 48 h"),
          Map.entry(GripParser.RULE_message, "message \"what a coach should know\""),
          Map.entry(
              GripParser.RULE_testLine,
              "2026-12-28 test half-crimp edge 20 mm hold 7 s load 92.5 kg"),
          Map.entry(GripParser.RULE_logLine, "2027-01-08 body-mass 61 kg"),
          Map.entry(
              GripParser.RULE_doneLine,
              "max-holds on half-crimp edge 20 mm: sets 5 of 5, load 80 kg, effort 8, pain 1"),
          Map.entry(GripParser.RULE_climbingLine, "2027-01-10 climbing hard 120 min effort 8"),
          Map.entry(GripParser.RULE_painLine, "2027-01-09 pain ring a2 left 2"),
          Map.entry(GripParser.RULE_cohortHeading, "cohort adults {"),
          Map.entry(GripParser.RULE_cohortSize, "size 10000"),
          Map.entry(GripParser.RULE_cohortSex, "sex female 50 %"),
          Map.entry(GripParser.RULE_handBySex, "hand by sex"),
          Map.entry(GripParser.RULE_cohortMass, "body-mass 66 kg spread 14 % \"our own\""),
          Map.entry(
              GripParser.RULE_cohortMaximum,
              "maximum 100 kg spread 15 % on half-crimp edge 20 mm \"our own\""),
          Map.entry(GripParser.RULE_cohortForce, "critical-force 41 % max spread 28 % \"our own\""),
          Map.entry(GripParser.RULE_correlate, "correlate maximum, critical-force 0.6"),
          Map.entry(
              GripParser.RULE_arm,
              "arm heavy do max-holds with level 80 % max on half-crimp edge 20 mm"),
          Map.entry(GripParser.RULE_draws, "draws 10000 stream 2027"),
          Map.entry(GripParser.RULE_objectives, "prefer less a2-exposure, more impulse"),
          Map.entry(GripParser.RULE_report, "report setting \"a heated hall\""),
          Map.entry(GripParser.RULE_compareOver, "over 8 weeks"),
          Map.entry(GripParser.RULE_compareOn, "on half-crimp edge 20 mm"),
          Map.entry(GripParser.RULE_compareMatch, "match impulse by sets"),
          Map.entry(GripParser.RULE_compareEach, "each 2 per week"));

  private Examples() {}

  /** Returns a correct line for the statement of a context, or null. */
  static @Nullable String of(@Nullable RuleContext context) {
    RuleContext at = context;
    while (at != null && Bodies.of(at.getRuleIndex()) == null) {
      String line = LINES.get(at.getRuleIndex());
      if (line != null) {
        return line;
      }
      at = at.parent;
    }
    return null;
  }
}
