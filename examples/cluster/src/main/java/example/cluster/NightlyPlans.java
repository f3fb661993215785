package example.cluster;

import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import scala.Tuple3;

/**
 * Compiles the plans of many athletes anew: a folder with a text for each, into a table with the
 * columns {@code file}, {@code plan} and {@code json}.
 */
public final class NightlyPlans {

  private NightlyPlans() {}

  /**
   * Runs the job.
   *
   * @param arguments the folder of {@code .grip} files and the folder of the table (Parquet), which
   *     is replaced
   */
  public static void main(String[] arguments) {
    SparkSession spark = SparkSession.builder().appName("nightly plans").getOrCreate();
    try {
      run(spark, arguments[0], arguments[1]);
    } finally {
      spark.stop();
    }
  }

  static void run(SparkSession spark, String texts, String table) {
    plans(spark, texts).write().mode(SaveMode.Overwrite).parquet(table);
  }

  /** Returns a row for each plan, in the order of files and plans. */
  static Dataset<Row> plans(SparkSession spark, String texts) {
    Dataset<Row> files =
        spark
            .read()
            .format("binaryFile")
            .option("pathGlobFilter", "*.grip")
            .load(texts)
            .select(
                functions.element_at(functions.split(functions.col("path"), "/"), -1),
                functions.decode(functions.col("content"), "UTF-8"))
            .repartition(spark.sparkContext().defaultParallelism());
    FlatMapFunction<Row, Tuple3<String, String, String>> compile =
        row ->
            Replan.of(row.getString(0), row.getString(1)).stream()
                .map(each -> new Tuple3<>(each.file(), each.plan(), each.json()))
                .iterator();
    return files
        .flatMap(compile, Encoders.tuple(Encoders.STRING(), Encoders.STRING(), Encoders.STRING()))
        .toDF("file", "plan", "json")
        .sort("file", "plan");
  }
}
