package example.cluster;

import gripwright.compare.Comparison;
import gripwright.compare.ComparisonParts;
import gripwright.compare.ComparisonParts.Part;
import gripwright.compare.ComparisonResult;
import gripwright.compare.RunOptions;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.sql.SparkSession;
import scala.Tuple2;

/**
 * Runs one comparison on many machines: each evaluates some ranges of draws and persons, the driver
 * puts them together.
 */
public final class ComparedDraws {

  private ComparedDraws() {}

  /**
   * Runs the job.
   *
   * @param arguments a file, the name of a comparison in it, and the JSON file to write; both files
   *     are on the driver
   * @throws IOException if a file can't be read or written
   */
  public static void main(String[] arguments) throws IOException {
    SparkSession spark = SparkSession.builder().appName("compared draws").getOrCreate();
    try {
      String text = Files.readString(Path.of(arguments[0]));
      Files.writeString(Path.of(arguments[2]), run(spark, text, arguments[1]));
    } finally {
      spark.stop();
    }
  }

  /** Returns the document of a comparison, as one machine gives it. */
  static String run(SparkSession spark, String text, String name) {
    Reading reading = read(text);
    ComparisonParts parts = parts(reading, name);
    List<Part> all = parts.all();
    List<Integer> numbers = IntStream.range(0, all.size()).boxed().toList();
    Map<Part, byte[]> evaluated = new HashMap<>();
    JavaSparkContext context = JavaSparkContext.fromSparkContext(spark.sparkContext());
    FlatMapFunction<Iterator<Integer>, Tuple2<Integer, byte[]>> evaluate =
        some -> evaluate(text, name, some);
    int slices = Math.max(1, Math.min(all.size(), 4 * context.defaultParallelism()));
    context
        .parallelize(numbers, slices)
        .mapPartitions(evaluate)
        .collect()
        .forEach(each -> evaluated.put(all.get(each._1()), each._2()));
    ComparisonResult result = parts.result(RunOptions.standard(), evaluated::get);
    return document(reading, result);
  }

  /** Evaluates some parts; whoever does it reads the text and places the hands once. */
  private static Iterator<Tuple2<Integer, byte[]>> evaluate(
      String text, String name, Iterator<Integer> numbers) {
    List<Tuple2<Integer, byte[]>> evaluated = new ArrayList<>();
    if (numbers.hasNext()) {
      ComparisonParts parts = parts(read(text), name);
      List<Part> all = parts.all();
      numbers.forEachRemaining(
          number -> evaluated.add(new Tuple2<>(number, parts.evaluate(all.get(number)))));
    }
    return evaluated.iterator();
  }

  static Reading read(String text) {
    return Gripwright.read("study.grip", text).orThrow();
  }

  static String document(Reading reading, ComparisonResult result) {
    return Replan.documents(reading).compared(List.of(result), reading.findings());
  }

  private static ComparisonParts parts(Reading reading, String name) {
    Comparison comparison = reading.comparisons().get(name);
    if (comparison == null) {
      throw new IllegalArgumentException("there is no comparison " + name);
    }
    return reading.run(comparison).parts();
  }
}
