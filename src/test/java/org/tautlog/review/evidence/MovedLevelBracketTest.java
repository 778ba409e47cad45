package org.tautlog.review.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.line.CausedShift;
import org.tautlog.line.CausedShift.Kind;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.review.stream.Stream;

/** One spindle of the simulated line whose torque reads too high for a while, engine by engine within its limits. */
class MovedLevelBracketTest {
    private static final long SEED = 2;
    private static final double SCALE = 0.06;
    private static final int LAST = 64;
    /** Of the shift in which the level comes back: within one bolt lot, as the next moves it for a reason of its own. */
    private static final int LAST_MOVED = 44;

    private static final Stream SPINDLE = new Stream(
            CausedShift.touched(SEED).split("/", 2)[0],
            CausedShift.touched(SEED).split("/", 2)[1]);
    private static final List<Judgement> STEADY = judged(Kind.NOTHING, 0);
    private static final List<Judgement> MOVED = judged(Kind.TORQUE_SCALE, SCALE);

    @Test
    void a_moved_level_conforms_tightening_by_tightening() {
        assertTrue(MOVED.stream().allMatch(one -> one.verdict() == Verdict.CONFORMING), MOVED.toString());
    }

    @Test
    void the_whole_moved_stretch_is_held_whichever_moment_inside_is_asked_for() throws IOException {
        var line = line(engine -> engine > 32);
        for (int engine = 33; engine <= LAST; engine++) {
            var found = at(engine, line);
            assertTrue(found.engines().containsAll(serials(33, LAST)), engine + ": " + found.engines());
            assertTrue(found.firstGood().isEmpty() && found.back().isEmpty(), "open while the level has not come back");
            assertTrue(found.lastGood().orElseThrow().serial().compareTo(serial(33)) < 0, "good before it moved");
        }
    }

    @Test
    void a_level_that_came_back_closes_the_bracket() throws IOException {
        var line = line(engine -> engine > 32 && engine <= LAST_MOVED);
        for (int engine = 33; engine <= LAST_MOVED; engine++) {
            var found = at(engine, line);
            assertTrue(found.engines().containsAll(serials(33, LAST_MOVED)), engine + ": " + found.engines());
            assertTrue(
                    found.firstGood().orElseThrow().serial().compareTo(serial(LAST_MOVED)) > 0, "good once it is back");
            assertTrue(found.back().isPresent(), "and it is told which change brought it back");
        }
    }

    @Test
    void a_moment_well_after_the_level_came_back_leaves_the_moved_stretch_alone() throws IOException {
        var line = line(engine -> engine > 32 && engine <= LAST_MOVED);
        assertEquals(List.of(serial(58)), at(58, line).engines());
        assertTrue(at(58, line).change().isEmpty(), "it had come back by then");
        assertEquals(List.of(serial(20)), at(20, line).engines());
    }

    @Test
    void a_steady_level_leaves_the_ends_to_the_verdicts() throws IOException {
        for (int engine = 10; engine <= LAST - 5; engine++) {
            var found = at(engine, line(none -> false));
            assertEquals(List.of(serial(engine)), found.engines());
            assertTrue(found.change().isEmpty() && found.back().isEmpty(), found.toString());
        }
    }

    @Test
    void a_finding_far_from_where_a_level_moved_is_bracketed_by_verdicts() throws IOException {
        var line = line(engine -> engine > 32);
        assertEquals(List.of(serial(20)), showing(20, line).engines());
        assertEquals(List.of(serial(56)), showing(56, line).engines());
    }

    @Test
    void a_finding_where_a_level_moved_holds_the_moved_stretch() throws IOException {
        var found = showing(33, line(engine -> engine > 32));
        assertTrue(
                found.engines().containsAll(serials(33, LAST)), found.engines().toString());
    }

    /** Safe by default: without a word the bracket stays open, as the tests above hold; common practice, no source. */
    @Test
    void a_word_on_the_step_closes_the_bracket_at_its_moment() throws IOException {
        var line = line(engine -> engine > 32);
        var word = word(line, 33);
        var before = explained(25, line, word);
        assertTrue(before.engines().contains(serial(25)), before.engines().toString());
        var after = explained(40, line, word);
        assertEquals(List.of(serial(40)), after.engines(), "good on either side from the word on");
        assertEquals(32, after.course().orElseThrow().explained().orElseThrow(), "place of engine 33, from 0");
        var atTheStep = explained(32, line, word);
        assertTrue(atTheStep.engines().stream().allMatch(one -> one.compareTo(serial(33)) < 0));
        assertEquals(serial(33), atTheStep.firstGood().orElseThrow().serial());
        assertEquals(word, atTheStep.explained().orElseThrow().word());
    }

    @Test
    void a_word_on_another_moment_explains_nothing() throws IOException {
        var line = line(engine -> engine > 32);
        for (int elsewhere : new int[] {10, 50}) {
            var found = explained(40, line, word(line, elsewhere));
            assertEquals(at(40, line).engines(), found.engines());
            assertTrue(found.explained().isEmpty());
        }
    }

    @Test
    void a_word_on_the_step_of_another_feature_leaves_the_bracket_open_and_says_so() throws IOException {
        var line = line(engine -> engine > 32);
        var open = new Bracketing(new MadeStanding(line), Duration.ZERO);
        var told = open.around(SPINDLE, null, one -> one.identity().serial().equals(serial(40)))
                .orElseThrow()
                .change()
                .orElseThrow()
                .feature();
        var spans = open.steps();
        var own = spans.stream().filter(step -> step.feature() == told).toList();
        assertEquals(1, own.size(), spans.toString());
        var elsewhere = line.stream()
                .map(one -> Objects.requireNonNull(one.identity().time()))
                .filter(time -> spans.stream().anyMatch(step -> holds(step, time)) && !holds(own.get(0), time))
                .findFirst()
                .orElseThrow(() -> new AssertionError(spans.toString()));
        var found = explained(40, line, new ExplainedStep(elsewhere, "A. Reviewer", "new bolts"));
        assertEquals(told, found.change().orElseThrow().feature());
        assertTrue(
                found.isStillMoved() && found.firstGood().isEmpty(),
                found.engines().toString());
        assertEquals(own.get(0), found.explained().orElseThrow().missed().orElseThrow());
        assertTrue(found.course().orElseThrow().explained().isEmpty(), "no mark on the chart of what is not explained");
    }

    private static boolean holds(StepSpan step, OffsetDateTime moment) {
        return !moment.isBefore(step.from().orElse(OffsetDateTime.MIN)) && !moment.isAfter(step.to());
    }

    @Test
    void a_level_that_leaves_the_explained_one_is_held_again() throws IOException {
        var line = line(engine -> engine > 32 && engine <= LAST_MOVED);
        var found = explained(54, line, word(line, 33));
        assertTrue(
                found.engines().containsAll(serials(45, LAST)), found.engines().toString());
        assertTrue(found.firstGood().isEmpty(), "the second step is not explained");
    }

    @Test
    void the_course_shows_bracket_step_and_suspect() throws IOException {
        var course = at(40, line(engine -> engine > 32)).course().orElseThrow();
        assertEquals(LAST, course.n());
        var step = course.change().orElseThrow();
        assertTrue(course.begin() < step.earliest() && step.earliest() <= step.likeliest());
        assertTrue(step.likeliest() <= step.latest() && course.end() == LAST);
        assertEquals(
                List.of(39),
                course.points().stream()
                        .filter(BracketCourse.Point::suspect)
                        .map(BracketCourse.Point::place)
                        .toList());
    }

    private static ExplainedStep word(List<Judgement> line, int engine) {
        return new ExplainedStep(line.get(engine - 1).identity().time(), "A. Reviewer", "new transducer");
    }

    private static Containment explained(int engine, List<Judgement> line, ExplainedStep word) throws IOException {
        return new Bracketing(new MadeStanding(line), Duration.ZERO, word)
                .around(SPINDLE, null, one -> one.identity().serial().equals(serial(engine)))
                .orElseThrow();
    }

    private static Containment at(int engine, List<Judgement> line) throws IOException {
        return new Bracketing(new MadeStanding(line), Duration.ZERO)
                .around(SPINDLE, null, one -> one.identity().serial().equals(serial(engine)))
                .orElseThrow();
    }

    private static Containment showing(int engine, List<Judgement> line) throws IOException {
        return new Bracketing(new MadeStanding(line), Duration.ZERO)
                .around(
                        SPINDLE,
                        FindingCode.FINAL_TORQUE_HIGH,
                        one -> one.identity().serial().equals(serial(engine)))
                .orElseThrow();
    }

    private static List<Judgement> line(IntPredicate moved) {
        return IntStream.rangeClosed(1, LAST)
                .mapToObj(engine -> (moved.test(engine) ? MOVED : STEADY)
                        .stream()
                                .filter(one -> one.identity().serial().equals(serial(engine)))
                                .findFirst()
                                .orElseThrow())
                .toList();
    }

    private static List<Judgement> judged(Kind kind, double size) {
        return CausedShift.tightenings(kind, size, CausedShift.Shows.ONE_SPINDLE, SEED).stream()
                .filter(one -> Stream.of(one.trace().identity()).equals(SPINDLE))
                .map(one -> Judge.judge(one.trace(), FenwaterEngine.specification()))
                .toList();
    }

    private static List<String> serials(int from, int to) {
        return IntStream.rangeClosed(from, to)
                .mapToObj(MovedLevelBracketTest::serial)
                .toList();
    }

    private static String serial(int engine) {
        return String.format(Locale.ROOT, "FW-%06d", engine);
    }
}
