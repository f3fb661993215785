package gripwright.export.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.Changes;
import gripwright.wording.Wording;
import java.util.List;
import org.junit.jupiter.api.Test;

final class DiffTextTest {

  @Test
  void nothingIsSaidInAFewWords() {
    assertEquals("no change in meaning\n", DiffText.of(Changes.none(), Wording.english()));
  }

  @Test
  void everyKindOfChangeHasItsWords() {
    String text = DiffText.of(Changes.all(), Wording.english());
    String flat = text.replaceAll("\\s+", " ");
    for (String words :
        List.of(
            "KNOWN OTHERWISE sunniva, body mass: 57 kg instead of 58 kg",
            "sunniva, away, new: 2027-02-01 to 2027-02-07",
            "grip two-and-two is new",
            "rule early-edge says something else",
            "protocol tens is gone",
            "the plan begins on Mon 25 Jan 2027 instead of Mon 11 Jan 2027, 2 weeks later",
            "new: goal 2027-05-01 the wall",
            "no longer: climbing ahead a 100 %",
            "block peak is new, 2 weeks from Mon 11 Jan",
            "block rest falls away, 1 week from Mon 11 Jan",
            "block build begins on Mon 11 Jan, a day earlier",
            "block base has 5 weeks instead of 4",
            "block base is written otherwise and gives the same sessions",
            "half-crimp is introduced a week later, on Mon 18 Jan instead of Mon 11 Jan",
            "week-load-rise in block base week 2 is waived, because: a short trip",
            "the waiver of week-load-rise in block base week 2 is gone; it said: a short trip",
            "new caution: half-crimp: new",
            "no longer said: half-crimp: old",
            "NEW FINDINGS advice[plan.load-modelled]: ")) {
      assertTrue(flat.contains(words), () -> words + " is not in\n" + text);
    }
    assertTrue(text.lines().allMatch(line -> line.length() <= Page.WIDTH), text);
    assertTrue(text.indexOf("the plan begins") < text.indexOf("block peak"), text);
  }
}
