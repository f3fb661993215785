package gripwright.language.syntax;

/** A name or a keyword as it is written; which words are right is for later stages to say. */
public record Word(int id, String text) implements Syntax {}
