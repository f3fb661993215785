package gripwright.export.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gripwright.export.Hands;
import gripwright.hand.Finger;
import gripwright.hand.FingerPose;
import gripwright.hand.FlexionRange;
import gripwright.hand.Joint;
import gripwright.schedule.Caution;
import gripwright.survey.GripSurvey;
import gripwright.wording.Wording;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class GripPictureTest {

  /** A survey and one of its rows. */
  record Drawn(GripSurvey survey, GripSurvey.Row row) {
    String svg() {
      return GripPicture.of(survey, row, Wording.english());
    }

    @Override
    public String toString() {
      return GripPicture.fileName(row);
    }
  }

  private static final List<Drawn> DRAWN =
      Stream.of(Hands.alike(), Hands.different())
          .flatMap(survey -> survey.rows().stream().map(row -> new Drawn(survey, row)))
          .toList();

  static List<Drawn> drawn() {
    return DRAWN;
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }

  private static List<Element> elements(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** Returns the angle between two lines drawn one after the other, in degrees. */
  private static double angle(Element one, Element other) {
    double x = number(one, "x2") - number(one, "x1");
    double y = number(one, "y2") - number(one, "y1");
    double nextX = number(other, "x2") - number(other, "x1");
    double nextY = number(other, "y2") - number(other, "y1");
    return Math.toDegrees(Math.abs(Math.atan2(x * nextY - y * nextX, x * nextX + y * nextY)));
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void everyAngleWrittenIsTheAngleDrawn(Drawn drawn) throws Exception {
    List<Element> groups = elements(parsed(drawn.svg()).getElementsByTagName("g"));
    assertEquals(Finger.values().length, groups.size());
    for (FingerPose finger : drawn.row().fit().pose().fingers()) {
      Element group = groups.get(finger.finger().ordinal());
      // The middle lines of palm and bones, from the palm to the tip.
      List<Element> lines =
          elements(group.getElementsByTagName("line")).stream()
              .filter(line -> line.getAttribute("stroke").equals("gray"))
              .toList();
      List<Element> labels = elements(group.getElementsByTagName("text"));
      List<String> joints = List.of("MCP", "PIP", "DIP");
      for (int i = 0; i < joints.size(); i++) {
        String[] words = labels.get(i).getTextContent().split(" ", -1);
        assertEquals(joints.get(i), words[0]);
        double written = Double.parseDouble(words[1].replace("\u00b0", ""));
        // Coordinates have one decimal, so a short bone may be turned by half a degree.
        assertEquals(
            Math.abs(written), angle(lines.get(i), lines.get(i + 1)), 1.2, drawn::toString);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void aFingerOffTheHoldIsNamedAndNotDrawn(Drawn drawn) throws Exception {
    Document document = parsed(drawn.svg());
    List<Element> groups = elements(document.getElementsByTagName("g"));
    for (Finger finger : Finger.values()) {
      boolean holds = drawn.row().fit().pose().finger(finger).isPresent();
      assertEquals(
          !holds,
          document
              .getDocumentElement()
              .getTextContent()
              .contains(finger.word() + ": off the hold"));
      assertEquals(
          holds ? 3 : 0, groups.get(finger.ordinal()).getElementsByTagName("circle").getLength());
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void allOfItIsInsideThePicture(Drawn drawn) throws Exception {
    Element root = parsed(drawn.svg()).getDocumentElement();
    double width = number(root, "width");
    double height = number(root, "height");
    for (Element group : elements(root.getElementsByTagName("g"))) {
      String[] moved = group.getAttribute("transform").split("[( )]", -1);
      for (Element circle : elements(group.getElementsByTagName("circle"))) {
        double x = Double.parseDouble(moved[1]) + number(circle, "cx");
        double y = Double.parseDouble(moved[2]) + number(circle, "cy");
        assertTrue(x > 0 && x < width && y > 0 && y < height, drawn::toString);
      }
    }
    for (Element text : elements(root.getElementsByTagName("text"))) {
      assertTrue(number(text, "y") < height, text::getTextContent);
    }
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void aGripThatIsClosedOrOutOfReachSaysSo(Drawn drawn) {
    String svg = drawn.svg();
    assertEquals(!drawn.row().open(), svg.contains("CLOSED TO THIS ATHLETE"));
    assertEquals(!drawn.row().fit().reachable(), svg.contains("CAN'T TAKE THIS GRIP"));
    assertEquals(drawn.row().limited(), svg.contains("LIMITED: some work in this grip"));
  }

  @Test
  void aLimitedGripNamesTheExcludedWorkFirst() throws Exception {
    GripSurvey survey = Hands.ofAge(15);
    GripSurvey.Row row =
        survey.rows().stream().filter(GripSurvey.Row::limited).findFirst().orElseThrow();
    String text =
        parsed(new Drawn(survey, row).svg()).getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(text.startsWith("LIMITED: some work in this grip is excluded: "), text);
    assertTrue(text.contains("added load for an athlete under 16"), text);
  }

  /** The largest distance from the angle drawn to an end of its 90 % range, by hand. */
  @ParameterizedTest
  @MethodSource("drawn")
  void theUncertaintyIsThatOfTheFit(Drawn drawn) {
    double largest = 0;
    for (FingerPose finger : drawn.row().fit().pose().fingers()) {
      FlexionRange range =
          drawn.row().fit().spread().flexion(finger.finger(), Joint.PIP).orElseThrow();
      largest = Math.max(largest, range.high().degrees() - finger.pip().degrees());
      largest = Math.max(largest, finger.pip().degrees() - range.low().degrees());
    }
    String svg = drawn.svg().replaceAll("<[^>]*>\\s*", " ").replaceAll("\\s+", " ");
    assertTrue(svg.contains("differ by at most " + Math.round(largest) + "\u00b0"), svg);
  }

  @Test
  void theDayOfTheSurveyIsOnThePicture() {
    assertTrue(DRAWN.get(0).svg().contains(", Mon 11 Jan 2027, from the side"));
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void cautionsAreOnEveryPicture(Drawn drawn) throws Exception {
    String text = parsed(drawn.svg()).getElementsByTagName("desc").item(0).getTextContent();
    for (Caution caution : Caution.general()) {
      assertTrue(text.contains(Wording.english().say(caution)), caution.key());
    }
    for (String caution : drawn.row().grip().cautions()) {
      assertTrue(text.toLowerCase(Locale.ROOT).contains(caution.toLowerCase(Locale.ROOT)), caution);
    }
  }

  @Test
  void handsThatDifferHaveAFileEach() {
    List<String> names =
        DRAWN.stream()
            .filter(drawn -> drawn.row().side().isPresent())
            .map(Drawn::toString)
            .toList();
    assertEquals(names.size(), names.stream().distinct().count());
    assertTrue(names.contains("half-crimp-left.svg"), names::toString);
    assertTrue(names.contains("half-crimp-right.svg"), names::toString);
    assertFalse(names.contains("half-crimp.svg"), names::toString);
  }
}
