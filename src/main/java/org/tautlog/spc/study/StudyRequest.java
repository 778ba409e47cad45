package org.tautlog.spc.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Answer;
import org.tautlog.spc.chart.IndividualsLimits;
import org.tautlog.spc.chart.PhaseOne;

/** What is to be charted and how, with what every kind of chart asks of it: columns, subgroups, and a basis for its limits. */
final class StudyRequest {
    private final StudyKind kind;
    private final List<String> columns;
    private final List<StudyRow> rows;
    private final StudyOptions options;
    private final @Nullable FrozenLimits frozen;
    private final List<String> notes = new ArrayList<>();

    StudyRequest(
            StudyKind kind,
            List<String> columns,
            List<StudyRow> rows,
            StudyOptions options,
            @Nullable FrozenLimits frozen) {
        this.kind = kind;
        this.columns = columns;
        this.rows = rows;
        this.options = options;
        this.frozen = frozen;
    }

    StudyKind kind() {
        return kind;
    }

    List<String> columns() {
        return columns;
    }

    List<StudyRow> rows() {
        return rows;
    }

    StudyOptions options() {
        return options;
    }

    @Nullable FrozenLimits frozen() {
        return frozen;
    }

    /** Limits and where they come from. */
    record Basis<L extends Record>(L limits, @Nullable PhaseOne<L> phase, String said) {}

    interface FromKnown<L> {
        Answer<L> of(IndividualsLimits stated);
    }

    <L extends Record> Answer<Basis<L>> basis(Supplier<Answer<PhaseOne<L>>> fromRows, FromKnown<L> fromKnown) {
        if (frozen != null) {
            @SuppressWarnings("unchecked") // FrozenLimits checks that the record is of its kind's type
            var limits = (L) frozen.limits();
            return Answer.of(new Basis<>(limits, null, "frozen limits"));
        }
        var known = options.known();
        if (known != null)
            return fromKnown
                    .of(options.limits(known))
                    .map(limits -> new Basis<>(limits, null, "limits from the stated centre and standard deviation"));
        return fromRows.get().map(phase -> new Basis<>(phase.limits(), phase, phase.said()));
    }

    Draft draft(Basis<?> basis, int values, IntFunction<String> places) {
        var draft = new Draft(kind, values, places, basis.said, new FrozenLimits(kind, basis.limits, List.of()));
        notes.forEach(draft::note);
        var phase = basis.phase;
        if (phase != null) draft.removed(phase.removed());
        return draft;
    }

    double[] column(int column) {
        return rows.stream().mapToDouble(row -> row.values().get(column)).toArray();
    }

    String place(int row) {
        return rows.get(row).place();
    }

    /** Rows by the name of their subgroup, or so many running; a last one that is not full is left out and named. */
    Map<String, List<StudyRow>> grouped() {
        var groups = new LinkedHashMap<String, List<StudyRow>>();
        var size = options.subgroupSize();
        if (size == null) {
            rows.forEach(row -> groups.computeIfAbsent("subgroup " + row.subgroup(), name -> new ArrayList<>())
                    .add(row));
            return groups;
        }
        int full = rows.size() / size;
        for (int i = 0; i < full; i++) {
            groups.put("subgroup " + (i + 1), rows.subList(i * size, (i + 1) * size));
        }
        int rest = rows.size() - full * size;
        if (rest > 0)
            notes.add("the last " + rest + (rest == 1 ? " value fills" : " values fill") + " no subgroup of " + size
                    + " and " + (rest == 1 ? "is" : "are") + " not charted");
        return groups;
    }
}
