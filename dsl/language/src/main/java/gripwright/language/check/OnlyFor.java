package gripwright.language.check;

import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.List;

/** Checks the athletes of the {@code only for} bodies of one block or session. */
final class OnlyFor {

  private final PlanScope scope;
  private final Once once;

  OnlyFor(PlanScope scope) {
    this.scope = scope;
    this.once = new Once(scope.diagnostics());
  }

  /** Returns the names that are athletes of the plan and were not named before. */
  List<String> athletes(List<Word> words) {
    List<String> athletes = new ArrayList<>();
    for (Word word : words) {
      if (!scope.athletes().contains(word.text())) {
        if (scope.athletesKnown()) {
          scope.diagnostics().unknown(word, "athlete-of-this-plan", scope.athletes());
        } else {
          scope.diagnostics().markInvalid();
        }
      } else if (once.first(word, "athlete", word.text())) {
        athletes.add(word.text());
      }
    }
    return athletes;
  }
}
