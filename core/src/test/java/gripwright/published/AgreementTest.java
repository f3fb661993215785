package gripwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.ModelPage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds the library to every published value, or to the reason why it isn't compared. */
class AgreementTest {

  private static final List<Compared> COMPARED = Compared.all();

  @Test
  void everyValueIsComparedOrHasAReason() {
    TreeSet<String> rows = new TreeSet<>();
    TreeSet<String> compared = new TreeSet<>();
    for (PublishedValue row : PublishedValue.all()) {
      assertTrue(rows.add(row.id()), () -> "twice: " + row.id());
      assertEquals(row.compared(), row.reason().isBlank(), row.id());
      if (row.compared()) {
        compared.add(row.id());
      }
    }
    assertEquals(compared, new TreeSet<>(Comparisons.all().keySet()));
  }

  @Test
  void constantsAreStoredAsPublishedAndRulesHold() {
    assertEquals(List.of(), outside(Comparison.Kind.CONSTANT));
    assertEquals(List.of(), outside(Comparison.Kind.RULE));
  }

  @Test
  void arithmeticGivesThePublishedResults() {
    assertEquals(List.of(), outside(Comparison.Kind.ARITHMETIC));
  }

  private static List<String> outside(Comparison.Kind kind) {
    return COMPARED.stream()
        .filter(each -> each.comparison().kind() == kind && !each.inside())
        .map(Compared::toString)
        .toList();
  }

  /** What was set by a value has to meet it, or the setting is lost. */
  @Test
  void valuesInViewAreMet() {
    assertEquals(
        List.of(),
        COMPARED.stream()
            .filter(each -> each.comparison().inView() && !each.inside())
            .map(Compared::toString)
            .toList());
  }

  @Test
  void disagreementsAreListedAndHeldToTheirRatio() throws IOException {
    Map<String, Double> now = new LinkedHashMap<>();
    COMPARED.stream()
        .filter(each -> !each.inside())
        .forEach(each -> now.put(each.row().id(), each.ratio()));
    if (Boolean.getBoolean("gripwright.bless")) {
      Disagreements.write(now);
      return;
    }
    Map<String, Disagreements.Disagreement> listed = Disagreements.listed();
    TreeSet<String> appeared = new TreeSet<>(now.keySet());
    appeared.removeAll(listed.keySet());
    TreeSet<String> vanished = new TreeSet<>(listed.keySet());
    vanished.removeAll(now.keySet());
    assertEquals(Set.of(), appeared, "new disagreements");
    assertEquals(Set.of(), vanished, "listed, and no longer so");
    List<String> wrong = new ArrayList<>();
    listed.forEach(
        (id, disagreement) -> {
          double ratio = now.getOrDefault(id, 1.0);
          if (!disagreement.holds(ratio) || disagreement.why().isEmpty()) {
            wrong.add(id + ": " + ratio + ", listed " + disagreement);
          }
        });
    assertEquals(List.of(), wrong);
  }

  @Test
  void thePageIsAsWritten() throws IOException {
    AgreementPage page = new AgreementPage(PublishedValue.all(), COMPARED, Disagreements.listed());
    ModelPage.check("agreement.md", "counts", page.counts());
    ModelPage.check("agreement.md", "models", page.models());
    ModelPage.check("agreement.md", "constants", page.constants());
    ModelPage.check("agreement.md", "not-compared", page.notCompared());
    ModelPage.check("agreement.md", "sources", page.sources());
  }
}
