package gripwright.export.text;

import gripwright.export.words.MissingWords;
import gripwright.export.words.Words;
import gripwright.survey.Gate;
import gripwright.survey.GripSurvey;
import java.util.List;

/** Describes the rules that a grip breaks and what the athlete has so far. */
final class GateWords {

  private final Words words;

  GateWords(Words words) {
    this.words = words;
  }

  /** Returns why the grip is closed, one sentence a rule; none if it is open. */
  List<String> closed(GripSurvey.Row row) {
    return row.gates().stream().filter(Gate::closes).map(this::sentence).toList();
  }

  /** Returns the limits of a grip that is open, one sentence a rule. */
  List<String> limits(GripSurvey.Row row) {
    return row.limited()
        ? row.limits().stream()
            .filter(Gate::closes)
            .map(gate -> words.written(gate.message()))
            .toList()
        : List.of();
  }

  /** Returns what a coach should know about a grip although it does not close it. */
  List<String> notes(GripSurvey.Row row) {
    return row.gates().stream().filter(g -> !g.closes()).map(this::sentence).toList();
  }

  private String sentence(Gate gate) {
    String message = words.written(gate.message());
    return gate.breach()
        .topic()
        .map(
            topic ->
                switch (topic) {
                  case EXPERIENCE -> has(message, gate);
                  case PREREQUISITES ->
                      of(
                          message,
                          words.commas(
                              gate.missing().stream().map(m -> m.accept(new Needed())).toList()));
                  case INJURY ->
                      of(
                          message,
                          words.semicolons(
                              gate.missing().stream().map(m -> m.accept(new Needed())).toList()));
                  default -> message;
                })
        .orElse(message);
  }

  private String has(String message, Gate gate) {
    return words.say(
        "grips.gate-has",
        "message",
        message,
        "has",
        words.and(gate.missing().stream().map(m -> MissingWords.of(m, words).has()).toList()));
  }

  private String of(String message, String sentence) {
    return words.say("page.said-of", "what", message, "sentence", sentence);
  }

  private final class Needed implements Gate.Missing.Visitor<String> {
    @Override
    public String training(Gate.Training missing) {
      return needed("grips.needed-training", missing);
    }

    @Override
    public String level(Gate.Level missing) {
      return needed("grips.needed-ability", missing);
    }

    @Override
    public String familiarity(Gate.Familiarity missing) {
      return needed(missing.months() < 1 ? "grips.needed-grip-none" : "grips.needed-grip", missing);
    }

    @Override
    public String injured(Gate.Injured missing) {
      return words.say(
          "grips.injured",
          "injury",
          MissingWords.injury(missing.injury(), words),
          "state",
          MissingWords.of(missing, words).has());
    }

    @Override
    public String trainingByRule(Gate.TrainingByRule missing) {
      return needed("grips.needed-training", missing);
    }

    @Override
    public String counted(Gate.Counted missing) {
      return needed("grips.needed-training", missing);
    }

    private String needed(String key, Gate.Missing missing) {
      MissingWords said = MissingWords.of(missing, words);
      return words.say(key, "asked", said.required(), "has", said.has(), "grip", said.what());
    }
  }
}
