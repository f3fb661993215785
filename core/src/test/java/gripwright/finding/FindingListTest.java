package gripwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What fails twice in the same way is told once. */
class FindingListTest {

  private static final ModelPath LINE =
      ModelPath.of("plan", "spring").then("block", "base").then("session", "power");

  private static ModelPath on(int week, String date) {
    return ModelPath.of("plan", "spring")
        .then("block", "base")
        .then("week", week)
        .then("session", "power")
        .then("date", date);
  }

  private static Finding finding(String code, ModelPath place) {
    return Finding.advice(code, place);
  }

  private static List<String> codes(FindingList list) {
    return list.all().stream().map(f -> f.code() + " " + f.places().size()).toList();
  }

  @Test
  void oneLineInTwoWeeksIsOneFindingWithTwoPlaces() {
    FindingList list = new FindingList();
    list.add(finding("plan.load-too-small", on(1, "2027-03-02")));
    list.add(finding("plan.load-too-small", on(2, "2027-03-09")));
    list.add(finding("plan.load-too-small", on(2, "2027-03-09")));
    list.add(finding("plan.hold-range", on(2, "2027-03-09")));
    assertEquals(List.of("plan.load-too-small 2", "plan.hold-range 1"), codes(list));
    assertEquals(on(1, "2027-03-02"), list.all().get(0).place());
    assertEquals(LINE, FindingList.line(on(1, "2027-03-02")));
  }

  @Test
  void twoGripsOfALineAreTwoFindings() {
    FindingList list = new FindingList();
    list.add(finding("plan.edge-missing", LINE).with("grip", "half-crimp"));
    list.add(finding("plan.edge-missing", LINE).with("grip", "drag"));
    assertEquals(2, list.all().size());
  }

  @Test
  void whatIsCertainLeavesOutWhatIsDoubtfulOfTheSameLine() {
    FindingList list = new FindingList();
    list.add(finding("doubtful", on(1, "2027-03-02")));
    list.add(finding("certain", on(2, "2027-03-09")));
    list.add(finding("doubtful", LINE.then("exercise", 2)));
    list.settle("doubtful", "certain");
    assertEquals(List.of("certain", "doubtful"), list.all().stream().map(Finding::code).toList());
    assertEquals(LINE.then("exercise", 2), list.all().get(1).place());
  }

  @Test
  void ofSeveralOnOneLineTheFactsOfTheWorstAreToldOfThoseAlikeTheFirst() {
    FindingList list = new FindingList();
    list.add(finding("plan.level-over-max", on(1, "2027-03-02")).with("percent", "102 %"), 1.02);
    list.add(finding("plan.level-over-max", on(2, "2027-03-09")).with("percent", "106 %"), 1.06);
    list.add(finding("plan.level-over-max", on(3, "2027-03-16")).with("percent", "105 %"), 1.05);
    list.add(finding("plan.level-over-max", on(4, "2027-03-23")).with("percent", "alike"), 1.06);
    assertEquals("106 %", list.all().get(0).arguments().get("percent"));
    assertEquals(4, list.all().get(0).places().size());
  }
}
