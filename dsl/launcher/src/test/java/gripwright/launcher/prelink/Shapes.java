package gripwright.launcher.prelink;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntBinaryOperator;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.function.LongFunction;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;

/** Lambdas and method references of every shape; their results are strings. */
public final class Shapes implements Callable<String> {

  private final List<Object> results = new ArrayList<>();
  private final int seed;

  /** Created by reflection, once as it is and once prelinked. */
  public Shapes() {
    this.seed = 7;
  }

  private Shapes(int seed) {
    this.seed = seed;
  }

  /** A function whose type arguments narrow what it takes and returns. */
  private interface Narrow<T extends Number> {
    T apply(T one, T other);

    default Narrow<T> twice() {
      return (one, other) -> apply(apply(one, other), other);
    }

    private static int hidden(int value) {
      IntFunction<Integer> inInterface = i -> i + 1;
      return inInterface.apply(value);
    }
  }

  /** A method that its user refers to by way of {@code super}. */
  private static class Base {
    String name() {
      return "base";
    }
  }

  private static final class Derived extends Base {
    @Override
    String name() {
      Supplier<String> above = super::name;
      return above.get() + " of derived";
    }

    private String lambdaOfItsOwn() {
      Supplier<String> own = () -> "own " + name();
      return own.get();
    }
  }

  @Override
  public String call() throws Exception {
    captures();
    conversions();
    references();
    nested();
    return results.toString();
  }

  private void captures() {
    boolean flag = results.isEmpty();
    byte small = 3;
    char letter = 'x';
    short number = 300;
    int count = 70_000;
    long many = 1L << 40;
    float share = 0.25f;
    double exact = 1.0 / 3;
    String word = "word";
    int[] array = {1, 2, 3};
    Supplier<String> nothing = () -> "nothing";
    Supplier<List<Object>> all =
        () ->
            List.of(
                flag, small, letter, number, count, many, share, exact, word, array.length, seed);
    BiFunction<Long, Double, String> between =
        (more, part) -> many + more + " and " + (exact + part) + word;
    results.add(nothing.get());
    results.add(all.get());
    results.add(between.apply(2L, 0.5));
  }

  private void conversions() throws Exception {
    ToIntFunction<Integer> unboxed = i -> i + 1;
    Function<Integer, Integer> boxed = Math::abs;
    ToLongFunction<Integer> widened = Integer::intValue;
    ToDoubleFunction<Long> fromLong = Long::longValue;
    ToDoubleFunction<Float> fromFloat = Float::floatValue;
    ToDoubleFunction<Character> fromCharacter = c -> c;
    IntToDoubleFunction root = Math::sqrt;
    DoubleUnaryOperator square = d -> d * d;
    LongFunction<Object> asObject = Long::valueOf;
    LongSupplier fromInt = () -> seed;
    BooleanSupplier is = results::isEmpty;
    IntBinaryOperator most = Math::max;
    BinaryOperator<Integer> least = Math::min;
    Callable<Object> called = () -> 'c';
    Narrow<Integer> sum = Integer::sum;
    Narrow<Double> product = (one, other) -> one * other;
    List<String> seen = new ArrayList<>();
    Consumer<String> dropped = seen::add;
    Consumer<AtomicLong> droppedTwoWide = AtomicLong::incrementAndGet;
    Function<Long, Object> boxedAgain = Long::longValue;
    Supplier<Integer> three = () -> 3;
    Map<String, Short> numbers = Map.of("five", (short) 5);
    DoubleSupplier fromSupplier = three::get;
    ToLongFunction<String> fromMap = numbers::get;
    results.add(fromSupplier.getAsDouble());
    results.add(fromMap.applyAsLong("five"));
    dropped.accept("seen");
    AtomicLong counter = new AtomicLong(1L << 33);
    droppedTwoWide.accept(counter);
    results.addAll(seen);
    results.add(unboxed.applyAsInt(41));
    results.add(boxed.apply(-5));
    results.add(widened.applyAsLong(9));
    results.add(fromLong.applyAsDouble(9L));
    results.add(fromFloat.applyAsDouble(0.5f));
    results.add(fromCharacter.applyAsDouble('a'));
    results.add(root.applyAsDouble(16));
    results.add(square.applyAsDouble(1.5));
    results.add(asObject.apply(8L));
    results.add(fromInt.getAsLong());
    results.add(is.getAsBoolean());
    results.add(most.applyAsInt(3, 4));
    results.add(least.apply(3, 4));
    results.add(called.call());
    results.add(sum.twice().apply(2, 3));
    results.add(product.twice().apply(2.0, 3.0));
    results.add(boxedAgain.apply(6L));
    results.add(counter.get());
    results.add(Narrow.hidden(10));
  }

  private void references() {
    Function<Integer, Shapes> made = Shapes::new;
    Supplier<TreeSet<String>> set = TreeSet::new;
    IntFunction<String[]> array = String[]::new;
    UnaryOperator<String> unbound = String::toUpperCase;
    Predicate<String> bound = "a word"::contains;
    Function<Collection<String>, Integer> ofInterface = Collection::size;
    BiFunction<Shapes, Integer, Integer> hidden = Shapes::plus;
    Function<Integer, Integer> boundHidden = this::plus;
    Function<String, Object> wider = String::length;
    results.add(made.apply(11).seed);
    results.add(set.get().add("one"));
    results.add(array.apply(3).length);
    results.add(unbound.apply("loud"));
    results.add(bound.test("word"));
    results.add(ofInterface.apply(List.of("a", "b")));
    results.add(hidden.apply(this, 5));
    results.add(boundHidden.apply(6));
    results.add(wider.apply("four"));
    results.add(new Derived().name());
    results.add(new Derived().lambdaOfItsOwn());
  }

  private int plus(int more) {
    return seed + more;
  }

  private void nested() {
    Function<Integer, Function<Integer, Supplier<Integer>>> sum =
        one -> other -> () -> one + other + seed;
    results.add(sum.apply(1).apply(2).get());
    Supplier<Supplier<String>> inner =
        () ->
            new Supplier<>() {
              @Override
              public String get() {
                Supplier<String> deep = () -> "deep " + seed;
                return deep.get();
              }
            };
    results.add(inner.get().get());
    results.add(Arrays.stream(new int[] {3, 1, 2}).mapToObj(i -> "n" + i).sorted().toList());
  }
}
