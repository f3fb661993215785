package gripwright.language.check;

import gripwright.ability.Ability;
import gripwright.finding.ModelPath;
import gripwright.grip.Band;
import gripwright.grip.FingerSet;
import gripwright.grip.Grip;
import gripwright.grip.GripFamily;
import gripwright.grip.Prerequisites;
import gripwright.hand.Finger;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.language.finding.LocatedFinding;
import gripwright.language.resolve.Declared;
import gripwright.language.syntax.Declaration;
import gripwright.language.syntax.GripItem;
import gripwright.language.syntax.Need;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Checks a grip. */
final class GripCheck {

  private final Declaration.Grip declaration;
  private final Known<Grip> grips;
  private final Ledger ledger;
  private final Amounts amounts;
  private final Flexions flexions;
  private final Words words;
  private final Once once;
  private final Grip.Builder builder;
  private final Map<Finger, Word> fingers = new EnumMap<>(Finger.class);
  private boolean fingersClear = true;
  private Optional<GripFamily> family = Optional.empty();
  private double trainedMonths;
  private Optional<Ability> ability = Optional.empty();
  private final Map<String, Double> familiar = new TreeMap<>();

  private GripCheck(
      Declared<Declaration.Grip> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    this.declaration = declared.declaration();
    this.grips = grips;
    String name = declaration.name().text();
    this.ledger = new Ledger(declared, ModelPath.of("grip", name), findings);
    this.amounts = new Amounts(ledger);
    this.flexions = new Flexions(ledger, amounts);
    this.words = new Words(ledger);
    this.once = new Once(ledger);
    this.builder = Grip.named(name);
  }

  /** Returns the grip, or nothing and findings. */
  static Optional<Grip> check(
      Declared<Declaration.Grip> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    return new GripCheck(declared, grips, findings).check();
  }

  private Optional<Grip> check() {
    Text title = declaration.title();
    if (title != null) {
      builder.title(title.value());
    }
    declaration.items().forEach(this::item);
    ledger.spoilIf(declaration.damaged());
    once.require(declaration.name(), "grip", declaration.damaged(), "fingers", "family");
    familyFitsFingers();
    bands();
    if (!ledger.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        builder
            .family(family.orElseThrow())
            .fingers(FingerSet.of(fingers.keySet()))
            .needs(new Prerequisites(trainedMonths, ability, familiar))
            .build());
  }

  private void item(GripItem item) {
    if (item instanceof GripItem.Fingers list) {
      once.first(list, "fingers");
      list.fingers().forEach(this::finger);
    } else if (item instanceof GripItem.Family kind) {
      once.first(kind, "family");
      family =
          ledger.word(
              kind.family(), "family", GripFamily::parse, Ledger.words(GripFamily.values()));
    } else if (item instanceof GripItem.Caution caution) {
      builder.caution(caution.text().value());
    } else if (item instanceof GripItem.Needs needs) {
      needs.needs().forEach(this::need);
    }
  }

  private void finger(Word word) {
    Optional<Finger> finger = words.finger(word);
    if (finger.isEmpty() || !once.first(word, "finger", word.text())) {
      fingersClear = false;
    }
    finger.ifPresent(f -> fingers.putIfAbsent(f, word));
  }

  private void familyFitsFingers() {
    if (!fingersClear || family.isEmpty() || fingers.isEmpty() || declaration.damaged()) {
      return;
    }
    if (!family.get().allows(fingers.size())) {
      Word at =
          declaration.items().stream()
              .filter(GripItem.Family.class::isInstance)
              .map(item -> ((GripItem.Family) item).family())
              .findFirst()
              .orElse(declaration.name());
      ledger.error(at, "value.family", "family", family.get(), "count", fingers.size());
    }
  }

  private void bands() {
    for (GripItem item : declaration.items()) {
      if (item instanceof GripItem.FingerBands of) {
        Optional<Finger> finger = words.finger(of.finger());
        if (finger.isPresent()
            && fingersClear
            && once.has("fingers")
            && !fingers.containsKey(finger.get())) {
          ledger.error(of.finger(), "value.idle-finger", "finger", finger.get());
          continue;
        }
        of.bands().forEach(band -> band(finger, band));
      }
    }
  }

  private void band(Optional<Finger> finger, GripItem.JointBand written) {
    Optional<Joint> joint =
        ledger.word(written.joint(), "joint", Joint::parse, Ledger.words(Joint.values()));
    Optional<FlexionRange> range = flexions.range(written.range());
    if (finger.isEmpty() || joint.isEmpty()) {
      return;
    }
    boolean first =
        once.first(
            written.joint(), Terms.of("joint-of", "finger", finger.get()), joint.get().word());
    if (range.isPresent()
        && first
        && flexions.possible(joint.get(), range.get(), written.range())) {
      double centre = range.get().centre();
      if (centre > JointRange.of(joint.get()).norm()) {
        flexions.unusual(joint.get(), centre, written.range());
      }
      builder.band(finger.get(), joint.get(), new Band(range.get().low(), range.get().high()));
    }
  }

  private void need(Need need) {
    if (need instanceof Need.NeedTrained trained) {
      once.first(trained, "needs trained");
      amounts.months(trained.time(), Slot.TRAINED).ifPresent(months -> trainedMonths = months);
    } else if (need instanceof Need.NeedAbility level) {
      once.first(level, "needs ability");
      ability = words.ability(level.grade());
    } else if (need instanceof Need.NeedFamiliar grip) {
      String name = grip.grip().text();
      grips.declares(ledger, grip.grip());
      once.first(grip.grip(), "needed-grip", name);
      amounts.months(grip.time(), Slot.FAMILIAR).ifPresent(months -> familiar.put(name, months));
    }
  }
}
