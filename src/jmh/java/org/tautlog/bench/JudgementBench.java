package org.tautlog.bench;

import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;

/**
 * Time and allocation of reading and judging one trace of 1,500 samples, beside one plain pass that sums its two arrays.
 *
 * <p>Run by {@code mvn -Pbench -Dquick test -Dtest=JudgementBench}; the table at the end has time and bytes an operation.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class JudgementBench {
    private static final int SAMPLES = 1_500;

    private JointSpecification specification;
    private Trace trace;
    private double[] angleDeg;
    private double[] torqueNm;

    @Setup
    public void simulate() {
        specification = FenwaterEngine.specification();
        var done = SimulatedLine.of(2, 2).tightenings().findFirst().orElseThrow().trace();
        var curve = done.curve();
        var kept = IntStream.range(0, SAMPLES)
                .map(i -> (int) ((long) i * (curve.size() - 1) / (SAMPLES - 1)))
                .toArray();
        angleDeg = IntStream.of(kept).mapToDouble(curve::angleDeg).toArray();
        torqueNm = IntStream.of(kept).mapToDouble(curve::torqueNm).toArray();
        var stages = IntStream.of(kept).map(curve::stage).toArray();
        trace = new Trace(
                done.identity(), new Source("simulated", 1, ""), Curve.of(angleDeg, torqueNm).withStages(stages));
    }

    @Benchmark
    public double plainPass() {
        double sum = 0;
        for (int i = 0; i < angleDeg.length; i++) {
            sum += angleDeg[i] + torqueNm[i];
        }
        return sum;
    }

    @Benchmark
    public Signature signature() {
        return SignatureReader.read(trace.curve(), specification.method(), specification.reading());
    }

    @Benchmark
    public Judgement judgement() {
        return Judge.judge(trace, specification);
    }

    @Test
    void measure() throws RunnerException {
        new Runner(new OptionsBuilder()
                        .include(JudgementBench.class.getName())
                        .forks(1)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(2))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(2))
                        .addProfiler(GCProfiler.class)
                        .build())
                .run();
    }
}
