package gripwright.language.syntax;

/** A name with its part of the whole, such as {@code half-crimp 45 %}. */
public record Share(int id, Word name, Amount percent) implements Syntax {}
