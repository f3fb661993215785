package gripwright.language.build;

import gripwright.finding.ModelPath;
import gripwright.language.check.Source;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The places in the text where the parts of a model are written.
 *
 * <p>A path is looked up without weeks and dates, which have no text of their own; then without the
 * athlete, unless there is separate text for that athlete; then for each enclosing part, so that at
 * least the declaration is found. Immutable.
 */
public final class Places {

  private static final Set<String> DERIVED = Set.of("week", "date");
  private static final String ATHLETE = "for";

  private final Map<ModelPath, Source> sources;

  Places(Map<ModelPath, Source> sources) {
    this.sources = Map.copyOf(sources);
  }

  /** Returns where a path is written, or else the part that contains it. */
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
