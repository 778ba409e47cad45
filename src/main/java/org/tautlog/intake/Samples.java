package org.tautlog.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.SampleColumn;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.Row;
import org.tautlog.trace.Curve;

/** The samples of a draft, in arrays that grow; nothing is held of a quantity that the table leaves out. */
final class Samples {
    private static final int LEAST_ROOM = 16;

    private final FileLayout layout;
    private final int room;
    private final Axis angle;
    private final Axis torque;
    private final Axis time;
    private final @Nullable SampleColumn stageSource;
    private int[] stage = {};
    private int size;
    private int times;
    private int stages;

    /** None yet, and room for about so many. */
    Samples(FileLayout layout, int usual) {
        this.layout = layout;
        this.room = Math.max(LEAST_ROOM, usual + usual / 8);
        this.angle = new Axis(layout.samples().get(SampleQuantity.ANGLE));
        this.torque = new Axis(layout.samples().get(SampleQuantity.TORQUE));
        this.time = new Axis(layout.samples().get(SampleQuantity.TIME));
        this.stageSource = layout.samples().get(SampleQuantity.STAGE);
    }

    /** One quantity. */
    private static final class Axis {
        private final @Nullable SampleColumn source;
        private double[] values = {};

        Axis(@Nullable SampleColumn source) {
            this.source = source;
        }

        void put(int sample, double value, int room) {
            if (sample >= values.length) {
                values = Arrays.copyOf(values, Math.max(room, 2 * sample));
            }
            values[sample] = value;
        }

        double at(int sample) {
            return sample < values.length ? values[sample] : 0;
        }
    }

    int size() {
        return size;
    }

    int times() {
        return times;
    }

    int stages() {
        return stages;
    }

    /** Adds one sample and says so; or adds none where a cell is no number. */
    boolean add(Row row) {
        double angleValue = value(angle, row);
        double torqueValue = value(torque, row);
        boolean timed = isWanted(time, row);
        double timeValue = timed ? value(time, row) : 0;
        boolean staged = isStaged(row);
        double stageValue = staged ? stage(row) : 0;
        angle.put(size, angleValue, room);
        torque.put(size, torqueValue, room);
        if (Double.isNaN(angleValue) || Double.isNaN(torqueValue) || Double.isNaN(timeValue) || !isWhole(stageValue)) {
            return false;
        }
        if (timed) {
            time.put(size, timeValue, room);
            times++;
        }
        if (staged) {
            putStage((int) stageValue);
        }
        size++;
        return true;
    }

    /** Counts a sample that a row could not give. */
    void addUnread() {
        size++;
    }

    private void putStage(int value) {
        if (size >= stage.length) {
            stage = Arrays.copyOf(stage, Math.max(room, 2 * size));
        }
        stage[size] = value;
        stages++;
    }

    /** The first column whose cell in a row is not what it must be; empty where all are. */
    Optional<SampleColumn> wrong(Row row) {
        for (var axis : List.of(angle, torque, time)) {
            if (isWanted(axis, row) && Double.isNaN(value(axis, row))) {
                return Optional.ofNullable(axis.source);
            }
        }
        return isStaged(row) && !isWhole(stage(row)) ? Optional.ofNullable(stageSource) : Optional.empty();
    }

    /** Whether a row tells a quantity: only the time may be left out. */
    private boolean isWanted(Axis axis, Row row) {
        var source = axis.source;
        return axis != time || (source != null && !(source.isColumn() && row.isEmpty(source.column())));
    }

    /** The value of a quantity in its unit here; NaN where the cell is no number. */
    private double value(Axis axis, Row row) {
        var source = Objects.requireNonNull(axis.source);
        return source.isColumn()
                ? converted(row.number(source.column(), layout.numbers()), source.factor())
                : size * source.step() * source.factor();
    }

    /** A factor of 1 must keep the very bits; adding 0 keeps a turned sign from making a negative zero. */
    private static double converted(double value, double factor) {
        return factor == 1.0 ? value : value * factor + 0.0;
    }

    private boolean isStaged(Row row) {
        return stageSource != null && !row.isEmpty(stageSource.column());
    }

    private double stage(Row row) {
        var source = Objects.requireNonNull(stageSource);
        var marked = source.marks().isEmpty() ? null : source.marks().get(row.get(source.column()));
        return marked != null ? marked : row.number(source.column(), layout.numbers());
    }

    private static boolean isWhole(double value) {
        return value == (int) value;
    }

    /** Whether these lie nearer to the end of earlier ones than to their beginning. */
    boolean carryOn(Samples earlier) {
        if (size == 0 || earlier.size == 0) {
            return false;
        }
        boolean byTime = times > 0 && earlier.times > 0;
        double first = (byTime ? time : angle).at(0);
        var before = byTime ? earlier.time : earlier.angle;
        return Math.abs(first - before.at(earlier.size - 1)) < Math.abs(first - before.at(0));
    }

    /** Adds later ones, at least one behind at least one. Where an axis may start over and does, it is counted on. */
    boolean append(Samples part, boolean mayStartOver) {
        boolean startsOver = mayStartOver && startsOver(angle, part.angle);
        append(torque, part.torque, part.size, false);
        append(time, part.time, part.size, mayStartOver && startsOver(time, part.time));
        append(angle, part.angle, part.size, startsOver);
        stage = Arrays.copyOf(stage, size + part.size);
        System.arraycopy(part.stage, 0, stage, size, Math.min(part.stage.length, part.size));
        size += part.size;
        times += part.times;
        stages += part.stages;
        return startsOver;
    }

    private void append(Axis axis, Axis part, int more, boolean startsOver) {
        double shift = startsOver ? axis.at(size - 1) : 0.0;
        axis.values = Arrays.copyOf(axis.values, size + more);
        for (int i = 0; i < more; i++) {
            axis.values[size + i] = part.at(i) + shift;
        }
    }

    private boolean startsOver(Axis axis, Axis part) {
        double first = part.at(0);
        return Math.abs(first - axis.at(size - 1)) > Math.abs(first - axis.at(0));
    }

    /** Gives all of them a stage where the table itself tells none. */
    void ofStage(int number) {
        if (number > 0 && stages == 0) {
            stage = new int[size];
            Arrays.fill(stage, number);
            stages = size;
        }
    }

    /** The curve; there is at least one sample, and times and stages for all or none. */
    Curve curve() {
        return Curve.of(size, angle.values, torque.values, times == 0 ? null : time.values, stages == 0 ? null : stage);
    }
}
