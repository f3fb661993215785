package gripwright.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a rule stands when it is asked: the thing it looks at, and the elements of collections gone
 * into so far.
 *
 * @param kinds what each is, outermost first
 * @param things the things themselves
 */
record Standing(List<Kind> kinds, List<Object> things) {

  static Standing at(Kind kind, Object thing) {
    return new Standing(List.of(kind), List.of(thing));
  }

  private Standing inside(Kind kind, Object element) {
    List<Kind> moreKinds = new ArrayList<>(kinds);
    moreKinds.add(kind);
    List<Object> more = new ArrayList<>(things);
    more.add(element);
    return new Standing(moreKinds, more);
  }

  double number(Expression value) {
    return Compiler.number(value, this);
  }

  boolean fails(Expression condition) {
    return Compiler.truth(condition, this) == Compiler.NO;
  }

  /** Finds the comparisons that a broken requirement owes to, in the order written. */
  List<Shortfall> shortfalls(Expression require) {
    if (require instanceof Expression.And and) {
      List<Shortfall> both = new ArrayList<>();
      for (Expression side : List.of(and.left(), and.right())) {
        if (fails(side)) {
          both.addAll(shortfalls(side));
        }
      }
      return both;
    }
    if (require instanceof Expression.Or or) {
      List<Shortfall> left = shortfalls(or.left());
      return left.isEmpty() ? shortfalls(or.right()) : left;
    }
    if (require instanceof Expression.Compare compare) {
      return List.of(Measured.compared(compare, this));
    }
    if (require instanceof Expression.Between between) {
      return List.of(Measured.between(between, this));
    }
    if (require instanceof Expression.Quantify quantify
        && quantify.quantifier() == Expression.Quantifier.EVERY) {
      return worst(quantify).map(s -> s.shortfalls(quantify.body())).orElse(List.of());
    }
    return List.of();
  }

  /** Returns the standing inside the element that misses by most; the first of those alike. */
  private Optional<Standing> worst(Expression.Quantify every) {
    Kind kind = ((Type.Many) every.collection().type()).kind();
    Optional<Standing> worst = Optional.empty();
    double most = -1;
    for (Object element : Compiler.things(every.collection(), this)) {
      Standing inside = inside(kind, element);
      boolean counts =
          every.where().isEmpty() || Compiler.truth(every.where().get(), inside) == Compiler.YES;
      if (counts && inside.fails(every.body())) {
        double excess = Excess.at(every.body(), inside);
        worst = excess > most ? Optional.of(inside) : worst;
        most = Math.max(most, excess);
      }
    }
    return worst;
  }

  /** Returns what the innermost element is called; empty outside of collections. */
  String called() {
    if (things.size() == 1) {
      return "";
    }
    Object thing = things.get(things.size() - 1);
    if (thing instanceof FingerView finger) {
      return finger.work().side() + " " + finger.work().finger() + " finger";
    }
    if (thing instanceof ExerciseView exercise) {
      return exercise.grip().name();
    }
    if (thing instanceof SessionView session) {
      return session.name + " on " + session.date;
    }
    if (thing instanceof DayView day) {
      return day.date.toString();
    }
    if (thing instanceof WeekView week) {
      return "week " + week.number();
    }
    return thing instanceof BlockView block ? "block " + block.name() : "";
  }
}
