package gripwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gripwright.house.Rooms;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Keeps the map of the packages up to date. */
class DevelopersPageTest {

  private static final String PAGE = "DEVELOPERS.md";
  private static final Pattern NAME = Pattern.compile("`([^`]+)`");

  @Test
  void thePictureOfThePackagesMatchesTheTable() {
    Blessing.generated(Page.read(PAGE), "packages", Rooms.picture());
  }

  @Test
  void theMapHasALineForEveryRoomAndForNoOther() {
    List<String> rooms = new ArrayList<>();
    for (String line : map()) {
      String[] cells = line.split("\\|");
      Matcher name = NAME.matcher(cells[2]);
      while (name.find()) {
        rooms.add(name.group(1));
      }
    }
    assertEquals(Set.copyOf(rooms).size(), rooms.size(), "each once");
    assertEquals(new TreeSet<>(Rooms.all()), new TreeSet<>(rooms));
  }

  private static List<String> map() {
    List<String> lines = Page.read(PAGE).lines();
    List<String> map = new ArrayList<>();
    for (int i = lines.indexOf("## Map") + 4; lines.get(i).startsWith("|"); i++) {
      map.add(lines.get(i));
    }
    return map;
  }
}
