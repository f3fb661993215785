package gripwright.export.study;

import gripwright.export.words.Words;
import gripwright.plan.Advance;
import java.util.ArrayList;
import java.util.List;

/** Puts into words how an exercise gets harder. Immutable. */
final class AdvanceWords implements Advance.Change.Visitor<String>, Advance.Pace.Visitor<String> {

  private final Words words;

  AdvanceWords(Words words) {
    this.words = words;
  }

  /** Returns the steps, and the grip if they are for one alone. */
  String of(Advance advance) {
    String steps = of(advance.first());
    if (advance.then().isPresent()) {
      steps = words.say("methods.advance-then", "first", steps, "then", of(advance.then().get()));
    }
    return advance.on().isPresent()
        ? words.say("methods.advance-on", "grip", advance.on().get(), "steps", steps)
        : steps;
  }

  private String of(Advance.Progress progress) {
    return words.say(
        "methods.advance",
        "change",
        progress.change().accept(this),
        "pace",
        progress.when().accept(this));
  }

  @Override
  public String loadByShare(Advance.LoadByShare change) {
    return words.say("methods.advance-share", "percent", change.fraction() * 100);
  }

  @Override
  public String loadBy(Advance.LoadBy change) {
    return words.say("methods.advance-load", "step", change.step());
  }

  @Override
  public String setsTo(Advance.SetsTo change) {
    return words.count("methods.advance-sets", change.step(), "limit", change.limit());
  }

  @Override
  public String holdTo(Advance.HoldTo change) {
    return words.say("methods.advance-hold", "step", change.step(), "limit", change.limit());
  }

  @Override
  public String edgeTo(Advance.EdgeTo change) {
    return words.say("methods.advance-edge", "step", change.step(), "limit", change.limit());
  }

  @Override
  public String everyWeeks(Advance.EveryWeeks pace) {
    return words.count("methods.pace-weeks", pace.weeks());
  }

  @Override
  public String whenLogged(Advance.WhenLogged pace) {
    List<String> conditions = new ArrayList<>();
    if (pace.doneInFull()) {
      conditions.add(words.say("methods.pace-full"));
    }
    if (pace.effortAtMost().isPresent()) {
      conditions.add(words.say("methods.pace-effort", "effort", pace.effortAtMost().getAsDouble()));
    }
    if (pace.painAtMost().isPresent()) {
      conditions.add(words.say("methods.pace-pain", "pain", pace.painAtMost().getAsDouble()));
    }
    return words.count("methods.pace-logged", pace.sessions(), "conditions", words.and(conditions));
  }
}
