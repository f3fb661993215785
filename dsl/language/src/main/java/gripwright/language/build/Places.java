package gripwright.language.build;

import gripwright.finding.ModelPath;
import gripwright.language.check.Source;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where the things of a model are written.
 *
 * <p>A path is looked up without its weeks and dates, which have no text of their own; then without
 * the athlete, unless that athlete has a text of their own; then step by step further out, so that
 * everything that belongs to a declaration is found at least there. Immutable.
 */
public final class Places {

  private static final Set<String> DERIVED = Set.of("week", "date");
  private static final String ATHLETE = "for";

  private final Map<ModelPath, Source> sources;

  Places(Map<ModelPath, Source> sources) {
    this.sources = Map.copyOf(sources);
  }

  /** Returns where the thing a path leads to is written, or what it is part of. */
  public Optional<Source> find(ModelPath path) {
    ModelPath written =
        new ModelPath(
            path.steps().stream().filter(step -> !DERIVED.contains(step.kind())).toList());
    for (ModelPath at = written; !at.steps().isEmpty(); at = at.parent()) {
      Source own = sources.get(at);
      Source shared = own == null ? sources.get(at.without(ATHLETE)) : own;
      if (shared != null) {
        return Optional.of(shared);
      }
    }
    return Optional.empty();
  }
}
