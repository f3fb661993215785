package gripwright.finding;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One thing that is wrong, or worth knowing, about a model.
 *
 * <p>One mistake gives one finding: where one line of a plan breaks a rule in many weeks, the
 * finding lists those weeks in {@link #places}, and its facts are those of the worst. Immutable.
 *
 * @param code dotted and stable, such as {@code name.unknown} or {@code rule.weekly-rise}
 * @param severity how grave it is
 * @param place what it is about
 * @param arguments facts for the sentence, by name, in a fixed order; values print themselves
 * @param places every place the same mistake shows, in order of date; empty if {@code place} says
 *     it all
 * @param waivedBecause the coach's written reason, if the finding was waived
 * @param topic what it is about, if other code has to know
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

  /** Returns a piece of advice at a place. */
  public static Finding advice(String code, ModelPath place) {
    return of(code, Severity.ADVICE, place);
  }

  /** Returns a finding of a severity at a place. */
  public static Finding of(String code, Severity severity, ModelPath place) {
    return new Finding(
        code, severity, place, Map.of(), List.of(), Optional.empty(), Optional.empty());
  }

  /** Returns this finding, about a topic. */
  public Finding about(Topic what) {
    return new Finding(code, severity, place, arguments, places, waivedBecause, Optional.of(what));
  }

  /** Tells whether this finding is about a topic. */
  public boolean isAbout(Topic what) {
    return topic.filter(t -> t == what).isPresent();
  }

  /** Returns this finding with other places where the same mistake shows, the first first. */
  public Finding withPlaces(ModelPath first, List<ModelPath> all) {
    return new Finding(code, severity, first, arguments, all, waivedBecause, topic);
  }

  /** Returns this finding with one more fact. */
  public Finding with(String name, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(arguments);
    more.put(name, value);
    return new Finding(code, severity, place, more, places, waivedBecause, topic);
  }

  /** Returns this finding at another place; what else it lists stays as it is. */
  public Finding at(ModelPath another) {
    return new Finding(code, severity, another, arguments, places, waivedBecause, topic);
  }

  /** Returns this finding with one more place where the same mistake shows. */
  public Finding alsoAt(ModelPath another) {
    List<ModelPath> more = new ArrayList<>(places);
    more.add(another);
    return new Finding(code, severity, place, arguments, more, waivedBecause, topic);
  }

  /** Returns this finding with the facts of another in the place of its own. */
  public Finding withFactsOf(Finding other) {
    return new Finding(code, severity, place, other.arguments, places, waivedBecause, topic);
  }

  /** Returns this finding, accepted by the coach for a written reason. */
  public Finding waived(String because) {
    return new Finding(code, severity, place, arguments, places, Optional.of(because), topic);
  }

  /** Tells whether the finding stops a plan from being used: an error that nobody waived. */
  public boolean blocks() {
    return severity == Severity.ERROR && waivedBecause.isEmpty();
  }

  /** Returns the broken rule's name where the code is {@code rule.NAME}. */
  public Optional<String> rule() {
    return code.startsWith("rule.") ? Optional.of(code.substring(5)) : Optional.empty();
  }
}
