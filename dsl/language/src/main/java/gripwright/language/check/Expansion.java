package gripwright.language.check;

import gripwright.budget.Budget;
import gripwright.budget.Limit;
import gripwright.language.syntax.Syntax;
import gripwright.plan.PlanSize;
import gripwright.protocol.Protocol;
import gripwright.protocol.Protocol.Part;
import gripwright.protocol.Scheme;
import gripwright.protocol.Term;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Calculates the size of protocols when they are written out. */
final class Expansion {

  private Expansion() {}

  /** Returns the names of the parameters for the time of a hold. */
  static Set<String> holdParameters(Protocol protocol) {
    Set<String> names = new HashSet<>();
    collect(protocol.steps(), names);
    return names;
  }

  private static void collect(List<Part> parts, Set<String> names) {
    for (Part part : parts) {
      if (part instanceof Part.Repeat repeat) {
        collect(repeat.steps(), names);
      } else if (part instanceof Part.Hold hold
          && hold.time() instanceof Term.Given<Duration> given) {
        names.add(given.parameter());
      }
    }
  }

  /** Returns whether an exercise is too large to write out, and reports it. */
  static boolean tooLarge(Diagnostics diagnostics, Syntax at, long size, Budget budget) {
    long most = PlanSize.most(budget, Limit.EXERCISE);
    if (size <= most) {
      return false;
    }
    diagnostics.error(
        at,
        "value.too-many",
        "what",
        Terms.of("many-holds-and-rests"),
        "found",
        size >= Scheme.ENDLESS ? Terms.of("endless") : Long.toString(size),
        "limit",
        most);
    return true;
  }
}
