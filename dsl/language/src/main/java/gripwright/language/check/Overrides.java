package gripwright.language.check;

import gripwright.language.syntax.BlockPart;
import gripwright.language.syntax.DefaultItem;
import gripwright.language.syntax.Note;
import gripwright.language.syntax.SessionPart;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Applies {@code only for}: for the named athletes, the statements inside replace all outer
 * statements of the same kind.
 *
 * <p>One {@code do} line inside replaces every {@code do} line of the session, one {@code session}
 * inside every session of the block, one {@code advance} every {@code advance}, and so on. Kinds
 * without a statement inside stay as they are outside.
 */
public final class Overrides {

  private Overrides() {}

  /** Returns the statements of a block for the athletes of an {@code only for} in it. */
  public static List<BlockPart> block(List<BlockPart> outer, BlockPart.BlockOnlyFor own) {
    boolean empty = own.parts().stream().anyMatch(BlockPart.NoTraining.class::isInstance);
    boolean sessions = own.parts().stream().anyMatch(BlockPart.SessionItem.class::isInstance);
    return merged(
        outer.stream()
            .filter(part -> !empty || isDefault(part))
            .filter(part -> !sessions || !(part instanceof BlockPart.NoTraining))
            .toList(),
        own.parts(),
        BlockPart.BlockOnlyFor.class);
  }

  /** Returns whether a statement may be in a block without training. */
  private static boolean isDefault(BlockPart part) {
    return part instanceof Note || part instanceof DefaultItem;
  }

  /** Returns the statements of a session for the athletes of an {@code only for} in it. */
  public static List<SessionPart> session(List<SessionPart> outer, SessionPart.SessionOnlyFor own) {
    return merged(outer, own.parts(), SessionPart.SessionOnlyFor.class);
  }

  private static <T> List<T> merged(List<T> outer, List<T> own, Class<?> override) {
    Set<Class<?>> replaced = new HashSet<>();
    replaced.add(override);
    for (T part : own) {
      if (!(part instanceof Note)) {
        replaced.add(part.getClass());
      }
    }
    List<T> merged = new ArrayList<>();
    for (T part : outer) {
      if (!replaced.contains(part.getClass())) {
        merged.add(part);
      }
    }
    for (T part : own) {
      if (!override.isInstance(part)) {
        merged.add(part);
      }
    }
    return merged;
  }
}
