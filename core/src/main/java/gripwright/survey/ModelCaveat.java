package gripwright.survey;

/** What a reader of estimated poses and forces has to know of them. */
public enum ModelCaveat {
  /** What the numbers are. */
  ESTIMATE,
  /** What is the athlete's own, and what is not. */
  ESTIMATED_BONES,
  /** The edge is so shallow that nothing holds of it. */
  UNMODELLED_EDGE,
  /** The pad reaches over the edge: see {@code docs/models/hand.md}. */
  SHALLOW_EDGE,
  /** Where the model refuses too much: see {@code docs/models/hand.md}. */
  WHOLE_PADS,
  /** Where the model contradicts tests: see {@code docs/models/tissue.md}. */
  CRIMP_AND_DRAG,
  /** What breaking loads are worth. */
  BREAKING_LOAD,
  /** Where the model fails: see {@code docs/models/tissue.md}. */
  SINGLE_FINGER
}
