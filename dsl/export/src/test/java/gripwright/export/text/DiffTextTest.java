package gripwright.export.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.Changes;
import gripwright.wording.Wording;
import java.util.List;
import org.junit.jupiter.api.Test;

final class DiffTextTest {

  @Test
  void noChangeIsReportedInOneLine() {
    assertEquals("no change in meaning\n", DiffText.of(Changes.none(), Wording.english()));
  }

  @Test
  void everyKindOfChangeHasItsWords() {
    String text = DiffText.of(Changes.all(), Wording.english());
    String flat = text.replaceAll("\\s+", " ");
    for (String words :
        List.of(
            "ATHLETE DATA CHANGED sunniva, body mass: 57 kg instead of 58 kg",
            "sunniva, away, new: 2027-02-01 to 2027-02-07",
            "grip two-and-two is new",
            "rule early-edge is changed",
            "protocol tens is removed",
            "the plan begins on Mon 25 Jan 2027 instead of Mon 11 Jan 2027, 2 weeks later",
            "new: goal 2027-05-01 the wall",
            "removed: demand a 100 %",
            "block peak is new, 2 weeks from Mon 11 Jan",
            "block rest is removed, 1 week from Mon 11 Jan",
            "block build begins on Mon 11 Jan, a day earlier",
            "block base has 5 weeks instead of 4",
            "block base: the text changed and the sessions stay the same",
            "half-crimp is introduced a week later, on Mon 18 Jan instead of Mon 11 Jan",
            "week-load-rise in block base week 2 is waived, because: a short trip",
            "the waiver of week-load-rise in block base week 2 is removed; its reason was: a"
                + " short trip",
            "new caution: half-crimp: new",
            "removed caution: half-crimp: old",
            "NEW FINDINGS advice plan.load-modelled: ")) {
      assertTrue(flat.contains(words), () -> words + " is not in\n" + text);
    }
    assertTrue(text.lines().allMatch(line -> line.length() <= Page.WIDTH), text);
    assertTrue(text.indexOf("the plan begins") < text.indexOf("block peak"), text);
  }
}
