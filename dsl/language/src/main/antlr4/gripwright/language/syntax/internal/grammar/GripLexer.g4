/*
 * Words, numbers and signs of the plan language.
 *
 * Total: every text is cut into tokens and nothing is ever refused here, so that one place words
 * what is wrong with a text. White space and comments go to channels of their own and are kept.
 */
lexer grammar GripLexer;

channels { SPACE, REMARK, ODD }

@members {
  private static final java.util.Map<String, Integer> TYPES = types();

  private static java.util.Map<String, Integer> types() {
    java.util.Map<String, Integer> types = new java.util.HashMap<>();
    for (int type = LANGUAGE; type <= MONTH; type++) {
      String quoted = VOCABULARY.getLiteralName(type);
      types.put(quoted.substring(1, quoted.length() - 1), type);
    }
    return types;
  }

  /** Gives a word that is spelt like a keyword the type of that keyword. */
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
GRADE     : D+ ( '.' D+ )? ( [a-dA-D] [+-]? | [+-] ) ;
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

// No text is cut in this mode: a WORD or BAD_WORD that is spelt like one of these is of its type,
// wherever it stands (see `emit`). Were they rules beside WORD, a program that starts would work out
// a state for every beginning of every keyword, which takes longer than all the rest of reading.
mode KEYWORDS;

// Words that mean something where a statement expects them; anywhere else they are names.
LANGUAGE       : 'language' ;
USE            : 'use' ;
ATHLETE        : 'athlete' ;
GRIP           : 'grip' ;
PROTOCOL       : 'protocol' ;
PLAN           : 'plan' ;
RULES          : 'rules' ;
LOG            : 'log' ;
COMPARE        : 'compare' ;
REPLACES       : 'replaces' ;
BORN           : 'born' ;
BODY_MASS      : 'body-mass' ;
TRAINED        : 'trained' ;
AS             : 'as' ;
OF             : 'of' ;
ABILITY        : 'ability' ;
SEX            : 'sex' ;
HAND           : 'hand' ;
FAMILIAR       : 'familiar' ;
INJURY         : 'injury' ;
LEFT           : 'left' ;
RIGHT          : 'right' ;
FROM           : 'from' ;
CLEARED        : 'cleared' ;
AVAILABLE      : 'available' ;
CLIMBING       : 'climbing' ;
AWAY           : 'away' ;
TO             : 'to' ;
EQUIPMENT      : 'equipment' ;
NOTE           : 'note' ;
LENGTH         : 'length' ;
BREADTH        : 'breadth' ;
KNUCKLES       : 'knuckles' ;
INDEX          : 'index' ;
MIDDLE         : 'middle' ;
RING           : 'ring' ;
LITTLE         : 'little' ;
THUMB          : 'thumb' ;
EDGES          : 'edges' ;
ADDED          : 'added' ;
ASSIST         : 'assist' ;
STEPS          : 'steps' ;
FINGERS        : 'fingers' ;
FAMILY         : 'family' ;
CAUTION        : 'caution' ;
NEEDS          : 'needs' ;
INCLUDED       : 'included' ;
WITHIN         : 'within' ;
AIM            : 'aim' ;
GIVEN          : 'given' ;
REPEAT         : 'repeat' ;
RESTING        : 'resting' ;
HOLD           : 'hold' ;
AT             : 'at' ;
REST           : 'rest' ;
FOR            : 'for' ;
TOWARDS        : 'towards' ;
TAPER          : 'taper' ;
DEMAND         : 'demand' ;
BLOCK          : 'block' ;
RETEST         : 'retest' ;
WAIVE          : 'waive' ;
WEEKLY_RISE    : 'weekly-rise' ;
MOST           : 'most' ;
WARM_UP        : 'warm-up' ;
BETWEEN        : 'between' ;
EXERCISES      : 'exercises' ;
WEIGH          : 'weigh' ;
SESSION        : 'session' ;
PER            : 'per' ;
WEEK           : 'week' ;
LEAST          : 'least' ;
APART          : 'apart' ;
ONLY           : 'only' ;
PREFER         : 'prefer' ;
DO             : 'do' ;
WITH           : 'with' ;
ON             : 'on' ;
BEST           : 'best' ;
EDGE           : 'edge' ;
LIFTING        : 'lifting' ;
REHABILITATION : 'rehabilitation' ;
ADVANCE        : 'advance' ;
FIRST          : 'first' ;
THEN           : 'then' ;
LOAD           : 'load' ;
SETS           : 'sets' ;
BY             : 'by' ;
WEEKLY         : 'weekly' ;
EVERY          : 'every' ;
WHEN           : 'when' ;
AND            : 'and' ;
DONE           : 'done' ;
IN             : 'in' ;
FULL           : 'full' ;
EFFORT         : 'effort' ;
PAIN           : 'pain' ;
TWICE          : 'twice' ;
EASE           : 'ease' ;
INTRODUCE      : 'introduce' ;
OVER           : 'over' ;
EXERCISE       : 'exercise' ;
BECAUSE        : 'because' ;
RULE           : 'rule' ;
SEVERITY       : 'severity' ;
PAIR           : 'pair' ;
SESSIONS       : 'sessions' ;
REQUIRE        : 'require' ;
MESSAGE        : 'message' ;
SOURCE         : 'source' ;
NEVER          : 'never' ;
WAIVED         : 'waived' ;
TEST           : 'test' ;
TO_FAILURE     : 'to-failure' ;
LASTING        : 'lasting' ;
SERIES         : 'series' ;
X              : 'x' ;
MEAN           : 'mean' ;
SKIPPED        : 'skipped' ;
SHARP          : 'sharp' ;
SUDDEN         : 'sudden' ;
MATCH          : 'match' ;
EACH           : 'each' ;
MEASURE        : 'measure' ;
OR             : 'or' ;
NOT            : 'not' ;
IS             : 'is' ;
MAX            : 'max' ;
RESERVE        : 'reserve' ;
HAS            : 'has' ;
SUM            : 'sum' ;
LARGEST        : 'largest' ;
SMALLEST       : 'smallest' ;
COUNT          : 'count' ;
ANY            : 'any' ;
WHERE          : 'where' ;
FRENCH         : 'french' ;
FONT           : 'font' ;
V              : 'v' ;
YDS            : 'yds' ;
UIAA           : 'uiaa' ;
IRCRA          : 'ircra' ;

// Units; `week` is above, since statements use it too.
DEG            : 'deg' ;
MM             : 'mm' ;
CM             : 'cm' ;
INCH           : 'inch' ;
KG             : 'kg' ;
LB             : 'lb' ;
NEWTON         : 'N' ;
SECOND         : 's' ;
MIN            : 'min' ;
HOUR           : 'h' ;
DAYS           : 'days' ;
DAY            : 'day' ;
WEEKS          : 'weeks' ;
MONTHS         : 'months' ;
MONTH          : 'month' ;
