package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/**
 * One variable that increases: {@code load}, {@code sets}, {@code hold} or {@code edge}, by how
 * much, up to what, and how often or on what condition. {@code weekly} is stored as every 1 week.
 */
public record Progress(
    int id,
    Word variable,
    Amount by,
    @Nullable Amount to,
    @Nullable Amount every,
    @Nullable Condition condition)
    implements Syntax {}
