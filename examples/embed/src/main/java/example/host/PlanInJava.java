package example.host;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Hand;
import gripwright.log.Log;
import gripwright.plan.Advance;
import gripwright.plan.Block;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.plan.SessionPlan;
import gripwright.protocol.Level;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.schedule.DatedSession;
import gripwright.schedule.PlannedExercise;
import gripwright.season.CompiledPlan;
import gripwright.season.CompiledSeason;
import gripwright.season.Season;
import gripwright.strength.StrengthTest;
import gripwright.wording.Wording;
import java.io.PrintStream;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;

/**
 * Builds a plan with Java builders and prints its dated sessions. Nothing here touches the plan
 * language: gripwright-core is enough. The built-in rules still apply.
 */
public final class PlanInJava {

  private static final Length EDGE = Length.ofMillimetres(20);

  private PlanInJava() {}

  /** Prints the sessions on standard output. */
  public static void main(String[] arguments) {
    print(System.out);
  }

  static void print(PrintStream out) {
    CompiledSeason season = Season.of(plan(), athlete(), log()).compile();
    season.findings().forEach(f -> out.println(f.severity() + " " + f.code() + " " + f.place()));
    if (!season.usable()) {
      return;
    }
    CompiledPlan plan = season.plan("first-weeks", "signe");
    for (DatedSession session : plan.sessions()) {
      out.println(session.date() + " " + session.name() + ", " + session.minutes() + " min");
      session.exercises().forEach(exercise -> out.println("  " + line(exercise)));
    }
    plan.cautions().forEach(caution -> out.println("* " + Wording.english().say(caution)));
  }

  private static String line(PlannedExercise exercise) {
    return exercise.scheme().sets()
        + (" x " + exercise.protocol() + " on " + exercise.setup())
        + (" at " + exercise.totalLoad() + " (" + exercise.added() + " on body mass)");
  }

  static Athlete athlete() {
    return Athlete.named("signe")
        .title("Signe Aune")
        .born(LocalDate.of(1996, 3, 8))
        .bodyMass(Load.ofKilograms(61))
        .trained(30)
        .ability(Ability.of(GradeScale.FRENCH, "7b"))
        .hand(Hand.ofLength(Length.ofMillimetres(176)))
        .available(DayOfWeek.MONDAY, Duration.ofMinutes(60))
        .available(DayOfWeek.THURSDAY, Duration.ofMinutes(60))
        .edge(EDGE)
        .added(Load.ofKilograms(1.25), Load.ofKilograms(40))
        .assist(Load.ofKilograms(1.25), Load.ofKilograms(40))
        .build();
  }

  static Log log() {
    return Log.empty("signe")
        .with(
            StrengthTest.held(
                LocalDate.of(2027, 1, 4),
                Setup.of(StandardGrips.HALF_CRIMP, EDGE),
                Duration.ofSeconds(7),
                Load.ofKilograms(84)));
  }

  static Plan plan() {
    Exercise holds =
        Exercise.of(StandardProtocols.MAX_HOLDS, StandardGrips.HALF_CRIMP, EDGE)
            .with("level", Level.ofMax(80))
            .with("sets", 4);
    return Plan.named("first-weeks")
        .athlete("signe")
        .from(LocalDate.of(2027, 1, 11))
        .block(
            Block.named("base", 4)
                .session(SessionPlan.of("strength", 2, holds))
                .advance(Advance.weekly(Advance.loadByPercent(2)))
                .ease(4, 0.6)
                .build())
        .build();
  }
}
