package org.tautlog.judge;

import java.util.List;
import java.util.function.BiFunction;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.signature.ClampLoad;
import org.tautlog.signature.ClampLoadEstimate;
import org.tautlog.signature.Scratch;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.Trace;

/**
 * Judges one tightening by its own curve: data checks, window, fault signatures, causes; clamp load where the
 * specification states the joint and nothing found speaks against it.
 *
 * <p>The window decides. A cause is named only when two cues agree. Data too poor to judge give no window findings that
 * they cannot bear: a recording that ends mid-turn is not a turn that stopped short.
 */
public final class Judge {
    private Judge() {}

    /**
     * Reads the curve and judges it. Where the program itself fails on a curve, the tightening is unjudged and the finding
     * says so.
     *
     * @param trace the recorded tightening
     * @param specification what the plant released for this joint
     * @return the judgement, findings gravest first and causes before what they explain
     */
    public static Judgement judge(Trace trace, JointSpecification specification) {
        return judge(trace, specification, new Scratch());
    }

    /** The same in arrays that serve for many traces, one after another. */
    static Judgement judge(Trace trace, JointSpecification specification, Scratch scratch) {
        return orUnjudged(trace, specification, (one, by) -> judged(one, by, scratch));
    }

    /** A curve on which the program fails must not keep the others from being judged, nor pass. */
    static Judgement orUnjudged(
            Trace trace,
            JointSpecification specification,
            BiFunction<? super Trace, ? super JointSpecification, Judgement> judge) {
        try {
            return judge.apply(trace, specification);
        } catch (RuntimeException failed) {
            var at = failed.getStackTrace();
            var why = "the program failed on this curve: " + failed
                    + (at.length == 0 ? "" : " at " + at[0].getFileName() + ":" + at[0].getLineNumber());
            return new Judgement(
                    trace.identity(),
                    trace.source(),
                    specification.name(),
                    specification.version(),
                    Signature.none(trace.curve().size(), why),
                    Verdict.UNJUDGED,
                    List.of(new Finding(FindingCode.JUDGING_FAILED, Consequence.UNJUDGED, null, null, "", why)));
        }
    }

    private static Judgement judged(Trace trace, JointSpecification specification, Scratch scratch) {
        var read = SignatureReader.read(trace.curve(), specification.method(), specification.reading(), scratch);
        var signature = specification
                .statedJoint()
                .map(joint -> read.withClampLoad(ClampLoadEstimate.of(read, joint)))
                .orElse(read);
        var sheet = new Sheet(trace.identity(), signature, specification);
        DataCheck.check(sheet);
        OutOfStep.check(sheet, trace.curve());
        if (!sheet.has(FindingCode.RECORDING_SHIFTED)) {
            WindowCheck.check(sheet);
            StartFaults.check(sheet);
            ThreadFaults.check(sheet);
            DriveFaults.check(sheet);
            Causes.check(sheet);
        }
        var judged = specification.statedJoint().isPresent() ? withClampLoad(sheet) : signature;
        var findings = sheet.gravestFirst();
        return new Judgement(
                trace.identity(),
                trace.source(),
                specification.name(),
                specification.version(),
                judged,
                Verdict.of(findings),
                findings);
    }

    /** An estimate stands only where no finding speaks against what it rests on; its absence is noted with the reason. */
    private static Signature withClampLoad(Sheet sheet) {
        var read = sheet.signature();
        var judged = read.clampLoad().loadKN().isFound()
                ? ClampLoadPremises.refuted(sheet.gravestFirst(), read.onset().endState())
                        .map(why -> read.withClampLoad(ClampLoad.none(why)))
                        .orElse(read)
                : read;
        var load = judged.clampLoad().loadKN();
        if (!load.isFound()) {
            sheet.add(
                    FindingCode.FEATURE_MISSING,
                    null,
                    null,
                    "kN",
                    "clamp load is not estimated: %s",
                    load.whyMissing());
        }
        return judged;
    }
}
