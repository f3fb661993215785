package gripwright.compare;

import gripwright.budget.Meter;
import gripwright.compare.ComparisonResult.Subject;
import gripwright.compare.ComparisonRun.Ready;
import gripwright.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A run of a comparison in parts, for a host with many machines: each evaluates some of the parts
 * of the same comparison, and one puts them together. The result is that of {@link
 * ComparisonRun#run}, byte for byte. Not thread-safe; each thread takes its own from {@link
 * ComparisonRun#parts}.
 *
 * <pre>{@code
 * ComparisonParts parts = run.parts();
 * Map<Part, byte[]> evaluated = new HashMap<>();
 * parts.all().forEach(part -> evaluated.put(part, parts.evaluate(part)));
 * ComparisonResult result = parts.result(RunOptions.standard(), evaluated::get);
 * }</pre>
 *
 * @since 1.0
 */
public final class ComparisonParts {

  /** What a part is a range of. */
  public enum Kind {
    /** Draws of the models, for the typical athlete. */
    DRAWS,
    /** Persons of a cohort. */
    PERSONS
  }

  /**
   * A range of draws or persons.
   *
   * @param subject number of the athlete or cohort in the comparison, from 0
   * @param kind what it is a range of
   * @param from the first, from 0
   * @param to one more than the last
   */
  public record Part(int subject, Kind kind, int from, int to) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if it is empty, or a number is below 0
     */
    public Part {
      Objects.requireNonNull(kind, "kind");
      if (subject < 0 || from < 0 || to <= from) {
        throw new IllegalArgumentException("no range: " + subject + ", " + from + " to " + to);
      }
    }
  }

  private final Comparison comparison;
  private final List<Finding> findings;
  private final List<Ready> subjects;

  ComparisonParts(Comparison comparison, List<Finding> findings, List<Ready> subjects) {
    this.comparison = comparison;
    this.findings = findings;
    this.subjects = subjects;
  }

  /** Returns all parts, in order; none if the comparison has errors. */
  public List<Part> all() {
    List<Part> parts = new ArrayList<>();
    for (int subject = 0; subject < subjects.size(); subject++) {
      for (Kind kind : Kind.values()) {
        for (Chunks.Chunk chunk : Chunks.of(subjects.get(subject).run().count(kind))) {
          parts.add(new Part(subject, kind, chunk.from(), chunk.to()));
        }
      }
    }
    return parts;
  }

  /**
   * Evaluates a part.
   *
   * @return what {@link #result} needs of it, some kilobytes; only this version of the library
   *     reads it
   * @throws IllegalArgumentException if it isn't one of {@link #all}
   */
  public byte[] evaluate(Part part) {
    if (!all().contains(part)) {
      throw new IllegalArgumentException("not a part of " + comparison.name() + ": " + part);
    }
    return subjects
        .get(part.subject())
        .run()
        .evaluated(part.kind(), new Chunks.Chunk(part.from(), part.to()));
  }

  /**
   * Puts the parts together.
   *
   * @param options as for {@link ComparisonRun#run}; with Sobol indices, these are estimated here
   * @param evaluated returns what {@link #evaluate} returned for a part; called once for each, in
   *     the order of {@link #all}
   * @throws IllegalArgumentException if that is missing or damaged, or of another part or
   *     comparison
   * @throws gripwright.budget.OverBudget if the budget's deadline has passed or it was cancelled
   */
  public ComparisonResult result(RunOptions options, Function<Part, byte @Nullable []> evaluated) {
    Meter meter = options.budget().meter();
    List<Subject> results = new ArrayList<>();
    for (int subject = 0; subject < subjects.size(); subject++) {
      int which = subject;
      Ready ready = subjects.get(subject);
      results.add(
          ready
              .run()
              .join(
                  ready.matches(),
                  options,
                  meter,
                  (kind, chunk) -> {
                    Part part = new Part(which, kind, chunk.from(), chunk.to());
                    byte[] bytes = evaluated.apply(part);
                    if (bytes == null) {
                      throw new IllegalArgumentException("nothing was evaluated for " + part);
                    }
                    return bytes;
                  }));
    }
    return new ComparisonResult(comparison, results, findings);
  }
}
