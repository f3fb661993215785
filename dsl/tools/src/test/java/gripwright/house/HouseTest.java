package gripwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import gripwright.strength.CompletedHold;
import gripwright.strength.StrengthCourse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The rules of the packages: which package may use which, and what no package may do. */
@AnalyzeClasses(
    packages = "gripwright",
    importOptions = {HouseTest.WithoutTests.class, HouseTest.WithoutRelocatedAntlr.class})
final class HouseTest {

  private static final String INTERNAL_SYNTAX = "gripwright.language.syntax.internal..";
  private static final String GENERATED_GRAMMAR = "gripwright.language.syntax.internal.grammar..";
  private static final String RELOCATED_ANTLR = "gripwright.language.syntax.internal.antlr..";

  private static final String[] ANTLR = {"org.antlr..", RELOCATED_ANTLR};
  private static final String JACKSON = "com.fasterxml.jackson..";
  private static final String BIWEEKLY = "biweekly..";

  @ArchTest
  static void eachRoomUsesOnlyWhatTheTableAllows(JavaClasses house) {
    List<Executable> rows = new ArrayList<>();
    for (String room : Rooms.all()) {
      Set<String> allowed = Rooms.reachableFrom(room);
      ArchRule rule =
          classes()
              .that(areIn(room))
              .should()
              .onlyDependOnClassesThat(
                  not(resideInAPackage("gripwright.."))
                      .or(resideInAPackage(RELOCATED_ANTLR))
                      .or(areInOneOf(allowed)))
              .because("'" + room + "' may use only " + allowed + ": each room knows its left");
      rows.add(() -> rule.check(house));
    }
    Assertions.assertAll(rows);
  }

  @ArchTest
  static final ArchRule everyClassHasARoom =
      classes()
          .should(areInSomeRoom())
          .because("a package outside the table is a package nobody decided on; add a row");

  @ArchTest
  static void everyRoomHasAClass(JavaClasses house) {
    Set<String> lived = new TreeSet<>();
    house.forEach(type -> lived.add(roomOf(type)));
    Set<String> empty = new TreeSet<>(Rooms.all());
    empty.removeAll(lived);
    Assertions.assertEquals(Set.of(), empty, "a room without a class: take its row away");
  }

  @ArchTest
  static void everyArrowOfTheTableIsUsed(JavaClasses house) {
    Set<String> used = new TreeSet<>();
    for (JavaClass type : house) {
      String room = roomOf(type);
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        String other = roomOf(baseOf(dependency.getTargetClass()));
        used.add(arrow(room, other));
        if (Rooms.isCore(other)) {
          used.add(arrow(room, Rooms.CORE));
        }
      }
    }
    Set<String> unused = new TreeSet<>();
    for (String room : Rooms.all()) {
      Rooms.mayUse(room).forEach(other -> unused.add(arrow(room, other)));
    }
    unused.removeAll(used);
    Assertions.assertEquals(Set.of(), unused, "a door that no class uses: take it away");
  }

  private static String arrow(String room, String other) {
    return room + " -> " + other;
  }

  @Test
  void noArrowOfTheTableFollowsFromOthers() {
    Set<String> spare = new TreeSet<>();
    for (String room : Rooms.all()) {
      for (String arrow : Rooms.mayUse(room)) {
        for (String other : Rooms.mayUse(room)) {
          if (!other.equals(arrow) && Rooms.reachableFrom(other).containsAll(Rooms.of(arrow))) {
            spare.add(arrow(room, arrow) + ", by " + other);
          }
        }
      }
    }
    Assertions.assertEquals(Set.of(), spare, "an arrow that can go");
  }

  /** Most parameters of a method; more should become a type of their own. */
  private static final int MOST_PARAMETERS = 6;

  @ArchTest
  static void noLongListsOfParameters(JavaClasses house) {
    Set<String> found = new TreeSet<>();
    for (JavaClass type : house) {
      if (type.isRecord()
          || type.isEnum()
          || resideInAPackage(GENERATED_GRAMMAR).test(type)
          || type.isAnonymousClass()) {
        continue;
      }
      for (JavaCodeUnit unit : type.getCodeUnits()) {
        if (unit.getRawParameterTypes().size() > MOST_PARAMETERS
            && !unit.getModifiers().contains(JavaModifier.SYNTHETIC)) {
          found.add(type.getName() + "." + unit.getName());
        }
      }
    }
    Assertions.assertEquals(Set.of(), found, "more than six parameters are a type of their own");
  }

  @ArchTest
  static final ArchRule loadsFollowTestsAlone =
      noClasses()
          .that()
          .resideInAnyPackage("gripwright.planning..", "gripwright.rule..", "gripwright.fatigue..")
          .should()
          .dependOnClassesThat(
              assignableTo(StrengthCourse.class).or(assignableTo(CompletedHold.class)))
          .because(
              "a completed hold that raised a load would make the next one heavier, and so on");

  @ArchTest
  static final ArchRule noCycles =
      slices()
          .assignedFrom(new Packages())
          .should()
          .beFreeOfCycles()
          .because("two packages that need each other are one package in two folders");

  @ArchTest
  static final ArchRule classFilesAreWrittenInOneRoom =
      noClasses()
          .that()
          .resideOutsideOfPackage("gripwright.launcher.prelink..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.objectweb.asm..")
          .because("what Java loads is as it was compiled; only the launcher's copies are changed");

  @ArchTest
  static final ArchRule internalSyntaxIsUsedBySyntaxOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("gripwright.language.syntax..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(INTERNAL_SYNTAX)
          .because("the parser must stay replaceable");

  @ArchTest
  static final ArchRule antlrStaysBehindItsWall =
      noClasses()
          .that()
          .resideOutsideOfPackage(INTERNAL_SYNTAX)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(ANTLR)
          .because("one internal package knows ANTLR, so that the parser can be replaced");

  @ArchTest
  static final ArchRule jacksonStaysInExport =
      noClasses()
          .that()
          .resideOutsideOfPackage("gripwright.export..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(JACKSON)
          .because("the domain and the language must not bring a JSON library to their hosts");

  @ArchTest
  static final ArchRule biweeklyStaysWithCalendars =
      noClasses()
          .that()
          .resideOutsideOfPackage("gripwright.export.calendar..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(BIWEEKLY)
          .because("one package writes calendars, so that their library can be replaced");

  @ArchTest
  static final ArchRule noBiweeklyInSignatures =
      classes()
          .should(offerNoTypeFrom(resideInAPackage(BIWEEKLY), "gripwright.export.."))
          .because("a host must never see which library writes calendars");

  @ArchTest
  static final ArchRule noAntlrInSignatures =
      classes()
          .that()
          .resideOutsideOfPackage(GENERATED_GRAMMAR)
          .should(offerNoTypeFrom(resideInAnyPackage(ANTLR), INTERNAL_SYNTAX))
          .because("a host must never see which parser we use");

  @ArchTest
  static final ArchRule noJacksonInSignatures =
      classes()
          .that()
          .resideOutsideOfPackage(GENERATED_GRAMMAR)
          .should(offerNoTypeFrom(resideInAPackage(JACKSON), "gripwright.export.."))
          .because("a host must never see which JSON library we use");

  @ArchTest
  static final ArchRule publicClassesAreClosed =
      classes()
          .that()
          .arePublic()
          .and()
          .resideOutsideOfPackage(GENERATED_GRAMMAR)
          .should(beFinalSealedRecordEnumOrInterface())
          .because("a class that can be extended by anyone can never be changed again");

  @ArchTest
  static final ArchRule noPrintingAndNoExit =
      librariesDoNot(
          "print or exit",
          call -> {
            if (call.owner.equals("java.lang.System")) {
              return Set.of("out", "err", "in", "exit", "setOut", "setErr").contains(call.name);
            }
            return (call.owner.equals("java.lang.Runtime")
                    && Set.of("exit", "halt").contains(call.name))
                || (call.name.equals("printStackTrace") && call.parameters.isEmpty());
          },
          "a library speaks through its results; only the command line has a terminal");

  @ArchTest
  static final ArchRule noDefaultLocale =
      librariesDoNot(
          "use the default locale",
          call -> {
            boolean givenLocale = call.parameters.contains("java.util.Locale");
            return switch (call.owner) {
              case "java.util.Locale" -> call.name.equals("getDefault");
              case "java.lang.String" ->
                  call.name.equals("formatted")
                      || (Set.of("format", "toLowerCase", "toUpperCase").contains(call.name)
                          && !givenLocale);
              case "java.util.Formatter", "java.io.PrintStream", "java.io.PrintWriter" ->
                  Set.of("format", "printf").contains(call.name) && !givenLocale;
              case "java.time.format.DateTimeFormatter" ->
                  call.name.equals("ofPattern") && !givenLocale;
              case "java.time.format.DateTimeFormatterBuilder" ->
                  call.name.equals("toFormatter") && !givenLocale;
              case "java.text.NumberFormat", "java.text.DateFormat", "java.text.Collator" ->
                  call.name.startsWith("get") && call.name.endsWith("nstance") && !givenLocale;
              case "java.text.DecimalFormatSymbols" -> call.isConstructor() && !givenLocale;
              case "java.text.DecimalFormat" ->
                  call.isConstructor() && !call.parameters.contains("DecimalFormatSymbols");
              case "java.text.MessageFormat", "java.text.SimpleDateFormat" ->
                  (call.isConstructor() && !givenLocale)
                      || (call.name.equals("format")
                          && call.parameters.startsWith("java.lang.String"));
              default -> false;
            };
          },
          "the same plan must read the same on every machine");

  @ArchTest
  static final ArchRule noDefaultZoneOrClock =
      librariesDoNot(
          "use the default zone or the machine's clock",
          call ->
              switch (call.owner) {
                case "java.lang.System" -> call.name.equals("currentTimeMillis");
                case "java.time.ZoneId" -> call.name.equals("systemDefault");
                case "java.util.TimeZone" -> call.name.equals("getDefault");
                case "java.util.Date" -> call.isConstructor() && call.parameters.isEmpty();
                case "java.util.Calendar" -> call.name.equals("getInstance");
                case "java.time.Clock" ->
                    call.name.startsWith("system")
                        || (call.name.startsWith("tick")
                            && !call.parameters.startsWith("java.time.Clock"));
                default ->
                    call.owner.startsWith("java.time.")
                        && call.name.equals("now")
                        && !call.parameters.equals("java.time.Clock");
              },
          "today is an argument: a plan compiled tomorrow must be the same plan");

  @ArchTest
  static final ArchRule noDefaultCharset =
      librariesDoNot(
          "use the default charset",
          call -> {
            boolean givenCharset =
                call.parameters.contains("java.nio.charset.Charset")
                    || call.parameters.endsWith("java.lang.String");
            return switch (call.owner) {
              case "java.nio.charset.Charset" -> call.name.equals("defaultCharset");
              case "java.lang.String" ->
                  (call.name.equals("getBytes") && call.parameters.isEmpty())
                      || (call.isConstructor()
                          && call.parameters.startsWith("[B")
                          && !givenCharset);
              case "java.io.InputStreamReader", "java.io.OutputStreamWriter" ->
                  call.isConstructor() && !call.parameters.contains(",");
              case "java.io.FileReader",
                  "java.io.FileWriter",
                  "java.io.PrintStream",
                  "java.util.Scanner" ->
                  call.isConstructor() && !call.parameters.contains("java.nio.charset.Charset");
              case "java.io.ByteArrayOutputStream" ->
                  call.name.equals("toString") && call.parameters.isEmpty();
              default -> false;
            };
          },
          "files are UTF-8 on every machine");

  // --- rooms ---

  private static String roomOf(JavaClass type) {
    return Rooms.roomOf(type.getPackageName());
  }

  private static JavaClass baseOf(JavaClass type) {
    return type.isArray() ? type.getBaseComponentType() : type;
  }

  private static DescribedPredicate<JavaClass> areIn(String room) {
    return DescribedPredicate.describe("are in '" + room + "'", type -> roomOf(type).equals(room));
  }

  private static DescribedPredicate<JavaClass> areInOneOf(Set<String> rooms) {
    return DescribedPredicate.describe(
        "are in one of " + rooms, type -> rooms.contains(roomOf(baseOf(type))));
  }

  private static ArchCondition<JavaClass> areInSomeRoom() {
    return new ArchCondition<>("be in a room of the table") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        report(events, type, !roomOf(type).isEmpty(), type.getName() + " is in no room");
      }
    };
  }

  /** One slice per package; an internal package belongs to its parent package. */
  private static final class Packages implements SliceAssignment {
    private static final Pattern INTERNAL = Pattern.compile("\\.internal(\\..*)?$");

    @Override
    public SliceIdentifier getIdentifierOf(JavaClass type) {
      if (!type.getPackageName().startsWith("gripwright.")) {
        return SliceIdentifier.ignore();
      }
      return SliceIdentifier.of(INTERNAL.matcher(type.getPackageName()).replaceFirst(""));
    }

    @Override
    public String getDescription() {
      return "packages";
    }
  }

  /** Test classes, wherever a build puts them: the quick one has a folder of its own. */
  static final class WithoutTests implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("/test-classes/");
    }
  }

  /** ANTLR's own classes, moved into the language jar, are not ours to judge. */
  static final class WithoutRelocatedAntlr implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("/gripwright/language/syntax/internal/antlr/");
    }
  }

  // --- conditions ---

  private static void report(ConditionEvents events, JavaClass type, boolean holds, String text) {
    events.add(new SimpleConditionEvent(type, holds, text));
  }

  private static ArchCondition<JavaClass> beFinalSealedRecordEnumOrInterface() {
    return new ArchCondition<>("be final, sealed, a record, an enum or an interface") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        boolean closed =
            type.getModifiers().contains(JavaModifier.FINAL)
                || type.isRecord()
                || type.isEnum()
                || type.isInterface()
                || type.reflect().isSealed();
        report(events, type, closed, type.getName() + " is open to anyone's subclasses");
      }
    };
  }

  private static ArchCondition<JavaClass> offerNoTypeFrom(
      DescribedPredicate<JavaClass> hidden, String allowedRoom) {
    return new ArchCondition<>("offer no type that %s", hidden.getDescription()) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        if (resideInAPackage(allowedRoom).test(type)) {
          return;
        }
        type.getSuperclass().ifPresent(parent -> look(type, "its superclass", parent, events));
        type.getInterfaces().forEach(parent -> look(type, "an interface", parent, events));
        for (JavaField field : type.getFields()) {
          if (isOffered(field.getModifiers())) {
            look(type, field.getFullName(), field.getType(), events);
          }
        }
        for (JavaCodeUnit unit : type.getCodeUnits()) {
          if (isOffered(unit.getModifiers())) {
            look(type, unit.getFullName(), unit.getReturnType(), events);
            unit.getParameterTypes()
                .forEach(parameter -> look(type, unit.getFullName(), parameter, events));
            unit.getExceptionTypes()
                .forEach(thrown -> look(type, unit.getFullName(), thrown, events));
          }
        }
      }

      private boolean isOffered(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC)
            || modifiers.contains(JavaModifier.PROTECTED);
      }

      private void look(JavaClass type, String where, JavaType seen, ConditionEvents events) {
        for (JavaClass raw : seen.getAllInvolvedRawTypes()) {
          JavaClass base = baseOf(raw);
          report(events, type, !hidden.test(base), where + " shows " + base.getName());
        }
      }
    };
  }

  /** A call, a field access or a method reference, as far as the rules below care. */
  private static final class Call {
    final String owner;
    final String name;

    /** Raw type names with commas between them; empty where there are none. */
    final String parameters;

    Call(JavaAccess<?> access) {
      owner = access.getTargetOwner().getName();
      name = access.getTarget().getName();
      String full = access.getTarget().getFullName();
      int open = full.indexOf('(');
      parameters = open < 0 ? "" : full.substring(open + 1, full.length() - 1).replace(" ", "");
    }

    boolean isConstructor() {
      return name.equals("<init>");
    }
  }

  private static ArchRule librariesDoNot(
      String what, Function<Call, Boolean> forbidden, String reason) {
    return classes()
        .that()
        .resideOutsideOfPackages("gripwright.tools..", GENERATED_GRAMMAR)
        .should(
            new ArchCondition<JavaClass>("not %s", what) {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                for (JavaAccess<?> access : type.getAccessesFromSelf()) {
                  if (forbidden.apply(new Call(access))) {
                    report(events, type, false, access.getDescription());
                  }
                }
              }
            })
        .because(reason);
  }
}
