package gripwright.language.syntax;

/** A name or a keyword as it is written; later stages check whether it is valid. */
public record Word(int id, String text) implements Syntax {}
