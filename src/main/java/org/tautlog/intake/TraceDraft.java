package org.tautlog.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.SampleColumn;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.trace.Curve;

/** A trace while its rows come in. The first thing wrong with it is kept; from then on rows are only counted. */
final class TraceDraft {
    private final FileLayout layout;
    private final Where firstRow;
    private final int mostSamples;
    private final Map<IdentityField, String> identity = new EnumMap<>(IdentityField.class);
    private final Map<SampleQuantity, double[]> values = new EnumMap<>(SampleQuantity.class);
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
        for (var quantity : List.of(SampleQuantity.ANGLE, SampleQuantity.TORQUE, SampleQuantity.TIME)) {
            values.put(quantity, new double[16]);
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
    void add(List<String> cells, Where where) {
        if (fault != null) {
            return;
        }
        if (samples == mostSamples) {
            spoil(
                    ProblemCode.TOO_LARGE,
                    where,
                    "the trace has more than " + mostSamples + " samples",
                    "",
                    "raise the bound where that is right");
            return;
        }
        grow();
        value(SampleQuantity.ANGLE, cells, where);
        value(SampleQuantity.TORQUE, cells, where);
        times += value(SampleQuantity.TIME, cells, where) ? 1 : 0;
        stages += stage(cells, where) ? 1 : 0;
        samples++;
    }

    private void grow() {
        if (samples < stage.length) {
            return;
        }
        values.replaceAll((quantity, column) -> Arrays.copyOf(column, 2 * samples));
        stage = Arrays.copyOf(stage, 2 * samples);
    }

    private boolean value(SampleQuantity quantity, List<String> cells, Where where) {
        var source = layout.samples().get(quantity);
        if (source == null) {
            return false;
        }
        if (!source.isColumn()) {
            column(quantity)[samples] = samples * source.step() * source.factor();
            return true;
        }
        var cell = cells.get(source.column());
        if (cell.isEmpty() && quantity == SampleQuantity.TIME) {
            return false;
        }
        var number = layout.numbers().parse(cell);
        if (number.isEmpty()) {
            notANumber(source, cell, where);
            return false;
        }
        column(quantity)[samples] = converted(number.getAsDouble(), source.factor());
        return true;
    }

    /** A factor of 1 must keep the very bits; adding 0 keeps a turned sign from making a negative zero. */
    private static double converted(double value, double factor) {
        return factor == 1.0 ? value : value * factor + 0.0;
    }

    private boolean stage(List<String> cells, Where where) {
        var source = layout.samples().get(SampleQuantity.STAGE);
        if (source == null || cells.get(source.column()).isEmpty()) {
            return false;
        }
        var cell = cells.get(source.column());
        var marked = source.marks().get(cell);
        if (marked != null) {
            stage[samples] = marked;
            return true;
        }
        var number = layout.numbers().parse(cell);
        double value = number.orElse(Double.NaN);
        if (value != (int) value) {
            notANumber(source, cell, where);
            return false;
        }
        stage[samples] = (int) value;
        return true;
    }

    private void notANumber(SampleColumn source, String cell, Where where) {
        var name = layout.header().get(source.column());
        var expected = source.marks().isEmpty()
                ? "a number with decimal mark '" + layout.numbers().decimalMark() + "'"
                : "one of "
                        + String.join(
                                ", ", source.marks().keySet().stream().sorted().toList()) + " or a whole number";
        spoil(ProblemCode.NOT_A_NUMBER, where.at(name), Words.quoted(cell) + " is no number", expected, "");
    }

    /** What lies nearer to the end of an earlier part than to its beginning carries it on. */
    boolean carriesOn(TraceDraft earlier) {
        if (samples == 0 || earlier.samples == 0) {
            return false;
        }
        boolean byTime = times > 0 && earlier.times > 0;
        var axis = column(byTime ? SampleQuantity.TIME : SampleQuantity.ANGLE);
        var before = earlier.column(byTime ? SampleQuantity.TIME : SampleQuantity.ANGLE);
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
        boolean startsOver = startsOver(SampleQuantity.ANGLE, part);
        values.forEach((quantity, column) -> {
            double shift = startsOver(quantity, part) ? column[samples - 1] : 0.0;
            var joined = Arrays.copyOf(column, samples + part.samples);
            for (int i = 0; i < part.samples; i++) {
                joined[samples + i] = part.column(quantity)[i] + shift;
            }
            values.put(quantity, joined);
        });
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

    private boolean startsOver(SampleQuantity quantity, TraceDraft part) {
        if (quantity == SampleQuantity.TORQUE || part.partStage == lastStage) {
            return false;
        }
        var before = column(quantity);
        double first = part.column(quantity)[0];
        return Math.abs(first - before[samples - 1]) > Math.abs(first - before[0]);
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
        var curve = Curve.of(filled(SampleQuantity.ANGLE), filled(SampleQuantity.TORQUE));
        curve = times == 0 ? curve : curve.withTimeS(filled(SampleQuantity.TIME));
        return Optional.of(stages == 0 ? curve : curve.withStages(Arrays.copyOf(stage, samples)));
    }

    private double[] filled(SampleQuantity quantity) {
        return Arrays.copyOf(column(quantity), samples);
    }

    private double[] column(SampleQuantity quantity) {
        return Objects.requireNonNull(values.get(quantity));
    }
}
