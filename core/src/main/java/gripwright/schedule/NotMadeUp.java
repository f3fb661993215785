package gripwright.schedule;

/**
 * Sessions of a week that find no day, and would find one if nothing had been logged: logged
 * climbing, a logged test or what was trained has taken it. They are not made up later. Immutable.
 *
 * @param week plan week, from 1
 * @param session name of the session
 * @param count how many of that name, from 1
 */
public record NotMadeUp(int week, String session, int count) {}
