package gripwright.protocol;

import gripwright.quantity.Range;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A protocol, written once and used by many plans: a tree of repeats, holds and rests, with named
 * parameters that an exercise may set. Immutable.
 */
public final class Protocol {

  /** A step whose values may be parameters. */
  public sealed interface Part {

    /** Returns what the visitor returns for this kind. */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method for each kind of step.
     *
     * @param <R> the type of result
     */
    interface Visitor<R> {
      /** Visits steps done several times. */
      R repeat(Repeat part);

      /** Visits a hold. */
      R hold(Hold part);

      /** Visits a rest. */
      R rest(Rest part);
    }

    /**
     * Steps done several times.
     *
     * @param times how often, 1 or more
     * @param resting rest between two repeats, never after the last
     * @param steps what is repeated
     * @param upTo true if the number is the greatest one, so that fewer are not missed
     */
    record Repeat(Term<Integer> times, Term<Duration> resting, List<Part> steps, boolean upTo)
        implements Part {

      /** Creates a repeat of exactly this many times. */
      public Repeat(Term<Integer> times, Term<Duration> resting, List<Part> steps) {
        this(times, resting, steps, false);
      }

      /** Copies the steps. */
      public Repeat {
        Objects.requireNonNull(times, "times");
        Objects.requireNonNull(resting, "resting");
        Objects.requireNonNull(steps, "steps");
        steps = List.copyOf(steps);
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.repeat(this);
      }
    }

    /**
     * A hold.
     *
     * @param time how long, above 0 s
     * @param level how hard
     * @param extent what the time means
     */
    record Hold(Term<Duration> time, Term<Level> level, Extent extent) implements Part {
      /** Refuses null. */
      public Hold {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(extent, "extent");
      }

      /** Creates a hold of exactly this time. */
      public Hold(Term<Duration> time, Term<Level> level) {
        this(time, level, Extent.WHOLE);
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.hold(this);
      }
    }

    /**
     * A rest.
     *
     * @param time how long
     * @param text what to do in it, in words for people; empty if nothing is written
     */
    record Rest(Term<Duration> time, Optional<String> text) implements Part {
      /** Refuses null. */
      public Rest {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(text, "text");
      }

      /** Creates a rest without words. */
      public Rest(Term<Duration> time) {
        this(time, Optional.empty());
      }

      @Override
      public <R> R accept(Visitor<R> visitor) {
        return visitor.rest(this);
      }
    }
  }

  /** The components, checked. */
  private record Parts(
      String name,
      Optional<String> title,
      Optional<String> aim,
      Map<String, Argument> parameters,
      List<Part> steps,
      List<Report> reports,
      List<String> notes) {
    Parts {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(title, "title");
      Objects.requireNonNull(aim, "aim");
      Objects.requireNonNull(parameters, "parameters");
      Objects.requireNonNull(steps, "steps");
      parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
      steps = List.copyOf(steps);
      reports = List.copyOf(reports);
      notes = List.copyOf(notes);
      if (steps.isEmpty()) {
        throw new IllegalArgumentException("protocol " + name + " has no steps");
      }
      Range.STEPS.check(Protocol.bind(name, parameters, steps).size());
    }
  }

  private final Parts parts;

  private Protocol(Parts parts) {
    this.parts = parts;
  }

  /** Returns the name: kebab-case, unique in a project. */
  public String name() {
    return parts.name;
  }

  /** Returns the title for people, if it differs from the name. */
  public Optional<String> title() {
    return parts.title;
  }

  /** Returns the aim, such as {@code maximal-strength}. */
  public Optional<String> aim() {
    return parts.aim;
  }

  /** Returns the defaults by parameter name, in the order written. */
  public Map<String, Argument> parameters() {
    return parts.parameters;
  }

  /** Returns what is done, in order; at least one step. */
  public List<Part> steps() {
    return parts.steps;
  }

  /** Returns facts about the delivery of the training that can't be derived. */
  public List<Report> reports() {
    return parts.reports;
  }

  /**
   * Replaces parameters by values.
   *
   * @param arguments values by parameter name; parameters not named keep their defaults
   * @throws IllegalArgumentException if there is no such parameter or the value is of another kind
   */
  public Scheme bind(Map<String, Argument> arguments) {
    Map<String, Argument> all = new LinkedHashMap<>(parts.parameters);
    arguments.forEach(
        (parameter, value) -> {
          if (!parts.parameters.containsKey(parameter)) {
            throw new IllegalArgumentException("protocol " + parts.name + " has no " + parameter);
          }
          all.put(parameter, value);
        });
    return bind(parts.name, all, parts.steps);
  }

  /**
   * Returns how many holds and rests the protocol has when written out, without writing it out;
   * {@link Scheme#ENDLESS} where it is more.
   *
   * @param arguments values by parameter name; parameters not named keep their defaults
   */
  public long size(Map<String, Argument> arguments) {
    Map<String, Argument> all = new HashMap<>(parts.parameters);
    all.putAll(Objects.requireNonNull(arguments, "arguments"));
    return size(parts.steps, all);
  }

  /**
   * Returns how many holds and rests steps have when written out.
   *
   * @param arguments values by parameter name; an unknown number of repeats counts as one
   */
  public static long size(List<Part> parts, Map<String, Argument> arguments) {
    Objects.requireNonNull(parts, "parts");
    Objects.requireNonNull(arguments, "arguments");
    Part.Visitor<Long> sizes =
        new Part.Visitor<>() {
          @Override
          public Long repeat(Part.Repeat repeat) {
            long times = Math.max(1, times(repeat.times(), arguments));
            return StepCount.times(times, size(repeat.steps(), arguments) + 1);
          }

          @Override
          public Long hold(Part.Hold hold) {
            return 1L;
          }

          @Override
          public Long rest(Part.Rest rest) {
            return 1L;
          }
        };
    long size = 0;
    for (Part part : parts) {
      size = Math.min(Scheme.ENDLESS, size + part.accept(sizes));
    }
    return size;
  }

  private static long times(Term<Integer> times, Map<String, Argument> arguments) {
    return times.value(
        given ->
            arguments.get(given.parameter()) instanceof Argument.Count count ? count.times() : 1);
  }

  private static Scheme bind(String name, Map<String, Argument> values, List<Part> parts) {
    return new Scheme(bindAll(name, values, parts));
  }

  private static List<Scheme.Step> bindAll(
      String name, Map<String, Argument> values, List<Part> parts) {
    Part.Visitor<Scheme.Step> binding =
        new Part.Visitor<>() {
          @Override
          public Scheme.Step repeat(Part.Repeat repeat) {
            return new Scheme.Repeat(
                count(name, values, repeat.times()),
                time(name, values, repeat.resting()),
                bindAll(name, values, repeat.steps()),
                repeat.upTo());
          }

          @Override
          public Scheme.Step hold(Part.Hold hold) {
            return new Scheme.Hold(
                time(name, values, hold.time()), level(name, values, hold.level()), hold.extent());
          }

          @Override
          public Scheme.Step rest(Part.Rest rest) {
            return new Scheme.Rest(time(name, values, rest.time()), rest.text());
          }
        };
    return parts.stream().map(part -> part.accept(binding)).toList();
  }

  private static int count(String name, Map<String, Argument> values, Term<Integer> term) {
    return term.value(
        given -> {
          if (value(values, given) instanceof Argument.Count count) {
            return count.times();
          }
          throw wrongKind(name, given, "a number of repeats");
        });
  }

  private static Duration time(String name, Map<String, Argument> values, Term<Duration> term) {
    return term.value(
        given -> {
          if (value(values, given) instanceof Argument.Time time) {
            return time.time();
          }
          throw wrongKind(name, given, "a time");
        });
  }

  private static Level level(String name, Map<String, Argument> values, Term<Level> term) {
    return term.value(
        given -> {
          if (value(values, given) instanceof Argument.AtLevel level) {
            return level.level();
          }
          throw wrongKind(name, given, "a level");
        });
  }

  private static Argument value(Map<String, Argument> values, Term.Given<?> term) {
    Argument value = values.get(term.parameter());
    if (value == null) {
      throw new IllegalArgumentException("nothing is given for " + term);
    }
    return value;
  }

  private static IllegalArgumentException wrongKind(String name, Term<?> term, String kind) {
    return new IllegalArgumentException("protocol " + name + ": " + term + " is not " + kind);
  }

  /** Returns what the coach wrote about it for people, in order. */
  public List<String> notes() {
    return parts.notes;
  }

  /** Returns a builder with all parts of this protocol; parts added later follow them. */
  public Builder toBuilder() {
    return new Builder(parts);
  }

  /**
   * Returns a builder for a protocol.
   *
   * @param name kebab-case, unique in a project
   */
  public static Builder named(String name) {
    Objects.requireNonNull(name, "name");
    return new Builder(name);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Protocol that && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return "Protocol" + parts.toString().substring("Parts".length());
  }

  /** Collects the parts of a protocol. Not thread-safe. */
  public static final class Builder {
    private final String name;
    private Optional<String> title = Optional.empty();
    private Optional<String> aim = Optional.empty();
    private final Map<String, Argument> parameters = new LinkedHashMap<>();
    private final List<Part> steps = new ArrayList<>();
    private final List<Report> reports = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Builder(String name) {
      this.name = name;
    }

    private Builder(Parts copied) {
      this(copied.name);
      title = copied.title;
      aim = copied.aim;
      parameters.putAll(copied.parameters);
      steps.addAll(copied.steps);
      reports.addAll(copied.reports);
      notes.addAll(copied.notes);
    }

    /** Sets the title for people. */
    public Builder title(String text) {
      Objects.requireNonNull(text, "text");
      return title(Optional.of(text));
    }

    /** Sets the title for people, or none. */
    public Builder title(Optional<String> text) {
      Objects.requireNonNull(text, "text");
      title = text;
      return this;
    }

    /** Sets the aim. */
    public Builder aim(String word) {
      Objects.requireNonNull(word, "word");
      return aim(Optional.of(word));
    }

    /** Sets the aim, or none. */
    public Builder aim(Optional<String> word) {
      Objects.requireNonNull(word, "word");
      aim = word;
      return this;
    }

    /** Sets all parameters with their defaults, in place of those already there. */
    public Builder parameters(Map<String, Argument> all) {
      Objects.requireNonNull(all, "all");
      Map<String, Argument> copy = new LinkedHashMap<>(all);
      parameters.clear();
      parameters.putAll(copy);
      return this;
    }

    /** Sets all steps, in place of those already there. */
    public Builder steps(List<Part> all) {
      Objects.requireNonNull(all, "all");
      List<Part> copy = List.copyOf(all);
      steps.clear();
      steps.addAll(copy);
      return this;
    }

    /** Adds a parameter with its default. */
    public Builder given(String parameter, Argument value) {
      Objects.requireNonNull(parameter, "parameter");
      Objects.requireNonNull(value, "value");
      parameters.put(parameter, value);
      return this;
    }

    /** Adds a parameter that is a number of repeats. */
    public Builder given(String parameter, int times) {
      Objects.requireNonNull(parameter, "parameter");
      return given(parameter, Argument.of(times));
    }

    /** Adds a parameter that is a time. */
    public Builder given(String parameter, Duration time) {
      Objects.requireNonNull(parameter, "parameter");
      Objects.requireNonNull(time, "time");
      return given(parameter, Argument.of(time));
    }

    /** Adds a parameter that is a level. */
    public Builder given(String parameter, Level level) {
      Objects.requireNonNull(parameter, "parameter");
      Objects.requireNonNull(level, "level");
      return given(parameter, Argument.of(level));
    }

    /** Adds a fact about the delivery of the training. */
    public Builder report(Report fact) {
      reports.add(Objects.requireNonNull(fact, "fact"));
      return this;
    }

    /** Adds a note for people; it changes no load and no rule. */
    public Builder note(String text) {
      notes.add(Objects.requireNonNull(text, "text"));
      return this;
    }

    /** Adds a step. */
    public Builder step(Part part) {
      Objects.requireNonNull(part, "part");
      steps.add(part);
      return this;
    }

    /**
     * Returns the protocol.
     *
     * @throws IllegalArgumentException if it has no steps, a step refers to a parameter that is
     *     missing, or to one of another kind, a value is outside its range, or there are more than
     *     10,000 holds and rests
     */
    public Protocol build() {
      return new Protocol(new Parts(name, title, aim, parameters, steps, reports, notes));
    }
  }
}
