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
import gripwright.language.syntax.Note;
import gripwright.language.syntax.Text;
import gripwright.language.syntax.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Checks a grip. */
final class GripCheck {

  private final Declaration.Grip declaration;
  private final Known<Grip> grips;
  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Flexions flexions;
  private final Words words;
  private final Once once;
  private final Grip.Builder builder;
  private final Map<Finger, Word> fingers = new EnumMap<>(Finger.class);
  private final List<GripItem.FingerBands> bands = new ArrayList<>();
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
    this.diagnostics = new Diagnostics(declared, ModelPath.of("grip", name), findings);
    this.amounts = new Amounts(diagnostics);
    this.flexions = new Flexions(diagnostics, amounts);
    this.words = new Words(diagnostics);
    this.once = new Once(diagnostics);
    this.builder = Grip.named(name);
  }

  /** Returns the grip; empty if it has a mistake, which is reported. */
  static Optional<Grip> check(
      Declared<Declaration.Grip> declared, Known<Grip> grips, List<LocatedFinding> findings) {
    return new GripCheck(declared, grips, findings).check();
  }

  private Optional<Grip> check() {
    Text title = declaration.title();
    if (title != null) {
      builder.title(title.value());
    }
    Items items = new Items();
    declaration.items().forEach(item -> item.accept(items));
    diagnostics.markInvalidIf(declaration.damaged());
    once.require(declaration.name(), "grip", declaration.damaged(), "fingers", "family");
    familyFitsFingers();
    bands();
    if (!diagnostics.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        builder
            .family(family.orElseThrow())
            .fingers(FingerSet.of(fingers.keySet()))
            .needs(new Prerequisites(trainedMonths, ability, familiar))
            .build());
  }

  /** Checks each statement; the joint angles are checked once all fingers are known. */
  private final class Items implements GripItem.Visitor {
    @Override
    public void note(Note note) {
      builder.note(note.text().value());
    }

    @Override
    public void fingers(GripItem.Fingers list) {
      once.first(list, "fingers");
      list.fingers().forEach(GripCheck.this::finger);
    }

    @Override
    public void family(GripItem.Family kind) {
      once.first(kind, "family");
      family =
          diagnostics.word(
              kind.family(), "family", GripFamily::parse, Diagnostics.words(GripFamily.values()));
    }

    @Override
    public void fingerBands(GripItem.FingerBands of) {
      bands.add(of);
    }

    @Override
    public void caution(GripItem.Caution caution) {
      builder.caution(caution.text().value());
    }

    @Override
    public void needs(GripItem.Needs needs) {
      Needed needed = new Needed();
      needs.needs().forEach(need -> need.accept(needed));
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
      diagnostics.error(at, "value.family", "family", family.get(), "count", fingers.size());
    }
  }

  private void bands() {
    for (GripItem.FingerBands of : bands) {
      Optional<Finger> finger = words.finger(of.finger());
      if (finger.isPresent()
          && fingersClear
          && once.has("fingers")
          && !fingers.containsKey(finger.get())) {
        diagnostics.error(of.finger(), "value.idle-finger", "finger", finger.get());
      } else {
        of.bands().forEach(band -> band(finger, band));
      }
    }
  }

  private void band(Optional<Finger> finger, GripItem.JointBand written) {
    Optional<Joint> joint =
        diagnostics.word(written.joint(), "joint", Joint::parse, Diagnostics.words(Joint.values()));
    Optional<FlexionRange> range = flexions.range(written.range());
    if (finger.isEmpty() || joint.isEmpty()) {
      return;
    }
    boolean first =
        once.first(
            written.joint(), Terms.of("joint-of", "finger", finger.get()), joint.get().word());
    if (range.isPresent()
        && first
        && flexions.possible(joint.get(), range.get(), written.range())
        && flexions.holds(joint.get(), range.get(), written.range())) {
      double centre = range.get().centre();
      if (centre > JointRange.of(joint.get()).norm()) {
        flexions.unusual(joint.get(), centre, written.range());
      }
      builder.band(finger.get(), joint.get(), new Band(range.get().low(), range.get().high()));
    }
  }

  /** Checks each prerequisite. */
  private final class Needed implements Need.Visitor {
    @Override
    public void needTrained(Need.NeedTrained trained) {
      once.first(trained, "needs trained");
      amounts.months(trained.time(), Slot.TRAINED).ifPresent(months -> trainedMonths = months);
    }

    @Override
    public void needAbility(Need.NeedAbility level) {
      once.first(level, "needs ability");
      ability = words.ability(level.grade());
    }

    @Override
    public void needFamiliar(Need.NeedFamiliar grip) {
      String name = grip.grip().text();
      grips.declares(diagnostics, grip.grip());
      once.first(grip.grip(), "needed-grip", name);
      amounts.months(grip.time(), Slot.FAMILIAR).ifPresent(months -> familiar.put(name, months));
    }
  }
}
