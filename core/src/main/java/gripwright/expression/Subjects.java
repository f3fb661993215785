package gripwright.expression;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All subjects of one kind with the values read from them: a column for each property, read once
 * even if many rules refer to it. Not thread-safe.
 */
public final class Subjects {

  private final Object[] things;
  private final Evaluation evaluation;
  private final Map<ExpressionKey, double[]> numbers = new HashMap<>();
  private final Map<ExpressionKey, byte[]> truths = new HashMap<>();
  private final Map<ExpressionKey, @Nullable Object[]> objects = new HashMap<>();
  private final Map<ExpressionKey, Words> words = new HashMap<>();
  private final Map<ExpressionKey, Elements> elements = new HashMap<>();

  /** The elements of one collection property, of all subjects in one list. */
  static final class Elements {
    /** The elements, those of the first thing first. */
    final Subjects things;

    /** For each subject the position of its first element; at the end the number of elements. */
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

    /** For each subject the position of its word, from 1; 0 if it is missing. */
    final int[] places;

    private Words(List<String> known, int[] places) {
      this.known = known;
      this.places = places;
    }
  }

  /** Creates subjects in a fixed order. */
  public Subjects(List<?> things, Evaluation evaluation) {
    this.things = things.toArray();
    this.evaluation = evaluation;
  }

  /** Returns the number of subjects. */
  public int size() {
    return things.length;
  }

  /** Returns a subject by its position. */
  public Object at(int place) {
    return things[place];
  }

  /** Returns a numeric property of each subject; NaN if it is missing. */
  double[] numbers(ExpressionKey key, Expression.Get get, PropertyReaders.NumberAccess access) {
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

  /** Returns a boolean property of each subject: {@link ExpressionCompiler#NO} and so on. */
  byte[] truths(ExpressionKey key, Expression.Get get, PropertyReaders.TruthAccess access) {
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

  /** Returns a word property of each subject. */
  Words words(ExpressionKey key, Expression e) {
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

  /** Returns the elements of a collection property of each subject. */
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

  /**
   * Returns a word or object of each subject, or the subjects themselves; null if it is missing.
   */
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
