package gripwright.export.text;

import gripwright.finding.Finding;
import gripwright.log.LogEntry;
import gripwright.review.Review;
import gripwright.review.ReviewedSession;
import gripwright.review.ReviewedSession.Outcome;
import gripwright.schedule.Caution;
import gripwright.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A review as a coach reads it: what comes next, then sessions, load, work of grips and fingers,
 * tests, sides and pain, then the cautions.
 *
 * <p>At most 80 columns where names are of ordinary length, no colours, the same in every locale.
 * Stateless and thread-safe.
 */
public final class ReviewText {

  private static final String ESTIMATE =
      "What fingers and pulleys carried is an estimate by a model, not a measurement. Load, monotony"
          + " and strain describe what was done; none of them foretells an injury.";

  private final Review review;
  private final Function<Finding, String> sentence;
  private final Page page = new Page();

  private ReviewText(Review review, Function<Finding, String> sentence) {
    this.review = review;
    this.sentence = sentence;
  }

  /**
   * Returns the review as text.
   *
   * @param sentence gives each step its words
   */
  public static String of(Review review, Function<Finding, String> sentence) {
    return new ReviewText(review, sentence).write();
  }

  private String write() {
    page.wrapped("", "REVIEW OF " + Page.clean(review.athlete().title()).toUpperCase(Locale.ROOT));
    page.wrapped(
        "", capital(review.day().map(day -> Page.dayAndYear(day) + ": ").orElse("") + logged()));
    page.gap();
    page.line("NEXT");
    List<Finding> next = review.next();
    for (int i = 0; i < next.size(); i++) {
      page.wrapped((i + 1) + ". ", capital(sentence.apply(next.get(i))) + ".");
    }
    sessions();
    new ReviewTables(review, page).write();
    page.gap();
    page.wrapped("* ", ESTIMATE);
    for (Caution caution : Caution.general()) {
      page.wrapped("* ", Wording.english().say(caution));
    }
    return page.toString();
  }

  private String logged() {
    List<LogEntry> entries = review.log().entries();
    return entries.isEmpty()
        ? "nothing is logged"
        : Page.count(entries.size(), "line")
            + " of log, from "
            + Page.dayAndYear(entries.get(0).date())
            + " to "
            + Page.dayAndYear(entries.get(entries.size() - 1).date());
  }

  private void sessions() {
    if (review.sessions().isEmpty()) {
      return;
    }
    page.gap();
    page.line("SESSIONS");
    page.wrapped("", counts());
    new SessionTable(review).add(page);
  }

  private String counts() {
    long planned = review.sessions().stream().filter(s -> s.planned().isPresent()).count();
    long trained =
        review.sessions().stream().filter(s -> s.planned().isPresent() && s.trained()).count();
    StringBuilder words = new StringBuilder();
    if (planned > 0) {
      words
          .append(trained)
          .append(" of ")
          .append(Page.count(planned, "planned session"))
          .append(" trained, ")
          .append(count(Outcome.DONE))
          .append(" of them as asked; ")
          .append(
              review.sessions().stream()
                  .filter(s -> s.planned().isPresent() && s.outcome() == Outcome.SKIPPED)
                  .count())
          .append(" skipped, ")
          .append(count(Outcome.UNLOGGED))
          .append(" without a line; ");
    }
    words.append(count(Outcome.UNPLANNED)).append(planned > 0 ? " not planned." : " trained.");
    return words.toString();
  }

  private long count(Outcome outcome) {
    return review.sessions().stream().map(ReviewedSession::outcome).filter(outcome::equals).count();
  }

  static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }
}
