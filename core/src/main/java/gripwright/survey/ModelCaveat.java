package gripwright.survey;

/** A caveat for readers of estimated poses and forces. */
public enum ModelCaveat {
  /** The numbers are estimates. */
  ESTIMATE,
  /** Some bones are estimated, not measured. */
  ESTIMATED_BONES,
  /** The edge is too shallow for the model. */
  UNMODELLED_EDGE,
  /** The pad reaches over the edge: see {@code docs/models/hand.md}. */
  SHALLOW_EDGE,
  /** Where the model refuses too much: see {@code docs/models/hand.md}. */
  WHOLE_PADS,
  /** What can't be relied on of tendons and pulleys: see {@code docs/models/tissue.md}. */
  TISSUE,
  /** The hand does not take the grip that forces are given relative to. */
  OWN_HANG
}
