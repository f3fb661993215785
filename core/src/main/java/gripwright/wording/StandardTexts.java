package gripwright.wording;

import gripwright.grip.Grip;
import gripwright.grip.StandardGrips;
import gripwright.protocol.Protocol;
import gripwright.protocol.StandardProtocols;
import gripwright.rule.Rule;
import gripwright.rule.RuleSet;
import gripwright.rule.StandardRules;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The sentences of the catalogue and the built-in rules, which are part of the grips and rules and
 * not in a bundle: {@code standard-caution.GRIP.NUMBER}, {@code standard-note.PROTOCOL.NUMBER} and
 * {@code standard-rule.RULE}.
 */
final class StandardTexts {

  private static final SortedMap<String, String> BY_KEY = byKey();
  private static final Map<String, String> KEYS = keys();

  private StandardTexts() {}

  /** Returns the sentences by key. */
  static SortedMap<String, String> all() {
    return BY_KEY;
  }

  /** Returns the key of a sentence; the sentence itself if it is not one of these. */
  static String key(String text) {
    return KEYS.getOrDefault(text, text);
  }

  private static SortedMap<String, String> byKey() {
    SortedMap<String, String> all = new TreeMap<>();
    for (Grip grip : StandardGrips.all()) {
      for (int i = 0; i < grip.cautions().size(); i++) {
        all.put("standard-caution." + grip.name() + "." + (i + 1), grip.cautions().get(i));
      }
    }
    for (Protocol protocol : StandardProtocols.all()) {
      for (int i = 0; i < protocol.notes().size(); i++) {
        all.put("standard-note." + protocol.name() + "." + (i + 1), protocol.notes().get(i));
      }
    }
    for (RuleSet set : StandardRules.sets()) {
      for (Rule rule : set.rules()) {
        all.put("standard-rule." + rule.name(), rule.message());
      }
    }
    return Collections.unmodifiableSortedMap(all);
  }

  private static Map<String, String> keys() {
    Map<String, String> keys = new HashMap<>();
    BY_KEY.forEach((key, text) -> keys.putIfAbsent(text, key));
    return keys;
  }
}
