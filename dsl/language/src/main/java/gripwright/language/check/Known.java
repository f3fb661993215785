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
 * The objects of one kind that were made so far, and the names of those that could not be.
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
   * Returns a table with nothing in it.
   *
   * @param kind what is in it, in a word or two
   * @param complete false if there may be more in files that could not be read, or under a heading
   *     without its name
   * @param lost words that may be the name of something whose keyword is missing
   */
  Known(String kind, boolean complete, Set<String> lost) {
    this.kind = kind;
    this.complete = complete;
    this.lost = Set.copyOf(lost);
  }

  /** Notes a declaration of which nothing is made yet. */
  void declare(String name) {
    made.remove(name);
    broken.add(name);
    names.add(name);
  }

  /** Adds what was made of a declaration. */
  void add(String name, T object) {
    made.put(name, object);
    broken.remove(name);
    names.add(name);
  }

  /** Adds what the catalogue has. */
  void addAll(SortedMap<String, T> standard) {
    made.putAll(standard);
    names.addAll(standard.keySet());
  }

  /** Returns everything that was made, by name. */
  SortedMap<String, T> made() {
    return Collections.unmodifiableSortedMap(made);
  }

  /** Returns every name, of what was made and of what could not be. */
  Set<String> names() {
    return Collections.unmodifiableSet(names);
  }

  /**
   * Tells whether there is a declaration of a name. One that is not known is reported, unless a
   * mistake that was told may have taken its declaration.
   */
  boolean declares(Ledger ledger, Word name) {
    if (made.containsKey(name.text()) || broken.contains(name.text())) {
      return true;
    }
    if (complete && !lost.contains(name.text())) {
      ledger.unknown(name, kind, names());
    } else {
      ledger.spoil();
    }
    return false;
  }

  /**
   * Returns the object of a name. A name that is not known is reported; one that is declared with a
   * mistake is not, since the mistake was.
   */
  Optional<T> find(Ledger ledger, Word name) {
    T object = made.get(name.text());
    if (object != null) {
      return Optional.of(object);
    }
    if (declares(ledger, name)) {
      ledger.spoil();
    }
    return Optional.empty();
  }
}
