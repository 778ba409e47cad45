package org.tautlog.intake;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.SampleColumn;
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
    private Samples samples;
    private int partStage;
    private int lastStage;
    private long rows;
    private @Nullable Problem fault;
    private @Nullable Problem remark;

    /** A draft with room for about so many samples, or for more where they come. */
    TraceDraft(FileLayout layout, Where firstRow, int mostSamples, int usualSamples) {
        this.layout = layout;
        this.firstRow = firstRow;
        this.mostSamples = mostSamples;
        this.samples = new Samples(layout, Math.min(mostSamples, usualSamples));
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
        return 1024 + samples.size() * (3 * Double.BYTES + Integer.BYTES);
    }

    int samples() {
        return samples.size();
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
        if (samples.size() == mostSamples) {
            spoil(
                    ProblemCode.TOO_LARGE,
                    at(line),
                    "the trace has more than " + mostSamples + " samples",
                    "",
                    "raise the bound where that is right");
            return;
        }
        if (!samples.add(row)) {
            samples.wrong(row).ifPresent(source -> notANumber(source, row, line));
            samples.addUnread();
        }
    }

    /** Adds one sample and says so; or does nothing where anything would be wrong with it, or is with the draft. */
    boolean addSound(Row row) {
        return fault == null && samples.size() < mostSamples && samples.add(row);
    }

    private Where at(int line) {
        return Where.line(firstRow.file(), line);
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
        return samples.carryOn(earlier.samples);
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
        if (samples.size() + part.samples.size() > mostSamples) {
            spoil(ProblemCode.TOO_LARGE, part.firstRow, "the trace has more than " + mostSamples + " samples", "", "");
        }
        if (fault != null || samples.size() == 0 || part.samples.size() == 0) {
            return Optional.empty();
        }
        samples.ofStage(partStage);
        part.samples.ofStage(part.partStage);
        boolean startsOver = samples.append(part.samples, part.partStage != lastStage);
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

    /** The curve, after which the draft holds no samples; empty where there is none to be had, and then there is a fault. */
    Optional<Curve> takeCurve() {
        int size = samples.size();
        int times = samples.times();
        int stages = samples.stages();
        if (size == 0) {
            spoil(ProblemCode.BAD_TRACE, firstRow, "the trace has no samples", "", "");
        }
        if ((times != 0 && times != size) || (stages != 0 && stages != size)) {
            spoil(
                    ProblemCode.BAD_TRACE,
                    firstRow,
                    "of " + size + " samples " + times + " have a time and " + stages + " a stage",
                    "all or none",
                    "");
        }
        var curve = fault == null ? Optional.of(samples.curve()) : Optional.<Curve>empty();
        samples = new Samples(layout, 0);
        return curve;
    }
}
