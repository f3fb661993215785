package gripwright.tools.command;

import gripwright.expression.Type;
import gripwright.finding.Nearest;
import gripwright.quantity.Dimension;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its unit on the command line, as in {@code 20 mm} or {@code 75kg}. */
final class AmountOption {

  private static final Pattern AMOUNT =
      Pattern.compile("\\s*([+-]?[0-9]{1,9}(?:\\.[0-9]{1,9})?)\\s*(\\S*)\\s*");

  private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,9}(?:\\.[0-9]{1,9})?");

  private final String option;
  private final String written;
  private final double value;
  private final String unit;

  // Examples have no blank before the unit, since a blank would need quotes in a shell.
  private AmountOption(String option, String written, double value, String unit) {
    this.option = option;
    this.written = written;
    this.value = value;
    this.unit = unit;
  }

  /**
   * Returns the arguments with a separate unit joined to the number of its option, as in {@code
   * --edge 20 mm} without quotes.
   *
   * @param options options that take a number and a unit, hyphens included
   */
  static List<String> joined(List<String> arguments, List<String> options) {
    List<String> joined = new ArrayList<>();
    for (String argument : arguments) {
      if (Unit.parse(argument).isPresent() && lacksUnit(joined, options)) {
        joined.add(joined.remove(joined.size() - 1) + " " + argument);
      } else {
        joined.add(argument);
      }
    }
    return joined;
  }

  /**
   * Returns whether arguments end in an option's number without a unit, as in {@code --edge 20} or
   * {@code =20}.
   */
  private static boolean lacksUnit(List<String> arguments, List<String> options) {
    int last = arguments.size() - 1;
    if (last < 0) {
      return false;
    }
    String end = arguments.get(last);
    if (last >= 1 && options.contains(arguments.get(last - 1))) {
      return NUMBER.matcher(end).matches();
    }
    int equals = end.indexOf('=');
    return equals >= 0
        && options.contains(end.substring(0, equals))
        && NUMBER.matcher(end.substring(equals + 1)).matches();
  }

  private static AmountOption parse(String option, String written, String example)
      throws UsageException {
    Matcher matcher = AMOUNT.matcher(written);
    if (!matcher.matches()) {
      throw new UsageException(
          option + " needs a number with its unit, such as " + example + ", not `" + written + "`");
    }
    return new AmountOption(
        option, written.strip(), Double.parseDouble(matcher.group(1)), matcher.group(2));
  }

  /**
   * Reads the depth of an edge.
   *
   * @throws UsageException if it is not a length, or outside the range of edge depths
   */
  static Length edge(String option, String written) throws UsageException {
    AmountOption amount = parse(option, written, "20mm");
    Unit unit = amount.unit(Unit.of(Dimension.LENGTH), "the depth of an edge");
    double millimetres = unit.toBase(amount.value);
    if (!Range.EDGE.contains(millimetres)) {
      throw new UsageException(
          option
              + " is an edge from "
              + Numbers.plain(Range.EDGE.low(), 0)
              + " to "
              + Numbers.plain(Range.EDGE.high(), 0)
              + " mm deep, not "
              + amount.written);
    }
    return Length.ofMillimetres(millimetres);
  }

  /**
   * Reads the total load on both hands, given as a load or a force.
   *
   * @throws UsageException if it is neither, or outside the range of loads
   */
  static Load load(String option, String written) throws UsageException {
    AmountOption amount = parse(option, written, "75kg");
    List<Unit> units = new ArrayList<>(Unit.of(Dimension.MASS));
    units.addAll(Unit.of(Dimension.FORCE));
    Unit unit = amount.unit(units, "what both hands hold together");
    double base = unit.toBase(amount.value);
    double kilograms =
        unit.dimension().equals(Dimension.FORCE) ? base / Unit.NEWTONS_PER_KILOGRAM : base;
    if (!Range.LOAD.contains(kilograms)) {
      throw new UsageException(
          option
              + " is what both hands hold together, above 0 and up to "
              + Numbers.plain(Range.LOAD.high(), 0)
              + " kg, not "
              + amount.written);
    }
    return Load.ofKilograms(kilograms);
  }

  private Unit unit(List<Unit> units, String what) throws UsageException {
    if (unit.isEmpty()) {
      String example = written + units.get(0).symbol();
      throw new UsageException(
          option + " " + written + " has no unit: write " + option + " " + example);
    }
    Optional<Unit> found = Unit.parse(unit);
    if (found.isPresent() && units.contains(found.get())) {
      return found.get();
    }
    throw new UsageException(
        option
            + " is "
            + what
            + ", in "
            + inWords(units)
            + ", not "
            + found
                .map(
                    u ->
                        Console.wording().say(new Type.Quantity(u.dimension()).words())
                            + " such as ")
                .orElse("")
            + "`"
            + written
            + "`"
            + Nearest.to(unit, units.stream().map(Unit::symbol).toList())
                .filter(nearest -> found.isEmpty())
                .map(nearest -> "; did you mean `" + nearest + "`?")
                .orElse(""));
  }

  private static String inWords(List<Unit> units) {
    List<String> symbols = units.stream().map(Unit::symbol).toList();
    int last = symbols.size() - 1;
    return String.join(", ", symbols.subList(0, last)) + " or " + symbols.get(last);
  }
}
