package gripwright.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.trial.Allocation.Design;
import gripwright.trial.Allocation.Line;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AllocationProperties {

  private static final byte[] KEY =
      "a secret of the statistician".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
  private static final byte[] SALT =
      "0123456789abcdef".getBytes(java.nio.charset.StandardCharsets.US_ASCII);

  private static Allocation allocation(int arms, int strata, int participants, byte[] key) {
    return Allocation.of(
        new Design(names("arm", arms), names("stratum", strata), participants), key, SALT);
  }

  private static List<String> names(String what, int count) {
    return IntStream.rangeClosed(1, count).mapToObj(i -> what + "-" + i).toList();
  }

  @Property
  void armsOfAStratumNeverDifferByMoreThanHalfABlock(
      @ForAll @IntRange(min = 2, max = 6) int arms,
      @ForAll @IntRange(min = 1, max = 3) int strata,
      @ForAll @IntRange(min = 1, max = 60) int participants,
      @ForAll @Size(16) byte[] key) {
    Allocation allocation = allocation(arms, strata, participants, key);
    Map<String, Map<String, Integer>> counts = new HashMap<>();
    for (Line line : allocation.lines()) {
      Map<String, Integer> sofar = counts.computeIfAbsent(line.stratum(), s -> new HashMap<>());
      names("arm", arms).forEach(arm -> sofar.putIfAbsent(arm, 0));
      sofar.merge(line.arm(), 1, Integer::sum);
      int most = sofar.values().stream().max(Integer::compare).orElse(0);
      int least = sofar.values().stream().min(Integer::compare).orElse(0);
      assertTrue(most - least <= 3, () -> allocation.text());
      assertEquals(line, allocation.line(line.stratum(), line.number()));
    }
    assertEquals(strata * participants, allocation.lines().size());
  }

  @Property
  void theListComesAgainFromItsKey(
      @ForAll @IntRange(min = 2, max = 4) int arms, @ForAll @Size(32) byte[] key) {
    Allocation one = allocation(arms, 2, 30, key);
    Allocation again = allocation(arms, 2, 30, key.clone());
    assertEquals(one.text(), again.text());
    assertEquals(one.commitment(), again.commitment());
    byte[] other = key.clone();
    other[7] ^= 1;
    assertNotEquals(one.commitment(), allocation(arms, 2, 30, other).commitment());
  }

  @Test
  void aDifferentListHasAnotherCommitment() {
    assertNotEquals(allocation(2, 1, 30, KEY).commitment(), allocation(2, 1, 31, KEY).commitment());
    byte[] salt = SALT.clone();
    salt[0] ^= 1;
    Design design = new Design(names("arm", 2), names("stratum", 1), 30);
    assertNotEquals(
        Allocation.of(design, KEY, SALT).commitment(),
        Allocation.of(design, KEY, salt).commitment());
  }

  @Property
  void labelsFollowFromTheKeyAndSayNothingOfTheArms(
      @ForAll @IntRange(min = 1, max = 3) int strata,
      @ForAll @IntRange(min = 1, max = 40) int participants,
      @ForAll @Size(16) byte[] key) {
    List<Allocation.Label> labels = allocation(2, strata, participants, key).labels();
    assertEquals(labels, allocation(5, strata, participants, key).labels());
    assertEquals(
        labels.size(), labels.stream().map(Allocation.Label::text).distinct().count(), "the same");
    labels.forEach(
        label -> assertTrue(label.text().matches("[2-9B-DF-HJ-NP-TV-XZ]{6}"), "" + label));
    byte[] other = key.clone();
    other[3] ^= 1;
    List<Allocation.Label> others = allocation(2, strata, participants, other).labels();
    for (int i = 0; i < labels.size(); i++) {
      assertEquals(labels.get(i).stratum(), others.get(i).stratum());
      assertEquals(labels.get(i).number(), others.get(i).number());
      assertNotEquals(labels.get(i).text(), others.get(i).text());
    }
  }

  @Test
  void labelsInTheirOrderSayNothingOfArmStratumAndNumber() {
    Allocation allocation = allocation(2, 2, 4_000, KEY);
    List<Allocation.Label> labels = allocation.labels();
    List<Integer> order =
        IntStream.range(0, labels.size())
            .boxed()
            .sorted(Comparator.comparing(i -> labels.get(i).text()))
            .toList();
    List<Line> lines = allocation.lines();
    int half = order.size() / 2;
    List<Integer> first = order.subList(0, half);
    double tolerance = 4 * Math.sqrt(half) / 2;
    assertEquals(half / 2.0, count(first, i -> lines.get(i).arm().equals("arm-1")), tolerance);
    assertEquals(half / 2.0, count(first, i -> i < half), tolerance);
    assertEquals(half / 2.0, count(first, i -> lines.get(i).number() <= 2_000), tolerance);
    int ups = 0;
    for (int i = 1; i < order.size(); i++) {
      ups += order.get(i) > order.get(i - 1) ? 1 : 0;
    }
    assertEquals(half, ups, 2 * tolerance);
  }

  private static long count(List<Integer> which, IntPredicate wanted) {
    return which.stream().mapToInt(Integer::intValue).filter(wanted).count();
  }

  /**
   * Changed only on purpose: assessors of trials that began know participants by these. Calculated
   * apart by another program from the same counters.
   */
  @Test
  void theLabelsOfOneKeyStayAsTheyAre() {
    assertEquals(
        List.of("RH2VTF", "38BR23", "P45QCX"),
        allocation(2, 1, 3, KEY).labels().stream().map(Allocation.Label::text).toList());
  }

  /** Changed only on purpose: trials that began must get the same list again. */
  @Test
  void theListOfOneKeyStaysAsItIs() {
    assertEquals(EXPECTED, allocation(2, 1, 10, KEY).text());
  }

  private static final String EXPECTED =
      """
      stratum,number,block,arm
      stratum-1,1,1,arm-2
      stratum-1,2,1,arm-1
      stratum-1,3,1,arm-2
      stratum-1,4,1,arm-1
      stratum-1,5,2,arm-1
      stratum-1,6,2,arm-1
      stratum-1,7,2,arm-2
      stratum-1,8,2,arm-2
      stratum-1,9,3,arm-2
      stratum-1,10,3,arm-2
      """;

  @Test
  void everyOrderOfABlockComesUpAboutEquallyOften() {
    Map<String, Integer> orders = new HashMap<>();
    int fours = 0;
    for (int key = 0; key < 6_000; key++) {
      byte[] bytes = KEY.clone();
      bytes[0] = (byte) key;
      bytes[1] = (byte) (key >> 8);
      Allocation allocation = allocation(2, 1, 12, bytes);
      List<Line> first = allocation.lines().stream().filter(l -> l.block() == 1).toList();
      if (first.size() == 4) {
        fours++;
        orders.merge(first.stream().map(Line::arm).toList().toString(), 1, Integer::sum);
      }
    }
    assertEquals(6, orders.size());
    assertEquals(3_000, fours, 200);
    int expected = fours / 6;
    orders.values().forEach(count -> assertEquals(expected, count, 5 * Math.sqrt(expected)));
  }

  @Test
  void impossibleDesignsAreRefused() {
    List<String> two = names("arm", 2);
    List<String> one = List.of("all");
    assertThrows(IllegalArgumentException.class, () -> new Design(List.of("a"), one, 10));
    assertThrows(IllegalArgumentException.class, () -> new Design(List.of("a", "a"), one, 10));
    assertThrows(IllegalArgumentException.class, () -> new Design(List.of("a", "b,c"), one, 10));
    assertThrows(IllegalArgumentException.class, () -> new Design(List.of("a", " "), one, 10));
    assertThrows(IllegalArgumentException.class, () -> new Design(two, List.of(), 10));
    assertThrows(IllegalArgumentException.class, () -> new Design(two, one, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> Allocation.of(new Design(two, one, 10), new byte[15], SALT));
    assertThrows(
        IllegalArgumentException.class, () -> allocation(2, 1, 10, KEY).line("stratum-1", 11));
    assertThrows(IllegalArgumentException.class, () -> allocation(2, 1, 10, KEY).line("x", 1));
  }
}
