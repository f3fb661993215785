package gripwright.language.write.internal;

import java.util.Collection;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Collects statements, one a line. Not thread-safe. */
final class Lines {

  private final StringBuilder text = new StringBuilder();

  void add(String line) {
    text.append(line).append('\n');
  }

  /** Adds a statement with a list, unless the list is empty. */
  <T> void list(String before, Collection<T> elements, Function<T, String> element) {
    if (!elements.isEmpty()) {
      add(before + elements.stream().map(element).collect(Collectors.joining(", ")));
    }
  }

  String text() {
    return text.toString();
  }
}
