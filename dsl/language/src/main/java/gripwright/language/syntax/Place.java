package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/**
 * The place that a waiver covers: a block, or the whole {@code plan}, narrowed to a week, a session
 * or an exercise.
 */
public record Place(
    int id, Word block, @Nullable Amount week, @Nullable Word session, @Nullable Amount exercise)
    implements Syntax {}
