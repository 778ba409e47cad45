package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;
import org.tautlog.trace.Trace;

/**
 * How often the true clamp load lies within the bounds of its estimate, fault by fault, on the simulated line, which alone
 * knows the truth. The numbers stand in DEVELOPERS.md.
 */
class ClampLoadCoverageTest {
    private static final long FIRST_SEED = 11;
    private static final long LAST_SEED = 16;
    private static final int ENGINES = 64;
    private static final double CONFIDENCE = 0.95;

    /** Here the joint, the angle or the curve is not what an estimate takes it for. */
    private static final Set<Fault> REFUTING = EnumSet.of(
            Fault.WASHER_MISSING,
            Fault.SOFT_LAYER,
            Fault.ANGLE_SLIP,
            Fault.ALREADY_TIGHT,
            Fault.CROSS_THREADED,
            Fault.STRIPPED_THREAD,
            Fault.TRUNCATED);

    private static final JointSpecification SPECIFICATION = FenwaterEngine.specification();
    private static final Map<Fault, Count> COUNTS = new EnumMap<>(Fault.class);

    /** Tightenings with one fault, how many of them have an estimate, and how many of those hold the truth. */
    private record Count(int tightenings, int estimated, int held) {
        Count plus(SimulatedTightening done, Judgement judgement) {
            var load = judgement.signature().clampLoad();
            double trueKN = done.truth().clampLoadKN();
            boolean found = load.loadKN().isFound();
            boolean holds =
                    load.lowKN().number() <= trueKN && trueKN <= load.highKN().number();
            return new Count(tightenings + 1, estimated + (found ? 1 : 0), held + (found && holds ? 1 : 0));
        }
    }

    @BeforeAll
    static void judge_six_shifts() {
        LongStream.rangeClosed(FIRST_SEED, LAST_SEED)
                .boxed()
                .flatMap(seed -> SimulatedLine.of(ENGINES, seed).tightenings())
                .forEach(done -> COUNTS.merge(
                        done.truth().fault(),
                        new Count(0, 0, 0).plus(done, Judge.judge(done.trace(), SPECIFICATION)),
                        (one, other) -> new Count(
                                one.tightenings + other.tightenings,
                                one.estimated + other.estimated,
                                one.held + other.held)));
    }

    @Test
    void whatever_the_fault_the_truth_lies_within_the_bounds() {
        assertEquals(EnumSet.allOf(Fault.class), COUNTS.keySet());
        COUNTS.forEach((fault, count) -> assertEquals(count.estimated, count.held, fault.word()));
    }

    @Test
    void a_fault_that_speaks_against_the_estimate_leaves_none() {
        for (var fault : REFUTING) {
            assertEquals(0, count(fault).estimated, fault.word());
        }
    }

    /** Friction, strength and turn do not enter into what the estimate takes for granted: nearly all of these keep theirs. */
    @Test
    void any_other_fault_keeps_its_estimate() {
        for (var fault : EnumSet.complementOf(EnumSet.copyOf(REFUTING))) {
            var count = count(fault);
            assertTrue(count.estimated >= 0.85 * count.tightenings, fault.word() + ' ' + count);
        }
        assertEquals(count(Fault.NONE).tightenings, count(Fault.NONE).estimated);
    }

    /** Coarse sampling may leave a turn open and a fault unseen; what it leaves of an estimate must still hold the truth. */
    @ParameterizedTest(name = "about {0} samples")
    @ValueSource(ints = {50, 100, 200, 400})
    void thinned_recordings_keep_true_bounds(int samples) {
        int sound = 0;
        int estimated = 0;
        for (var done : SimulatedLine.of(ENGINES, FIRST_SEED).tightenings().toList()) {
            var trace = done.trace();
            var thinned = new Trace(trace.identity(), trace.source(), Thinned.byCount(trace.curve(), samples));
            var load = Judge.judge(thinned, SPECIFICATION).signature().clampLoad();
            sound += done.truth().fault() == Fault.NONE ? 1 : 0;
            if (load.loadKN().isFound()) {
                estimated += done.truth().fault() == Fault.NONE ? 1 : 0;
                double trueKN = done.truth().clampLoadKN();
                assertTrue(
                        load.lowKN().number() <= trueKN
                                && trueKN <= load.highKN().number(),
                        done.truth() + " " + load);
            }
        }
        assertTrue(estimated >= 0.25 * sound, estimated + " of " + sound + " have an estimate");
    }

    @Test
    void the_developers_page_says_what_was_counted_here() throws IOException {
        var page = Files.readString(Path.of("DEVELOPERS.md"));
        var missing = rows().stream().filter(row -> !page.contains(row + '\n')).toList();
        assertEquals(List.of(), missing, "not in DEVELOPERS.md");
    }

    /** A plant may call soft seating a mere note; the stated stiffness is still not this joint's. */
    @Test
    void what_a_plant_makes_of_a_finding_does_not_bring_the_estimate_back() {
        var lenient = SPECIFICATION.withConsequences(
                Map.of(FindingCode.WRONG_PARTS, Consequence.NOTE, FindingCode.SOFT_SEATING, Consequence.NOTE));
        var soft = SimulatedLine.of(ENGINES, FIRST_SEED)
                .tightenings()
                .filter(done -> done.truth().fault() == Fault.SOFT_LAYER)
                .map(done -> Judge.judge(done.trace(), lenient))
                .toList();
        assertEquals(1, soft.size());
        var load = soft.get(0).signature().clampLoad().loadKN();
        assertTrue(
                load.whyMissing().endsWith("an estimate takes bolt and parts to be those specified"), load.toString());
        assertTrue(
                soft.get(0).findings().stream()
                        .anyMatch(finding -> finding.message().endsWith(load.whyMissing())),
                soft.get(0).findings().toString());
    }

    private static List<String> rows() {
        var all = new Count(0, 0, 0);
        var rows = new ArrayList<String>();
        for (var fault : Fault.values()) {
            var count = count(fault);
            rows.add(row(fault.title(), count));
            all = new Count(
                    all.tightenings + count.tightenings, all.estimated + count.estimated, all.held + count.held);
        }
        rows.add(row("all", all));
        return rows;
    }

    private static String row(String name, Count count) {
        return String.format(
                Locale.ROOT, "| %s | %d | %d | %s |", name, count.tightenings, count.estimated, share(count));
    }

    private static String share(Count count) {
        if (count.estimated == 0) {
            return "no estimate";
        }
        return String.format(
                Locale.ROOT,
                "%s of %d; at least %.1f %%",
                count.held == count.estimated ? "all" : String.valueOf(count.held),
                count.estimated,
                100 * leastShare(count));
    }

    /**
     * One-sided lower bound of a share at 95 % confidence. Source: Clopper and Pearson, Biometrika 26 (1934) 404; as quantile
     * of the beta distribution, NIST/SEMATECH e-Handbook 7.2.4.1.
     */
    private static double leastShare(Count count) {
        return count.held == 0
                ? 0
                : BetaDistribution.of(count.held, count.estimated - count.held + 1.0)
                        .inverseCumulativeProbability(1 - CONFIDENCE);
    }

    private static Count count(Fault fault) {
        return COUNTS.getOrDefault(fault, new Count(0, 0, 0));
    }
}
