package gripwright.planning.placement;

/**
 * The position of each number of a search state: days since the last session of each name first,
 * then how many of each are placed in the week, then the rest.
 *
 * @param names number of names
 */
record PlacementLayout(int names) {
  int count(int name) {
    return names + name;
  }

  int yesterday() {
    return 2 * names;
  }

  int today() {
    return 2 * names + 1;
  }

  int minutes() {
    return 2 * names + 2;
  }

  int lastDay() {
    return 2 * names + 3;
  }

  int tests() {
    return 2 * names + 4;
  }

  int testedYesterday() {
    return 2 * names + 5;
  }

  int testedToday() {
    return 2 * names + 6;
  }

  int size() {
    return 2 * names + 7;
  }
}
