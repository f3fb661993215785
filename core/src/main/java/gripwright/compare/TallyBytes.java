package gripwright.compare;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Tallies of a part as bytes and back, each number exactly. Stateless. */
final class TallyBytes {

  private static final int MARK = 0x47544C31; // its first letters, and the version of this form

  private TallyBytes() {}

  /**
   * Writes tallies.
   *
   * @param title says what they are of
   */
  static byte[] write(String title, Pairs.Tallies tallies) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeInt(MARK);
      out.writeUTF(title);
      tallies.write(out);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory failed", e);
    }
    return bytes.toByteArray();
  }

  /**
   * Reads tallies.
   *
   * @param empty tallies of the comparison, into which they are read
   * @throws IllegalArgumentException if they are of another part or comparison
   */
  static Pairs.Tallies read(String title, byte[] bytes, Pairs.Tallies empty) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      if (in.readInt() == MARK && in.readUTF().equals(title)) {
        empty.read(in);
        if (in.read() < 0) {
          return empty;
        }
      }
    } catch (IOException e) {
      throw new IllegalArgumentException("not what was evaluated for " + title, e);
    }
    throw new IllegalArgumentException("not what was evaluated for " + title);
  }

  static void write(DataOutputStream out, double... values) throws IOException {
    out.writeInt(values.length);
    for (double value : values) {
      out.writeDouble(value);
    }
  }

  /** Reads values into an array of their number. */
  static void read(DataInputStream in, double[] values) throws IOException {
    length(in, values.length);
    for (int i = 0; i < values.length; i++) {
      values[i] = in.readDouble();
    }
  }

  /**
   * Reads a number that has to be this one.
   *
   * @throws IOException if it is another
   */
  static void length(DataInputStream in, int expected) throws IOException {
    int read = in.readInt();
    if (read != expected) {
      throw new IOException(read + " instead of " + expected);
    }
  }
}
