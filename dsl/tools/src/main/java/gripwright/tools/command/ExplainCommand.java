package gripwright.tools.command;

import gripwright.export.json.JsonDocuments;
import gripwright.language.finding.CodePages;
import gripwright.language.finding.Nearest;
import java.util.List;

/** {@code explain CODE}: what a finding means. */
public final class ExplainCommand {

  /** What {@code explain --help} prints. */
  public static final String HELP =
      """
      gripwright explain CODE [--as text|json]

      Says what a finding means and what would be right, such as
      `gripwright explain name.unknown`.

      Exit: 0 found, 2 there is no such code.
      """;

  private ExplainCommand() {}

  /**
   * Runs the command and returns the exit code.
   *
   * @throws UsageException if it was called wrongly, or there is no such code
   */
  public static int run(List<String> arguments, Console console) throws UsageException {
    Arguments given = Arguments.parse(arguments, console, Arguments.AS, Arguments.ROOT);
    if (given.rest().size() != 1) {
      throw new UsageException("explain needs one code, such as name.unknown");
    }
    String code = given.rest().get(0);
    String page =
        CodePages.page(code)
            .orElseThrow(
                () ->
                    new UsageException(
                        "there is no code `"
                            + code
                            + "`"
                            + Nearest.to(code, CodePages.codes())
                                .map(nearest -> "; did you mean `" + nearest + "`?")
                                .orElse("")));
    console.out(given.asJson() ? JsonDocuments.explained(code, page) : page);
    return Exit.FINE;
  }
}
