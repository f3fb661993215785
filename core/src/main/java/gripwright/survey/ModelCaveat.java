package gripwright.survey;

/** What a reader of estimated poses and forces has to know of them. */
public enum ModelCaveat {
  /** What the numbers are. */
  ESTIMATE(
      "Angles and forces are an estimate by a model of a hand that hangs still, not a measurement;"
          + " the ranges hold 90 % of the spread of its parameters, and some published values lie"
          + " outside them."),
  /** What is the athlete's own, and what is not. */
  ESTIMATED_BONES(
      "Bones that were not measured are those of an average hand of this length: with length alone,"
          + " every athlete gets the same angles. Measured bones make them the athlete's own."),
  /** The edge is so shallow that nothing holds of it. */
  UNMODELLED_EDGE(
      "An edge of 4.3 mm or less is not modelled: what is held there does not go with what is held"
          + " on deeper edges, so take none of these numbers at their word."),
  /** The pad reaches over the edge: see {@code docs/models/hand.md}. */
  SHALLOW_EDGE(
      "This edge is shallower than the longest end bone: how far a pad reaches over it is guessed,"
          + " and the shallower, the less angles and forces are worth."),
  /** Where the model refuses too much: see {@code docs/models/hand.md}. */
  WHOLE_PADS(
      "The model lays every pad on the edge to its whole length. In life a short finger holds with"
          + " less of its pad, so a hand may take a grip that misses by little here."),
  /** Where the model contradicts tests: see {@code docs/models/tissue.md}. */
  CRIMP_AND_DRAG(
      "The model loads A2 of the middle finger more in a drag than in a crimp. Cadaver tests find the"
          + " contrary, so don't trust its order of crimp and drag."),
  /** What breaking loads are worth. */
  BREAKING_LOAD(
      "Breaking loads are means in cadavers, known roughly: a share of one is no limit for"
          + " training."),
  /** Where the model fails: see {@code docs/models/tissue.md}. */
  SINGLE_FINGER(
      "A single finger's pulley forces come out far too high: compare grips by them, and take none"
          + " as newtons.");

  private final String text;

  ModelCaveat(String text) {
    this.text = text;
  }

  /** Returns the sentence. */
  public String text() {
    return text;
  }
}
