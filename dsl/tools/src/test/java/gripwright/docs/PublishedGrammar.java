package gripwright.docs;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The grammar for readers: the parser's own rules, with quoted words instead of token names, and
 * without rules that only detect mistakes.
 */
final class PublishedGrammar {

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\n]*", Pattern.DOTALL);
  private static final Pattern LITERAL =
      Pattern.compile("^([A-Z_]+)\\s*:\\s*'([^']+)'", Pattern.MULTILINE);
  private static final Pattern RULE = Pattern.compile("([a-z][A-Za-z_]*)\\s*:\\s*([^;]*?)\\s*;");
  private static final Pattern NAME = Pattern.compile("\\b[A-Z][A-Z_]+\\b|\\b[VX]\\b");
  private static final Pattern TOLERATED =
      Pattern.compile(
          "\\s*\\| (BAD_DATE|BAD_WORD|UNTERMINATED_STRING|CURLY_STRING|GLUED( ofWhat\\?)?)");

  private PublishedGrammar() {}

  static String of(String lexer, String parser) {
    Map<String, String> literals = new LinkedHashMap<>();
    Matcher literal = LITERAL.matcher(lexer);
    while (literal.find()) {
      if (!literal.group(1).equals("NEWTON")) {
        literals.put(literal.group(1), "'" + literal.group(2) + "'");
      }
    }
    StringBuilder text = new StringBuilder("```ebnf\n");
    String rules =
        COMMENT.matcher(parser).replaceAll("").replaceFirst("(?s)^.*?options \\{[^}]*\\}", "");
    Matcher rule = RULE.matcher(rules);
    while (rule.find()) {
      String body = TOLERATED.matcher(rule.group(2)).replaceAll("").replaceAll("\\s+", " ");
      String words =
          NAME.matcher(body)
              .replaceAll(
                  m -> Matcher.quoteReplacement(literals.getOrDefault(m.group(), m.group())));
      text.append(wrapped(rule.group(1), words.strip()));
    }
    return text.append("```").toString();
  }

  private static String wrapped(String name, String body) {
    StringBuilder text = new StringBuilder();
    StringBuilder line = new StringBuilder(String.format("%-18s =", name));
    for (String word : body.split(" ")) {
      if (line.length() + 1 + word.length() > 110) {
        text.append(line).append('\n');
        line = new StringBuilder(" ".repeat(20));
      }
      line.append(' ').append(word);
    }
    return text.append(line).append('\n').toString();
  }
}
