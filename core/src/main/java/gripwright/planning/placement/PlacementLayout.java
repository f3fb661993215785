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

  /** The minute at which the last session of today ends, if it began at a known time. */
  int endToday() {
    return 2 * names + 7;
  }

  /** The minutes that the last session of today keeps to others; 0 if it shares no day. */
  int shareToday() {
    return 2 * names + 8;
  }

  /** Whether a session of today shares no day unless the other does. */
  int unsharedToday() {
    return 2 * names + 9;
  }

  int size() {
    return 2 * names + 10;
  }
}
