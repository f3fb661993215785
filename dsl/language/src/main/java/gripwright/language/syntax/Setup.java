package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/**
 * How a grip is trained or tested: the edge's depth, {@code left} or {@code right} where one hand
 * is used, and whether a weight is lifted from the floor.
 */
public record Setup(int id, Amount edge, @Nullable Word hand, boolean lifting) implements Syntax {}
