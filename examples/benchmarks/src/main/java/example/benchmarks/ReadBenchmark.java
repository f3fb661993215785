package example.benchmarks;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import example.benchmarks.grammar.GripLexer;
import example.benchmarks.grammar.GripParser;
import gripwright.language.Compilation;
import gripwright.language.Gripwright;
import gripwright.language.Reading;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import java.util.concurrent.TimeUnit;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Measures how long it takes to read and compile one plan file and to do parts of that, and how
 * long other readers take for the same text or the same facts. All of them start from a string in
 * memory.
 *
 * <p>Not final, since JMH derives a class from it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 10, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReadBenchmark {

  private static final String NAME = "season.grip";

  private final ObjectMapper json = new ObjectMapper();
  private final YAMLMapper yaml = new YAMLMapper();

  /** Lines of the file. */
  @Param("1000")
  int lines = PlanFile.STANDARD_LINES;

  private String text = "";
  private String asJson = "";
  private String asYaml = "";

  /** Writes the file. */
  @Setup
  public void write() {
    text = PlanFile.ofLines(lines);
    asJson = Facts.json(text);
    asYaml = Facts.yaml(text);
  }

  /** Reads the text and compiles every plan in it; so much code takes long to settle. */
  @Benchmark
  @Warmup(iterations = 40, time = 1)
  public Compilation readAndCompile() {
    return Gripwright.read(NAME, text).compile();
  }

  /** Reads the text into typed objects without compiling the plans. */
  @Benchmark
  public Reading read() {
    return Gripwright.read(NAME, text);
  }

  /** Creates the lossless tree and the records without resolving names or units. */
  @Benchmark
  public ParsedFile parse() {
    return Reader.parse(SourceFile.of(NAME, text));
  }

  /** Parses the same text with the same grammar in ANTLR's fast mode: tokens and a tree. */
  @Benchmark
  public ParserRuleContext bareAntlr() {
    GripLexer lexer = new GripLexer(CharStreams.fromString(text));
    lexer.removeErrorListeners();
    GripParser parser = new GripParser(new CommonTokenStream(lexer));
    parser.removeErrorListeners();
    parser.setErrorHandler(new BailErrorStrategy());
    parser.getInterpreter().setPredictionMode(PredictionMode.SLL);
    return parser.file();
  }

  /** Reads the facts from JSON into a tree. */
  @Benchmark
  public JsonNode jacksonJson() throws JsonProcessingException {
    return json.readTree(asJson);
  }

  /** Reads the facts from YAML into a tree. */
  @Benchmark
  public JsonNode jacksonYaml() throws JsonProcessingException {
    return yaml.readTree(asYaml);
  }
}
