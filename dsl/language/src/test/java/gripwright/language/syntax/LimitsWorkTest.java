package gripwright.language.syntax;

import gripwright.language.source.SourceFile;
import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.util.List;

/** The same strange texts take work in proportion to their length. */
@CountedWork
class LimitsWorkTest extends LimitsTest {

  /** Steps for a text whatever it is, and for each of its characters. */
  private static final long MOST_STEPS = 5_000_000;

  private static final long MOST_STEPS_A_CHARACTER = 400;

  @Override
  List<String> codes(String text) {
    return Texts.codes(
        Work.atMost(
            MOST_STEPS + MOST_STEPS_A_CHARACTER * text.length(),
            () -> Reader.parse(SourceFile.of("a.grip", text))));
  }
}
