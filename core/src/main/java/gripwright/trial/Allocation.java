package gripwright.trial;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Who of a trial is allocated to which arm: permuted blocks of two or three times the number of
 * arms, in random order, within strata (CONSORT 2010, item 8b; Schulz KF, Grimes DA 2002, Lancet
 * 359:515-519). Immutable.
 *
 * <p>All random numbers come from HMAC-SHA-256 (RFC 2104, FIPS 198-1) of a counter, with a secret
 * key that lies outside the project: whoever has the key gets the same list again, nobody else can
 * foresee a line. {@link #commitment()} can be published before the trial; afterwards key, salt and
 * list show that nothing was changed.
 */
public final class Allocation {

  /** The shortest key and salt, in bytes. */
  public static final int SHORTEST_SECRET = 16;

  /** The most participants of a stratum. */
  public static final int MOST = 100_000;

  /**
   * The design of an allocation.
   *
   * @param arms names, two to twenty, each once
   * @param strata names, one or more, each once
   * @param participants of each stratum, 1 to {@value #MOST}
   */
  public record Design(List<String> arms, List<String> strata, int participants) {

    private static final int MOST_ARMS = 20;

    /**
     * Copies and checks the names.
     *
     * @throws IllegalArgumentException if there are fewer than two arms or more than twenty, no
     *     stratum, a name twice, a name with a line break or a comma, or participants are outside
     *     their range
     */
    public Design {
      arms = distinct(arms, "arm");
      strata = distinct(strata, "stratum");
      if (arms.size() < 2 || arms.size() > MOST_ARMS) {
        throw new IllegalArgumentException("2 to " + MOST_ARMS + " arms, not " + arms.size());
      }
      if (strata.isEmpty() || participants < 1 || participants > MOST) {
        throw new IllegalArgumentException(
            "1 to " + MOST + " participants in one stratum or more, not " + participants);
      }
    }

    private static List<String> distinct(List<String> names, String what) {
      List<String> copied = List.copyOf(names);
      if (new HashSet<>(copied).size() < copied.size()) {
        throw new IllegalArgumentException("a name of an " + what + " twice: " + copied);
      }
      for (String name : copied) {
        if (name.isBlank() || name.chars().anyMatch(c -> c < ' ' || c == ',' || c == '"')) {
          throw new IllegalArgumentException("not a name of an " + what + ": \"" + name + "\"");
        }
      }
      return copied;
    }
  }

  /**
   * One line of the list.
   *
   * @param stratum name of the stratum
   * @param number of the participant in the stratum, from 1, in the order of inclusion
   * @param block number of the block in the stratum, from 1
   * @param arm name of the arm
   */
  public record Line(String stratum, int number, int block, String arm) {}

  /**
   * What stands for a participant in the files of those who measure.
   *
   * @param stratum name of the stratum
   * @param number of the participant in the stratum, from 1, in the order of inclusion
   * @param text six digits and capital letters, no two participants have the same
   */
  public record Label(String stratum, int number, String text) {}

  /**
   * A participant whose arm was revealed, and the list it was revealed from: what can be published.
   *
   * @param stratum name of the stratum
   * @param number of the participant in the stratum, from 1
   * @param arm name of the arm
   * @param commitment of the list, 64 hexadecimal digits in small letters
   */
  public record Revealed(String stratum, int number, String arm, String commitment) {
    /**
     * Checks number and commitment.
     *
     * @throws IllegalArgumentException if the number is below 1, or the commitment is none
     */
    public Revealed {
      Objects.requireNonNull(stratum, "stratum");
      Objects.requireNonNull(arm, "arm");
      if (number < 1 || !commitment.matches("[0-9a-f]{64}")) {
        throw new IllegalArgumentException(
            "not a revealed participant: " + number + ", " + commitment);
      }
    }
  }

  private final Design design;
  private final byte[] key;
  private final byte[] salt;
  private final List<Line> lines;

  private Allocation(Design design, byte[] key, byte[] salt) {
    this.design = design;
    this.key = key.clone();
    this.salt = salt.clone();
    this.lines = Collections.unmodifiableList(lines(design, new Numbers(this.key)));
  }

  /**
   * Returns the allocation of a design.
   *
   * @param key secret, {@value #SHORTEST_SECRET} bytes or more
   * @param salt so that equal designs don't look equal, {@value #SHORTEST_SECRET} bytes or more
   * @throws IllegalArgumentException if the key or the salt is shorter
   */
  public static Allocation of(Design design, byte[] key, byte[] salt) {
    Objects.requireNonNull(design, "design");
    if (key.length < SHORTEST_SECRET || salt.length < SHORTEST_SECRET) {
      throw new IllegalArgumentException("key and salt have " + SHORTEST_SECRET + " bytes or more");
    }
    return new Allocation(design, key, salt);
  }

  /** Returns the design. */
  public Design design() {
    return design;
  }

  /** Returns the whole list: for the end of the trial, and for nobody who includes or assesses. */
  public List<Line> lines() {
    return lines;
  }

  /**
   * Returns one line: what is revealed once a participant is included.
   *
   * @param stratum name of the stratum
   * @param number of the participant in the stratum, from 1
   * @throws IllegalArgumentException if there is no such stratum or participant
   */
  public Line line(String stratum, int number) {
    int of = design.strata().indexOf(stratum);
    if (of < 0 || number < 1 || number > design.participants()) {
      throw new IllegalArgumentException("no participant " + number + " of stratum " + stratum);
    }
    return lines.get(of * design.participants() + number - 1);
  }

  /**
   * Returns the SHA-256 of key, salt and list, in hexadecimal digits: it can be published before
   * the trial without revealing anything, and changes if a single byte does.
   */
  public String commitment() {
    MessageDigest digest = sha256();
    digest.update(key);
    digest.update(salt);
    digest.update(text().getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(digest.digest());
  }

  /** Returns the list as lines of {@code stratum,number,block,arm}, each ended by a line feed. */
  public String text() {
    StringBuilder text = new StringBuilder("stratum,number,block,arm\n");
    for (Line line : lines) {
      text.append(line.stratum()).append(',').append(line.number()).append(',');
      text.append(line.block()).append(',').append(line.arm()).append('\n');
    }
    return text.toString();
  }

  /**
   * Returns a label for each participant, in the order of {@link #lines()}. Labels follow from the
   * key, and say nothing of stratum, number, block and arm: the same key and strata give the same
   * labels, whatever the arms are.
   */
  public List<Label> labels() {
    Labels drawn = new Labels(key);
    List<Label> labels = new ArrayList<>();
    for (int stratum = 0; stratum < design.strata().size(); stratum++) {
      for (int number = 1; number <= design.participants(); number++) {
        labels.add(new Label(design.strata().get(stratum), number, drawn.next(stratum, number)));
      }
    }
    return Collections.unmodifiableList(labels);
  }

  private static List<Line> lines(Design design, Numbers numbers) {
    List<Line> lines = new ArrayList<>();
    for (int stratum = 0; stratum < design.strata().size(); stratum++) {
      int number = 0;
      for (int block = 1; number < design.participants(); block++) {
        for (String arm : block(design.arms(), stratum, block, numbers)) {
          if (number < design.participants()) {
            lines.add(new Line(design.strata().get(stratum), ++number, block, arm));
          }
        }
      }
    }
    return lines;
  }

  /**
   * Returns the arms of a block in random order, by the shuffle of Fisher, Yates and Durstenfeld.
   */
  private static List<String> block(List<String> arms, int stratum, int block, Numbers numbers) {
    List<String> order = new ArrayList<>();
    int times = 2 + numbers.below(2, stratum, block, 0);
    for (int i = 0; i < times; i++) {
      order.addAll(arms);
    }
    for (int i = order.size() - 1; i > 0; i--) {
      Collections.swap(order, i, numbers.below(i + 1, stratum, block, i));
    }
    return order;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static Mac mac(byte[] key) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key, "HmacSHA256"));
      return mac;
    } catch (NoSuchAlgorithmException | InvalidKeyException e) {
      throw new IllegalStateException("every Java has HMAC-SHA-256", e);
    }
  }

  /** Numbers that follow from the key and a counter. */
  private static final class Numbers {

    private final Mac mac;

    Numbers(byte[] key) {
      mac = mac(key);
    }

    /** Returns a number from 0 to one less than the bound, each equally likely. */
    int below(int bound, int stratum, int block, int place) {
      long most = (1L << 32) / bound * bound;
      for (int attempt = 0; ; attempt++) {
        byte[] counter =
            ByteBuffer.allocate(16)
                .putInt(stratum)
                .putInt(block)
                .putInt(place)
                .putInt(attempt)
                .array();
        long drawn = Integer.toUnsignedLong(ByteBuffer.wrap(mac.doFinal(counter)).getInt());
        if (drawn < most) {
          return (int) (drawn % bound);
        }
      }
    }
  }

  /** Labels that follow from the key, each drawn once. */
  private static final class Labels {

    /** Digits and letters that are not mistaken for each other; no vowels, so no words. */
    private static final String SIGNS = "23456789BCDFGHJKMNPQRSTVWXZ";

    private static final int LENGTH = 6;

    /** Makes these counters longer than those of the list, so that no value is used twice. */
    private static final byte[] PURPOSE = "label".getBytes(StandardCharsets.US_ASCII);

    private final Mac mac;
    private final Set<String> taken = new HashSet<>();

    Labels(byte[] key) {
      mac = mac(key);
    }

    String next(int stratum, int number) {
      for (int attempt = 0; ; attempt++) {
        byte[] counter =
            ByteBuffer.allocate(PURPOSE.length + 3 * Integer.BYTES)
                .put(PURPOSE)
                .putInt(stratum)
                .putInt(number)
                .putInt(attempt)
                .array();
        String label = signs(mac.doFinal(counter));
        if (label.length() == LENGTH && taken.add(label)) {
          return label;
        }
      }
    }

    /**
     * Returns up to six signs, each equally likely: bytes that would favour some are passed over.
     */
    private static String signs(byte[] drawn) {
      int most = 256 / SIGNS.length() * SIGNS.length();
      StringBuilder label = new StringBuilder();
      for (byte each : drawn) {
        int value = Byte.toUnsignedInt(each);
        if (value < most && label.length() < LENGTH) {
          label.append(SIGNS.charAt(value % SIGNS.length()));
        }
      }
      return label.toString();
    }
  }
}
