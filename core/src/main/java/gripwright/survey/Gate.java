package gripwright.survey;

import gripwright.ability.Ability;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.expression.Shortfall;
import gripwright.finding.Finding;
import gripwright.finding.Topic;
import gripwright.grip.Grip;
import gripwright.grip.Prerequisites;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A built-in rule that stands against a grip, and what the athlete lacks.
 *
 * @param breach the broken rule
 * @param missing what is missing, one entry each; empty where a rule counts nothing
 */
public record Gate(Finding breach, List<Missing> missing) {

  /** Something that is missing. */
  public sealed interface Missing {
    /** Answers with what a visitor has for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One answer for each kind of missing thing.
     *
     * @param <R> what is answered
     */
    interface Visitor<R> {
      /** Answers for months of training that a grip asks for. */
      R training(Training missing);

      /** Answers for a climbing level. */
      R level(Level missing);

      /** Answers for months with another grip. */
      R familiarity(Familiarity missing);

      /** Answers for an injury. */
      R injured(Injured missing);

      /** Answers for months of training that a rule asks for. */
      R trainingByRule(TrainingByRule missing);

      /** Answers for something else that a rule counts. */
      R counted(Counted missing);
    }
  }

  /**
   * Months of structured finger training that a grip asks for.
   *
   * @param months what there is
   * @param asked what the grip asks for
   */
  public record Training(double months, double asked) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.training(this);
    }
  }

  /**
   * A climbing level that a grip asks for.
   *
   * @param ability what there is
   * @param asked what the grip asks for
   */
  public record Level(Ability ability, Ability asked) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.level(this);
    }
  }

  /**
   * Months with another grip that a grip asks for.
   *
   * @param grip name of the other grip
   * @param months what there is, 0 or more
   * @param asked what the grip asks for
   */
  public record Familiarity(String grip, double months, double asked) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.familiarity(this);
    }
  }

  /**
   * An injury of a finger that the grip uses, which is not cleared.
   *
   * @param injury which
   */
  public record Injured(Injury injury) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.injured(this);
    }
  }

  /**
   * Months of structured finger training that a rule asks for.
   *
   * @param months what there is, on the day
   * @param shortfall the comparison that the rule owes to
   */
  public record TrainingByRule(double months, Shortfall shortfall) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.trainingByRule(this);
    }
  }

  /**
   * Something else that a rule counts, such as an edge.
   *
   * @param shortfall the comparison that the rule owes to
   */
  public record Counted(Shortfall shortfall) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.counted(this);
    }
  }

  /** Copies the list. */
  public Gate {
    missing = List.copyOf(missing);
  }

  /** Finds out what is missing where a rule stands against a grip on a day. */
  static Gate of(Finding breach, Grip grip, Athlete athlete, LocalDate day) {
    List<Missing> missing =
        breach.isAbout(Topic.PREREQUISITES)
            ? needs(grip.needs(), athlete, day)
            : breach.isAbout(Topic.INJURY)
                ? injuries(grip, athlete, day)
                : counted(breach, athlete, day);
    return new Gate(breach, missing);
  }

  /** Tells whether the rule closes the grip; a warning closes nothing. */
  public boolean closes() {
    return breach.blocks();
  }

  /** Returns the name of the rule. */
  public String rule() {
    return breach.rule().orElse(breach.code());
  }

  /** Returns the sentence of the rule. */
  public String message() {
    return String.valueOf(breach.arguments().getOrDefault("message", breach.code()));
  }

  private static List<Missing> counted(Finding breach, Athlete athlete, LocalDate day) {
    List<Missing> missing = new ArrayList<>();
    if (breach.arguments().get("missing") instanceof List<?> all) {
      for (Object each : all) {
        if (each instanceof Shortfall shortfall) {
          missing.add(
              shortfall.what().equals("trained")
                  ? new TrainingByRule(trained(athlete, day), shortfall)
                  : new Counted(shortfall));
        }
      }
    }
    return missing;
  }

  private static List<Missing> needs(Prerequisites needs, Athlete athlete, LocalDate day) {
    List<Missing> missing = new ArrayList<>();
    double trained = trained(athlete, day);
    if (trained < needs.trainedMonths()) {
      missing.add(new Training(trained, needs.trainedMonths()));
    }
    Ability ability = athlete.ability();
    needs
        .ability()
        .filter(asked -> ability.compareTo(asked) < 0)
        .ifPresent(asked -> missing.add(new Level(ability, asked)));
    needs
        .familiar()
        .forEach(
            (grip, asked) -> {
              double has = familiar(athlete, grip, day);
              if (has < asked) {
                missing.add(new Familiarity(grip, has, asked));
              }
            });
    return missing;
  }

  private static List<Missing> injuries(Grip grip, Athlete athlete, LocalDate day) {
    return athlete.injuries().stream()
        .filter(injury -> injury.openOn(day))
        .filter(injury -> grip.fingers().has(injury.finger()))
        .<Missing>map(Injured::new)
        .toList();
  }

  /** Months of structured finger training on a day. */
  static double trained(Athlete athlete, LocalDate day) {
    return athlete.trained().monthsOn(day, day);
  }

  /** Months with a grip on a day; 0 for one the athlete has not used. */
  static double familiar(Athlete athlete, String grip, LocalDate day) {
    return athlete.familiar().stream()
        .filter(f -> f.grip().equals(grip))
        .mapToDouble(f -> f.experience().monthsOn(day, day))
        .max()
        .orElse(0);
  }
}
