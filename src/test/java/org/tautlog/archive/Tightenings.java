package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.signature.CurveMarks;
import org.tautlog.signature.ElasticLine;
import org.tautlog.signature.EndState;
import org.tautlog.signature.Feature;
import org.tautlog.signature.FinalPoint;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SnugPoint;
import org.tautlog.signature.YieldOnset;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/** Small tightenings of the Fenwater line to fill archives with. */
final class Tightenings {
    static final OffsetDateTime SHIFT_START = OffsetDateTime.parse("2026-03-02T06:00:00+01:00");
    static final Stamp STAMP = new Stamp("0.1.0", OffsetDateTime.parse("2026-03-02T14:10:00+01:00"));
    static final SpecificationUsed SPECIFICATION = specification("3");

    private Tightenings() {}

    static SpecificationUsed specification(String version) {
        var text = "name = \"Fenwater head bolt\"\nversion = \"" + version + "\"\n";
        return new SpecificationUsed("Fenwater head bolt", version, text);
    }

    static SourceFile file(String name) {
        return new SourceFile(name, Disk.sha256(name.getBytes(StandardCharsets.UTF_8)));
    }

    static String serial(int engine) {
        return String.format(Locale.ROOT, "FW-%06d", engine);
    }

    /** One bolt of one engine: engines come every minute, bolts every second. */
    static Trace trace(SourceFile file, int engine, int bolt) {
        return trace(file, serial(engine), engine, bolt);
    }

    static Trace trace(SourceFile file, String serial, int engine, int bolt) {
        int n = 40;
        var angles = new double[n];
        var torques = new double[n];
        for (int i = 0; i < n; i++) {
            angles[i] = i * 0.25;
            torques[i] = (i * 123 + engine * 7 + bolt) / 1000.0;
        }
        var identity = new TraceIdentity(
                serial,
                "S40",
                String.valueOf(1 + bolt % 4),
                String.valueOf(bolt),
                1,
                SHIFT_START.plusMinutes(engine).plusSeconds(bolt),
                "A17");
        return new Trace(
                identity, new Source(file.file(), 1 + engine * 10 + bolt, file.sha256()), Curve.of(angles, torques));
    }

    static Judgement judgement(Trace trace, SpecificationUsed specification) {
        var missing = Feature.missing("the gradient never fell so far");
        var signature = new Signature(
                trace.curve().size(),
                Feature.of(1.5, 0.1),
                new SnugPoint(Feature.of(12.25, 0.2), Feature.of(30.1, 0.05)),
                new ElasticLine(Feature.of(0.31, 0.002), Feature.of(8.5, 0.4), Feature.of(0.07, 0)),
                new YieldOnset(
                        missing, missing, Feature.of(0.93, 0.02), Feature.of(0.95, 0.02), missing, EndState.ELASTIC),
                new FinalPoint(
                        Feature.of(370, 0.1), Feature.of(88.5, 0.1), Feature.of(89, 0.1), Feature.of(357.75, 0.2)),
                CurveMarks.none("nothing was looked for"));
        return new Judgement(
                trace.identity(),
                trace.source(),
                specification.name(),
                specification.version(),
                signature,
                Verdict.NONCONFORMING,
                List.of(
                        new Finding(
                                FindingCode.TURN_SHORT,
                                Consequence.NONCONFORMING,
                                357.75,
                                358.0,
                                "deg",
                                "the turn ended at 357.75 deg, short of 358 deg"),
                        new Finding(FindingCode.FEATURE_MISSING, Consequence.NOTE, null, null, "", "no onset")));
    }

    /** Imports one file with some engines of eight bolts each, judged. */
    static Imported take(Archive archive, String file, int firstEngine, int engines) throws IOException {
        return take(archive, file, firstEngine, engines, SPECIFICATION);
    }

    static Imported take(Archive archive, String name, int firstEngine, int engines, SpecificationUsed specification)
            throws IOException {
        try (var importer = archive.importer(STAMP, specification)) {
            var file = file(name);
            importer.source(file);
            for (int engine = firstEngine; engine < firstEngine + engines; engine++) {
                for (int bolt = 1; bolt <= 8; bolt++) {
                    var trace = trace(file, engine, bolt);
                    importer.trace(trace);
                    importer.judgement(judgement(trace, specification));
                }
            }
            return importer.commit();
        }
    }
}
