package gripwright.export.text;

import gripwright.export.words.Words;
import gripwright.finding.Finding;
import gripwright.log.LogEntry;
import gripwright.review.Review;
import gripwright.review.ReviewedSession;
import gripwright.review.ReviewedSession.Outcome;
import gripwright.schedule.Caution;
import gripwright.wording.Wording;
import java.util.List;

/**
 * Writes a review for a coach: what comes next, then sessions, load, work by grip and finger,
 * tests, sides and pain, then the cautions.
 *
 * <p>At most 80 columns if names are of ordinary length, without colours; words and date formats
 * come from a message bundle. Stateless and thread-safe.
 */
public final class ReviewText {

  private final Review review;
  private final Words words;
  private final Page page = new Page();

  private ReviewText(Review review, Words words) {
    this.review = review;
    this.words = words;
  }

  /** Returns the review as text, in the words of a bundle. */
  public static String of(Review review, Wording wording) {
    return new ReviewText(review, new Words(wording)).write();
  }

  private String write() {
    page.wrapped(
        "",
        words.say(
            "reviewed.title", "athlete", words.capitals(Page.clean(review.athlete().title()))));
    String logged = logged();
    page.wrapped(
        "",
        words.capital(
            review
                .day()
                .map(
                    day ->
                        words.say(
                            "reviewed.on-day", "date", words.dayAndYear(day), "logged", logged))
                .orElse(logged)));
    page.gap();
    page.line(words.say("reviewed.next"));
    List<Finding> next = review.next();
    for (int i = 0; i < next.size(); i++) {
      String step = words.capital(words.sentence(next.get(i)));
      page.wrapped((i + 1) + ". ", words.say("reviewed.step", "sentence", step));
    }
    sessions();
    new ReviewTables(review, page, words).write();
    page.gap();
    page.wrapped("* ", words.say("reviewed.estimate"));
    for (Caution caution : Caution.general()) {
      page.wrapped("* ", words.of(caution));
    }
    return page.toString();
  }

  private String logged() {
    List<LogEntry> entries = review.log().entries();
    return entries.isEmpty()
        ? words.say("reviewed.nothing-logged")
        : words.count(
            "reviewed.logged",
            entries.size(),
            "from",
            words.dayAndYear(entries.get(0).date()),
            "to",
            words.dayAndYear(entries.get(entries.size() - 1).date()));
  }

  private void sessions() {
    if (review.sessions().isEmpty()) {
      return;
    }
    page.gap();
    page.line(words.say("reviewed.sessions"));
    page.wrapped("", counts());
    new SessionTable(review, words).add(page);
  }

  private String counts() {
    long planned = review.sessions().stream().filter(s -> s.planned().isPresent()).count();
    long trained =
        review.sessions().stream().filter(s -> s.planned().isPresent() && s.trained()).count();
    if (planned == 0) {
      return words.say("reviewed.counts-unplanned", "unplanned", count(Outcome.UNPLANNED));
    }
    long skipped =
        review.sessions().stream()
            .filter(s -> s.planned().isPresent() && s.outcome() == Outcome.SKIPPED)
            .count();
    return words.say(
        "reviewed.counts",
        "trained",
        trained,
        "planned",
        words.count("reviewed.planned", planned),
        "done",
        count(Outcome.DONE),
        "skipped",
        skipped,
        "unlogged",
        count(Outcome.UNLOGGED),
        "unplanned",
        count(Outcome.UNPLANNED));
  }

  private long count(Outcome outcome) {
    return review.sessions().stream().map(ReviewedSession::outcome).filter(outcome::equals).count();
  }
}
