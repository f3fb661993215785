/**
 * Tests for plan files and for a coach's own rules, with no more Java than this:
 *
 * <pre>{@code
 * final class HouseRulesTest {
 *   @TestFactory
 *   Stream<DynamicTest> houseRules() {
 *     return FindingCorpus.in(Path.of("src/test/corpus/house-rules")).tests();
 *   }
 * }
 * }</pre>
 *
 * <p>Findings are kept in files because a file shows what a coach will see, and because a change of
 * wording or of a rule can be reviewed as a diff.
 *
 * <p>Stability: stable.
 *
 * @since 1.0
 */
@NullMarked
package gripwright.testkit;

import org.jspecify.annotations.NullMarked;
