package gripwright.compare;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Arrays;

/**
 * Differences of two arms in one measure, counted in steps of a thousandth, so that memory doesn't
 * grow with the draws and the order of draws plays no part; the sums of a chunk are added in the
 * order of the chunks. Mutable and for one thread.
 */
final class Tally {

  /** Width of a step: 0.1 % of a ratio, or 0.001 of a fraction. */
  static final double STEP = 1e-3;

  /** Differences beyond this many steps count as this many: a ratio of 3,000 and more. */
  private static final int MOST = 8_000;

  /** More than an array of counts grows to, which at most doubles beyond what it needs. */
  private static final int MOST_STEPS = 8 * MOST;

  private static final double ROUNDING = 1e-12;

  private int[] counts = new int[0];
  private int lowest;
  private long total;
  private long greater;
  private long ties;
  private double least = Double.POSITIVE_INFINITY;
  private double most = Double.NEGATIVE_INFINITY;
  private double sum;
  private double squares;
  private final double[] products;
  private final double[] inputSums;
  private final double[] inputSquares;

  /** Creates an empty tally that relates differences to this many inputs. */
  Tally(int inputs) {
    products = new double[inputs];
    inputSums = new double[inputs];
    inputSquares = new double[inputs];
  }

  /** Counts a difference that came with these inputs. */
  void add(double difference, double[] inputs) {
    addOrder(difference);
    int step = (int) Math.rint(Math.max(-MOST, Math.min(MOST, difference / STEP)));
    count(step, 1);
    least = Math.min(least, difference);
    most = Math.max(most, difference);
    sum += difference;
    squares += difference * difference;
    for (int i = 0; i < products.length; i++) {
      products[i] += difference * inputs[i];
      inputSums[i] += inputs[i];
      inputSquares[i] += inputs[i] * inputs[i];
    }
  }

  /** Counts which arm has more, without a size. */
  void addOrder(double difference) {
    total++;
    greater += difference > 0 ? 1 : 0;
    ties += difference == 0 ? 1 : 0;
  }

  private void count(int step, int times) {
    if (counts.length == 0) {
      counts = new int[1];
      lowest = step;
    }
    if (step < lowest) {
      int more = Math.max(lowest - step, counts.length);
      int[] wider = new int[counts.length + more];
      System.arraycopy(counts, 0, wider, more, counts.length);
      counts = wider;
      lowest -= more;
    } else if (step >= lowest + counts.length) {
      counts = Arrays.copyOf(counts, Math.max(step - lowest + 1, 2 * counts.length));
    }
    counts[step - lowest] += times;
  }

  /** Adds the tally of the next chunk. */
  void add(Tally next) {
    for (int i = 0; i < next.counts.length; i++) {
      if (next.counts[i] > 0) {
        count(next.lowest + i, next.counts[i]);
      }
    }
    total += next.total;
    greater += next.greater;
    ties += next.ties;
    least = Math.min(least, next.least);
    most = Math.max(most, next.most);
    sum += next.sum;
    squares += next.squares;
    for (int i = 0; i < products.length; i++) {
      products[i] += next.products[i];
      inputSums[i] += next.inputSums[i];
      inputSquares[i] += next.inputSquares[i];
    }
  }

  void write(DataOutputStream out) throws IOException {
    out.writeInt(lowest);
    out.writeInt(counts.length);
    for (int count : counts) {
      out.writeInt(count);
    }
    out.writeLong(total);
    out.writeLong(greater);
    out.writeLong(ties);
    TallyBytes.write(out, least, most, sum, squares);
    TallyBytes.write(out, products);
    TallyBytes.write(out, inputSums);
    TallyBytes.write(out, inputSquares);
  }

  /** Reads what {@link #write} wrote, into an empty tally. */
  void read(DataInputStream in) throws IOException {
    lowest = in.readInt();
    int steps = in.readInt();
    if (steps < 0 || steps > MOST_STEPS) {
      throw new IOException(steps + " steps");
    }
    counts = new int[steps];
    for (int i = 0; i < steps; i++) {
      counts[i] = in.readInt();
    }
    total = in.readLong();
    greater = in.readLong();
    ties = in.readLong();
    double[] sums = new double[4];
    TallyBytes.read(in, sums);
    least = sums[0];
    most = sums[1];
    sum = sums[2];
    squares = sums[3];
    TallyBytes.read(in, products);
    TallyBytes.read(in, inputSums);
    TallyBytes.read(in, inputSquares);
  }

  long total() {
    return total;
  }

  /** Returns the share of the differences above 0, ties counted half. */
  double greater() {
    return total == 0 ? Double.NaN : (greater + ties / 2.0) / total;
  }

  boolean allTied() {
    return ties == total;
  }

  /** Returns a quantile, to a step, and exactly where all differences are equal. */
  double quantile(double probability) {
    long rank = (long) Math.floor(probability * (total - 1));
    long seen = 0;
    for (int i = 0; i < counts.length; i++) {
      seen += counts[i];
      if (seen > rank) {
        return Math.max(least, Math.min(most, (lowest + i) * STEP));
      }
    }
    return most;
  }

  /** Returns whether all differences are equal but for rounding. */
  private boolean isConstant() {
    return !(most - least > ROUNDING);
  }

  /** Returns the Monte Carlo standard error of the mean. */
  double standardError() {
    if (isConstant()) {
      return 0;
    }
    double mean = sum / total;
    return Math.sqrt(Math.max(0, squares / total - mean * mean) / total);
  }

  /** Returns the squared correlation of the difference with an input. */
  double driven(int input) {
    double variance = squares / total - Math.pow(sum / total, 2);
    double inputMean = inputSums[input] / total;
    double ofInput = inputSquares[input] / total - inputMean * inputMean;
    if (isConstant() || !(variance > 0) || !(ofInput > 0)) {
      return 0;
    }
    double covariance = products[input] / total - sum / total * inputMean;
    return Math.min(1, covariance * covariance / (variance * ofInput));
  }
}
