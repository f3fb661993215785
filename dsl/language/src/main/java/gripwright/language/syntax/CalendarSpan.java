package gripwright.language.syntax;

import org.jspecify.annotations.Nullable;

/** {@code from DATE to DATE every 2 weeks}: when a line of a calendar is in force. */
public record CalendarSpan(int id, DateText from, @Nullable DateText to, @Nullable Amount every)
    implements Syntax {}
