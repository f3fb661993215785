package gripwright.language.check;

import gripwright.grip.Grip;
import gripwright.language.syntax.Parameter;
import gripwright.language.syntax.SessionPart.DoItem;
import gripwright.language.syntax.Target;
import gripwright.language.syntax.Word;
import gripwright.plan.Exercise;
import gripwright.plan.Exercise.Weights;
import gripwright.protocol.Argument;
import gripwright.protocol.Protocol;
import gripwright.quantity.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks one {@code do} line. */
final class ExerciseCheck {

  private final PlanScope scope;
  private final Diagnostics diagnostics;

  private static final int MOST_GRIPS = (int) Range.GRIPS.high();

  ExerciseCheck(PlanScope scope) {
    this.scope = scope;
    this.diagnostics = scope.diagnostics();
  }

  /** Returns the exercise; empty if it has a mistake, which is reported. */
  Optional<Exercise> check(DoItem item, Optional<Weights> weights) {
    Optional<Protocol> protocol = scope.protocols().find(diagnostics, item.protocol());
    Optional<Map<String, Argument>> with =
        protocol.flatMap(p -> arguments(item, p, new Once(diagnostics)));
    Optional<Exercise.Target> target = item.target().accept(new Targets(weights));
    Optional<SetupCheck.Place> setup = SetupCheck.check(diagnostics, item.setup());
    Optional<String> rehabilitation =
        new Reasons(diagnostics).words(item.rehabilitation(), "rehabilitation");
    boolean nobodys = item.rehabilitation() != null && rehabilitation.isEmpty();
    boolean misplaced = isMisplacedWarmUp(item);
    if (misplaced) {
      return Optional.empty();
    }
    if (protocol.isEmpty() || with.isEmpty() || target.isEmpty() || setup.isEmpty() || nobodys) {
      return Optional.empty();
    }
    long size = protocol.get().size(with.get());
    if (Expansion.tooLarge(diagnostics, item.protocol(), size, scope.budget())) {
      return Optional.empty();
    }
    return Optional.of(
        Exercise.builder(protocol.get(), target.get(), setup.get().edge())
            .with(with.get())
            .hands(setup.get().hands())
            .alternating(item.alternating())
            .lifting(setup.get().lifting())
            .rehabilitation(rehabilitation)
            .warmUp(item.warmUp() != null)
            .note(AthleteCheck.note(item.note()))
            .build());
  }

  /** Returns whether a line is a warm-up and something that a warm-up can't be, and reports it. */
  private boolean isMisplacedWarmUp(DoItem item) {
    Word warmUp = item.warmUp();
    if (warmUp == null) {
      return false;
    }
    if (item.target() instanceof Target.BestOf) {
      diagnostics.error(warmUp, "value.warm-up", "best-of", "");
      return true;
    }
    if (item.rehabilitation() != null) {
      diagnostics.error(warmUp, "value.warm-up", "rehabilitation", "");
      return true;
    }
    return false;
  }

  private Optional<Map<String, Argument>> arguments(DoItem item, Protocol protocol, Once once) {
    Map<String, Argument> with = new LinkedHashMap<>();
    Set<String> holds = Expansion.holdParameters(protocol);
    boolean sound = true;
    for (Parameter parameter : item.with()) {
      String name = parameter.name().text();
      Argument usual = protocol.parameters().get(name);
      if (usual == null) {
        diagnostics.unknown(parameter.name(), "parameter", protocol.parameters().keySet());
        sound = false;
        continue;
      }
      boolean first = once.first(parameter.name(), "parameter", name);
      Optional<Argument> value =
          new Values(diagnostics)
              .argument(parameter.value(), name, Values.Kind.of(usual), holds.contains(name));
      value.ifPresent(v -> with.put(name, v));
      sound &= first && value.isPresent();
    }
    return sound ? Optional.of(with) : Optional.empty();
  }

  /** Builds a target of each kind. */
  private final class Targets implements Target.Visitor<Optional<Exercise.Target>> {
    private final Optional<Weights> weights;

    Targets(Optional<Weights> weights) {
      this.weights = weights;
    }

    @Override
    public Optional<Exercise.Target> onGrip(Target.OnGrip on) {
      return scope.grips().find(diagnostics, on.grip()).map(Exercise.On::new);
    }

    @Override
    public Optional<Exercise.Target> bestOf(Target.BestOf best) {
      List<Grip> grips = new ArrayList<>();
      Once once = new Once(diagnostics);
      boolean sound = true;
      for (Word word : best.grips()) {
        Optional<Grip> grip = scope.grips().find(diagnostics, word);
        grip.ifPresent(grips::add);
        sound &= once.first(word, "grip", word.text()) && grip.isPresent();
      }
      if (grips.size() > MOST_GRIPS) {
        diagnostics.error(
            best,
            "value.too-many",
            "what",
            Terms.of("many-grips-to-choose-from"),
            "found",
            grips.size(),
            "limit",
            MOST_GRIPS);
        return Optional.empty();
      }
      if (sound && grips.size() < 2) {
        diagnostics.error(best, "value.best-of");
        return Optional.empty();
      }
      return sound ? Optional.of(new Exercise.BestOf(grips, weights)) : Optional.empty();
    }
  }
}
