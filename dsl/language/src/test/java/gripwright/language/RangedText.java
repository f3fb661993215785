package gripwright.language;

import gripwright.quantity.Range;
import gripwright.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A plan file with one variable value; everything else in it is valid. */
record RangedText(DoubleFunction<String> text, DoublePredicate sayable) {

  private static final String TEXT =
      """
      language 1
      athlete runa {
        born 1998-03-14
        body-mass <body-mass:61 kg>
        trained <trained:30 months>
        ability french 7b
        hand {
          length <length:178 mm>
          breadth <breadth:80 mm>
          index proximal <bone:45 mm>, <limit:pip 0 deg to 110 deg>
          knuckles ring <knuckle:8 mm>
        }
        familiar half-crimp <familiar:12 months>
        available mon <available:90 min>, thu 90 min
        <calendar:>
        climbing sat easy <climbing:60 min>
        equipment { edges 20 mm<edges:>  added <steps:1 kg steps to 60 kg> }
      }
      grip own-crimp {
        fingers index, middle, ring, little
        family four
        <band:index pip 90 deg>
        needs trained <needs:12 months>, familiar half-crimp <needs-grip:6 months>
      }
      protocol own-holds {
        repeat <repeats:4> resting <resting:3 min> {
          <hold:hold 7 s at 60 % max>
          <rest:rest 0 s>
        }
      }
      protocol own-steps {
        <steps-of:hold 7 s at 50 % max>
      }
      <grips:>
      plan spring {
        for runa
        from 2027-01-11
        towards 2028-06-01
        <taper:>
        weekly-rise at most <rise:10 %>
        warm-up <warm-up:12 min>
        rest between exercises <between:3 min>
        demand half-crimp <demand:60 %, open-four 40 %>
        block base <block:520 weeks> {
          session strength <per-week:2> per week at least <gap:48 h> apart {
            <exercises:do own-holds on half-crimp edge 20 mm>
          }
          introduce half-crimp from <from:40 % max> over <over:3 weeks>
          <advance:advance load 2 % weekly>
          <ease:>
        }
        retest half-crimp edge 20 mm hold <retest-hold:7 s> every <retest:4 weeks>
        test half-crimp edge 20 mm <test-kind:hold 7 s> <test-times:in week 1> {
          <test-part:mean counts>
        }
        <waive:>
      }
      log runa {
        <line:2027-01-04 skipped strength>
      }
      cohort adults {
        size <size:1000>
        sex female <female:50 %>
        body-mass <cohort-mass:66 kg> spread <spread:14 %>
        maximum <cohort-maximum:100 kg> spread 15 % on half-crimp edge <cohort-edge:20 mm>
        critical-force <cohort-force:41 %> max spread <cohort-force-spread:28 %>
        correlate maximum, critical-force <correlation:0.6>
        source "our own"
      }
      compare two {
        for adults
        arm heavy do max-holds on half-crimp edge 20 mm
        arm dense do repeaters on half-crimp edge 20 mm
        match impulse of heavy to dense by sets within <within:5 %>
        each <each:2> per week
        over <over-weeks:8 weeks>
        draws <draws:1000> stream <stream:2027>
        measure impulse
      }
      """;

  private static final Pattern PLACE = Pattern.compile("<([a-z-]+):([^>]*)>");

  /** The most that leaves room in a budget for the largest sessions. */
  private static final String FEWER_WEEKS = "400 weeks";

  private static final String LINE = "do own-holds on half-crimp edge 20 mm\n";

  /** Returns the file with a value at a place and valid values everywhere else. */
  static String plan(String place, String value) {
    return plan(Map.of(place, value));
  }

  private static String plan(Map<String, String> values) {
    Matcher matcher = PLACE.matcher(TEXT);
    StringBuilder text = new StringBuilder();
    Set<String> found = new HashSet<>();
    while (matcher.find()) {
      found.add(matcher.group(1));
      String value = values.getOrDefault(matcher.group(1), matcher.group(2));
      matcher.appendReplacement(text, Matcher.quoteReplacement(value));
    }
    if (!found.containsAll(values.keySet())) {
      throw new IllegalArgumentException("no such place: " + values.keySet());
    }
    return matcher.appendTail(text).toString();
  }

  /** Returns whether a value can be written. */
  boolean canSay(double base) {
    return sayable.test(base);
  }

  /** Returns the file with a value. */
  String with(double base) {
    return text.apply(base);
  }

  private static RangedText at(String place, DoubleFunction<String> value) {
    return whole(base -> plan(place, value.apply(base)));
  }

  private static RangedText whole(DoubleFunction<String> text) {
    return new RangedText(text, base -> true);
  }

  private static String in(Unit unit, double base) {
    return plain(unit.fromBase(base)) + " " + unit.symbol();
  }

  private static String plain(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  private static String count(double base) {
    return plain(base);
  }

  private static RangedText amount(String place, Unit unit) {
    return amount(place, unit, "%s");
  }

  private static RangedText amount(String place, Unit unit, String around) {
    return at(place, base -> around.replace("%s", in(unit, base)));
  }

  private static RangedText number(String place, String around) {
    return at(place, base -> around.replace("%s", count(base)));
  }

  private static String done(String parts) {
    return "2027-01-04 session strength { max-holds on half-crimp edge 20 mm: " + parts + " }";
  }

  private static String test(String result) {
    return "2027-01-04 test half-crimp edge 20 mm " + result;
  }

  private static String repeated(int times, String what, String between) {
    return IntStream.range(0, Math.max(0, times))
        .mapToObj(i -> what.replace("#", Integer.toString(i)))
        .collect(Collectors.joining(between));
  }

  private static String added(double kilograms) {
    String level =
        kilograms == 0
            ? "body-mass"
            : "body-mass " + (kilograms < 0 ? "- " : "+ ") + plain(Math.abs(kilograms)) + " kg";
    return "hold 7 s at " + level;
  }

  private static String grips(int count) {
    String grip = "grip g# { fingers index, middle, ring, little family four }\n";
    String best = "do own-holds on best of " + repeated(count, "g#", ", ") + " edge 20 mm";
    return plan(Map.of("grips", repeated(count, grip, ""), "exercises", LINE + best));
  }

  private static String athletes(int count) {
    String athlete =
        """
        athlete a# {
          born 1998-03-14  body-mass 61 kg  trained 30 months  ability french 7b
          hand { length 178 mm }  available mon 90 min  equipment { edges 20 mm }
        }
        """;
    String names = repeated(count, "a#", ", ");
    return "language 1\n" + repeated(count, athlete, "") + small("for " + names, block("base", 1));
  }

  private static String weeks(int count) {
    String blocks =
        count > 520
            ? block("base", 520) + block("more", count - 520)
            : count > 0 ? block("base", count) : "";
    return plan("line", "2027-01-04 skipped strength") + small("for runa", blocks);
  }

  private static String small(String who, String blocks) {
    return "plan small { " + who + " from 2027-01-11 " + blocks + " }\n";
  }

  private static String block(String name, int weeks) {
    return "block "
        + name
        + " "
        + weeks
        + " weeks { session strength 1 per week { do max-holds on half-crimp edge 20 mm } }\n";
  }

  private static String exercise(double number) {
    return plan(
        Map.of(
            "block",
            FEWER_WEEKS,
            "exercises",
            repeated((int) Range.EXERCISES.high(), LINE, ""),
            "waive",
            "waive full-crimp-ceiling in base session strength exercise "
                + count(number)
                + " because \"as agreed\""));
  }

  /** Returns every text with a value of a range. */
  static List<RangedText> of(Range range) {
    List<RangedText> texts = new ArrayList<>();
    Unit unit = range.unit().orElse(Unit.SECOND);
    switch (range) {
      case HOLD -> {
        texts.add(amount("hold", unit, "hold %s at 60 % max"));
        texts.add(amount("retest-hold", unit));
        texts.add(amount("test-kind", unit, "hold %s"));
        texts.add(amount("line", unit, test("hold %s load 60 kg")));
        texts.add(amount("line", unit, test("series 2 x %s / 3 s mean 60, 58 kg")));
        texts.add(amount("advance", unit, "advance hold to %s by 1 s weekly"));
        texts.add(amount("advance", unit, "advance hold to 12 s by %s weekly"));
      }
      case REST -> {
        texts.add(amount("rest", unit, "rest %s"));
        texts.add(amount("resting", unit));
        texts.add(amount("line", unit, test("series 2 x 7 s / %s mean 60, 58 kg")));
      }
      case RESERVE -> texts.add(amount("hold", unit, "hold 7 s at reserve %s"));
      case FAILURE -> texts.add(amount("line", unit, test("to-failure 60 kg lasting %s")));
      case WARM_UP -> texts.add(amount("warm-up", unit));
      case REST_BETWEEN -> texts.add(amount("between", unit));
      case AVAILABLE -> texts.add(amount("available", unit));
      case CLIMBING -> {
        texts.add(amount("climbing", unit));
        texts.add(amount("line", unit, "2027-01-04 climbing hard %s"));
      }
      case GAP -> texts.add(amount("gap", unit));
      case DAY_GAP ->
          texts.add(
              amount(
                  "exercises",
                  unit,
                  "do own-holds on half-crimp edge 20 mm share days at least %s apart"));
      case RECURRENCE ->
          texts.add(amount("calendar", unit, "available from 2027-03-01 every %s wed 60 min"));
      case BLOCK -> texts.add(amount("block", unit));
      case EVERY -> texts.add(amount("advance", unit, "advance load 2 % every %s"));
      case RETEST -> {
        texts.add(amount("retest", unit));
        texts.add(amount("test-times", unit, "every %s"));
        texts.add(amount("test-times", unit, "after the last week, %s later"));
      }
      case ATTEMPTS -> texts.add(number("test-part", "attempts %s resting 3 min"));
      case RESTED -> texts.add(amount("test-part", unit, "rested %s"));
      case TAPER -> texts.add(amount("taper", unit, "taper %s to 50 % sets"));
      case RAMP -> texts.add(amount("over", unit));
      case COMPARISON -> texts.add(amount("over-weeks", unit));
      case TRAINED -> {
        texts.add(amount("trained", unit));
        texts.add(amount("needs", unit));
      }
      case FAMILIAR -> {
        texts.add(amount("familiar", unit));
        texts.add(amount("needs-grip", unit));
      }
      case BODY_MASS -> {
        texts.add(amount("body-mass", unit));
        texts.add(amount("line", unit, "2027-01-04 body-mass %s"));
      }
      case LOAD -> {
        texts.add(amount("hold", unit, "hold 7 s at %s"));
        texts.add(amount("line", unit, test("hold 7 s load %s")));
        texts.add(amount("line", unit, test("to-failure %s lasting 20 s")));
        texts.add(amount("line", unit, test("series 2 x 7 s / 3 s mean 58, %s")));
        texts.add(amount("line", unit, done("load %s")));
      }
      case FORCE -> {
        texts.add(amount("line", unit, test("hold 7 s force %s")));
        texts.add(amount("line", unit, test("to-failure %s lasting 20 s")));
        texts.add(amount("line", unit, test("series 2 x 7 s / 3 s mean 580, %s")));
      }
      case ADDED -> texts.add(at("hold", RangedText::added));
      case LOAD_STEP -> {
        texts.add(amount("steps", unit, "%s steps to 1000 kg"));
        texts.add(amount("advance", unit, "advance load %s weekly"));
      }
      case LOAD_LIMIT -> texts.add(amount("steps", unit, "0.001 kg steps to %s"));
      case EDGE -> {
        texts.add(amount("edges", unit, ", %s"));
        texts.add(amount("exercises", unit, "do own-holds on half-crimp edge %s"));
        texts.add(amount("advance", unit, "advance edge to %s by 1 mm weekly"));
        texts.add(amount("line", unit, test("hold 7 s load 60 kg").replace("20 mm", "%s")));
      }
      case EDGE_STEP -> texts.add(amount("advance", unit, "advance edge to 14 mm by %s weekly"));
      case HAND_LENGTH -> texts.add(amount("length", unit));
      case HAND_BREADTH -> texts.add(amount("breadth", unit));
      case BONE -> texts.add(amount("bone", unit));
      case KNUCKLE -> texts.add(amount("knuckle", unit));
      case ANGLE ->
          texts.add(
              at(
                  "band",
                  base ->
                      "index mcp "
                          + in(unit, -Math.abs(base))
                          + " to "
                          + in(unit, Math.abs(base))));
      case ANGLE_WITHIN -> texts.add(amount("band", unit, "index pip 90 deg within %s"));
      case MCP_CENTRE -> {
        texts.add(amount("band", unit, "index mcp %s"));
        texts.add(amount("limit", unit, "mcp %s"));
      }
      case PIP_CENTRE -> {
        // Wide, so that the greater end is one that a joint has.
        texts.add(amount("band", unit, "index pip %s within 60 deg"));
        texts.add(amount("limit", unit, "pip %s"));
      }
      case DIP_CENTRE -> {
        texts.add(amount("band", unit, "index dip %s"));
        texts.add(amount("limit", unit, "dip %s"));
      }
      case PIP_HIGH ->
          texts.add(
              at(
                  "band",
                  base -> "index pip " + in(unit, Math.min(base, 0)) + " to " + in(unit, base)));
      case SHARE ->
          texts.add(at("demand", base -> in(unit, base) + ", open-four " + in(unit, 1 - base)));
      case OF_MAX -> {
        texts.add(amount("hold", unit, "hold 7 s at %s max"));
        texts.add(amount("from", unit, "%s max"));
      }
      case EASE -> {
        texts.add(amount("ease", unit, "ease week 2 to %s sets"));
        texts.add(amount("taper", unit, "taper 2 weeks to %s sets"));
      }
      case LOAD_PERCENT -> texts.add(amount("advance", unit, "advance load %s weekly"));
      case WEEKLY_RISE -> texts.add(amount("rise", unit));
      case REPEATS -> {
        texts.add(number("repeats", "%s"));
        texts.add(number("line", done("sets 3 of %s")));
      }
      case SETS -> texts.add(number("line", done("sets %s")));
      case SETS_LIMIT -> {
        texts.add(number("advance", "advance sets to %s by 1 weekly"));
        texts.add(number("advance", "advance sets to 6 by %s weekly"));
      }
      case PER_WEEK -> {
        texts.add(number("per-week", "%s"));
        texts.add(number("each", "%s"));
      }
      case IN_A_ROW ->
          texts.add(
              new RangedText(
                  base ->
                      plan(
                          "advance",
                          "advance load 2 % when done in full" + (base == 2 ? " twice" : "")),
                  range::contains));
      case WEEK -> texts.add(number("ease", "ease week %s to 60 % sets"));
      case EXERCISE -> texts.add(whole(RangedText::exercise));
      case REPETITIONS ->
          texts.add(
              at(
                  "line",
                  base ->
                      test("series " + count(base) + " x 7 s / 3 s mean ")
                          + repeated((int) base, "60", ", ")
                          + " kg"));
      case EFFORT -> {
        texts.add(number("line", done("effort %s")));
        texts.add(number("line", "2027-01-04 climbing hard 60 min effort %s"));
        texts.add(number("advance", "advance load 2 % when effort at most %s"));
      }
      case LEVEL_EFFORT -> texts.add(number("hold", "hold 7 s at effort %s"));
      case PAIN -> {
        texts.add(number("line", done("pain %s")));
        texts.add(number("line", "2027-01-04 climbing hard 60 min pain %s"));
        texts.add(number("line", "2027-01-04 pain ring a2 left %s"));
        texts.add(number("advance", "advance load 2 % when pain at most %s"));
      }
      case STEPS -> texts.add(at("steps-of", base -> steps((int) base)));
      case EXERCISES ->
          texts.add(
              whole(
                  base ->
                      plan(
                          Map.of(
                              "block", FEWER_WEEKS, "exercises", repeated((int) base, LINE, "")))));
      case GRIPS -> texts.add(whole(base -> grips((int) base)));
      case ATHLETES -> texts.add(whole(base -> athletes((int) base)));
      case PLAN_WEEKS -> texts.add(whole(base -> weeks((int) base)));
      case YEAR -> {
        texts.add(at("line", base -> year(base) + "-06-01 skipped strength"));
        texts.add(at("line", base -> year(base) + "-06-01 pain ring 3"));
      }
      case BIRTH -> texts.add(whole(RangedText::born));
      case OF_TEST -> texts.add(amount("hold", unit, "hold 7 s at %s of test"));
      case SPREAD -> {
        texts.add(amount("spread", unit));
        texts.add(amount("cohort-force-spread", unit));
      }
      case CRITICAL_FORCE -> texts.add(amount("cohort-force", unit));
      case WITHIN -> texts.add(amount("within", unit));
      case COHORT -> texts.add(number("size", "%s"));
      case DRAWS -> texts.add(number("draws", "%s"));
      case STREAM -> texts.add(number("stream", "%s"));
      case CORRELATION -> texts.add(number("correlation", "%s"));
    }
    return texts;
  }

  private static String born(double base) {
    return """
        language 1
        athlete runa {
          born %s-06-01  body-mass 61 kg  trained 30 months  ability french 7b
          hand { length 178 mm }
          available mon 90 min
          equipment { edges 20 mm }
        }
        """
        .formatted(year(base));
  }

  private static String year(double base) {
    return String.format(Locale.ROOT, "%04d", (int) base);
  }

  /** Returns a protocol of this many holds and rests: a repeat counts its rest too. */
  private static String steps(int count) {
    int tens = count / 10;
    String inner = repeated(9, "hold 5 s at 30 % max\n", "");
    return (tens > 0 ? "repeat " + tens + " resting 1 s {\n" + inner + "}\n" : "")
        + repeated(count % 10, "hold 5 s at 30 % max\n", "");
  }
}
