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
 * A built-in rule that prevents a grip, and what the athlete lacks.
 *
 * @param breach the broken rule
 * @param missing what is missing, one entry each; empty if the rule compares no numbers
 */
public record Gate(Finding breach, List<Missing> missing) {

  /** Something that is missing. */
  public sealed interface Missing {
    /** Returns what the visitor returns for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind of missing thing.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits months of training that a grip requires. */
      R training(Training missing);

      /** Visits a climbing level. */
      R level(Level missing);

      /** Visits months with another grip. */
      R familiarity(Familiarity missing);

      /** Visits an injury. */
      R injured(Injured missing);

      /** Visits months of training that a rule requires. */
      R trainingByRule(TrainingByRule missing);

      /** Visits another value that a rule compares. */
      R counted(Counted missing);
    }
  }

  /**
   * Months of structured finger training that a grip requires.
   *
   * @param months the athlete's months
   * @param required the months the grip requires
   */
  public record Training(double months, double required) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.training(this);
    }
  }

  /**
   * A climbing level that a grip requires.
   *
   * @param ability the athlete's level
   * @param required the level the grip requires
   */
  public record Level(Ability ability, Ability required) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.level(this);
    }
  }

  /**
   * Months with another grip that a grip requires.
   *
   * @param grip name of the other grip
   * @param months the athlete's months, 0 or more
   * @param required the months the grip requires
   */
  public record Familiarity(String grip, double months, double required) implements Missing {
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
   * Months of structured finger training that a rule requires.
   *
   * @param months the athlete's months on the day
   * @param shortfall the comparison that fails
   */
  public record TrainingByRule(double months, Shortfall shortfall) implements Missing {
    @Override
    public <R> R accept(Missing.Visitor<R> visitor) {
      return visitor.trainingByRule(this);
    }
  }

  /**
   * Another value that a rule compares, such as an edge.
   *
   * @param shortfall the comparison that fails
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

  /** Returns what is missing if a rule prevents a grip on a day. */
  static Gate of(Finding breach, Grip grip, Athlete athlete, LocalDate day) {
    List<Missing> missing =
        breach.isAbout(Topic.PREREQUISITES)
            ? needs(grip.allNeeds(), athlete, day)
            : breach.isAbout(Topic.INJURY)
                ? injuries(grip, athlete, day)
                : counted(breach, athlete, day);
    return new Gate(breach, missing);
  }

  /** Returns whether the rule closes the grip; a warning closes nothing. */
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
        .filter(required -> ability.compareTo(required) < 0)
        .ifPresent(required -> missing.add(new Level(ability, required)));
    needs
        .familiar()
        .forEach(
            (grip, required) -> {
              double has = familiar(athlete, grip, day);
              if (has < required) {
                missing.add(new Familiarity(grip, has, required));
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

  /** Returns the months of structured finger training on a day. */
  static double trained(Athlete athlete, LocalDate day) {
    return athlete.trained().monthsOn(day, day);
  }

  /** Returns the months with a grip on a day; 0 for a grip the athlete has not used. */
  static double familiar(Athlete athlete, String grip, LocalDate day) {
    return athlete.familiar().stream()
        .filter(f -> f.grip().equals(grip))
        .mapToDouble(f -> f.experience().monthsOn(day, day))
        .max()
        .orElse(0);
  }
}
