package gripwright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ability.Ability;
import gripwright.ability.GradeScale;
import gripwright.athlete.Athlete;
import gripwright.athlete.Injury;
import gripwright.finding.Clause;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFit;
import gripwright.grip.Prerequisites;
import gripwright.grip.Setup;
import gripwright.grip.StandardGrips;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Hand;
import gripwright.hand.HandShape;
import gripwright.hand.JointLimits;
import gripwright.hand.Structure;
import gripwright.log.Log;
import gripwright.log.LogEntry;
import gripwright.pose.PalmLimits;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Scheme;
import gripwright.protocol.StandardProtocols;
import gripwright.quantity.Angle;
import gripwright.quantity.Dimension;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Range;
import gripwright.strength.Effort;
import gripwright.strength.Posture;
import gripwright.strength.StrengthTest;
import java.io.IOException;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Null is never accepted: each public constructor, static method and builder of the packages that
 * say so is given null for each of its arguments in turn, and the exception names that argument.
 */
class NullIsRefusedTest {

  private static final Set<String> PACKAGES =
      Set.of("ability", "athlete", "grip", "hand", "log", "protocol", "quantity", "strength");

  private static final Set<Class<?>> WRITTEN_BY_A_COACH =
      Set.of(Advance.class, Block.class, Exercise.class, Plan.class, SessionPlan.class);

  private static final Map<Class<?>, Object> SAMPLES = samples();

  private static Map<Class<?>, Object> samples() {
    Map<Class<?>, Object> samples = new HashMap<>();
    Grip grip = StandardGrips.HALF_CRIMP;
    Length edge = Length.ofMillimetres(20);
    Setup setup = Setup.of(grip, edge);
    Load load = Load.ofKilograms(60);
    Protocol protocol = StandardProtocols.all().get(0);
    Exercise line = Exercise.of(protocol, grip, edge);
    Hand hand = Hand.ofLength(Length.ofMillimetres(180));
    HandShape shape = HandShape.of(hand);
    StrengthTest.Held held = new StrengthTest.Held(Duration.ofSeconds(7), load);
    LocalDate day = LocalDate.of(2027, 1, 4);
    Athlete athlete =
        Athlete.named("runa")
            .born(LocalDate.of(1998, 3, 14))
            .bodyMass(load)
            .trained(30)
            .ability(Ability.of(GradeScale.FRENCH, "7b"))
            .hand(hand)
            .available(DayOfWeek.MONDAY, Duration.ofMinutes(90))
            .edge(edge)
            .build();
    GripFit fit = GripFit.of(grip, shape, edge);
    Block block = Block.named("base", 4).session(SessionPlan.of("strength", 2, line)).build();
    for (Object sample :
        new Object[] {
          "runa",
          LocalTime.of(18, 0),
          Clause.of("cause.pain-of"),
          grip,
          edge,
          setup,
          load,
          protocol,
          line,
          hand,
          shape,
          held,
          day,
          athlete,
          fit,
          fit.pose(),
          Duration.ofSeconds(7),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalInt.empty(),
          0.5,
          Angle.ofDegrees(90),
          Dimension.MASS,
          FlexionRange.degrees(0, 90),
          JointLimits.UNKNOWN,
          PalmLimits.USUAL,
          SessionPlan.of("strength", 2, line),
          SessionPlan.Content.of(line),
          block.content(),
          block,
          new Advance.LoadByShare(0.02),
          new StrengthTest.Series(
              Duration.ofSeconds(7), Duration.ofSeconds(3), Collections.nCopies(24, load)),
          Posture.of(List.of(fit)),
          PlannedTest.every(List.of(setup), Duration.ofSeconds(7), 4),
          FingerSet.FOUR,
          Prerequisites.NONE,
          new Scheme.Hold(Duration.ofSeconds(7), Level.ofMax(50)),
          line.scheme(),
          new Effort(7, load),
          athlete.ability(),
          Log.empty("runa"),
          new StrengthTest(day, setup, held),
          new LogEntry.BodyMass(day, load),
          LogEntry.Done.builder("own", setup).build(),
          LogEntry.Climbed.builder(day, true, "hard", Duration.ofHours(2)).build(),
          LogEntry.Pain.builder(day, Finger.RING, 3).build(),
          Injury.builder(Finger.RING, Structure.A2, day).cleared(day).build(),
          Exercise.Weights.STANDARD,
          athlete.equipment()
        }) {
      samples.put(sample.getClass(), sample);
    }
    return samples;
  }

  @Test
  void everyArgumentThatIsNullIsNamed() throws Exception {
    List<String> silent = new ArrayList<>();
    int[] asked = new int[1];
    for (Class<?> type : types()) {
      for (Executable each : executables(type)) {
        Parameter[] parameters = each.getParameters();
        for (int i = 0; i < parameters.length; i++) {
          if (!parameters[i].getType().isPrimitive()) {
            asked[0]++;
            answer(each, i).ifPresent(silent::add);
          }
        }
      }
    }
    assertEquals(List.of(), silent, () -> String.join("\n", silent));
    assertTrue(asked[0] > 300, () -> "only " + asked[0] + " arguments");
  }

  /** Returns a description of a wrong response to null; empty if the argument was named. */
  private static Optional<String> answer(Executable each, int index) throws Exception {
    Parameter[] parameters = each.getParameters();
    String name = parameters[index].getName();
    String where = each.getDeclaringClass().getName() + "." + each.getName() + "(" + name + ")";
    Object[] arguments = new Object[parameters.length];
    for (int i = 0; i < parameters.length; i++) {
      try {
        arguments[i] = i == index ? null : sample(parameters[i].getType(), 0);
      } catch (InvocationTargetException e) {
        return Optional.of(where + " has no sample of " + parameters[i] + ": " + e.getCause());
      }
    }
    try {
      if (each instanceof Constructor<?> constructor) {
        constructor.newInstance(arguments);
      } else {
        Object on = Modifier.isStatic(each.getModifiers()) ? null : builder(each);
        ((Method) each).invoke(on, arguments);
      }
    } catch (InvocationTargetException thrown) {
      Throwable cause = thrown.getCause();
      boolean named =
          cause instanceof NullPointerException
              && String.valueOf(cause.getMessage()).contains(name);
      return named ? Optional.empty() : Optional.of(where + ": " + cause);
    }
    return Optional.of(where + " is accepted");
  }

  private static Object builder(Executable of) throws ReflectiveOperationException {
    Class<?> type = of.getDeclaringClass();
    Class<?> built = type.getDeclaringClass();
    boolean named =
        Arrays.stream(built.getMethods())
            .anyMatch(m -> m.getName().equals("named") && m.getParameterCount() == 1);
    return named
        ? built.getMethod("named", String.class).invoke(null, "own")
        : built.getMethod("toBuilder").invoke(sample(built, 0));
  }

  private static List<Executable> executables(Class<?> type) {
    List<Executable> all = new ArrayList<>();
    all.addAll(Arrays.asList(type.getConstructors()));
    boolean builder = type.getSimpleName().equals("Builder");
    for (Method method : type.getDeclaredMethods()) {
      boolean open = Modifier.isPublic(method.getModifiers()) && !method.isSynthetic();
      boolean given = Modifier.isStatic(method.getModifiers()) || builder;
      if (open && given && !(type.isEnum() && method.getName().equals("valueOf"))) {
        all.add(method);
      }
    }
    return all;
  }

  private static List<Class<?>> types() throws IOException, URISyntaxException {
    Path classes = Path.of(Range.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    List<Class<?>> types = new ArrayList<>();
    try (Stream<Path> files = Files.walk(classes.resolve("gripwright"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
        String name = classes.relativize(file).toString().replace(".class", "").replace('/', '.');
        if (name.endsWith("-info")) {
          continue;
        }
        Class<?> type = load(name);
        if (isOpen(type) && isMeant(type)) {
          types.add(type);
        }
      }
    }
    return types;
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name, false, Range.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new AssertionError(name, e);
    }
  }

  private static boolean isOpen(Class<?> type) {
    for (Class<?> each = type; each != null; each = each.getDeclaringClass()) {
      if (!Modifier.isPublic(each.getModifiers())) {
        return false;
      }
    }
    return !type.isAnonymousClass() && !Modifier.isAbstract(type.getModifiers());
  }

  private static boolean isMeant(Class<?> type) {
    String own = type.getPackageName().replace("gripwright.", "");
    Class<?> outer = type.getDeclaringClass() == null ? type : type.getDeclaringClass();
    return PACKAGES.contains(own) || WRITTEN_BY_A_COACH.contains(outer);
  }

  private static Object sample(Class<?> type, int depth) throws ReflectiveOperationException {
    if (type.isPrimitive()) {
      return primitive(type);
    }
    if (type.isEnum()) {
      return type.getEnumConstants()[0];
    }
    if (type.isArray()) {
      return Array.newInstance(type.getComponentType(), 0);
    }
    for (Map.Entry<Class<?>, Object> sample : SAMPLES.entrySet()) {
      if (type.isAssignableFrom(sample.getKey()) && type != Object.class) {
        return sample.getValue();
      }
    }
    Map<Class<?>, Object> empty =
        Map.of(
            List.class, List.of(),
            Set.class, Set.of(),
            Collection.class, List.of(),
            Map.class, Map.of(),
            SortedMap.class, new TreeMap<>(),
            Object.class, "runa",
            Class.class, LogEntry.BodyMass.class,
            Function.class, Function.identity(),
            Predicate.class, (Predicate<Object>) any -> true,
            DoubleUnaryOperator.class, DoubleUnaryOperator.identity());
    if (empty.containsKey(type)) {
      return empty.get(type);
    }
    if (type.isSealed()) {
      return sample(type.getPermittedSubclasses()[0], depth + 1);
    }
    if (type.isRecord() && depth < 6) {
      Constructor<?> constructor = type.getConstructors()[0];
      Object[] arguments = new Object[constructor.getParameterCount()];
      for (int i = 0; i < arguments.length; i++) {
        arguments[i] = sample(constructor.getParameterTypes()[i], depth + 1);
      }
      return constructor.newInstance(arguments);
    }
    throw new AssertionError("no sample of " + type);
  }

  private static Object primitive(Class<?> type) {
    if (type == boolean.class) {
      return false;
    }
    if (type == int.class) {
      return 1;
    }
    return type == long.class ? (Object) 1L : (Object) 0.5;
  }
}
