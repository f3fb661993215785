package gripwright.language.syntax;

/** The kinds of tree nodes: one for each rule of the grammar, in the grammar's order. */
public enum NodeKind {
  /** Grammar rule {@code file}. */
  FILE,
  /** Grammar rule {@code language}. */
  LANGUAGE,
  /** Grammar rule {@code declaration}. */
  DECLARATION,
  /** Grammar rule {@code use}. */
  USE,
  /** Grammar rule {@code athlete}. */
  ATHLETE,
  /** Grammar rule {@code athleteHeading}. */
  ATHLETE_HEADING,
  /** Grammar rule {@code athleteBody}. */
  ATHLETE_BODY,
  /** Grammar rule {@code athleteItem}. */
  ATHLETE_ITEM,
  /** Grammar rule {@code born}. */
  BORN,
  /** Grammar rule {@code bodyMass}. */
  BODY_MASS,
  /** Grammar rule {@code trained}. */
  TRAINED,
  /** Grammar rule {@code ability}. */
  ABILITY,
  /** Grammar rule {@code sex}. */
  SEX,
  /** Grammar rule {@code familiar}. */
  FAMILIAR,
  /** Grammar rule {@code injury}. */
  INJURY,
  /** Grammar rule {@code cleared}. */
  CLEARED,
  /** Grammar rule {@code available}. */
  AVAILABLE,
  /** Grammar rule {@code span}. */
  SPAN,
  /** Grammar rule {@code slot}. */
  SLOT,
  /** Grammar rule {@code day}. */
  DAY,
  /** Grammar rule {@code clock}. */
  CLOCK,
  /** Grammar rule {@code atPlace}. */
  AT_PLACE,
  /** Grammar rule {@code climbing}. */
  CLIMBING,
  /** Grammar rule {@code climbingDay}. */
  CLIMBING_DAY,
  /** Grammar rule {@code away}. */
  AWAY,
  /** Grammar rule {@code asOf}. */
  AS_OF,
  /** Grammar rule {@code nameAmount}. */
  NAME_AMOUNT,
  /** Grammar rule {@code note}. */
  NOTE,
  /** Grammar rule {@code hand}. */
  HAND,
  /** Grammar rule {@code handHeading}. */
  HAND_HEADING,
  /** Grammar rule {@code handBody}. */
  HAND_BODY,
  /** Grammar rule {@code handItem}. */
  HAND_ITEM,
  /** Grammar rule {@code handLength}. */
  HAND_LENGTH,
  /** Grammar rule {@code handBreadth}. */
  HAND_BREADTH,
  /** Grammar rule {@code fingerMeasures}. */
  FINGER_MEASURES,
  /** Grammar rule {@code fingerMeasure}. */
  FINGER_MEASURE,
  /** Grammar rule {@code knuckles}. */
  KNUCKLES,
  /** Grammar rule {@code handSide}. */
  HAND_SIDE,
  /** Grammar rule {@code handSideHeading}. */
  HAND_SIDE_HEADING,
  /** Grammar rule {@code side}. */
  SIDE,
  /** Grammar rule {@code finger}. */
  FINGER,
  /** Grammar rule {@code equipment}. */
  EQUIPMENT,
  /** Grammar rule {@code equipmentHeading}. */
  EQUIPMENT_HEADING,
  /** Grammar rule {@code equipmentBody}. */
  EQUIPMENT_BODY,
  /** Grammar rule {@code equipmentItem}. */
  EQUIPMENT_ITEM,
  /** Grammar rule {@code edges}. */
  EDGES,
  /** Grammar rule {@code loadSteps}. */
  LOAD_STEPS,
  /** Grammar rule {@code loadKind}. */
  LOAD_KIND,
  /** Grammar rule {@code grip}. */
  GRIP,
  /** Grammar rule {@code gripHeading}. */
  GRIP_HEADING,
  /** Grammar rule {@code gripBody}. */
  GRIP_BODY,
  /** Grammar rule {@code gripItem}. */
  GRIP_ITEM,
  /** Grammar rule {@code fingers}. */
  FINGERS,
  /** Grammar rule {@code family}. */
  FAMILY,
  /** Grammar rule {@code fingerBands}. */
  FINGER_BANDS,
  /** Grammar rule {@code jointBand}. */
  JOINT_BAND,
  /** Grammar rule {@code angleRange}. */
  ANGLE_RANGE,
  /** Grammar rule {@code caution}. */
  CAUTION,
  /** Grammar rule {@code needs}. */
  NEEDS,
  /** Grammar rule {@code need}. */
  NEED,
  /** Grammar rule {@code protocol}. */
  PROTOCOL,
  /** Grammar rule {@code protocolHeading}. */
  PROTOCOL_HEADING,
  /** Grammar rule {@code protocolBody}. */
  PROTOCOL_BODY,
  /** Grammar rule {@code protocolItem}. */
  PROTOCOL_ITEM,
  /** Grammar rule {@code aim}. */
  AIM,
  /** Grammar rule {@code given}. */
  GIVEN,
  /** Grammar rule {@code parameter}. */
  PARAMETER,
  /** Grammar rule {@code step}. */
  STEP,
  /** Grammar rule {@code repeat}. */
  REPEAT,
  /** Grammar rule {@code repeatHeading}. */
  REPEAT_HEADING,
  /** Grammar rule {@code repeatBody}. */
  REPEAT_BODY,
  /** Grammar rule {@code holdStep}. */
  HOLD_STEP,
  /** Grammar rule {@code upTo}. */
  UP_TO,
  /** Grammar rule {@code restStep}. */
  REST_STEP,
  /** Grammar rule {@code plan}. */
  PLAN,
  /** Grammar rule {@code planHeading}. */
  PLAN_HEADING,
  /** Grammar rule {@code planBody}. */
  PLAN_BODY,
  /** Grammar rule {@code planItem}. */
  PLAN_ITEM,
  /** Grammar rule {@code forAthletes}. */
  FOR_ATHLETES,
  /** Grammar rule {@code firstDay}. */
  FIRST_DAY,
  /** Grammar rule {@code towards}. */
  TOWARDS,
  /** Grammar rule {@code taper}. */
  TAPER,
  /** Grammar rule {@code demand}. */
  DEMAND,
  /** Grammar rule {@code ruleSets}. */
  RULE_SETS,
  /** Grammar rule {@code retest}. */
  RETEST,
  /** Grammar rule {@code test}. */
  TEST,
  /** Grammar rule {@code testHeading}. */
  TEST_HEADING,
  /** Grammar rule {@code testBody}. */
  TEST_BODY,
  /** Grammar rule {@code testKind}. */
  TEST_KIND,
  /** Grammar rule {@code testTime}. */
  TEST_TIME,
  /** Grammar rule {@code testItem}. */
  TEST_ITEM,
  /** Grammar rule {@code attempts}. */
  ATTEMPTS,
  /** Grammar rule {@code attemptsCount}. */
  ATTEMPTS_COUNT,
  /** Grammar rule {@code rested}. */
  RESTED,
  /** Grammar rule {@code onlyOn}. */
  ONLY_ON,
  /** Grammar rule {@code onlyAt}. */
  ONLY_AT,
  /** Grammar rule {@code waive}. */
  WAIVE,
  /** Grammar rule {@code place}. */
  PLACE,
  /** Grammar rule {@code placeWeek}. */
  PLACE_WEEK,
  /** Grammar rule {@code placeSession}. */
  PLACE_SESSION,
  /** Grammar rule {@code placeExercise}. */
  PLACE_EXERCISE,
  /** Grammar rule {@code weeklyRise}. */
  WEEKLY_RISE,
  /** Grammar rule {@code warmUp}. */
  WARM_UP,
  /** Grammar rule {@code restBetween}. */
  REST_BETWEEN,
  /** Grammar rule {@code weigh}. */
  WEIGH,
  /** Grammar rule {@code supervised}. */
  SUPERVISED,
  /** Grammar rule {@code block}. */
  BLOCK,
  /** Grammar rule {@code blockHeading}. */
  BLOCK_HEADING,
  /** Grammar rule {@code blockBody}. */
  BLOCK_BODY,
  /** Grammar rule {@code blockItem}. */
  BLOCK_ITEM,
  /** Grammar rule {@code noTraining}. */
  NO_TRAINING,
  /** Grammar rule {@code blockOnlyFor}. */
  BLOCK_ONLY_FOR,
  /** Grammar rule {@code onlyForHeading}. */
  ONLY_FOR_HEADING,
  /** Grammar rule {@code advance}. */
  ADVANCE,
  /** Grammar rule {@code onGrip}. */
  ON_GRIP,
  /** Grammar rule {@code progress}. */
  PROGRESS,
  /** Grammar rule {@code variable}. */
  VARIABLE,
  /** Grammar rule {@code cadence}. */
  CADENCE,
  /** Grammar rule {@code condition}. */
  CONDITION,
  /** Grammar rule {@code clause}. */
  CLAUSE,
  /** Grammar rule {@code ease}. */
  EASE,
  /** Grammar rule {@code introduce}. */
  INTRODUCE,
  /** Grammar rule {@code session}. */
  SESSION,
  /** Grammar rule {@code sessionHeading}. */
  SESSION_HEADING,
  /** Grammar rule {@code sessionBody}. */
  SESSION_BODY,
  /** Grammar rule {@code sessionItem}. */
  SESSION_ITEM,
  /** Grammar rule {@code shareDays}. */
  SHARE_DAYS,
  /** Grammar rule {@code sessionOnlyFor}. */
  SESSION_ONLY_FOR,
  /** Grammar rule {@code prefer}. */
  PREFER,
  /** Grammar rule {@code exercise}. */
  EXERCISE,
  /** Grammar rule {@code with}. */
  WITH,
  /** Grammar rule {@code asWarmUp}. */
  AS_WARM_UP,
  /** Grammar rule {@code rehabilitation}. */
  REHABILITATION,
  /** Grammar rule {@code target}. */
  TARGET,
  /** Grammar rule {@code exerciseSetup}. */
  EXERCISE_SETUP,
  /** Grammar rule {@code alternating}. */
  ALTERNATING,
  /** Grammar rule {@code setup}. */
  SETUP,
  /** Grammar rule {@code handedness}. */
  HANDEDNESS,
  /** Grammar rule {@code rules}. */
  RULES,
  /** Grammar rule {@code rulesHeading}. */
  RULES_HEADING,
  /** Grammar rule {@code rulesBody}. */
  RULES_BODY,
  /** Grammar rule {@code rule_}. */
  RULE,
  /** Grammar rule {@code ruleHeading}. */
  RULE_HEADING,
  /** Grammar rule {@code ruleBody}. */
  RULE_BODY,
  /** Grammar rule {@code ruleItem}. */
  RULE_ITEM,
  /** Grammar rule {@code severity}. */
  SEVERITY,
  /** Grammar rule {@code scope}. */
  SCOPE,
  /** Grammar rule {@code when}. */
  WHEN,
  /** Grammar rule {@code require}. */
  REQUIRE,
  /** Grammar rule {@code message}. */
  MESSAGE,
  /** Grammar rule {@code source}. */
  SOURCE,
  /** Grammar rule {@code neverWaived}. */
  NEVER_WAIVED,
  /** Grammar rule {@code log}. */
  LOG,
  /** Grammar rule {@code logHeading}. */
  LOG_HEADING,
  /** Grammar rule {@code logBody}. */
  LOG_BODY,
  /** Grammar rule {@code logLine}. */
  LOG_LINE,
  /** Grammar rule {@code testLine}. */
  TEST_LINE,
  /** Grammar rule {@code holdTest}. */
  HOLD_TEST,
  /** Grammar rule {@code failureTest}. */
  FAILURE_TEST,
  /** Grammar rule {@code seriesTest}. */
  SERIES_TEST,
  /** Grammar rule {@code seriesValue}. */
  SERIES_VALUE,
  /** Grammar rule {@code sessionLine}. */
  SESSION_LINE,
  /** Grammar rule {@code sessionLineHeading}. */
  SESSION_LINE_HEADING,
  /** Grammar rule {@code sessionLineBody}. */
  SESSION_LINE_BODY,
  /** Grammar rule {@code doneLine}. */
  DONE_LINE,
  /** Grammar rule {@code donePart}. */
  DONE_PART,
  /** Grammar rule {@code effort}. */
  EFFORT,
  /** Grammar rule {@code pain}. */
  PAIN,
  /** Grammar rule {@code climbingLine}. */
  CLIMBING_LINE,
  /** Grammar rule {@code skippedLine}. */
  SKIPPED_LINE,
  /** Grammar rule {@code painLine}. */
  PAIN_LINE,
  /** Grammar rule {@code structure}. */
  STRUCTURE,
  /** Grammar rule {@code painKind}. */
  PAIN_KIND,
  /** Grammar rule {@code cohort}. */
  COHORT,
  /** Grammar rule {@code cohortHeading}. */
  COHORT_HEADING,
  /** Grammar rule {@code cohortBody}. */
  COHORT_BODY,
  /** Grammar rule {@code cohortItem}. */
  COHORT_ITEM,
  /** Grammar rule {@code cohortSize}. */
  COHORT_SIZE,
  /** Grammar rule {@code cohortSex}. */
  COHORT_SEX,
  /** Grammar rule {@code handBySex}. */
  HAND_BY_SEX,
  /** Grammar rule {@code cohortMass}. */
  COHORT_MASS,
  /** Grammar rule {@code cohortMaximum}. */
  COHORT_MAXIMUM,
  /** Grammar rule {@code cohortForce}. */
  COHORT_FORCE,
  /** Grammar rule {@code correlate}. */
  CORRELATE,
  /** Grammar rule {@code spread}. */
  SPREAD,
  /** Grammar rule {@code compare}. */
  COMPARE,
  /** Grammar rule {@code compareHeading}. */
  COMPARE_HEADING,
  /** Grammar rule {@code compareBody}. */
  COMPARE_BODY,
  /** Grammar rule {@code compareItem}. */
  COMPARE_ITEM,
  /** Grammar rule {@code compareFor}. */
  COMPARE_FOR,
  /** Grammar rule {@code arm}. */
  ARM,
  /** Grammar rule {@code compareOn}. */
  COMPARE_ON,
  /** Grammar rule {@code compareBetween}. */
  COMPARE_BETWEEN,
  /** Grammar rule {@code compareMatch}. */
  COMPARE_MATCH,
  /** Grammar rule {@code matchEach}. */
  MATCH_EACH,
  /** Grammar rule {@code compareEach}. */
  COMPARE_EACH,
  /** Grammar rule {@code compareOver}. */
  COMPARE_OVER,
  /** Grammar rule {@code draws}. */
  DRAWS,
  /** Grammar rule {@code compareMeasure}. */
  COMPARE_MEASURE,
  /** Grammar rule {@code objectives}. */
  OBJECTIVES,
  /** Grammar rule {@code objective}. */
  OBJECTIVE,
  /** Grammar rule {@code report}. */
  REPORT,
  /** Grammar rule {@code expr}. */
  EXPR,
  /** Grammar rule {@code conjunction}. */
  CONJUNCTION,
  /** Grammar rule {@code negation}. */
  NEGATION,
  /** Grammar rule {@code comparison}. */
  COMPARISON,
  /** Grammar rule {@code relation}. */
  RELATION,
  /** Grammar rule {@code isTest}. */
  IS_TEST,
  /** Grammar rule {@code inTest}. */
  IN_TEST,
  /** Grammar rule {@code betweenTest}. */
  BETWEEN_TEST,
  /** Grammar rule {@code sum}. */
  SUM,
  /** Grammar rule {@code product}. */
  PRODUCT,
  /** Grammar rule {@code unary}. */
  UNARY,
  /** Grammar rule {@code primary}. */
  PRIMARY,
  /** Grammar rule {@code number}. */
  NUMBER,
  /** Grammar rule {@code ofWhat}. */
  OF_WHAT,
  /** Grammar rule {@code reserve}. */
  RESERVE,
  /** Grammar rule {@code exertion}. */
  EXERTION,
  /** Grammar rule {@code gradeLiteral}. */
  GRADE_LITERAL,
  /** Grammar rule {@code scale}. */
  SCALE,
  /** Grammar rule {@code has}. */
  HAS,
  /** Grammar rule {@code aggregate}. */
  AGGREGATE,
  /** Grammar rule {@code count}. */
  COUNT,
  /** Grammar rule {@code quantifier}. */
  QUANTIFIER,
  /** Grammar rule {@code where}. */
  WHERE,
  /** Grammar rule {@code path}. */
  PATH,
  /** Grammar rule {@code group}. */
  GROUP,
  /** Grammar rule {@code amount}. */
  AMOUNT,
  /** Grammar rule {@code plainAmount}. */
  PLAIN_AMOUNT,
  /** Grammar rule {@code gradeValue}. */
  GRADE_VALUE,
  /** Grammar rule {@code date}. */
  DATE,
  /** Grammar rule {@code text}. */
  TEXT,
  /** Grammar rule {@code names}. */
  NAMES,
  /** Grammar rule {@code unit}. */
  UNIT,
  /** Grammar rule {@code name}. */
  NAME,
  /** Grammar rule {@code reserved}. */
  RESERVED,
  /** Grammar rule {@code head}. */
  HEAD
}
