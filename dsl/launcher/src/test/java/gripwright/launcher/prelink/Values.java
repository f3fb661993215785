package gripwright.launcher.prelink;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** Records with every kind of component: their hash codes, strings and equality, as text. */
public final class Values implements Callable<String> {

  private static final int[] SHARED = {1, 2};

  private record All(
      boolean flag,
      byte small,
      char letter,
      short number,
      int count,
      long many,
      float share,
      double exact,
      String word,
      int[] array,
      Object any) {}

  private record One(String word) {}

  private record Nothing() {}

  /** Overrides equals and leaves the other methods to the compiler. */
  private record Own(String word, int number) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Own own && own.word.equalsIgnoreCase(word);
    }

    @Override
    public int hashCode() {
      return 1;
    }
  }

  private static All all(int changed) {
    return new All(
        changed == 0,
        (byte) (changed == 1 ? -5 : 5),
        changed == 2 ? 'y' : 'x',
        (short) (changed == 3 ? -300 : 300),
        changed == 4 ? 7 : 8,
        changed == 5 ? 1L << 40 : 1L << 41,
        changed == 6 ? Float.NaN : changed == 7 ? -0.0f : 0.0f,
        changed == 8 ? Double.NaN : changed == 9 ? -0.0 : 0.0,
        changed == 10 ? "other" : "word",
        changed == 11 ? null : SHARED,
        changed == 12 ? null : changed == 13 ? new One("any") : List.of(1, 2));
  }

  @Override
  public String call() {
    List<Object> results = new ArrayList<>();
    List<Object> values = new ArrayList<>();
    for (int changed = 0; changed <= 14; changed++) {
      values.add(all(changed));
      values.add(all(changed));
    }
    values.addAll(
        List.of(
            new One("a"),
            new One("a"),
            new One("b"),
            new Nothing(),
            new Nothing(),
            new Own("a", 1),
            new Own("A", 2)));
    for (Object value : values) {
      results.add(value instanceof All all && all.array() != null ? "array" : value.hashCode());
      results.add(value.toString().replaceAll("\\[I@[0-9a-f]+", "array"));
      results.add(value.equals(null));
      values.forEach(other -> results.add(value.equals(other)));
    }
    results.add(all(11).hashCode());
    return results.toString();
  }
}
