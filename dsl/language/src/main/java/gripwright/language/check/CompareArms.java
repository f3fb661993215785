package gripwright.language.check;

import gripwright.compare.Arm;
import gripwright.grip.Grip;
import gripwright.grip.Setup;
import gripwright.language.syntax.CompareItem;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Target;
import gripwright.language.syntax.Word;
import gripwright.plan.Exercise;
import gripwright.plan.Plan;
import gripwright.protocol.Protocol;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Checks the arms of a comparison, in the form of today and in the older one. */
final class CompareArms {

  private final Declaration.Compare declaration;
  private final Tables tables;
  private final Known<Plan> plans;
  private final Diagnostics diagnostics;
  private final Once once;

  /** The arms by name; null for one that has a mistake. */
  private final Map<String, @Nullable Arm> arms = new LinkedHashMap<>();

  private CompareItem.@Nullable CompareOn on;
  private CompareItem.@Nullable CompareBetween between;

  /**
   * Two arms that are to be made equal.
   *
   * @param arm the one that is changed
   * @param to the one whose quantity is to be reached
   */
  record Pair(String arm, String to) {}

  CompareArms(
      Declaration.Compare declaration,
      Tables tables,
      Known<Plan> plans,
      Diagnostics diagnostics,
      Once once) {
    this.declaration = declaration;
    this.tables = tables;
    this.plans = plans;
    this.diagnostics = diagnostics;
    this.once = once;
  }

  void add(CompareItem.Arm written) {
    once.seen(written, "arm");
    String name = written.name().text();
    Optional<Arm.Content> content = content(written);
    if (once.first(written.name(), "arm", name)) {
      arms.put(name, content.map(c -> new Arm(name, c)).orElse(null));
    }
  }

  private Optional<Arm.Content> content(CompareItem.Arm written) {
    if (written.exercise() != null) {
      return exercise(written).map(Arm.Trained::new);
    }
    if (written.plan() != null) {
      return plans.find(diagnostics, written.plan()).map(Arm.Planned::new);
    }
    return Optional.of(new Arm.NoTraining());
  }

  private Optional<Exercise> exercise(CompareItem.Arm written) {
    var line = written.exercise();
    if (line == null) {
      return Optional.empty();
    }
    if (line.target() instanceof Target.BestOf) {
      diagnostics.error(line.target(), "value.arm", "what", "`best of`");
      return Optional.empty();
    }
    if (line.rehabilitation() != null) {
      diagnostics.error(line.rehabilitation(), "value.arm", "what", "`rehabilitation`");
      return Optional.empty();
    }
    if (line.warmUp() != null) {
      diagnostics.error(line.warmUp(), "value.arm", "what", "`as warm-up`");
      return Optional.empty();
    }
    PlanScope scope =
        new PlanScope(
            diagnostics,
            tables.grips(),
            tables.protocols(),
            Set.of(),
            false,
            new PlanPlaces(Set.of(), true),
            tables.budget());
    return new ExerciseCheck(scope).check(line, Optional.empty());
  }

  void add(CompareItem.CompareOn written) {
    once.first(written, "on");
    on = written;
  }

  void add(CompareItem.CompareBetween written) {
    once.first(written, "between");
    between = written;
  }

  /** Returns all arms without a mistake, in the order written. */
  List<Arm> all() {
    if (on != null || between != null) {
      older(on, between);
    } else if (once.has("arm") && arms.size() < 2 && !declaration.damaged()) {
      diagnostics.error(declaration.name(), "value.compare-two");
    }
    List<Arm> all = new ArrayList<>();
    arms.values()
        .forEach(
            arm -> {
              if (arm != null) {
                all.add(arm);
              }
            });
    return all;
  }

  /** Makes an arm of each protocol on the one setup. */
  private void older(
      CompareItem.@Nullable CompareOn place, CompareItem.@Nullable CompareBetween protocols) {
    Syntax older = place != null ? place : protocols;
    if (older != null && once.has("arm")) {
      diagnostics.error(older, "value.compare-forms");
      return;
    }
    once.require(declaration.name(), "comparison", declaration.damaged(), "on", "between");
    once.seen(declaration, "arm");
    Optional<Setup> setup = Optional.empty();
    if (place != null) {
      Optional<Grip> grip = tables.grips().find(diagnostics, place.grip());
      setup = SetupCheck.check(diagnostics, place.setup()).flatMap(p -> grip.map(g -> p.with(g)));
    }
    if (protocols == null) {
      return;
    }
    if (protocols.protocols().size() < 2) {
      diagnostics.error(protocols, "value.compare-two");
    }
    Once names = new Once(diagnostics);
    for (Word word : protocols.protocols()) {
      Optional<Protocol> protocol = tables.protocols().find(diagnostics, word);
      if (names.first(word, "protocol", word.text())) {
        Optional<Setup> known = setup;
        arms.put(word.text(), protocol.flatMap(p -> known.map(s -> arm(p, s))).orElse(null));
      }
    }
    if (place != null && setup.isPresent()) {
      Word first = protocols.protocols().get(0);
      diagnostics.advice(
          protocols,
          "syntax.older",
          "now",
          "arm " + first.text() + " do " + first.text() + " on " + setup.get());
    }
  }

  private static Arm arm(Protocol protocol, Setup setup) {
    return Arm.of(
        protocol.name(),
        Exercise.builder(protocol, new Exercise.On(setup.grip()), setup.edge())
            .hands(setup.hands())
            .lifting(setup.lifting())
            .build());
  }

  /** Returns the arms of a match; without names the first is matched to the second. */
  Optional<Pair> pair(CompareItem.CompareMatch written) {
    List<String> names = List.copyOf(arms.keySet());
    Word first = written.arm();
    Word second = written.to();
    if (first == null || second == null) {
      if (names.size() < 2) {
        diagnostics.markInvalid();
        return Optional.empty();
      }
      return changeable(written, names.get(0), names.get(1));
    }
    if (!isKnown(first) || !isKnown(second)) {
      return Optional.empty();
    }
    if (first.text().equals(second.text())) {
      diagnostics.error(second, "value.match", "same", first.text());
      return Optional.empty();
    }
    return changeable(written, first.text(), second.text());
  }

  private boolean isKnown(Word name) {
    if (arms.containsKey(name.text())) {
      return true;
    }
    if (declaration.damaged()) {
      diagnostics.markInvalid();
    } else {
      diagnostics.unknown(name, "arm", arms.keySet());
    }
    return false;
  }

  /** Returns the pair if the first arm has the parameter, and the second one trains. */
  private Optional<Pair> changeable(CompareItem.CompareMatch written, String name, String to) {
    Arm arm = arms.get(name);
    Arm target = arms.get(to);
    if (arm == null || target == null) {
      diagnostics.markInvalid();
      return Optional.empty();
    }
    if (!(arm.content() instanceof Arm.Trained trained)) {
      diagnostics.error(written, "value.match", "fixed", name);
      return Optional.empty();
    }
    if (target.content() instanceof Arm.NoTraining) {
      diagnostics.error(written, "value.match", "control", to);
      return Optional.empty();
    }
    Set<String> parameters = trained.exercise().protocol().parameters().keySet();
    if (!parameters.contains(written.by().text())) {
      diagnostics.unknown(written.by(), "parameter", parameters);
      return Optional.empty();
    }
    return Optional.of(new Pair(name, to));
  }
}
