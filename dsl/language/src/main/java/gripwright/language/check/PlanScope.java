package gripwright.language.check;

import gripwright.budget.Budget;
import gripwright.grip.Grip;
import gripwright.protocol.Protocol;
import java.util.Set;

/**
 * What the parts of a plan can refer to.
 *
 * @param ledger where mistakes of the plan are taken down
 * @param grips grips
 * @param protocols protocols
 * @param athletes names of the plan's athletes
 * @param athletesKnown false if some of them were reported, so that there may be more
 * @param budget how large a plan may be
 */
record PlanScope(
    Ledger ledger,
    Known<Grip> grips,
    Known<Protocol> protocols,
    Set<String> athletes,
    boolean athletesKnown,
    Budget budget) {}
