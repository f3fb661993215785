package gripwright.language.check;

import gripwright.language.syntax.DefaultItem;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.OnlyAt;
import gripwright.language.syntax.OnlyOn;
import gripwright.language.syntax.SessionPart;
import gripwright.language.syntax.Supervised;
import java.util.ArrayList;
import java.util.List;

/** The statements of a session by their kind, each kind in the order of the text. */
final class SessionParts implements SessionPart.Visitor {

  private final List<SessionPart.DoItem> exercises = new ArrayList<>();
  private final List<SessionPart.SessionOnlyFor> onlyFor = new ArrayList<>();
  private final List<SessionPart.Prefer> preferred = new ArrayList<>();
  private final List<OnlyOn> onlyOn = new ArrayList<>();
  private final List<OnlyAt> onlyAt = new ArrayList<>();
  private final List<SessionPart.ShareDays> shareDays = new ArrayList<>();
  private final List<Supervised> supervised = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private SessionParts() {}

  static SessionParts of(List<SessionPart> parts) {
    SessionParts sorted = new SessionParts();
    parts.forEach(part -> part.accept(sorted));
    return sorted;
  }

  List<SessionPart.DoItem> exercises() {
    return exercises;
  }

  List<SessionPart.SessionOnlyFor> onlyFor() {
    return onlyFor;
  }

  List<SessionPart.Prefer> preferred() {
    return preferred;
  }

  /** Returns the statements of the only weekdays. */
  List<OnlyOn> onlyOn() {
    return onlyOn;
  }

  List<String> notes() {
    return notes;
  }

  /** Returns the statements of the only places. */
  List<OnlyAt> onlyAt() {
    return onlyAt;
  }

  List<SessionPart.ShareDays> shareDays() {
    return shareDays;
  }

  List<Supervised> supervised() {
    return supervised;
  }

  @Override
  public void note(Note part) {
    notes.add(part.text().value());
  }

  @Override
  public void defaultItem(DefaultItem part) {
    // Defaults reads it
  }

  @Override
  public void supervised(Supervised part) {
    supervised.add(part);
  }

  @Override
  public void doItem(SessionPart.DoItem part) {
    exercises.add(part);
  }

  @Override
  public void sessionOnlyFor(SessionPart.SessionOnlyFor part) {
    onlyFor.add(part);
  }

  @Override
  public void prefer(SessionPart.Prefer part) {
    preferred.add(part);
  }

  @Override
  public void onlyAt(OnlyAt part) {
    onlyAt.add(part);
  }

  @Override
  public void shareDays(SessionPart.ShareDays part) {
    shareDays.add(part);
  }

  @Override
  public void onlyOn(OnlyOn part) {
    onlyOn.add(part);
  }
}
