package gripwright.language.check;

import gripwright.budget.Budget;
import gripwright.grip.Grip;
import gripwright.protocol.Protocol;
import java.util.Set;

/**
 * What the parts of a plan can refer to.
 *
 * @param diagnostics records the mistakes of the plan
 * @param grips grips
 * @param protocols protocols
 * @param athletes names of the plan's athletes
 * @param athletesKnown false if some were reported as wrong, so that there may be more
 * @param places the places of the plan's athletes
 * @param budget how large a plan may be
 */
record PlanScope(
    Diagnostics diagnostics,
    Known<Grip> grips,
    Known<Protocol> protocols,
    Set<String> athletes,
    boolean athletesKnown,
    PlanPlaces places,
    Budget budget) {}
