package gripwright.statics;

/** A tendon that bends a finger. */
public enum Tendon {
  /** Flexor digitorum profundus: bends all three joints. */
  FDP,
  /** Flexor digitorum superficialis: bends knuckle and middle joint. */
  FDS
}
