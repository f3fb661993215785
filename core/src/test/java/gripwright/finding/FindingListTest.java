package gripwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The same mistake is reported once. */
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
  void aCertainEstimateLeavesOutADoubtfulOneOfTheSameLine() {
    FindingList list = new FindingList();
    list.addEstimate(finding("doubtful", on(1, "2027-03-02")), 0, false);
    list.addEstimate(finding("certain", on(2, "2027-03-09")), 0, true);
    list.addEstimate(finding("doubtful", LINE.then("exercise", 2)), 0, false);
    assertEquals(List.of("certain", "doubtful"), list.all().stream().map(Finding::code).toList());
    assertEquals(LINE.then("exercise", 2), list.all().get(1).place());
  }

  @Test
  void onlyEstimatesReplaceEachOther() {
    FindingList list = new FindingList();
    list.add(finding("fact", on(1, "2027-03-02")));
    list.addEstimate(finding("doubtful", on(1, "2027-03-02")), 0, false);
    assertEquals(List.of("fact", "doubtful"), list.all().stream().map(Finding::code).toList());
    list.addEstimate(finding("certain", on(1, "2027-03-02")), 0, true);
    assertEquals(List.of("fact", "certain"), list.all().stream().map(Finding::code).toList());
  }

  @Test
  void findingsOfDifferentGripsDoNotReplaceEachOther() {
    FindingList list = new FindingList();
    list.addEstimate(finding("doubtful", LINE).with("grip", "drag"), 0, false);
    list.addEstimate(finding("certain", LINE).with("grip", "half-crimp"), 0, true);
    assertEquals(2, list.all().size());
  }

  @Test
  void joinedListsEqualOneList() {
    FindingList one = new FindingList();
    one.addEstimate(finding("doubtful", on(1, "2027-03-02")), 0, false);
    one.add(finding("plan.level-over-max", on(1, "2027-03-02")).with("percent", "102 %"), 1.02);
    FindingList other = new FindingList();
    other.addEstimate(finding("certain", on(2, "2027-03-09")), 0, true);
    other.add(finding("plan.level-over-max", on(2, "2027-03-09")).with("percent", "106 %"), 1.06);
    FindingList both = one.plus(other);
    assertEquals(List.of("plan.level-over-max 2", "certain 1"), codes(both));
    assertEquals("106 %", both.all().get(0).arguments().get("percent"));
    assertEquals(List.of("doubtful 1", "plan.level-over-max 1"), codes(one), "it is left alone");
    assertEquals(List.of("certain 1", "plan.level-over-max 1"), codes(other));
  }

  @Test
  void theArgumentsOfTheWorstPlaceAreKeptAndOfEqualOnesTheFirst() {
    FindingList list = new FindingList();
    list.add(finding("plan.level-over-max", on(1, "2027-03-02")).with("percent", "102 %"), 1.02);
    list.add(finding("plan.level-over-max", on(2, "2027-03-09")).with("percent", "106 %"), 1.06);
    list.add(finding("plan.level-over-max", on(3, "2027-03-16")).with("percent", "105 %"), 1.05);
    list.add(finding("plan.level-over-max", on(4, "2027-03-23")).with("percent", "alike"), 1.06);
    assertEquals("106 %", list.all().get(0).arguments().get("percent"));
    assertEquals(4, list.all().get(0).places().size());
  }
}
