package gripwright.language.check;

import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.DefaultItem;
import gripwright.language.syntax.Note;
import java.util.ArrayList;
import java.util.List;

/** The statements of a block by their kind, each kind in the order of the text. */
final class BlockParts implements BlockPart.Visitor {

  private final List<BlockPart.SessionItem> sessions = new ArrayList<>();
  private final List<BlockPart.AdvanceItem> advances = new ArrayList<>();
  private final List<BlockPart.EaseItem> eases = new ArrayList<>();
  private final List<BlockPart.IntroduceItem> introductions = new ArrayList<>();
  private final List<BlockPart.BlockOnlyFor> onlyFor = new ArrayList<>();

  private final List<BlockPart.NoTraining> noTraining = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private BlockParts() {}

  static BlockParts of(List<BlockPart> parts) {
    BlockParts sorted = new BlockParts();
    parts.forEach(part -> part.accept(sorted));
    return sorted;
  }

  List<BlockPart.SessionItem> sessions() {
    return sessions;
  }

  List<BlockPart.AdvanceItem> advances() {
    return advances;
  }

  List<BlockPart.EaseItem> eases() {
    return eases;
  }

  List<BlockPart.IntroduceItem> introductions() {
    return introductions;
  }

  List<BlockPart.BlockOnlyFor> onlyFor() {
    return onlyFor;
  }

  List<String> notes() {
    return notes;
  }

  List<BlockPart.NoTraining> noTraining() {
    return noTraining;
  }

  @Override
  public void noTraining(BlockPart.NoTraining part) {
    noTraining.add(part);
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
  public void sessionItem(BlockPart.SessionItem part) {
    sessions.add(part);
  }

  @Override
  public void advanceItem(BlockPart.AdvanceItem part) {
    advances.add(part);
  }

  @Override
  public void easeItem(BlockPart.EaseItem part) {
    eases.add(part);
  }

  @Override
  public void introduceItem(BlockPart.IntroduceItem part) {
    introductions.add(part);
  }

  @Override
  public void blockOnlyFor(BlockPart.BlockOnlyFor part) {
    onlyFor.add(part);
  }
}
