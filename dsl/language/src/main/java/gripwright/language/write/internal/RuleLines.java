package gripwright.language.write.internal;

import gripwright.rule.Rule;
import gripwright.rule.RuleSet;

/** Writes rules. */
final class RuleLines {

  private RuleLines() {}

  static String of(RuleSet set) {
    Lines out = new Lines();
    out.add("rules " + set.name() + Written.quotedIfPresent(set.title()) + " {");
    for (Rule rule : set.rules()) {
      out.add("\nrule " + rule.name() + " {");
      out.add("severity " + rule.severity().word());
      out.add("for " + rule.scope().words());
      ExpressionWriter expressions = new ExpressionWriter(rule.scope().kind());
      rule.when().ifPresent(when -> out.add("when " + expressions.write(when)));
      out.add("require " + expressions.write(rule.require()));
      out.add("message " + Written.quoted(rule.message()));
      rule.source().ifPresent(source -> out.add("source " + Written.quoted(source)));
      if (rule.neverWaived()) {
        out.add("never waived");
      }
      out.add("}");
    }
    out.add("}");
    return out.text();
  }
}
