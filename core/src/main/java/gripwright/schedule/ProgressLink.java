package gripwright.schedule;

import gripwright.finding.Clause;
import gripwright.finding.Listing;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.util.List;
import java.util.Map;

/** The changes over the weeks of a block, as links of a derivation. */
public sealed interface ProgressLink extends Derivation {

  /** Something that gets harder step by step. */
  sealed interface Advanced extends ProgressLink {

    /** Returns how many steps were taken. */
    int steps();

    private static Map<String, Object> of(int steps, Object step) {
      String key = steps == 1 ? "derivation.one-step" : "derivation.many-steps";
      return Map.of("steps", new Clause(key, Map.of("count", steps)), "step", step);
    }
  }

  /**
   * The load advances by a share.
   *
   * @param steps how many steps were taken
   * @param fraction the share of a step
   */
  record LoadShare(int steps, double fraction) implements Advanced {
    @Override
    public String key() {
      return "derivation.advance-load-share";
    }

    @Override
    public Map<String, Object> arguments() {
      return Advanced.of(steps, Numbers.plain(fraction * 100, 3) + " %");
    }

    @Override
    public double value() {
      return Math.pow(1 + fraction, steps) * 100;
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * The load advances by kilograms.
   *
   * @param steps how many steps were taken
   * @param step the step
   */
  record LoadStep(int steps, Load step) implements Advanced {
    @Override
    public String key() {
      return "derivation.advance-load-step";
    }

    @Override
    public Map<String, Object> arguments() {
      return Advanced.of(steps, step);
    }

    @Override
    public double value() {
      return step.kilograms() * steps;
    }

    @Override
    public String unit() {
      return "kg";
    }
  }

  /**
   * The sets advance.
   *
   * @param steps how many steps were taken
   * @param step sets a step
   * @param sets the resulting number
   */
  record Sets(int steps, int step, int sets) implements Advanced {
    @Override
    public String key() {
      return "derivation.advance-sets";
    }

    @Override
    public Map<String, Object> arguments() {
      return Advanced.of(steps, step);
    }

    @Override
    public double value() {
      return sets;
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * The holds get longer.
   *
   * @param steps how many steps were taken
   * @param stepSeconds seconds a step
   * @param seconds the resulting time of the first hold
   */
  record Hold(int steps, double stepSeconds, double seconds) implements Advanced {
    @Override
    public String key() {
      return "derivation.advance-hold";
    }

    @Override
    public Map<String, Object> arguments() {
      return Advanced.of(steps, Numbers.plain(stepSeconds, 3) + " s");
    }

    @Override
    public double value() {
      return seconds;
    }

    @Override
    public String unit() {
      return "s";
    }
  }

  /**
   * The edge gets shallower.
   *
   * @param steps how many steps were taken
   * @param step the step
   * @param depth the resulting depth
   */
  record Edge(int steps, Length step, Length depth) implements Advanced {
    @Override
    public String key() {
      return "derivation.advance-edge";
    }

    @Override
    public Map<String, Object> arguments() {
      return Advanced.of(steps, step);
    }

    @Override
    public double value() {
      return depth.millimetres();
    }

    @Override
    public String unit() {
      return "mm";
    }
  }

  /**
   * Steps that were prevented.
   *
   * @param steps number of steps
   * @param causes all causes
   */
  record StepsHeld(int steps, List<Cause> causes) implements ProgressLink {
    @Override
    public String key() {
      return steps == 1 ? "derivation.step-held" : "derivation.steps-held";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("causes", Listing.first(MOST_SAID, Listing.Style.CLAUSES, causes));
    }

    @Override
    public double value() {
      return steps;
    }

    @Override
    public String unit() {
      return "";
    }

    /** Most causes put into words. */
    private static final int MOST_SAID = 3;

    /** Copies the causes. */
    public StepsHeld {
      causes = List.copyOf(causes);
    }
  }

  /**
   * The load returns after a time without training.
   *
   * @param share share of the load
   * @param cause the cause
   */
  record Returns(double share, Cause cause) implements ProgressLink {
    @Override
    public List<Cause> causes() {
      return List.of(cause);
    }

    @Override
    public String key() {
      return "derivation.return";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("cause", cause);
    }

    @Override
    public double value() {
      return share * 100;
    }

    @Override
    public String unit() {
      return "%";
    }
  }

  /**
   * An eased week keeps some of the sets.
   *
   * @param kept number of sets kept
   * @param share share of the sets
   * @param of number of sets before
   */
  record EasedSets(int kept, double share, int of) implements ProgressLink {
    @Override
    public String key() {
      return "derivation.ease-sets";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("percent", Numbers.plain(share * 100, 1), "sets", of);
    }

    @Override
    public double value() {
      return kept;
    }

    @Override
    public String unit() {
      return "";
    }
  }

  /**
   * An eased week keeps a part of a single hold.
   *
   * @param seconds time kept
   * @param share share of the hold
   */
  record EasedHold(double seconds, double share) implements ProgressLink {
    @Override
    public String key() {
      return "derivation.ease-hold";
    }

    @Override
    public Map<String, Object> arguments() {
      return Map.of("percent", Numbers.plain(share * 100, 1));
    }

    @Override
    public double value() {
      return seconds;
    }

    @Override
    public String unit() {
      return "s";
    }
  }
}
