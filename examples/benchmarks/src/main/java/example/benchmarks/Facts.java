package example.benchmarks;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import gripwright.language.source.SourceFile;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.DateText;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.ParsedFile;
import gripwright.language.syntax.Reader;
import gripwright.language.syntax.Step;
import gripwright.language.syntax.Syntax;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import java.lang.reflect.RecordComponent;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The contents of a plan file as JSON and as YAML, as somebody without the plan language might
 * store them: an object for each statement, with its type where several are possible; a list for
 * each body; dates as text; a quantity as its number under the name of its unit, such as {@code
 * {"kg": 61.5}}.
 *
 * <p>Expressions (levels, rules, parameters) stay text, which makes less work for a reader of JSON
 * or YAML than for ours. Comments are left out.
 */
final class Facts {

  private final ParsedFile file;
  private final ObjectMapper mapper = new ObjectMapper();

  private Facts(ParsedFile file) {
    this.file = file;
  }

  /** Writes what a text says as indented JSON. */
  static String json(String text) {
    return written(new ObjectMapper(), text);
  }

  /** Writes what a text says as YAML in block style, with quotes only where they are needed. */
  static String yaml(String text) {
    YAMLFactory plain =
        YAMLFactory.builder()
            .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
            .enable(YAMLGenerator.Feature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
            .build();
    return written(new YAMLMapper(plain), text);
  }

  private static String written(ObjectMapper mapper, String text) {
    try {
      return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(tree(text));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a tree can always be written", impossible);
    }
  }

  /**
   * Returns what a text says.
   *
   * @throws IllegalArgumentException if the text has a mistake, since the result would be
   *     incomplete
   */
  static JsonNode tree(String text) {
    ParsedFile file = Reader.parse(SourceFile.of("season.grip", text));
    if (!file.findings().isEmpty()) {
      throw new IllegalArgumentException("the text does not parse: " + file.findings().get(0));
    }
    return new Facts(file).list(file.declarations());
  }

  private ArrayNode list(List<?> parts) {
    ArrayNode list = mapper.createArrayNode();
    parts.forEach(part -> list.add(node(part)));
    return list;
  }

  private JsonNode node(Object part) {
    if (part instanceof Word word) {
      return mapper.getNodeFactory().textNode(word.text());
    }
    if (part instanceof Text text) {
      return mapper.getNodeFactory().textNode(text.value());
    }
    if (part instanceof DateText date) {
      return mapper.getNodeFactory().textNode(date.value().toString());
    }
    if (part instanceof Amount amount) {
      return amount(amount);
    }
    if (part instanceof Expr expression) {
      return mapper.getNodeFactory().textNode(file.source().text(file.span(expression.id())));
    }
    if (part instanceof Boolean yes) {
      return mapper.getNodeFactory().booleanNode(yes);
    }
    if (part instanceof Enum<?> word) {
      return mapper.getNodeFactory().textNode(word.name());
    }
    if (part instanceof List<?> parts) {
      return list(parts);
    }
    if (part instanceof Syntax statement) {
      return statement(statement);
    }
    throw new IllegalStateException("a part of a new kind: " + part.getClass());
  }

  private JsonNode amount(Amount amount) {
    double value = amount.value();
    JsonNode number =
        value == Math.rint(value)
            ? mapper.getNodeFactory().numberNode((int) value)
            : mapper.getNodeFactory().numberNode(value);
    return amount.unit() == null
        ? number
        : mapper.createObjectNode().set(amount.unit().symbol(), number);
  }

  /** Returns a statement as an object with its type and all values that are present. */
  private ObjectNode statement(Syntax statement) {
    ObjectNode object = mapper.createObjectNode();
    if (isOneOfSeveralTypes(statement.getClass())) {
      object.put("type", statement.getClass().getSimpleName());
    }
    for (RecordComponent component : statement.getClass().getRecordComponents()) {
      Object value = value(statement, component);
      boolean usual = value == Step.Bound.NONE;
      if (value == null || value.equals(false) || usual || component.getName().equals("id")) {
        continue;
      }
      object.set(component.getName(), node(value));
    }
    return object;
  }

  /**
   * Returns whether several types of statement are possible here, so that the type must be written.
   */
  private static boolean isOneOfSeveralTypes(Class<? extends Syntax> type) {
    return !List.of(type.getInterfaces()).equals(List.of(Syntax.class));
  }

  private static @Nullable Object value(Syntax statement, RecordComponent component) {
    try {
      return component.getAccessor().invoke(statement);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("parts of the syntax are public records", impossible);
    }
  }
}
