package gripwright.language.check;

import gripwright.budget.Budget;
import gripwright.finding.Listing;
import gripwright.finding.Message;
import gripwright.finding.ModelPath;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.Expr;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Parameter;
import gripwright.language.syntax.ProtocolItem;
import gripwright.language.syntax.Report;
import gripwright.language.syntax.Step;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import gripwright.protocol.Argument;
import gripwright.protocol.Extent;
import gripwright.protocol.Level;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Term;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Checks a protocol. */
final class ProtocolCheck {

  private final Declaration.Protocol declaration;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Values values;
  private final Once once;
  private final Protocol.Builder builder;
  private final Map<String, Parameter> parameters = new LinkedHashMap<>();
  private final Map<String, Argument> defaults = new LinkedHashMap<>();
  private final Set<String> used = new HashSet<>();
  private boolean damaged;

  private final Budget budget;

  private ProtocolCheck(
      Declared<Declaration.Protocol> declared, List<LocatedFinding> findings, Budget budget) {
    this.budget = budget;
    this.declaration = declared.declaration();
    String name = declaration.name().text();
    this.diagnostics = new Diagnostics(declared, ModelPath.of("protocol", name), findings);
    this.amounts = new Amounts(diagnostics);
    this.values = new Values(diagnostics);
    this.once = new Once(diagnostics);
    this.builder = Protocol.named(name);
    this.damaged = declaration.damaged();
  }

  /** Returns the protocol; empty if it has a mistake, which is reported. */
  static Optional<Protocol> check(
      Declared<Declaration.Protocol> declared, List<LocatedFinding> findings, Budget budget) {
    return new ProtocolCheck(declared, findings, budget).check();
  }

  private Optional<Protocol> check() {
    Text title = declaration.title();
    if (title != null) {
      builder.title(title.value());
    }
    Items items = new Items();
    declaration.items().forEach(item -> item.accept(items));
    List<Part> parts = parts(items.steps);
    diagnostics.markInvalidIf(damaged);
    if (items.steps.isEmpty() && !damaged) {
      diagnostics.error(
          declaration.name(),
          "value.missing",
          "kind",
          Terms.kind("protocol"),
          "name",
          declaration.name().text(),
          "missing",
          Listing.of(Listing.Style.OR, List.of("`repeat`", "`hold`")));
    }
    unusedParameters();
    if (!diagnostics.sound()) {
      return Optional.empty();
    }
    if (Expansion.tooLarge(
        diagnostics, declaration.name(), Protocol.size(parts, defaults), budget)) {
      return Optional.empty();
    }
    parts.forEach(builder::step);
    return Optional.of(builder.build());
  }

  /** Checks each statement; steps are checked once all parameters are known. */
  private final class Items implements ProtocolItem.Visitor {
    private final List<Step> steps = new ArrayList<>();

    @Override
    public void note(Note note) {
      builder.note(note.text().value());
    }

    @Override
    public void report(Report item) {
      new Reasons(diagnostics).report(item).ifPresent(builder::report);
    }

    @Override
    public void step(Step step) {
      steps.add(step);
    }

    @Override
    public void aim(ProtocolItem.Aim aim) {
      once.first(aim, "aim");
      builder.aim(aim.aim().text());
    }

    @Override
    public void given(ProtocolItem.Given given) {
      given.parameters().forEach(ProtocolCheck.this::parameter);
    }
  }

  private void parameter(Parameter parameter) {
    String name = parameter.name().text();
    if (!once.first(parameter.name(), "parameter", name)) {
      return;
    }
    parameters.put(name, parameter);
    values
        .argument(parameter.value())
        .ifPresent(
            value -> {
              defaults.put(name, value);
              builder.given(name, value);
            });
  }

  private List<Part> parts(List<Step> steps) {
    List<Part> parts = new ArrayList<>();
    for (Step step : steps) {
      step.accept(new Steps()).ifPresent(parts::add);
    }
    return parts;
  }

  private final class Steps implements Step.Visitor<Optional<Part>> {
    @Override
    public Optional<Part> repeatStep(Step.RepeatStep repeat) {
      Optional<Term<Integer>> times = times(repeat.times());
      Expr resting = repeat.resting();
      Optional<Term<Duration>> rest =
          resting == null ? Optional.of(Term.of(Duration.ZERO)) : time(resting, Slot.REST);
      List<Part> inner = parts(repeat.steps());
      if (repeat.damaged()) {
        damaged = true;
        diagnostics.markInvalid();
      } else if (repeat.steps().isEmpty()) {
        diagnostics.error(
            repeat.times(),
            "value.missing",
            "kind",
            Terms.kind("statement"),
            "name",
            "repeat",
            "missing",
            "`hold`");
      }
      return both(times, rest)
          .map(x -> new Part.Repeat(times.orElseThrow(), rest.orElseThrow(), inner, repeat.upTo()));
    }

    @Override
    public Optional<Part> holdStep(Step.HoldStep hold) {
      Optional<Term<Duration>> time = time(hold.time(), Slot.HOLD);
      Optional<Term<Level>> level = level(hold.level());
      return both(time, level)
          .map(x -> new Part.Hold(time.orElseThrow(), level.orElseThrow(), extent(hold.bound())));
    }

    @Override
    public Optional<Part> restStep(Step.RestStep rest) {
      Text text = rest.text();
      return time(rest.time(), Slot.REST)
          .map(time -> new Part.Rest(time, Optional.ofNullable(text).map(Text::value)));
    }
  }

  private static Extent extent(Step.Bound bound) {
    return switch (bound) {
      case NONE -> Extent.WHOLE;
      case UP_TO -> Extent.UP_TO;
      case TO_FAILURE -> Extent.TO_FAILURE;
    };
  }

  private static Optional<Boolean> both(Optional<?> first, Optional<?> second) {
    return first.isPresent() && second.isPresent() ? Optional.of(true) : Optional.empty();
  }

  private Optional<Term<Integer>> times(Expr value) {
    if (value instanceof Amount amount) {
      return amounts.count(amount, Slot.REPEATS).map(Term::of);
    }
    return given(value, Slot.REPEATS, Values.Kind.COUNT);
  }

  private Optional<Term<Duration>> time(Expr value, Slot slot) {
    if (value instanceof Amount amount) {
      return amounts.time(amount, slot).map(Term::of);
    }
    Optional<Term<Duration>> term = given(value, slot, Values.Kind.TIME);
    if (slot == Slot.HOLD && term.isPresent() && term.get() instanceof Term.Given<?> given) {
      Parameter parameter = parameters.get(given.parameter());
      if (parameter != null && parameter.value() instanceof Amount amount) {
        amounts.time(amount, Slot.HOLD);
      }
    }
    return term;
  }

  private Optional<Term<Level>> level(Expr value) {
    boolean named =
        value instanceof Expr.PathExpr path
            && path.words().size() == 1
            && parameters.containsKey(path.words().get(0).text());
    return named || Values.isName(value)
        ? given(value, Terms.of("level-of-hold"), Values.Kind.LEVEL)
        : values.level(value).map(Term::of);
  }

  /** Returns a reference to a parameter of the right kind. */
  private <T> Optional<Term<T>> given(Expr value, Message slot, Values.Kind kind) {
    if (!(value instanceof Expr.PathExpr path) || path.words().size() != 1) {
      diagnostics.error(
          value,
          "type.mismatch",
          "slot",
          slot,
          "expected",
          Terms.of("or-parameter", "value", kind),
          "found",
          Values.kind(value),
          "example",
          kind.example());
      return Optional.empty();
    }
    Word word = path.words().get(0);
    Parameter parameter = parameters.get(word.text());
    if (parameter == null) {
      if (damaged) {
        diagnostics.markInvalid();
      } else {
        unknown(word, kind);
      }
      return Optional.empty();
    }
    used.add(word.text());
    Argument argument = defaults.get(word.text());
    if (argument == null) {
      return Optional.empty();
    }
    Values.Kind found = Values.Kind.of(argument);
    if (found == kind) {
      return Optional.of(Term.given(word.text()));
    }
    diagnostics.errorBeside(
        word,
        parameter.name(),
        "given-here",
        "type.mismatch",
        "slot",
        slot,
        "expected",
        kind,
        "found",
        found,
        "example",
        kind.example());
    return Optional.empty();
  }

  /** Reports an unknown parameter beside those of the kind that fits here. */
  private void unknown(Word word, Values.Kind kind) {
    if (word.text().equals("to-failure") && kind == Values.Kind.TIME) {
      diagnostics.error(
          word,
          "name.unknown",
          "kind",
          Terms.kind("parameter"),
          "name",
          word.text(),
          "bound",
          "up to 90 s");
      return;
    }
    List<String> fitting =
        parameters.keySet().stream()
            .filter(
                name -> {
                  Argument argument = defaults.get(name);
                  return argument != null && Values.Kind.of(argument) == kind;
                })
            .toList();
    if (fitting.isEmpty()) {
      diagnostics.unknownValue(word, "parameter", kind.example());
    } else {
      diagnostics.unknown(word, "parameter", fitting);
    }
  }

  private void unusedParameters() {
    if (!diagnostics.sound()) {
      return;
    }
    for (Parameter parameter : parameters.values()) {
      if (!used.contains(parameter.name().text())) {
        diagnostics.advice(
            parameter.name(), "value.unused-parameter", "name", parameter.name().text());
      }
    }
  }
}
