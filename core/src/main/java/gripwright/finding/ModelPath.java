package gripwright.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The place of something in a model, from the outside in: {@code plan winter / block base / week 3
 * / session strength / exercise 2}.
 *
 * <p>A path is the same whether the model was read from text or built in Java. Immutable.
 *
 * @param steps the way down, outermost first
 */
public record ModelPath(List<Step> steps) {

  /** The path of the whole model. */
  public static final ModelPath ROOT = new ModelPath(List.of());

  /**
   * One step down.
   *
   * @param kind the kind of part, such as {@code block}
   * @param name its name or number
   */
  public record Step(String kind, String name) {
    @Override
    public String toString() {
      return kind + " " + name;
    }
  }

  /** Copies the steps. */
  public ModelPath {
    steps = List.copyOf(steps);
  }

  /** Returns a path of one step. */
  public static ModelPath of(String kind, String name) {
    return ROOT.then(kind, name);
  }

  /**
   * Returns the athlete of the place: of a plan's part for one athlete, of an athlete, or of a log;
   * empty if there is none, or it is a plan as a whole.
   */
  public Optional<String> athlete() {
    for (int i = 0; i < steps.size(); i++) {
      Step step = steps.get(i);
      if (step.kind().equals("for")
          || (i == 0 && (step.kind().equals("athlete") || step.kind().equals("log")))) {
        return Optional.of(step.name());
      }
    }
    return Optional.empty();
  }

  /** Returns this path with a further step. */
  public ModelPath then(String kind, String name) {
    Step[] longer = steps.toArray(new Step[steps.size() + 1]);
    longer[steps.size()] = new Step(kind, name);
    return new ModelPath(List.of(longer));
  }

  /** Returns this path with a further numbered step. */
  public ModelPath then(String kind, int number) {
    return then(kind, Integer.toString(number));
  }

  /** Returns this path without steps of the given kinds. */
  public ModelPath without(String... kinds) {
    List<String> unwanted = List.of(kinds);
    List<Step> left = new ArrayList<>(steps.size());
    for (Step step : steps) {
      if (!unwanted.contains(step.kind())) {
        left.add(step);
      }
    }
    return new ModelPath(left);
  }

  /** Returns this path without its last step; the root stays the root. */
  public ModelPath parent() {
    return steps.isEmpty() ? this : new ModelPath(steps.subList(0, steps.size() - 1));
  }

  /** Returns whether this path is the other or leads to it. */
  public boolean contains(ModelPath other) {
    return other.steps.size() >= steps.size() && other.steps.subList(0, steps.size()).equals(steps);
  }

  /** Returns the path as text; the root is empty. */
  @Override
  public String toString() {
    return steps.stream().map(Step::toString).collect(Collectors.joining(" / "));
  }
}
