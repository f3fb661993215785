package gripwright.language.check;

import gripwright.language.syntax.Word;
import java.util.Collections;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The objects of one kind that were built so far, and the names of those that could not be built.
 *
 * @param <T> the kind
 */
final class Known<T> {

  private final String kind;
  private final boolean complete;
  private final Set<String> lost;
  private final SortedMap<String, T> made = new TreeMap<>();
  private final Set<String> broken = new HashSet<>();
  private final Set<String> names = new TreeSet<>();

  /**
   * Returns an empty table.
   *
   * @param kind the name of the kind of object
   * @param complete false if there may be more in unreadable files, or in declarations without a
   *     name
   * @param lost words that may be names of declarations whose keyword is missing
   */
  Known(String kind, boolean complete, Set<String> lost) {
    this.kind = kind;
    this.complete = complete;
    this.lost = Set.copyOf(lost);
  }

  /** Records a declaration that is not built yet. */
  void declare(String name) {
    made.remove(name);
    broken.add(name);
    names.add(name);
  }

  /** Adds the object built from a declaration. */
  void add(String name, T object) {
    made.put(name, object);
    broken.remove(name);
    names.add(name);
  }

  /** Adds the objects of the catalogue. */
  void addAll(SortedMap<String, T> standard) {
    made.putAll(standard);
    names.addAll(standard.keySet());
  }

  /** Returns all objects that were built, by name. */
  SortedMap<String, T> made() {
    return Collections.unmodifiableSortedMap(made);
  }

  /** Returns every declared name, whether its object could be built or not. */
  Set<String> names() {
    return Collections.unmodifiableSet(names);
  }

  /**
   * Returns whether there is a declaration of a name. An unknown name is reported, unless an
   * earlier mistake may have hidden its declaration.
   */
  boolean declares(Diagnostics diagnostics, Word name) {
    if (made.containsKey(name.text()) || broken.contains(name.text())) {
      return true;
    }
    if (complete && !lost.contains(name.text())) {
      diagnostics.unknown(name, kind, names());
    } else {
      diagnostics.markInvalid();
    }
    return false;
  }

  /**
   * Returns whether there is a declaration of a name, of this kind. A name that is unknown is
   * reported with the nearest name of either kind.
   */
  boolean declaresOr(Diagnostics diagnostics, Word name, Known<?> other) {
    if (names.contains(name.text())) {
      return declares(diagnostics, name);
    }
    if (!complete || !other.complete || lost.contains(name.text())) {
      diagnostics.markInvalid();
      return false;
    }
    Set<String> all = new TreeSet<>(names);
    all.addAll(other.names);
    diagnostics.unknown(name, other.names.isEmpty() ? kind : kind + "-or-" + other.kind, all);
    return false;
  }

  /**
   * Returns the object of a name. An unknown name is reported; a name declared with a mistake is
   * not, since the mistake was reported.
   */
  Optional<T> find(Diagnostics diagnostics, Word name) {
    T object = made.get(name.text());
    if (object != null) {
      return Optional.of(object);
    }
    if (declares(diagnostics, name)) {
      diagnostics.markInvalid();
    }
    return Optional.empty();
  }
}
