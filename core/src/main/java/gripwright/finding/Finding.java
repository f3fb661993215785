package gripwright.finding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A mistake in a model, or something worth knowing about it.
 *
 * <p>One mistake gives one finding: if one line of a plan breaks a rule in many weeks, the finding
 * lists those weeks in {@link #places}, and its arguments are those of the worst. Immutable.
 *
 * @param code dotted and stable, such as {@code name.unknown} or {@code rule.weekly-rise}
 * @param severity the severity
 * @param place the place in the model
 * @param arguments arguments of the sentence, by name, in a fixed order; values have a printable
 *     form
 * @param places every place with the same mistake, in order of date; empty if {@code place} is the
 *     only one
 * @param waivedBecause the coach's written reason, if the finding was waived
 * @param topic its topic, if other code needs it
 */
public record Finding(
    String code,
    Severity severity,
    ModelPath place,
    Map<String, Object> arguments,
    List<ModelPath> places,
    Optional<String> waivedBecause,
    Optional<Topic> topic) {

  /** Copies the arguments and places. */
  public Finding {
    arguments = Collections.unmodifiableMap(new LinkedHashMap<>(arguments));
    places = List.copyOf(places);
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
        code, severity, place, Map.of(), List.of(), Optional.empty(), Optional.empty());
  }

  /** Returns this finding with a topic. */
  public Finding about(Topic what) {
    return new Finding(code, severity, place, arguments, places, waivedBecause, Optional.of(what));
  }

  /** Returns whether this finding has a topic. */
  public boolean isAbout(Topic what) {
    return topic.filter(t -> t == what).isPresent();
  }

  /**
   * Returns this finding with the places that have the same mistake; the first one becomes its
   * place.
   */
  public Finding withPlaces(ModelPath first, List<ModelPath> all) {
    return new Finding(code, severity, first, arguments, all, waivedBecause, topic);
  }

  /** Returns this finding with one more argument. */
  public Finding with(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(arguments);
    more.put(name, value);
    return new Finding(code, severity, place, more, places, waivedBecause, topic);
  }

  /** Returns this finding at another place, otherwise unchanged. */
  public Finding at(ModelPath another) {
    return new Finding(code, severity, another, arguments, places, waivedBecause, topic);
  }

  /** Returns this finding with one more place with the same mistake. */
  public Finding alsoAt(ModelPath another) {
    List<ModelPath> more = new ArrayList<>(places);
    more.add(another);
    return new Finding(code, severity, place, arguments, more, waivedBecause, topic);
  }

  /** Returns this finding with the arguments of another. */
  public Finding withFactsOf(Finding other) {
    return new Finding(code, severity, place, other.arguments, places, waivedBecause, topic);
  }

  /** Returns this finding as waived by the coach, with the reason. */
  public Finding waived(String because) {
    return new Finding(code, severity, place, arguments, places, Optional.of(because), topic);
  }

  /** Returns the names of the athletes in the finding's places, in order. */
  public List<String> athletes() {
    return (places.isEmpty() ? List.of(place) : places)
        .stream().flatMap(p -> p.athlete().stream()).distinct().toList();
  }

  /** Returns whether the finding stops a plan from being used: an unwaived error. */
  public boolean blocks() {
    return severity == Severity.ERROR && waivedBecause.isEmpty();
  }

  /** Returns the broken rule's name where the code is {@code rule.NAME}. */
  public Optional<String> rule() {
    return code.startsWith("rule.") ? Optional.of(code.substring(5)) : Optional.empty();
  }
}
