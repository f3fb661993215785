package example.benchmarks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a plan file of a given length: an invented club with its protocols, grips and rules, pairs
 * of athletes, a plan for each pair, and logs. The same length gives the same text.
 *
 * <p>The lines are of the kinds that coaches write, in about the usual proportions: a fifth to a
 * third each of athletes, plans and logs, and one set of protocols, grips and rules for all.
 */
final class PlanFile {

  /** The file length behind the figures in the documentation. */
  static final int STANDARD_LINES = 1000;

  private static final int PAIRS_PER_THOUSAND_LINES = 6;
  private static final LocalDate FIRST_DAY = LocalDate.of(2027, 1, 11);
  private static final List<String> NAMES =
      List.of(
          "aslaug", "birk", "dagny", "embla", "frode", "gyda", "halvor", "jorunn", "ketil", "liv",
          "odd", "ragna");

  private final List<String> lines = new ArrayList<>();
  private final int length;
  private final int athletes;

  private PlanFile(int length) {
    this.length = length;
    this.athletes = 2 * Math.max(1, length * PAIRS_PER_THOUSAND_LINES / STANDARD_LINES);
  }

  /**
   * Writes a file.
   *
   * @param lines how many lines it has, 500 or more
   * @throws IllegalArgumentException if there are fewer than 500
   */
  static String ofLines(int lines) {
    PlanFile file = new PlanFile(lines);
    file.write();
    return String.join("\n", file.lines) + "\n";
  }

  private void write() {
    add("language 1", "", "# Skarvdal Climbing Club: everything about one winter in one file.", "");
    lines.addAll(ClubText.PROTOCOLS.lines().toList());
    lines.addAll(ClubText.GRIPS.lines().toList());
    lines.addAll(ClubText.RULES.lines().toList());
    for (int i = 0; i < athletes; i++) {
      athlete(i);
    }
    for (int i = 0; i < athletes; i += 2) {
      plan(i);
    }
    int left = length - lines.size();
    for (int i = 0; i < athletes; i++) {
      int share = left / athletes + (i < left % athletes ? 1 : 0);
      log(i, share);
    }
    if (lines.size() != length) {
      throw new IllegalArgumentException("no club fits into " + length + " lines");
    }
  }

  private void add(String... more) {
    lines.addAll(List.of(more));
  }

  private static String name(int i) {
    int round = i / NAMES.size();
    return NAMES.get(i % NAMES.size()) + (round == 0 ? "" : "-" + round);
  }

  private void athlete(int i) {
    LocalDate born = LocalDate.of(1985, 2, 3).plusDays(397L * (i % 12));
    int trained = 40 + 3 * (i % 12);
    LocalDate hurt = LocalDate.of(2023, 3, 11).plusDays(9L * (i % 12));
    LocalDate away = FIRST_DAY.plusWeeks(1 + i % 2);
    add(
        "athlete " + name(i) + " \"Athlete " + (i + 1) + "\" {",
        "  born       " + born,
        "  sex        " + (i % 2 == 0 ? "female" : "male"),
        "  body-mass  " + bodyMass(i) + " kg",
        "  trained    " + trained + " months as of 2026-12-31",
        "  ability    french 7c+",
        "  hand {",
        "    length   " + (172 + i % 12) + " mm",
        "    breadth  " + (76 + i % 7) + " mm",
        "    ring     proximal 43.0 mm, middle 28.5 mm, distal 18.5 mm",
        "    knuckles index 3 mm, ring 7 mm, little 17 mm",
        "  }",
        "  familiar   half-crimp " + (trained - 6) + " months, three-finger-drag 18 months",
        "  injury     ring a2 left from " + hurt + " cleared " + hurt.plusWeeks(10) + " \"healed\"",
        "  available  tue 90 min, thu 90 min, sat 75 min",
        "  climbing   wed easy 60 min, sun hard 150 min",
        "  away       " + away + " to " + away.plusDays(6) + " \"a week at home\"",
        "  equipment {",
        "    edges    25 mm, 20 mm, 18 mm",
        "    added    1.25 kg steps to 60 kg",
        "    assist   0.5 kg steps to 40 kg",
        "  }",
        "}",
        "");
  }

  private static double bodyMass(int i) {
    return 56 + i % 12 * 1.5;
  }

  /**
   * Writes eight weeks for two athletes: a common plan with some content for the second athlete
   * only.
   */
  private void plan(int i) {
    add(
        "plan winter-" + (i / 2 + 1) + " \"a winter for two\" {",
        "  for      " + name(i) + ", " + name(i + 1),
        "  from     " + FIRST_DAY,
        "  towards  2027-04-17 \"spring trip\"",
        "  demand   half-crimp 45 %, three-finger-drag 25 %, front-three 15 %, club-open-four 15 %",
        "  rules    club-rules",
        "  warm-up  15 min",
        "  # Volume first, on big edges.",
        "  block base 4 weeks {",
        "    session fingers 2 per week at least 48 h apart {",
        "      prefer tue, thu",
        "      do club-tens with level " + (68 + i % 6) + " % max on half-crimp edge 20 mm",
        "      do club-repeats on three-finger-drag edge 20 mm",
        "      only for " + name(i + 1) + " {",
        "        do club-tens with level 66 % max, sets 3 on half-crimp edge 25 mm",
        "        do club-repeats with sets 2 on club-open-four edge 20 mm",
        "        do quiet-holds on half-crimp edge 25 mm",
        "      }",
        "    }",
        "    advance load 2 % weekly",
        "    ease week 4 to 60 % sets",
        "  }",
        "",
        "  # Then load, and a split grip for the trip.",
        "  block build 4 weeks {",
        "    session strength 2 per week at least 48 h apart {",
        "      do club-tens with work 7 s, level 76 % max, sets 4 on half-crimp edge 20 mm",
        "      do club-tens with sets 2, level 70 % max on front-three edge 20 mm",
        "      do club-repeats with level 50 % max on three-finger-drag edge 20 mm",
        "    }",
        "    introduce front-three from 50 % max over 3 weeks",
        "    advance load 2 % weekly on half-crimp",
        "    ease week 4 to 60 % sets",
        "  }",
        "",
        "  retest half-crimp edge 20 mm hold 7 s every 4 weeks",
        "  waive split-volume in build because \"two short exercises, reviewed by the coach\"",
        "}",
        "");
  }

  /** Writes a log of this many lines, including its heading and the empty line after it. */
  private void log(int i, int length) {
    int end = lines.size() + length - 2;
    add("log " + name(i) + " {");
    double best = bodyMass(i) * 1.45;
    add(
        test("half-crimp edge 20 mm", best),
        test("half-crimp edge 25 mm", best * 1.05),
        test("three-finger-drag edge 20 mm", best * 0.87),
        test("club-open-four edge 20 mm", best * 0.9),
        test("front-three edge 20 mm", best * 0.8),
        "  2026-12-19 test half-crimp edge 20 mm to-failure "
            + tenths(best * 0.65)
            + " kg lasting 52 s");
    LocalDate day = LocalDate.of(2026, 12, 20);
    for (int n = 0; lines.size() < end; n++) {
      day = day.plusDays(n % 2);
      entry(n, day, i, end - lines.size());
    }
    add("}", "");
  }

  private static String test(String grip, double load) {
    return "  2026-12-18 test " + grip + " hold 7 s load " + tenths(load) + " kg";
  }

  private void entry(int n, LocalDate day, int i, int room) {
    if (n % 6 == 0 && room >= 4) {
      String heavy = tenths(bodyMass(i) * 1.05);
      String light = tenths(bodyMass(i) * 0.7);
      add(
          "  " + day + " session fingers {",
          "    club-tens on half-crimp edge 20 mm: sets 4 of 4, load "
              + heavy
              + " kg, effort 7, pain 0",
          "    club-repeats on three-finger-drag edge 20 mm: sets 3 of 3, load "
              + light
              + " kg, effort 6, pain 1",
          "  }");
      return;
    }
    switch (n % 5) {
      case 0 -> add("  " + day + " climbing hard 120 min effort 8 pain 0 \"the steep wall\"");
      case 1 -> add("  " + day + " body-mass " + tenths(bodyMass(i) - 0.1 * (n % 4)) + " kg");
      case 2 -> add("  " + day + " climbing easy 60 min effort 3");
      case 3 -> add("  " + day + " skipped fingers \"late shift\"");
      default -> add("  " + day + " pain middle 1 \"stiff in the morning\"");
    }
  }

  /** Returns a number with one decimal and a decimal point in every locale. */
  private static String tenths(double value) {
    long tenths = Math.round(value * 10);
    return tenths / 10 + "." + tenths % 10;
  }
}
