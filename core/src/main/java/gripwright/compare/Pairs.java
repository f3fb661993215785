package gripwright.compare;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The pairs of arms and what is counted about them. Arms without training are in pairs, but not
 * among those of which the best are looked for.
 */
final class Pairs {

  private static final double ROUNDING = 1e-12;

  private final List<Program> arms;
  private final List<Measure> measures;
  private final List<Objective> objectives;
  private final List<int[]> pairs = new ArrayList<>();

  Pairs(List<Program> arms, List<Measure> measures, List<Objective> objectives) {
    this.arms = arms;
    this.measures = measures;
    this.objectives = objectives;
    for (int a = 0; a < arms.size(); a++) {
      for (int b = a + 1; b < arms.size(); b++) {
        pairs.add(new int[] {a, b});
      }
    }
  }

  int count() {
    return pairs.size();
  }

  int first(int pair) {
    return pairs.get(pair)[0];
  }

  int second(int pair) {
    return pairs.get(pair)[1];
  }

  /**
   * Returns the difference of two arms as the measure says: for a first failure only its sign, 1 if
   * that of the first arm comes later. NaN if one of the values can't be given.
   */
  static double difference(Measure measure, double[] a, double[] b) {
    double one = a[measure.ordinal()];
    double other = b[measure.ordinal()];
    if (Double.isNaN(one) || Double.isNaN(other)) {
      return Double.NaN;
    }
    return switch (measure.difference()) {
      case RATIO -> one == other ? 0 : settled(Math.log(one / other));
      case PLAIN -> settled(one - other);
      case CENSORED -> Double.compare(one, other);
    };
  }

  /** A difference that comes of rounding is none. */
  private static double settled(double difference) {
    return Math.abs(difference) < ROUNDING ? 0 : difference;
  }

  /**
   * Returns which arms no other one beats: is at least as good in all objectives and better in one.
   *
   * @param values by arm and measure
   */
  static boolean[] undominated(List<Objective> objectives, double[][] values, boolean[] takesPart) {
    boolean[] undominated = new boolean[values.length];
    for (int a = 0; a < values.length; a++) {
      undominated[a] = takesPart[a];
      for (int b = 0; b < values.length && undominated[a]; b++) {
        if (b != a && takesPart[b] && beats(objectives, values[b], values[a])) {
          undominated[a] = false;
        }
      }
    }
    return undominated;
  }

  private static boolean beats(List<Objective> objectives, double[] one, double[] other) {
    boolean better = false;
    for (Objective objective : objectives) {
      double a = one[objective.measure().ordinal()];
      double b = other[objective.measure().ordinal()];
      double ahead = objective.more() ? a - b : b - a;
      if (a == b) {
        continue; // also where neither ever fails
      }
      if (!(ahead > 0)) {
        return false;
      }
      better = true;
    }
    return better;
  }

  Tallies tallies(int inputs) {
    return new Tallies(inputs);
  }

  /** What is counted over draws or persons. Mutable and for one thread. */
  final class Tallies {
    private final Tally[][] ofPairs = new Tally[pairs.size()][measures.size()];
    private final Tally[][] ofArms = new Tally[arms.size()][measures.size()];
    private final long[] undominated = new long[arms.size()];
    private final boolean[] takesPart = new boolean[arms.size()];
    private long total;

    private Tallies(int inputs) {
      for (Tally[] row : ofPairs) {
        for (int i = 0; i < row.length; i++) {
          row[i] = new Tally(inputs);
        }
      }
      for (Tally[] row : ofArms) {
        for (int i = 0; i < row.length; i++) {
          row[i] = new Tally(0);
        }
      }
      for (int i = 0; i < takesPart.length; i++) {
        takesPart[i] = !arms.get(i).isNothing();
      }
    }

    /**
     * Counts one draw or person.
     *
     * @param values by arm and measure
     * @param reference those of the typical athlete
     */
    void add(double[][] values, double[][] reference, double[] inputs) {
      total++;
      for (int m = 0; m < measures.size(); m++) {
        Measure measure = measures.get(m);
        boolean order = measure.difference() == Measure.Difference.CENSORED;
        for (int pair = 0; pair < ofPairs.length; pair++) {
          double difference = difference(measure, values[first(pair)], values[second(pair)]);
          if (Double.isNaN(difference)) {
            continue;
          }
          if (order) {
            ofPairs[pair][m].addOrder(difference);
          } else {
            ofPairs[pair][m].add(difference, inputs);
          }
        }
        for (int arm = 0; arm < ofArms.length && !order; arm++) {
          double difference = difference(measure, values[arm], reference[arm]);
          if (!Double.isNaN(difference)) {
            ofArms[arm][m].add(difference, NONE);
          }
        }
      }
      if (!objectives.isEmpty()) {
        boolean[] best = Pairs.undominated(objectives, values, takesPart);
        for (int arm = 0; arm < best.length; arm++) {
          undominated[arm] += best[arm] ? 1 : 0;
        }
      }
    }

    /** Adds the tallies of the next chunk. */
    void add(Tallies next) {
      total += next.total;
      for (int pair = 0; pair < ofPairs.length; pair++) {
        for (int m = 0; m < measures.size(); m++) {
          ofPairs[pair][m].add(next.ofPairs[pair][m]);
        }
      }
      for (int arm = 0; arm < ofArms.length; arm++) {
        undominated[arm] += next.undominated[arm];
        for (int m = 0; m < measures.size(); m++) {
          ofArms[arm][m].add(next.ofArms[arm][m]);
        }
      }
    }

    void write(DataOutputStream out) throws IOException {
      out.writeLong(total);
      out.writeInt(ofPairs.length);
      out.writeInt(ofArms.length);
      out.writeInt(measures.size());
      for (Tally tally : all()) {
        tally.write(out);
      }
      for (long each : undominated) {
        out.writeLong(each);
      }
    }

    /** Reads what {@link #write} wrote, into empty tallies. */
    void read(DataInputStream in) throws IOException {
      total = in.readLong();
      TallyBytes.length(in, ofPairs.length);
      TallyBytes.length(in, ofArms.length);
      TallyBytes.length(in, measures.size());
      for (Tally tally : all()) {
        tally.read(in);
      }
      for (int arm = 0; arm < undominated.length; arm++) {
        undominated[arm] = in.readLong();
      }
    }

    private List<Tally> all() {
      List<Tally> all = new ArrayList<>();
      for (Tally[] row : ofPairs) {
        all.addAll(List.of(row));
      }
      for (Tally[] row : ofArms) {
        all.addAll(List.of(row));
      }
      return all;
    }

    Tally of(int pair, Measure measure) {
      return ofPairs[pair][measures.indexOf(measure)];
    }

    Tally ofArm(int arm, Measure measure) {
      return ofArms[arm][measures.indexOf(measure)];
    }

    /** Returns the share of the draws in which no other arm beats this one. */
    double undominated(int arm) {
      return total == 0 ? Double.NaN : (double) undominated[arm] / total;
    }
  }

  private static final double[] NONE = new double[0];
}
