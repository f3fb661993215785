package gripwright.expression;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All things of one kind that rules look at, and what was read of them: a column for each property,
 * read once however many rules speak of it. Not thread-safe.
 */
public final class Subjects {

  private final Object[] things;
  private final Evaluation evaluation;
  private final Map<ExpressionKey, double[]> numbers = new HashMap<>();
  private final Map<ExpressionKey, byte[]> truths = new HashMap<>();
  private final Map<ExpressionKey, @Nullable Object[]> objects = new HashMap<>();
  private final Map<ExpressionKey, Words> words = new HashMap<>();
  private final Map<ExpressionKey, Elements> elements = new HashMap<>();

  /** What the collections of one kind hold, of all things in one row. */
  static final class Elements {
    /** The elements, those of the first thing first. */
    final Subjects things;

    /** For each thing the place of its first element; at the end, how many elements there are. */
    final int[] starts;

    private Elements(Subjects things, int[] starts) {
      this.things = things;
      this.starts = starts;
    }
  }

  /** A property that is a word. */
  static final class Words {
    /** Each word that occurs, once. */
    final List<String> known;

    /** For each thing the place of its word, from 1; 0 where it is missing. */
    final int[] places;

    private Words(List<String> known, int[] places) {
      this.known = known;
      this.places = places;
    }
  }

  /** Takes things in an order. */
  public Subjects(List<?> things, Evaluation evaluation) {
    this.things = things.toArray();
    this.evaluation = evaluation;
  }

  /** Returns how many there are. */
  public int size() {
    return things.length;
  }

  /** Returns one by its place. */
  public Object at(int place) {
    return things[place];
  }

  /** Returns a property that is a number, of each thing; NaN where it is missing. */
  double[] numbers(Expression.Get get, PropertyReaders.NumberAccess access) {
    ExpressionKey key = new ExpressionKey(get);
    double[] known = numbers.get(key);
    if (known == null) {
      evaluation.keep(things.length);
      known = new double[things.length];
      @Nullable Object[] of = objects(get.of());
      for (int i = 0; i < known.length; i++) {
        Object thing = of[i];
        known[i] = thing == null ? Double.NaN : access.read().applyAsDouble(thing);
      }
      numbers.put(key, known);
    }
    return known;
  }

  /** Returns a property that is a truth, of each thing: {@link ExpressionCompiler#NO} and so on. */
  byte[] truths(Expression.Get get, PropertyReaders.TruthAccess access) {
    ExpressionKey key = new ExpressionKey(get);
    byte[] known = truths.get(key);
    if (known == null) {
      evaluation.keep(things.length);
      known = new byte[things.length];
      @Nullable Object[] of = objects(get.of());
      for (int i = 0; i < known.length; i++) {
        Object thing = of[i];
        known[i] =
            thing == null
                ? ExpressionCompiler.UNDECIDED
                : (byte)
                    (access.read().test(thing) ? ExpressionCompiler.YES : ExpressionCompiler.NO);
      }
      truths.put(key, known);
    }
    return known;
  }

  /** Returns a property that is a word, of each thing. */
  Words words(Expression e) {
    ExpressionKey key = new ExpressionKey(e);
    Words read = words.get(key);
    if (read == null) {
      evaluation.keep(things.length);
      Map<String, Integer> places = new LinkedHashMap<>();
      @Nullable Object[] of = objects(e);
      int[] ofThings = new int[of.length];
      for (int i = 0; i < of.length; i++) {
        Object word = of[i];
        ofThings[i] =
            word == null ? 0 : places.computeIfAbsent(word.toString(), w -> places.size() + 1);
      }
      read = new Words(List.copyOf(places.keySet()), ofThings);
      words.put(key, read);
    }
    return read;
  }

  /** Returns what a collection of each thing holds. */
  Elements elements(Expression.Get get, PropertyReaders.ObjectAccess access) {
    ExpressionKey key = new ExpressionKey(get);
    Elements known = elements.get(key);
    if (known == null) {
      evaluation.keep(things.length);
      List<Object> all = new ArrayList<>();
      int[] starts = new int[things.length + 1];
      for (int i = 0; i < things.length; i++) {
        if (access.read().apply(things[i]) instanceof List<?> some) {
          evaluation.keep(some.size());
          all.addAll(some);
        }
        starts[i + 1] = all.size();
      }
      known = new Elements(new Subjects(all, evaluation), starts);
      elements.put(key, known);
    }
    return known;
  }

  /** Returns a word or thing of each thing, or the things themselves; null where it is missing. */
  @Nullable Object[] objects(Expression e) {
    if (!(e instanceof Expression.Get get
        && evaluation.access(get) instanceof PropertyReaders.ObjectAccess access)) {
      return things;
    }
    ExpressionKey key = new ExpressionKey(e);
    @Nullable Object[] known = objects.get(key);
    if (known == null) {
      evaluation.keep(things.length);
      known = new Object[things.length];
      @Nullable Object[] of = objects(get.of());
      for (int i = 0; i < known.length; i++) {
        Object thing = of[i];
        known[i] = thing == null ? null : access.read().apply(thing);
      }
      objects.put(key, known);
    }
    return known;
  }
}
