package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/**
 * What the log must show before the next step: work done in full, effort or pain low enough, once
 * or in two sessions in a row.
 */
public record Condition(
    int id,
    boolean doneInFull,
    @Nullable Amount effortAtMost,
    @Nullable Amount painAtMost,
    boolean twice)
    implements Syntax {}
