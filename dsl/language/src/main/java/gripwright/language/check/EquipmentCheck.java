package gripwright.language.check;

import gripwright.athlete.Athlete;
import gripwright.language.syntax.Amount;
import gripwright.language.syntax.AthleteItem;
import gripwright.language.syntax.EquipmentPart;
import gripwright.quantity.Length;
import gripwright.quantity.Load;
import gripwright.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/** Checks what an athlete has to train with. */
final class EquipmentCheck {

  private static final List<String> KINDS = List.of("added", "assist");

  private final Ledger ledger;
  private final Amounts amounts;
  private final Athlete.Builder builder;

  EquipmentCheck(Ledger ledger, Athlete.Builder builder) {
    this.ledger = ledger;
    this.amounts = new Amounts(ledger);
    this.builder = builder;
  }

  void check(AthleteItem.EquipmentItem item) {
    Once once = new Once(ledger);
    for (EquipmentPart part : item.parts()) {
      if (part instanceof EquipmentPart.Edges edges) {
        once.seen(edges, "edges");
        edges.depths().forEach(depth -> edge(depth, once));
      } else if (part instanceof EquipmentPart.LoadSteps steps) {
        steps(steps, once);
      }
    }
    ledger.spoilIf(item.damaged());
    if (!once.has("edges") && !item.damaged()) {
      ledger.error(
          item,
          "value.missing",
          "kind",
          Terms.kind("statement"),
          "name",
          "equipment",
          "missing",
          "`edges`");
    }
  }

  private void edge(Amount depth, Once once) {
    Optional<Length> edge = amounts.length(depth, Slot.EDGE);
    if (edge.isPresent()
        && once.first(depth, "edge", Numbers.plain(edge.get().millimetres(), 2) + " mm")) {
      builder.edge(edge.get());
    }
  }

  private void steps(EquipmentPart.LoadSteps steps, Once once) {
    String kind = steps.kind().text();
    if (!KINDS.contains(kind)) {
      ledger.unknown(steps.kind(), "kind-of-load", KINDS);
      return;
    }
    once.first(steps, kind);
    Optional<Load> step = amounts.load(steps.step(), Slot.LOAD_STEP);
    Optional<Load> limit = amounts.load(steps.limit(), Slot.LOAD_LIMIT);
    if (step.isEmpty() || limit.isEmpty()) {
      return;
    }
    if (limit.get().compareTo(step.get()) < 0) {
      ledger.error(
          steps.limit(),
          "value.step-over-limit",
          "step",
          Amounts.written(steps.step()),
          "limit",
          Amounts.written(steps.limit()));
    } else if (kind.equals("added")) {
      builder.added(step.get(), limit.get());
    } else {
      builder.assist(step.get(), limit.get());
    }
  }
}
