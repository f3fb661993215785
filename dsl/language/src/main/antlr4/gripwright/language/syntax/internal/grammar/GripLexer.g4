/*
 * Words, numbers and signs of the plan language.
 *
 * Total: every text is cut into tokens and nothing is ever refused here, so that one place words
 * what is wrong with a text. White space and comments go to channels of their own and are kept.
 */
lexer grammar GripLexer;

options { tokenVocab = GripKeywords; }

channels { SPACE, REMARK, ODD }

@members {
  private static final java.util.Map<String, Integer> TYPES = types();

  private static java.util.Map<String, Integer> types() {
    java.util.Map<String, Integer> types = new java.util.HashMap<>();
    for (int type = LANGUAGE; type < DATE; type++) {
      String quoted = VOCABULARY.getLiteralName(type);
      types.put(quoted.substring(1, quoted.length() - 1), type);
    }
    return types;
  }

  /** Gives a word that is spelt like a keyword of GripKeywords the type of that keyword. */
  @Override
  public Token emit() {
    if (_type == WORD || _type == BAD_WORD) {
      setType(TYPES.getOrDefault(getText(), _type));
    }
    return super.emit();
  }
}

DATE      : D D D D '-' D D '-' D D ;
BAD_DATE  : D+ '-' D+ '-' D+ | D+ '.' D+ '.' D+ | D D? '/' D D? '/' D D D D | D D D D '/' D D? '/' D D? ;
NUMBER    : D+ ( '.' D+ )? ;
GRADE     : D+ ( '.' D+ )? ( [a-dA-D] [+-]? | [e-gE-G] [+-] | [+-] ) ;
GLUED     : D+ ( '.' D+ )? ( '%' | ( LETTER | '\u00B0' )+ ) ;

WORD      : [a-z] [a-z0-9]* ( '-' [a-z0-9]+ )* ;
BAD_WORD  : ( D+ [-_] )? ( LETTER | '_' ) ( LETTER | '_' | '-' | D | WORD_TAIL )* ;

STRING              : '"' ( '\\' ["\\] | ~["\\\r\n] | '\\' ~["\\\r\n] )* '"' ;
UNTERMINATED_STRING : '"' ( '\\' ["\\] | ~["\\\r\n] | '\\' ~["\\\r\n] )* '\\'? ;
CURLY_STRING        : [\u201C\u201D\u201E\u00AB] ~["\u201C\u201D\u201E\u00AB\u00BB\r\n]* [\u201C\u201D\u00BB"] ;

// A sign that is written differently elsewhere is read as the one meant, and reported.
LBRACE   : '{' ;
RBRACE   : '}' ;
LPAREN   : '(' ;
RPAREN   : ')' ;
COMMA    : ',' ;
COLON    : ':' ;
DOT      : '.' ;
LE       : '<=' | '=<' | '\u2264' ;
LT       : '<' ;
GE       : '>=' | '=>' | '\u2265' ;
GT       : '>' ;
NE       : '!=' | '<>' | '\u2260' ;
EQ       : '=' | '==' ;
PLUS     : '+' ;
MINUS    : '-' | '\u2212' ;
STAR     : '*' | '\u00D7' | '\u00B7' ;
SLASH    : '/' | '\u00F7' ;
PERCENT  : '%' ;

WHITE_SPACE : [ \t\r\n\f]+  -> channel(SPACE) ;
COMMENT     : '#' ~[\r\n]*  -> channel(REMARK) ;
MARK        : '\uFEFF'      -> channel(ODD) ;
UNKNOWN
    : ( ~[A-Za-z\u00AA\u00B5\u00BA\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u02FF\u0370-\u1FFF\u2100-\u218F\u2C00-\u2DFF\u3040-\uD7FF\uF900-\uFDFF\uFE70-\uFEFC\uFF21-\uFF3A\uFF41-\uFF5A\uFF66-\uFFDC\u{10000}-\u{1CFFF}\u{1D400}-\u{1D7FF}\u{1E000}-\u{1EFFF}\u{20000}-\u{3FFFF}0-9_"\u201C\u201D\u201E\u00AB{}(),:.<=>!+*/%# \t\r\n\f\uFEFF\u2264\u2265\u2260\u2212\u00D7\u00B7\u00F7\u002D]+
      | .
      ) -> channel(ODD)
    ;

fragment D : [0-9] ;

// Letters by whole blocks of scripts: the classes of Unicode have hundreds of ranges, and a program
// that starts would read them each time. UNKNOWN leaves out the same blocks.
fragment LETTER
    : [A-Za-z\u00AA\u00B5\u00BA\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u02FF\u0370-\u1FFF\u2100-\u218F\u2C00-\u2DFF\u3040-\uD7FF\uF900-\uFDFF\uFE70-\uFEFC\uFF21-\uFF3A\uFF41-\uFF5A\uFF66-\uFFDC\u{10000}-\u{1CFFF}\u{1D400}-\u{1D7FF}\u{1E000}-\u{1EFFF}\u{20000}-\u{3FFFF}] ;

// What may go on in a word but not begin it: marks over letters, and other writings of digits.
fragment WORD_TAIL
    : [\u00B2\u00B3\u00B9\u00BC-\u00BE\u0300-\u036F\u2070-\u209F\uFE20-\uFE2F\uFF10-\uFF19] ;
