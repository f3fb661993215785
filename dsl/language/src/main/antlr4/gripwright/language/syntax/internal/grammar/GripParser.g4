/*
 * Statements of the plan language.
 *
 * No actions and no predicates. Every decision looks at one or two words, so that what is wrong is
 * found where it stands. A body (`...Body`) is where reading goes on after a mistake, and a heading
 * (`...Heading`) ends before the brace, so that a mistake in it does not cost the body.
 */
parser grammar GripParser;

options { tokenVocab = GripLexer; }

file              : language? declaration* EOF ;

language          : LANGUAGE NUMBER ;
declaration
    : use
    | athlete
    | grip
    | protocol
    | plan
    | rules
    | log
    | cohort
    | compare
    ;
use               : USE text ;

// ---- athlete ----
athlete           : athleteHeading athleteBody ;
athleteHeading    : ATHLETE name text? ;
athleteBody       : LBRACE athleteItem* RBRACE ;
athleteItem
    : born
    | bodyMass
    | trained
    | ability
    | sex
    | hand
    | familiar
    | injury
    | available
    | climbing
    | away
    | equipment
    | note
    ;
born              : BORN date ;
bodyMass          : BODY_MASS amount ;
trained           : TRAINED amount asOf? ;
ability           : ABILITY name gradeValue ;
sex               : SEX name ;
familiar          : FAMILIAR nameAmount ( COMMA nameAmount )* asOf? ;
injury            : INJURY name name side? FROM date cleared? text? ;
cleared           : CLEARED date ( BY text )? ;
available         : AVAILABLE span? slot ( COMMA slot )* ;
span              : FROM date ( TO date )? ( EVERY amount )? ;
slot              : day clock? amount atPlace? ;
day               : WORD | BAD_WORD | date ;
clock             : NUMBER COLON NUMBER ;
atPlace           : AT name ;
climbing          : CLIMBING climbingDay ( COMMA climbingDay )* ;
climbingDay       : name name amount ;
away              : AWAY date ( TO date )? text? ;
asOf              : AS OF date ;
nameAmount        : name amount ;
note              : NOTE text ;

hand              : handHeading handBody ;
handHeading       : HAND ;
handBody          : LBRACE handItem* RBRACE ;
handItem
    : handLength
    | handBreadth
    | fingerMeasures
    | knuckles
    | handSide
    ;
handLength        : LENGTH amount ;
handBreadth       : BREADTH amount ;
fingerMeasures    : finger fingerMeasure ( COMMA fingerMeasure )* ;
fingerMeasure     : name angleRange ;
knuckles          : KNUCKLES nameAmount ( COMMA nameAmount )* ;
handSide          : handSideHeading handBody ;
handSideHeading   : side ;
side              : LEFT | RIGHT ;
finger            : INDEX | MIDDLE | RING | LITTLE | THUMB ;

equipment         : equipmentHeading equipmentBody ;
equipmentHeading  : EQUIPMENT atPlace? ;
equipmentBody     : LBRACE equipmentItem* RBRACE ;
equipmentItem
    : edges
    | loadSteps
    ;
edges             : EDGES amount ( COMMA amount )* ;
loadSteps         : loadKind amount STEPS TO amount ;
loadKind          : ADDED | ASSIST ;

// ---- grip ----
grip              : gripHeading gripBody ;
gripHeading       : GRIP name REPLACES? text? ;
gripBody          : LBRACE gripItem* RBRACE ;
gripItem
    : fingers
    | family
    | fingerBands
    | caution
    | needs
    | note
    ;
fingers           : FINGERS names ;
family            : FAMILY name ;
fingerBands       : finger jointBand ( COMMA jointBand )* ;
jointBand         : name angleRange ;
angleRange        : INCLUDED? amount ( WITHIN amount | TO amount )? ;
caution           : CAUTION text ;
needs             : NEEDS need ( COMMA need )* ;
need
    : TRAINED amount
    | ABILITY name gradeValue
    | FAMILIAR name amount
    ;

// ---- protocol ----
protocol          : protocolHeading protocolBody ;
protocolHeading   : PROTOCOL name REPLACES? text? ;
protocolBody      : LBRACE protocolItem* RBRACE ;
protocolItem
    : aim
    | given
    | report
    | note
    | step
    ;
aim               : AIM name ;
given             : GIVEN parameter ( COMMA parameter )* ;
parameter         : name sum ;
step
    : repeat
    | holdStep
    | restStep
    ;
repeat            : repeatHeading repeatBody ;
repeatHeading     : REPEAT upTo? expr ( RESTING expr )? ;
repeatBody        : LBRACE step* RBRACE ;
holdStep          : HOLD ( TO_FAILURE? upTo )? expr AT expr ;
upTo              : UP TO ;
restStep          : REST expr text? ;

// ---- plan ----
plan              : planHeading planBody ;
planHeading       : PLAN name text? ;
planBody          : LBRACE planItem* RBRACE ;
planItem
    : forAthletes
    | firstDay
    | towards
    | taper
    | demand
    | ruleSets
    | block
    | retest
    | test
    | waive
    | weeklyRise
    | warmUp
    | restBetween
    | weigh
    | supervised
    | report
    | note
    ;
forAthletes       : FOR names ;
firstDay          : FROM date ;
towards           : TOWARDS date text? ;
taper             : TAPER amount TO amount SETS ;
demand            : DEMAND nameAmount ( COMMA nameAmount )* ;
ruleSets          : RULES names ;
retest            : RETEST names setup HOLD amount EVERY amount ;
test              : testHeading testBody? ;
testHeading       : TEST names setup testKind testTime ( COMMA testTime )* ;
testBody          : LBRACE testItem* RBRACE ;
testKind
    : HOLD amount
    | TO_FAILURE AT sum
    | SERIES amount X amount SLASH amount
    ;
testTime
    : EVERY amount
    | IN WEEK amount ( COMMA amount )*
    | BEFORE THE FIRST WEEK
    | AFTER THE LAST WEEK
    | amount LATER
    ;
testItem
    : attempts
    | attemptsCount
    | rested
    | warmUp
    | exercise
    | onlyOn
    | onlyAt
    | note
    ;
attempts          : ATTEMPTS amount RESTING amount ;
attemptsCount     : ( BEST | MEAN ) COUNTS ;
rested            : RESTED amount ;
onlyOn            : ONLY ON names ;
onlyAt            : ONLY AT names ;
waive             : WAIVE name IN place BECAUSE text ;
place             : name placeWeek? placeSession? placeExercise? ;
placeWeek         : WEEK amount ;
placeSession      : SESSION name ;
placeExercise     : EXERCISE amount ;
weeklyRise        : WEEKLY_RISE AT MOST amount ;
warmUp            : WARM_UP amount text? ;
restBetween       : REST BETWEEN EXERCISES amount ;
weigh             : WEIGH nameAmount ( COMMA nameAmount )* ;
supervised        : SUPERVISED BY text ;

block             : blockHeading blockBody ;
blockHeading      : BLOCK name amount ;
blockBody         : LBRACE blockItem* RBRACE ;
blockItem
    : session
    | advance
    | ease
    | introduce
    | blockOnlyFor
    | noTraining
    | warmUp
    | restBetween
    | weigh
    | note
    ;
noTraining        : NO TRAINING ;
blockOnlyFor      : onlyForHeading blockBody ;
onlyForHeading    : ONLY FOR names ;
advance           : ADVANCE ( progress | FIRST progress THEN progress ) onGrip? ;
onGrip            : ON name ;
progress
    : LOAD amount ( cadence | condition )?
    | variable TO amount BY amount ( cadence | condition )?
    ;
variable          : SETS | HOLD | EDGE ;
cadence           : WEEKLY | EVERY amount ;
condition         : WHEN clause ( AND clause )* TWICE? ;
clause
    : DONE IN FULL
    | EFFORT AT MOST amount
    | PAIN AT MOST amount
    ;
ease              : EASE WEEK amount ( COMMA amount )* TO amount SETS ;
introduce         : INTRODUCE name FROM expr OVER amount ;

session           : sessionHeading sessionBody ;
sessionHeading    : SESSION name amount PER WEEK ( AT LEAST amount APART )? ;
sessionBody       : LBRACE sessionItem* RBRACE ;
sessionItem
    : exercise
    | sessionOnlyFor
    | prefer
    | onlyOn
    | onlyAt
    | shareDays
    | warmUp
    | restBetween
    | weigh
    | supervised
    | note
    ;
shareDays         : SHARE DAYS AT LEAST amount APART ;
sessionOnlyFor    : onlyForHeading sessionBody ;
prefer            : PREFER names ;
exercise          : DO name with? ON target exerciseSetup asWarmUp? rehabilitation? text? ;
with              : WITH parameter ( COMMA parameter )* ;
asWarmUp          : AS WARM_UP ;
rehabilitation    : REHABILITATION text ;
target
    : BEST OF names
    | name
    ;
exerciseSetup     : EDGE amount ( handedness | alternating )? LIFTING? ;
alternating       : ALTERNATING HANDS ;
setup             : EDGE amount handedness? LIFTING? ;
handedness        : side HAND ;

// ---- rules ----
rules             : rulesHeading rulesBody ;
rulesHeading      : RULES name text? ;
rulesBody         : LBRACE rule_* RBRACE ;
rule_             : ruleHeading ruleBody ;
ruleHeading       : RULE name ;
ruleBody          : LBRACE ruleItem* RBRACE ;
ruleItem
    : severity
    | scope
    | when
    | require
    | message
    | source
    | neverWaived
    ;
severity          : SEVERITY name ;
scope             : FOR ( PAIR OF SESSIONS | name ) ;
when              : WHEN expr ;
require           : REQUIRE expr ;
message           : MESSAGE text ;
source            : SOURCE text ;
neverWaived       : NEVER WAIVED ;

// ---- log ----
log               : logHeading logBody ;
logHeading        : LOG name ;
logBody           : LBRACE logLine* RBRACE ;
logLine
    : date
      ( testLine
      | sessionLine
      | climbingLine
      | skippedLine
      | bodyMass
      | painLine
      )
    ;
testLine          : TEST name setup ( holdTest | failureTest | seriesTest ) text? ;
holdTest          : HOLD amount ( LOAD | FORCE ) amount ;
failureTest       : TO_FAILURE amount LASTING amount ;
seriesTest        : SERIES amount X amount SLASH amount MEAN seriesValue ( COMMA seriesValue )* unit? ;
seriesValue       : NUMBER | GLUED ;
sessionLine       : sessionLineHeading sessionLineBody ;
sessionLineHeading : SESSION name text? ;
sessionLineBody   : LBRACE doneLine* RBRACE ;
doneLine          : name ON name setup COLON donePart ( COMMA donePart )* ;
donePart
    : SETS amount ( OF amount )?
    | LOAD amount
    | effort
    | pain
    ;
effort            : EFFORT amount ;
pain              : PAIN amount ;
climbingLine      : CLIMBING name amount effort? pain? text? ;
skippedLine       : SKIPPED name text? ;
painLine          : PAIN name structure? side? amount painKind? text? ;
structure         : WORD | BAD_WORD ;
painKind          : SHARP | SUDDEN ;

// ---- cohort ----
cohort            : cohortHeading cohortBody ;
cohortHeading     : COHORT name text? ;
cohortBody        : LBRACE cohortItem* RBRACE ;
cohortItem
    : cohortSize
    | cohortSex
    | handBySex
    | cohortMass
    | cohortMaximum
    | cohortForce
    | correlate
    | source
    | note
    ;
cohortSize        : SIZE amount ;
cohortSex         : SEX name amount text? ;
handBySex         : HAND BY SEX text? ;
cohortMass        : BODY_MASS spread text? ;
cohortMaximum     : MAXIMUM spread ON name setup text? ;
cohortForce       : CRITICAL_FORCE amount MAX SPREAD amount text? ;
correlate         : CORRELATE name COMMA name amount text? ;
spread            : amount SPREAD amount ;

// ---- compare ----
compare           : compareHeading compareBody ;
compareHeading    : COMPARE name text? ;
compareBody       : LBRACE compareItem* RBRACE ;
compareItem
    : compareFor
    | arm
    | compareOn
    | compareBetween
    | compareMatch
    | matchEach
    | compareEach
    | compareOver
    | draws
    | compareMeasure
    | objectives
    | report
    | note
    ;
compareFor        : FOR names ;
arm               : ARM name ( exercise | PLAN name | NO TRAINING ) ;
compareOn         : ON name setup ;
compareBetween    : BETWEEN names ;
compareMatch      : MATCH name ( OF name TO name )? BY name ( WITHIN amount )? ;
matchEach         : MATCH EACH ATHLETE ;
compareEach       : EACH amount PER WEEK ;
compareOver       : OVER amount ;
draws             : DRAWS amount STREAM amount ;
compareMeasure    : MEASURE names ;
objectives        : PREFER objective ( COMMA objective )* ;
objective         : ( LESS_OF | MORE_OF ) name ;
report            : REPORT name text ;

// ---- expressions: flat, so that a long chain costs no depth ----
expr              : conjunction ( OR conjunction )* ;
conjunction       : negation ( AND negation )* ;
negation
    : NOT negation
    | comparison
    ;
comparison        : sum ( relation sum | isTest | inTest | betweenTest )? ;
relation          : LT | LE | GT | GE | EQ | NE ;
isTest            : IS NOT? name ;
inTest            : NOT? IN sum ( COMMA sum )* ;
betweenTest       : BETWEEN sum AND sum ;
sum               : product ( ( PLUS | MINUS ) product )* ;
product           : unary ( ( STAR | SLASH ) unary )* ;
unary
    : MINUS unary
    | primary
    ;
primary
    : number
    | reserve
    | exertion
    | gradeLiteral
    | date
    | text
    | has
    | aggregate
    | count
    | quantifier
    | path
    | group
    ;
number
    : NUMBER ( PERCENT ofWhat? | unit )?
    | GLUED ofWhat?
    ;
ofWhat            : MAX | OF primary ;
reserve           : RESERVE plainAmount ;
exertion          : EFFORT plainAmount ;
gradeLiteral      : scale gradeValue ;
scale             : FRENCH | FONT | V | YDS | UIAA | IRCRA ;
has               : HAS name ;
aggregate         : ( SUM | MEAN | LARGEST | SMALLEST ) LPAREN expr OF path where? RPAREN ;
count             : COUNT LPAREN path where? RPAREN ;
quantifier        : ( EVERY | ANY ) LPAREN path where? ( COLON expr )? RPAREN ;
where             : WHERE expr ;
path              : head ( DOT name )* ;
group             : LPAREN expr RPAREN ;

// ---- words and values ----
amount            : MINUS? plainAmount ;
plainAmount
    : NUMBER unit?
    | GLUED
    ;
gradeValue        : GRADE | NUMBER | GLUED ;
date              : DATE | BAD_DATE ;
text              : STRING | UNTERMINATED_STRING | CURLY_STRING ;
names             : name ( COMMA name )* ;
unit
    : PERCENT | WEEK
    | DEG | MM | CM | INCH | KG | LB | NEWTON | SECOND | MIN | HOUR | DAYS | DAY | WEEKS
    | MONTHS | MONTH
    ;

// Any word may be a name; an expression keeps the few words that hold it together to itself.
name              : head | reserved ;
reserved
    : OF | RESTING | AT | BETWEEN | WITH | ON | THEN | AND | IN | OVER | OR | NOT | IS | MAX | HAS | WHERE
    ;
head
    : WORD | BAD_WORD
    | LANGUAGE | USE | ATHLETE | GRIP | PROTOCOL | PLAN | RULES | LOG | COHORT | COMPARE | REPLACES
    | BORN | BODY_MASS | TRAINED | AS | ABILITY | SEX | HAND | FAMILIAR | INJURY | LEFT | RIGHT
    | FROM | CLEARED | AVAILABLE | CLIMBING | AWAY | TO | EQUIPMENT | NOTE | LENGTH | BREADTH
    | KNUCKLES | INDEX | MIDDLE | RING | LITTLE | THUMB | EDGES | ADDED | ASSIST | STEPS
    | FINGERS | FAMILY | CAUTION | NEEDS | INCLUDED | WITHIN | AIM | GIVEN | REPEAT | HOLD | UP
    | REST | FOR | TOWARDS | TAPER | DEMAND | BLOCK | RETEST | WAIVE | WEEKLY_RISE | MOST | WARM_UP
    | EXERCISES | WEIGH | SUPERVISED | SESSION | PER | WEEK | LEAST | APART | ONLY | SHARE | PREFER | DO | BEST
    | EDGE | LIFTING | ALTERNATING | HANDS | REHABILITATION | ADVANCE | FIRST | LOAD | SETS | BY | WEEKLY | EVERY
    | WHEN | DONE | FULL | EFFORT | PAIN | TWICE | EASE | INTRODUCE | EXERCISE | BECAUSE | RULE
    | SEVERITY | PAIR | SESSIONS | REQUIRE | MESSAGE | SOURCE | NEVER | WAIVED | TEST
    | TO_FAILURE | LASTING | SERIES | X | MEAN | SKIPPED | SHARP | SUDDEN | MATCH | EACH
    | BEFORE | AFTER | THE | LAST | LATER | ATTEMPTS | COUNTS | RESTED | FORCE | NO | TRAINING
    | MEASURE | RESERVE | SUM | LARGEST | SMALLEST | COUNT | ANY | FRENCH | FONT | V | YDS
    | SIZE | SPREAD | MAXIMUM | CRITICAL_FORCE | CORRELATE | ARM | DRAWS | STREAM
    | LESS_OF | MORE_OF | REPORT
    | UIAA | IRCRA | DEG | MM | CM | INCH | KG | LB | NEWTON | SECOND | MIN | HOUR | DAYS | DAY
    | WEEKS | MONTHS | MONTH
    ;
