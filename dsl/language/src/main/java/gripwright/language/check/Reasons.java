package gripwright.language.check;

import gripwright.finding.Message;
import gripwright.finding.WrittenReason;
import gripwright.language.syntax.Report;
import gripwright.language.syntax.Supervised;
import gripwright.language.syntax.Text;
import gripwright.protocol.Report.Item;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads texts that give a reason or name a person, which must contain a word. */
final class Reasons {

  private final Diagnostics diagnostics;

  Reasons(Diagnostics diagnostics) {
    this.diagnostics = diagnostics;
  }

  /** Returns who supervises a body with these statements; empty if nobody is named. */
  Optional<String> supervisor(List<Supervised> statements) {
    Once once = new Once(diagnostics);
    Optional<String> by = Optional.empty();
    for (Supervised supervised : statements) {
      if (once.first(supervised, "supervised by")) {
        by = words(supervised.by(), "supervised");
      }
    }
    return by;
  }

  /** Returns a fact about the delivery of training; empty if it has a mistake. */
  Optional<gripwright.protocol.Report> report(Report written) {
    Optional<Item> item =
        diagnostics.word(
            written.item(), "report-item", Item::parse, Diagnostics.words(Item.values()));
    Optional<String> text = words(written.text(), "report");
    return item.isPresent() && text.isPresent()
        ? Optional.of(new gripwright.protocol.Report(item.get(), text.get()))
        : Optional.empty();
  }

  /**
   * Returns a text; empty if none is written, or if it has no word, which is reported.
   *
   * @param kind kind of text, as in {@code term.reason-KIND}
   */
  Optional<String> words(@Nullable Text text, String kind) {
    return words(text, kind, Terms.of("reason-" + kind));
  }

  /** Returns a text likewise, with a kind that is a message with arguments. */
  Optional<String> words(@Nullable Text text, String kind, Message what) {
    if (text == null) {
      return Optional.empty();
    }
    if (WrittenReason.hasWord(text.value())) {
      return Optional.of(text.value());
    }
    diagnostics.error(
        text, "value.no-reason", "text", what, "instead", Terms.of("reason-" + kind + "-instead"));
    return Optional.empty();
  }
}
