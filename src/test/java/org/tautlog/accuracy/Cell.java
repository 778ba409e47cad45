package org.tautlog.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.StatedJoint;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.signature.ClampLoadEstimate;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SignatureReader;

/** Many curves under the same conditions, read and compared with the truth. */
final class Cell {
    private static final StatedJoint STATED =
            FenwaterEngine.specification().statedJoint().orElseThrow();

    final String name;
    final Generator generator;
    final Conditions conditions;
    private final List<Pair> pairs;

    private record Pair(Known known, Signature signature) {}

    private Cell(String name, Generator generator, Conditions conditions, List<Pair> pairs) {
        this.name = name;
        this.generator = generator;
        this.conditions = conditions;
        this.pairs = pairs;
    }

    /** Runs the seeds from 1 on, on all processors; the result does not depend on how many there are. */
    static Cell run(String name, Generator generator, Conditions conditions, int n) {
        var pairs = IntStream.rangeClosed(1, n)
                .parallel()
                .mapToObj(seed -> pair(generator.make(conditions, seed)))
                .toList();
        return new Cell(name, generator, conditions, pairs);
    }

    private static Pair pair(Known known) {
        var method = new TighteningMethod(FenwaterEngine.METHOD.snugTorqueNm(), FenwaterEngine.METHOD.turnDeg());
        var read = SignatureReader.read(known.curve(), method, ReadingRule.withDefaults());
        var signature = Double.isNaN(known.loadKN()) ? read : read.withClampLoad(ClampLoadEstimate.of(read, STATED));
        return new Pair(known.withoutSamples(), signature);
    }

    /** The curves of the first seeds alone. */
    Cell first(int n) {
        return new Cell(name, generator, conditions, pairs.subList(0, n));
    }

    int size() {
        return pairs.size();
    }

    /** Whether the feature has a known truth here. */
    boolean knows(Quality quality) {
        return !Double.isNaN(quality.truth(pairs.get(0).known));
    }

    Errors errors(Quality quality) {
        var found = pairs.stream()
                .filter(pair -> quality.of(pair.signature).isFound())
                .mapToDouble(pair -> quality.error(pair.known, pair.signature))
                .toArray();
        return new Errors(found, pairs.size(), quality.aim);
    }

    /** Share of the curves in which a yield onset is claimed. */
    Share onsetClaimed() {
        return new Share(
                (int) pairs.stream()
                        .filter(pair -> pair.signature.onset().angleDeg().isFound())
                        .count(),
                pairs.size());
    }

    /** Share of the estimated clamp loads whose bounds hold the truth. */
    Share loadHeld() {
        var estimated = pairs.stream()
                .filter(pair -> pair.signature.clampLoad().loadKN().isFound())
                .toList();
        int held = (int) estimated.stream()
                .filter(pair -> pair.signature.clampLoad().lowKN().number() <= pair.known.loadKN()
                        && pair.known.loadKN()
                                <= pair.signature.clampLoad().highKN().number())
                .count();
        return new Share(held, Math.max(1, estimated.size()));
    }

    /** Features that are missing and do not say why; there must be none. */
    int failuresWithoutReason() {
        var silent = new ArrayList<Feature>();
        for (var pair : pairs) {
            for (var quality : Quality.values()) {
                var feature = quality.of(pair.signature);
                if (!feature.isFound() && feature.whyMissing().isBlank()) {
                    silent.add(feature);
                }
            }
        }
        return silent.size();
    }
}
