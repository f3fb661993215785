// Generated from grips.grip by CatalogueTest of the language module, which proves the two equal.
// Run that test with -Dgripwright.bless=true, then the formatter, to write this file anew;
// do not edit it.
package gripwright.grip;

import gripwright.hand.Finger;
import gripwright.hand.Joint;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The grips of the catalogue. */
public final class StandardGrips {

  /** Back three, half crimped. */
  public static final Grip BACK_THREE =
      Grip.named("back-three")
          .title("back three, half crimped")
          .family(GripFamily.SPLIT)
          .fingers(Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(75.0, 105.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(75.0, 105.0))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0.0, 90.0))
          .caution(
              "keep the middle finger near a right angle: opening it strains the lumbrical muscles")
          .caution("keep the index finger loose beside the hold, not pulled down")
          .build();

  /** Back two. */
  public static final Grip BACK_TWO =
      Grip.named("back-two")
          .title("back two")
          .family(GripFamily.SPLIT)
          .fingers(Finger.RING, Finger.LITTLE)
          .band(Finger.RING, Joint.PIP, Band.degrees(70.0, 110.0))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0.0, 90.0))
          .needs(new Prerequisites(36.0, Optional.empty(), Map.of("back-three", 12.0)))
          .caution("the weakest pair: few climbs need it: raise the load very slowly")
          .build();

  /** Front three, half crimped. */
  public static final Grip FRONT_THREE =
      Grip.named("front-three")
          .title("front three, half crimped")
          .family(GripFamily.SPLIT)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(75.0, 105.0))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(75.0, 105.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(60.0, 90.0))
          .caution("loads the ring finger hard: let it open as the hand wants and build up slowly")
          .build();

  /** Front two. */
  public static final Grip FRONT_TWO =
      Grip.named("front-two")
          .title("front two")
          .family(GripFamily.SPLIT)
          .fingers(Finger.INDEX, Finger.MIDDLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(70.0, 110.0))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(70.0, 110.0))
          .needs(new Prerequisites(36.0, Optional.empty(), Map.of()))
          .caution("two fingers carry what four do elsewhere: start far below what feels possible")
          .build();

  /** Full crimp. */
  public static final Grip FULL_CRIMP =
      Grip.named("full-crimp")
          .title("full crimp")
          .family(GripFamily.FOUR)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(80.0, 110.0))
          .band(Finger.INDEX, Joint.DIP, Band.degrees(-40.0, -5.0))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(80.0, 120.0))
          .band(Finger.MIDDLE, Joint.DIP, Band.degrees(-40.0, -5.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(80.0, 110.0))
          .band(Finger.RING, Joint.DIP, Band.degrees(-40.0, -5.0))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(20.0, 90.0))
          .needs(new Prerequisites(0.0, Optional.empty(), Map.of("half-crimp", 12.0)))
          .caution(
              "the end joints bend backwards and the pulleys are loaded more than in any other grip")
          .caution("keep the volume low, and leave it out when a finger is sore")
          .build();

  /** Half crimp. */
  public static final Grip HALF_CRIMP =
      Grip.named("half-crimp")
          .title("half crimp")
          .family(GripFamily.FOUR)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(75.0, 105.0))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(75.0, 110.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(75.0, 105.0))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0.0, 90.0))
          .caution("let the little finger lie as it falls: do not force it to a right angle")
          .build();

  /** Index finger alone. */
  public static final Grip INDEX_SINGLE =
      Grip.named("index-single")
          .title("index finger alone")
          .family(GripFamily.SINGLE)
          .fingers(Finger.INDEX)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(20.0, 75.0))
          .caution("carries over poorly to other grips: train it only if the climbing needs it")
          .build();

  /** Little finger alone. */
  public static final Grip LITTLE_SINGLE =
      Grip.named("little-single")
          .title("little finger alone")
          .family(GripFamily.SINGLE)
          .fingers(Finger.LITTLE)
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0.0, 50.0))
          .caution("carries over poorly to other grips: train it only if the climbing needs it")
          .caution("the weakest finger: use light loads only")
          .build();

  /** Middle finger alone. */
  public static final Grip MIDDLE_SINGLE =
      Grip.named("middle-single")
          .title("middle finger alone")
          .family(GripFamily.SINGLE)
          .fingers(Finger.MIDDLE)
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(20.0, 75.0))
          .caution("carries over poorly to other grips: train it only if the climbing needs it")
          .build();

  /** Middle two. */
  public static final Grip MIDDLE_TWO =
      Grip.named("middle-two")
          .title("middle two")
          .family(GripFamily.SPLIT)
          .fingers(Finger.MIDDLE, Finger.RING)
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(70.0, 110.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(70.0, 110.0))
          .needs(new Prerequisites(36.0, Optional.empty(), Map.of()))
          .caution("keep index and little finger loose: pulling them down strains the palm")
          .build();

  /** Open hand, four fingers. */
  public static final Grip OPEN_FOUR =
      Grip.named("open-four")
          .title("open hand, four fingers")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING, Finger.LITTLE)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(0.0, 50.0))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(30.0, 70.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(30.0, 70.0))
          .band(Finger.LITTLE, Joint.PIP, Band.degrees(0.0, 40.0))
          .caution("hang from relaxed fingers: pull no finger into a crimp on the way")
          .build();

  /** Ring finger alone. */
  public static final Grip RING_SINGLE =
      Grip.named("ring-single")
          .title("ring finger alone")
          .family(GripFamily.SINGLE)
          .fingers(Finger.RING)
          .band(Finger.RING, Joint.PIP, Band.degrees(20.0, 75.0))
          .caution("carries over poorly to other grips: train it only if the climbing needs it")
          .caution("the pulleys of the ring finger are injured most often")
          .build();

  /** Three-finger drag. */
  public static final Grip THREE_FINGER_DRAG =
      Grip.named("three-finger-drag")
          .title("three-finger drag")
          .family(GripFamily.OPEN)
          .fingers(Finger.INDEX, Finger.MIDDLE, Finger.RING)
          .band(Finger.INDEX, Joint.PIP, Band.degrees(0.0, 25.0))
          .band(Finger.MIDDLE, Joint.PIP, Band.degrees(25.0, 75.0))
          .band(Finger.RING, Joint.PIP, Band.degrees(0.0, 25.0))
          .caution("keep the little finger loose beside the hold, not pulled into the palm")
          .build();

  private static final List<Grip> ALL =
      List.of(
          BACK_THREE,
          BACK_TWO,
          FRONT_THREE,
          FRONT_TWO,
          FULL_CRIMP,
          HALF_CRIMP,
          INDEX_SINGLE,
          LITTLE_SINGLE,
          MIDDLE_SINGLE,
          MIDDLE_TWO,
          OPEN_FOUR,
          RING_SINGLE,
          THREE_FINGER_DRAG);

  private StandardGrips() {}

  /** Returns every grip of the catalogue, in the order of the names. */
  public static List<Grip> all() {
    return ALL;
  }

  /** Returns every grip of the catalogue by name. */
  public static SortedMap<String, Grip> byName() {
    TreeMap<String, Grip> byName = new TreeMap<>();
    ALL.forEach(grip -> byName.put(grip.name(), grip));
    return Collections.unmodifiableSortedMap(byName);
  }
}
