package gripwright.export.words;

import gripwright.ability.Ability;
import gripwright.athlete.Injury;
import gripwright.survey.Gate;
import gripwright.survey.Gate.Missing;

/**
 * Describes what an athlete lacks for a grip.
 *
 * @param what {@code training}, {@code ability}, the name of a grip, an injury such as {@code ring
 *     a2 left}, or the property that a rule looks at, such as {@code edge}: the same in every
 *     language
 * @param has what the athlete has, such as {@code 14 months}
 * @param required what is required, such as {@code 24 months}
 */
public record MissingWords(String what, String has, String required) {

  /** Returns the words for what is missing. */
  public static MissingWords of(Missing missing, Words words) {
    return missing.accept(new InWords(words));
  }

  private record InWords(Words words) implements Missing.Visitor<MissingWords> {
    @Override
    public MissingWords training(Gate.Training training) {
      return new MissingWords(
          "training", months(training.months(), words), months(training.required(), words));
    }

    @Override
    public MissingWords level(Gate.Level level) {
      return new MissingWords(
          "ability", graded(level.ability(), words), graded(level.required(), words));
    }

    @Override
    public MissingWords familiarity(Gate.Familiarity with) {
      return new MissingWords(
          with.grip(), months(with.months(), words), months(with.required(), words));
    }

    @Override
    public MissingWords injured(Gate.Injured injured) {
      return new MissingWords(
          injured.injury().toString(),
          words.say("grips.open-since", "date", injured.injury().from()),
          words.say("grips.cleared"));
    }

    @Override
    public MissingWords trainingByRule(Gate.TrainingByRule training) {
      return new MissingWords(
          "training", months(training.months(), words), words.of(training.shortfall().limit()));
    }

    @Override
    public MissingWords counted(Gate.Counted counted) {
      return new MissingWords(
          counted.shortfall().what(),
          words.of(counted.shortfall().was()),
          words.of(counted.shortfall().limit()));
    }
  }

  /** Returns the number of completed months in words. */
  public static String months(double months, Words words) {
    return words.count("grips.months", (long) Math.floor(months + 1e-9));
  }

  /** Returns the place of an injury in words. */
  public static String injury(Injury injury, Words words) {
    return injury
        .side()
        .map(
            side ->
                words.say(
                    "common.place-structure-side",
                    "finger",
                    injury.finger(),
                    "structure",
                    injury.structure(),
                    "side",
                    side))
        .orElseGet(
            () ->
                words.say(
                    "common.place-structure",
                    "finger",
                    injury.finger(),
                    "structure",
                    injury.structure()));
  }

  private static String graded(Ability ability, Words words) {
    return words.say("grips.graded", "ability", ability, "ircra", ability.ircra());
  }
}
