package example.benchmarks;

import dev.cel.bundle.Cel;
import dev.cel.bundle.CelBuilder;
import dev.cel.bundle.CelFactory;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.CelType;
import dev.cel.common.types.ListType;
import dev.cel.common.types.MapType;
import dev.cel.common.types.SimpleType;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The rules of {@code rules.cel}, each a checked and planned program over a map of variables. */
final class CelRules {

  /** The kinds of facts, by the word for them in the text. */
  private static final List<Class<? extends Record>> KINDS =
      List.of(
          RuleFacts.Exercise.class,
          RuleFacts.Session.class,
          RuleFacts.Week.class,
          RuleFacts.Pair.class);

  private record Program(String rule, CelRuntime.Program program) {}

  private final Map<String, List<Program>> byKind = new HashMap<>();

  CelRules() {
    CelBuilder builder = CelFactory.plannerCelBuilder();
    builder.setStandardMacros(CelStandardMacro.STANDARD_MACROS);
    variables().forEach(builder::addVar);
    Cel cel = builder.build();
    try {
      for (String line : Resource.text("rules.cel").lines().toList()) {
        if (!line.startsWith("#")) {
          String[] parts = line.split("\\|", 3);
          CelRuntime.Program program = cel.createProgram(cel.compile(parts[2].strip()).getAst());
          byKind
              .computeIfAbsent(parts[1].strip(), kind -> new ArrayList<>())
              .add(new Program(parts[0].strip(), program));
        }
      }
    } catch (CelValidationException | CelEvaluationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, CelType> variables() {
    Map<String, CelType> types = new HashMap<>();
    for (Class<? extends Record> kind : KINDS) {
      for (RecordComponent component : kind.getRecordComponents()) {
        types.put(component.getName(), type(component.getType()));
      }
    }
    return types;
  }

  private static CelType type(Class<?> type) {
    if (type == double.class) {
      return SimpleType.DOUBLE;
    }
    if (type == int.class || type == long.class) {
      return SimpleType.INT;
    }
    if (type == boolean.class) {
      return SimpleType.BOOL;
    }
    return type == String.class
        ? SimpleType.STRING
        : ListType.create(MapType.create(SimpleType.STRING, SimpleType.DYN));
  }

  /** Facts of one kind as the variables of programs. */
  record Variables(String kind, List<Map<String, Object>> facts) {}

  /** Returns facts as variables, so that no program needs reflection. */
  static List<Variables> variables(RuleFacts facts) {
    return List.of(
        variables(facts.exercises()),
        variables(facts.sessions()),
        variables(facts.weeks()),
        variables(facts.pairs()));
  }

  private static Variables variables(List<? extends Record> facts) {
    String kind = facts.get(0).getClass().getSimpleName().toLowerCase(Locale.ROOT);
    return new Variables(kind, facts.stream().map(CelRules::map).toList());
  }

  private static Map<String, Object> map(Record fact) {
    Map<String, Object> map = new HashMap<>();
    try {
      for (RecordComponent component : fact.getClass().getRecordComponents()) {
        map.put(component.getName(), value(component.getAccessor().invoke(fact)));
      }
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
    return map;
  }

  private static Object value(Object value) {
    if (value instanceof Integer number) {
      return number.longValue();
    }
    return value instanceof List<?> list
        ? list.stream().map(fact -> map((Record) fact)).toList()
        : value;
  }

  /** Evaluates every program for every fact of its kind. */
  RuleBreaches check(List<Variables> all) {
    RuleBreaches breaches = new RuleBreaches();
    try {
      for (Variables variables : all) {
        for (Program program : byKind.getOrDefault(variables.kind(), List.of())) {
          for (Map<String, Object> fact : variables.facts()) {
            if ((Boolean) program.program().eval(fact)) {
              breaches.add(program.rule(), fact);
            }
          }
        }
      }
    } catch (CelEvaluationException e) {
      throw new IllegalStateException(e);
    }
    return breaches;
  }
}
