/*
 * Words, numbers and signs of the plan language.
 *
 * Total: every text is cut into tokens and nothing is ever refused here, so that one place words
 * what is wrong with a text. White space and comments go to channels of their own and are kept.
 */
lexer grammar GripLexer;

channels { SPACE, REMARK, ODD }

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

DATE      : D D D D '-' D D '-' D D ;
BAD_DATE  : D+ '-' D+ '-' D+ | D+ '.' D+ '.' D+ | D D? '/' D D? '/' D D D D | D D D D '/' D D? '/' D D? ;
NUMBER    : D+ ( '.' D+ )? ;
GRADE     : D+ ( '.' D+ )? ( [a-dA-D] [+-]? | [+-] ) ;
GLUED     : D+ ( '.' D+ )? ( '%' | [\p{L}\u00B0]+ ) ;

WORD      : [a-z] [a-z0-9]* ( '-' [a-z0-9]+ )* ;
BAD_WORD  : [\p{L}_] [\p{L}\p{M}\p{N}_-]* | D+ [-_] [\p{L}_] [\p{L}\p{M}\p{N}_-]* ;

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
    : ( ~[\p{L}0-9_"\u201C\u201D\u201E\u00AB{}(),:.<=>!+*/%# \t\r\n\f\uFEFF\u2264\u2265\u2260\u2212\u00D7\u00B7\u00F7\u002D]+
      | .
      ) -> channel(ODD)
    ;

fragment D : [0-9] ;
