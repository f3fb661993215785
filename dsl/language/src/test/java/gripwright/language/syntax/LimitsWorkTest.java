package gripwright.language.syntax;

import gripwright.language.source.SourceFile;
import gripwright.work.CountedWork;
import gripwright.work.Work;
import java.util.List;

/** The work for the same strange texts is proportional to their length. */
@CountedWork
class LimitsWorkTest extends LimitsTest {

  /** Constant number of steps for a text, and steps for each of its characters. */
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
