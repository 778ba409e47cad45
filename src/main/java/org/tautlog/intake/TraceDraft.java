package org.tautlog.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.SampleColumn;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.trace.Curve;

/** A trace while its rows come in. The first thing wrong with it is kept; from then on rows are only counted. */
final class TraceDraft {
    /** A mark before each three digits. */
    private static final Pattern MARKED = Pattern.compile("[-+\u2212]?[0-9]{1,3}(?:[.,][0-9]{3})+(?:[.,][0-9]+)?");

    private final FileLayout layout;
    private final Where firstRow;
    private final int mostSamples;
    private final Map<IdentityField, String> identity = new EnumMap<>(IdentityField.class);
    private final Axis angle;
    private final Axis torque;
    private final Axis time;
    private final @Nullable SampleColumn stageSource;
    private int[] stage = new int[16];
    private int samples;
    private int times;
    private int stages;
    private int partStage;
    private int lastStage;
    private long rows;
    private @Nullable Problem fault;
    private @Nullable Problem remark;

    TraceDraft(FileLayout layout, Where firstRow, int mostSamples) {
        this.layout = layout;
        this.firstRow = firstRow;
        this.mostSamples = mostSamples;
        this.angle = new Axis(layout.samples().get(SampleQuantity.ANGLE));
        this.torque = new Axis(layout.samples().get(SampleQuantity.TORQUE));
        this.time = new Axis(layout.samples().get(SampleQuantity.TIME));
        this.stageSource = layout.samples().get(SampleQuantity.STAGE);
    }

    /** One quantity of the samples. */
    private static final class Axis {
        private final @Nullable SampleColumn source;
        private double[] values = new double[16];

        Axis(@Nullable SampleColumn source) {
            this.source = source;
        }

        double[] filled(int samples) {
            return Arrays.copyOf(values, samples);
        }
    }

    Where firstRow() {
        return firstRow;
    }

    Map<IdentityField, String> identity() {
        return identity;
    }

    long rows() {
        return rows;
    }

    /** About how much it holds, a place for its identity included. */
    int bytes() {
        return 1024 + stage.length * (3 * Double.BYTES + Integer.BYTES);
    }

    int samples() {
        return samples;
    }

    Optional<Problem> fault() {
        return Optional.ofNullable(fault);
    }

    /** Puts a better account of what is wrong in place of the first one. */
    void respoil(Problem problem) {
        fault = problem;
    }

    /** Something to say of the trace where it is kept in spite of it. */
    void remark(Problem problem) {
        remark = problem;
    }

    Optional<Problem> remark() {
        return Optional.ofNullable(remark);
    }

    void countRow() {
        rows++;
    }

    void spoil(ProblemCode code, Where where, String what, String expected, String action) {
        spoil(new Problem(code, where, what, expected, action));
    }

    void spoil(Problem problem) {
        if (fault == null) {
            fault = problem;
        }
    }

    /** Adds one sample; cells that are no numbers spoil the draft. */
    void add(Row row, int line) {
        if (fault != null) {
            return;
        }
        if (samples == mostSamples) {
            spoil(
                    ProblemCode.TOO_LARGE,
                    at(line),
                    "the trace has more than " + mostSamples + " samples",
                    "",
                    "raise the bound where that is right");
            return;
        }
        grow();
        value(angle, row, line);
        value(torque, row, line);
        boolean timed = time.source != null && !(time.source.isColumn() && row.isEmpty(time.source.column()));
        times += timed && value(time, row, line) ? 1 : 0;
        stages += stage(row, line) ? 1 : 0;
        samples++;
    }

    private Where at(int line) {
        return Where.line(firstRow.file(), line);
    }

    private void grow() {
        if (samples < stage.length) {
            return;
        }
        for (var axis : List.of(angle, torque, time)) {
            axis.values = Arrays.copyOf(axis.values, 2 * samples);
        }
        stage = Arrays.copyOf(stage, 2 * samples);
    }

    private boolean value(Axis axis, Row row, int line) {
        var source = Objects.requireNonNull(axis.source);
        if (!source.isColumn()) {
            axis.values[samples] = samples * source.step() * source.factor();
            return true;
        }
        double number = row.number(source.column(), layout.numbers());
        if (Double.isNaN(number)) {
            notANumber(source, row, line);
            return false;
        }
        axis.values[samples] = converted(number, source.factor());
        return true;
    }

    /** A factor of 1 must keep the very bits; adding 0 keeps a turned sign from making a negative zero. */
    private static double converted(double value, double factor) {
        return factor == 1.0 ? value : value * factor + 0.0;
    }

    private boolean stage(Row row, int line) {
        var source = stageSource;
        if (source == null || row.isEmpty(source.column())) {
            return false;
        }
        var marked = source.marks().isEmpty() ? null : source.marks().get(row.get(source.column()));
        double value = marked != null ? marked : row.number(source.column(), layout.numbers());
        if (value != (int) value) {
            notANumber(source, row, line);
            return false;
        }
        stage[samples] = (int) value;
        return true;
    }

    private void notANumber(SampleColumn source, Row row, int line) {
        var name = layout.header().get(source.column());
        var expected = source.marks().isEmpty()
                ? "a number with decimal mark '" + layout.numbers().decimalMark() + "'"
                : "one of "
                        + String.join(
                                ", ", source.marks().keySet().stream().sorted().toList()) + " or a whole number";
        spoil(
                ProblemCode.NOT_A_NUMBER,
                at(line).at(name),
                Words.quoted(row.get(source.column())) + " is no number",
                expected,
                MARKED.matcher(row.get(source.column())).matches()
                        ? "where the other mark stands between thousands, state it in layout.toml under [text] thousands = true"
                        : "");
    }

    /** What lies nearer to the end of an earlier part than to its beginning carries it on. */
    boolean carriesOn(TraceDraft earlier) {
        if (samples == 0 || earlier.samples == 0) {
            return false;
        }
        boolean byTime = times > 0 && earlier.times > 0;
        var axis = byTime ? time.values : angle.values;
        var before = byTime ? earlier.time.values : earlier.angle.values;
        return Math.abs(axis[0] - before[earlier.samples - 1]) < Math.abs(axis[0] - before[0]);
    }

    /** The stage that a heading above the table names; 0 where none does. */
    void ofStage(int number) {
        partStage = number;
        lastStage = number;
    }

    /** Whether a table under the same headings goes on with this trace's earlier part. */
    boolean belongsTo(TraceDraft earlier) {
        if (partStage > 0 && earlier.lastStage > 0 && partStage != earlier.lastStage) {
            return partStage > earlier.lastStage;
        }
        return partStage == earlier.lastStage && carriesOn(earlier);
    }

    /**
     * Adds a later part. Where its angle starts over, as it does where a machine counts it from the start of each stage, it
     * is counted on from the end of what is there, and so is its time.
     *
     * @return what was taken for granted
     */
    Optional<Problem> append(TraceDraft part) {
        rows += part.rows;
        part.fault().ifPresent(this::spoil);
        if (samples + part.samples > mostSamples) {
            spoil(ProblemCode.TOO_LARGE, part.firstRow, "the trace has more than " + mostSamples + " samples", "", "");
        }
        if (fault != null || samples == 0 || part.samples == 0) {
            return Optional.empty();
        }
        boolean startsOver = startsOver(angle, part.angle, part.partStage);
        append(torque, part.torque, part.samples, false);
        append(time, part.time, part.samples, startsOver(time, part.time, part.partStage));
        append(angle, part.angle, part.samples, startsOver);
        stageOf(this, partStage);
        stageOf(part, part.partStage);
        stage = Arrays.copyOf(stage, samples + part.samples);
        System.arraycopy(part.stage, 0, stage, samples, part.samples);
        samples += part.samples;
        times += part.times;
        stages += part.stages;
        lastStage = part.lastStage;
        return startsOver
                ? Optional.of(new Problem(
                        ProblemCode.ASSUMED,
                        part.firstRow.at("angle"),
                        "the angle starts over with each stage; it is counted on from the end of the stage before",
                        "",
                        "export the stages with one angle that runs through"))
                : Optional.empty();
    }

    private void append(Axis axis, Axis part, int more, boolean startsOver) {
        double shift = startsOver ? axis.values[samples - 1] : 0.0;
        axis.values = Arrays.copyOf(axis.values, samples + more);
        for (int i = 0; i < more; i++) {
            axis.values[samples + i] = part.values[i] + shift;
        }
    }

    private boolean startsOver(Axis axis, Axis part, int stageOfPart) {
        double first = part.values[0];
        return stageOfPart != lastStage
                && Math.abs(first - axis.values[samples - 1]) > Math.abs(first - axis.values[0]);
    }

    /** Stages that the table itself does not tell are those of the headings. */
    private static void stageOf(TraceDraft draft, int number) {
        if (number > 0 && draft.stages == 0) {
            Arrays.fill(draft.stage, 0, draft.samples, number);
            draft.stages = draft.samples;
        }
    }

    /** The curve; empty where there is none to be had, and then there is a fault. */
    Optional<Curve> curve() {
        if (samples == 0) {
            spoil(ProblemCode.BAD_TRACE, firstRow, "the trace has no samples", "", "");
        }
        if ((times != 0 && times != samples) || (stages != 0 && stages != samples)) {
            spoil(
                    ProblemCode.BAD_TRACE,
                    firstRow,
                    "of " + samples + " samples " + times + " have a time and " + stages + " a stage",
                    "all or none",
                    "");
        }
        if (fault != null) {
            return Optional.empty();
        }
        var curve = Curve.of(angle.filled(samples), torque.filled(samples));
        curve = times == 0 ? curve : curve.withTimeS(time.filled(samples));
        return Optional.of(stages == 0 ? curve : curve.withStages(Arrays.copyOf(stage, samples)));
    }
}
