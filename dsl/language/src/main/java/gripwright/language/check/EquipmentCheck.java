package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.athlete.Equipment;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.EquipmentPart;
import gripwright.language.syntax.Word;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Checks an athlete's equipment. */
final class EquipmentCheck implements EquipmentPart.Visitor {

  private static final List<String> KINDS = List.of("added", "assist");

  private final Diagnostics diagnostics;
  private final Amounts amounts;
  private final Athlete.Builder builder;
  private final Once once;
  private final List<Length> edges = new ArrayList<>();
  private Optional<Equipment.Steps> added = Optional.empty();
  private Optional<Equipment.Steps> assist = Optional.empty();

  EquipmentCheck(Diagnostics diagnostics, Athlete.Builder builder) {
    this.diagnostics = diagnostics;
    this.amounts = new Amounts(diagnostics);
    this.builder = builder;
    this.once = new Once(diagnostics);
  }

  void check(AthleteItem.EquipmentItem item) {
    item.parts().forEach(part -> part.accept(this));
    diagnostics.markInvalidIf(item.damaged());
    if (!once.has("edges") && !item.damaged()) {
      diagnostics.error(
          item,
          "value.missing",
          "kind",
          Terms.kind("statement"),
          "name",
          "equipment",
          "missing",
          "`edges`");
    }
    Word place = item.place();
    if (place == null) {
      builder.edges(edges).added(added).assist(assist);
    } else if (!edges.isEmpty()) {
      builder.equipmentAt(place.text(), new Equipment(edges, added, assist));
    }
  }

  @Override
  public void edges(EquipmentPart.Edges edges) {
    once.seen(edges, "edges");
    edges.depths().forEach(this::edge);
  }

  private void edge(Amount depth) {
    Optional<Length> edge = amounts.length(depth, Slot.EDGE);
    if (edge.isPresent()
        && once.first(depth, "edge", Numbers.plain(edge.get().millimetres(), 2) + " mm")) {
      edges.add(edge.get());
    }
  }

  @Override
  public void loadSteps(EquipmentPart.LoadSteps steps) {
    String kind = steps.kind().text();
    if (!KINDS.contains(kind)) {
      diagnostics.unknown(steps.kind(), "kind-of-load", KINDS);
      return;
    }
    once.first(steps, kind);
    Optional<Load> step = amounts.load(steps.step(), Slot.LOAD_STEP);
    Optional<Load> limit = amounts.load(steps.limit(), Slot.LOAD_LIMIT);
    if (step.isEmpty() || limit.isEmpty()) {
      return;
    }
    if (limit.get().compareTo(step.get()) < 0) {
      diagnostics.error(
          steps.limit(),
          "value.step-over-limit",
          "step",
          Amounts.written(steps.step()),
          "limit",
          Amounts.written(steps.limit()));
    } else if (kind.equals("added")) {
      added = Optional.of(new Equipment.Steps(step.get(), limit.get()));
    } else {
      assist = Optional.of(new Equipment.Steps(step.get(), limit.get()));
    }
  }
}
