package gripwright.finding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A mistake in a model, or something worth knowing about it.
 *
 * <p>One mistake gives one finding: if one line of a plan breaks a rule in many weeks, the finding
 * lists those weeks in {@link #places}, and its arguments are those of the worst. Immutable.
 */
public final class Finding {

  /** The components; map and list are copied. */
  private record Parts(
      String code,
      Severity severity,
      ModelPath place,
      Map<String, Object> arguments,
      List<ModelPath> places,
      Optional<String> waivedBecause,
      Optional<Topic> topic) {
    Parts {
      arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
      places = List.copyOf(places);
    }
  }

  private final Parts parts;

  private Finding(Parts parts) {
    this.parts = parts;
  }

  /**
   * Returns the code: dotted and stable, such as {@code name.unknown} or {@code rule.weekly-rise}.
   */
  public String code() {
    return parts.code;
  }

  /** Returns the severity. */
  public Severity severity() {
    return parts.severity;
  }

  /** Returns the place in the model. */
  public ModelPath place() {
    return parts.place;
  }

  /**
   * Returns the arguments of the sentence, by name, in a fixed order; values have a printable form.
   */
  public Map<String, Object> arguments() {
    return parts.arguments;
  }

  /**
   * Returns every place with the same mistake, in order of date; empty if {@link #place} is the
   * only one.
   */
  public List<ModelPath> places() {
    return parts.places;
  }

  /** Returns the coach's written reason, if the finding was waived. */
  public Optional<String> waivedBecause() {
    return parts.waivedBecause;
  }

  /** Returns its topic, if other code needs it. */
  public Optional<Topic> topic() {
    return parts.topic;
  }

  /** Returns an error at a place. */
  public static Finding error(String code, ModelPath place) {
    return of(code, Severity.ERROR, place);
  }

  /** Returns a warning at a place. */
  public static Finding warning(String code, ModelPath place) {
    return of(code, Severity.WARNING, place);
  }

  /** Returns advice at a place. */
  public static Finding advice(String code, ModelPath place) {
    return of(code, Severity.ADVICE, place);
  }

  /** Returns a finding of a severity at a place. */
  public static Finding of(String code, Severity severity, ModelPath place) {
    return new Finding(
        new Parts(code, severity, place, Map.of(), List.of(), Optional.empty(), Optional.empty()));
  }

  /** Returns this finding with a topic. */
  public Finding about(Topic what) {
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            parts.place,
            parts.arguments,
            parts.places,
            parts.waivedBecause,
            Optional.of(what)));
  }

  /** Returns whether this finding has a topic. */
  public boolean isAbout(Topic what) {
    return parts.topic.filter(t -> t == what).isPresent();
  }

  /**
   * Returns this finding with the places that have the same mistake; the first one becomes its
   * place.
   */
  public Finding withPlaces(ModelPath first, List<ModelPath> all) {
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            first,
            parts.arguments,
            all,
            parts.waivedBecause,
            parts.topic));
  }

  /** Returns this finding with one more argument. */
  public Finding with(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(parts.arguments);
    more.put(name, value);
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            parts.place,
            more,
            parts.places,
            parts.waivedBecause,
            parts.topic));
  }

  /** Returns this finding at another place, otherwise unchanged. */
  public Finding at(ModelPath another) {
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            another,
            parts.arguments,
            parts.places,
            parts.waivedBecause,
            parts.topic));
  }

  /** Returns this finding with one more place with the same mistake. */
  public Finding alsoAt(ModelPath another) {
    List<ModelPath> more = new ArrayList<>(parts.places);
    more.add(another);
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            parts.place,
            parts.arguments,
            more,
            parts.waivedBecause,
            parts.topic));
  }

  /** Returns this finding with the arguments of another. */
  public Finding withFactsOf(Finding other) {
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            parts.place,
            other.parts.arguments,
            parts.places,
            parts.waivedBecause,
            parts.topic));
  }

  /** Returns this finding as waived by the coach, with the reason. */
  public Finding waived(String because) {
    return new Finding(
        new Parts(
            parts.code,
            parts.severity,
            parts.place,
            parts.arguments,
            parts.places,
            Optional.of(because),
            parts.topic));
  }

  /** Returns the names of the athletes in the finding's places, in order. */
  public List<String> athletes() {
    return (parts.places.isEmpty() ? List.of(parts.place) : parts.places)
        .stream().flatMap(p -> p.athlete().stream()).distinct().toList();
  }

  /** Returns whether the finding stops a plan from being used: an unwaived error. */
  public boolean blocks() {
    return parts.severity == Severity.ERROR && parts.waivedBecause.isEmpty();
  }

  /** Returns the broken rule's name where the code is {@code rule.NAME}. */
  public Optional<String> rule() {
    return parts.code.startsWith("rule.") ? Optional.of(parts.code.substring(5)) : Optional.empty();
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Finding that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Finding" + parts.toString().substring("Parts".length());
  }
}
