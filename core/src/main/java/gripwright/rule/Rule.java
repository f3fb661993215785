package gripwright.rule;

import gripwright.finding.Severity;
import java.util.Optional;

/**
 * Something that must hold in a compiled plan. Immutable.
 *
 * @param name kebab-case, unique in a project
 * @param severity how grave it is to break it
 * @param scope what it looks at
 * @param when where it applies; empty means everywhere
 * @param require what must hold there
 * @param message what a coach reads when it is broken
 * @param source where the rule comes from
 * @param neverWaived true if no reason is good enough
 */
public record Rule(
    String name,
    Severity severity,
    Scope scope,
    Optional<Expression> when,
    Expression require,
    String message,
    Optional<String> source,
    boolean neverWaived) {}
