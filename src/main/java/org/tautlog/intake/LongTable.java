package org.tautlog.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.file.BrokenFile;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/**
 * Many traces in one table. A trace is the rows that lie together and agree in the key columns. Rows whose key comes
 * back later are a trace of their own where they start over, and a reject where they carry on what was cut apart; so
 * that the first part can be rejected with them, a few finished traces are held back.
 */
final class LongTable extends TraceTable {
    private static final int HELD_BACK = 4;

    private final TraceGate gate;
    private final String sha256;
    private final Map<String, String> headings = new HashMap<>();
    private final Map<List<String>, TraceDraft> held = new LinkedHashMap<>();
    private final Map<List<String>, Integer> lineOfKey;
    private @Nullable TraceDraft draft;
    private List<String> key = List.of();
    private final int lastOfKey;

    LongTable(LogText text, ReadLedger ledger, ReadBounds bounds, TraceGate gate, String sha256) {
        super(text, ledger, bounds.mostSamples());
        this.gate = gate;
        this.sha256 = sha256;
        this.lastOfKey = text.layout().keyColumns().stream()
                .mapToInt(column -> column)
                .max()
                .orElse(-1);
        this.lineOfKey = Bounded.map(bounds.mostRemembered());
    }

    @Override
    void take(Line line) {
        var layout = text.layout();
        if (line.isBlank()) {
            ledger.lines.ignored(1);
        } else if (line.number() < layout.headerLine()) {
            takeHeading(line);
        } else if (line.number() == layout.headerLine() || line.number() == layout.unitsLine()) {
            ledger.lines.kept(1);
            if (line.number() == layout.unitsLine()) {
                text.noteUnits(line);
            }
        } else if (text.isComment(line)) {
            ledger.lines.ignored(1);
        } else {
            takeRow(line);
        }
    }

    private void takeHeading(Line line) {
        var heading = text.heading(line);
        heading.ifPresent(found -> headings.putIfAbsent(found.getKey(), found.getValue()));
        if (heading.isPresent()) {
            ledger.lines.kept(1);
        } else {
            ledger.lines.ignored(1);
        }
    }

    private void takeRow(Line line) {
        var row = text.row(line);
        var cells = row.or(() -> text.cut(line)).orElseGet(Row::none);
        var current = draft;
        boolean same = row.isPresent() && current != null && isSameKey(cells);
        if (!same && changesColumns(line, row)) {
            return;
        }
        if (row.filter(found -> text.isHeader(found) || text.isUnitsAgain(found))
                .isPresent()) {
            ledger.lines.ignored(1);
            return;
        }
        if (current == null || (hasKey(cells) && !isSameKey(cells))) {
            if (current != null && row.isEmpty() && !line.ended()) {
                // The key itself may be cut, and then the row belongs to the trace before.
                spoil(current, line);
            }
            current = begin(line, cells);
        }
        current.countRow();
        add(current, line, row);
    }

    private boolean hasKey(Row cells) {
        return lastOfKey < cells.size();
    }

    private boolean isSameKey(Row cells) {
        var columns = text.layout().keyColumns();
        for (int i = 0; i < columns.size(); i++) {
            if (i >= key.size() || !cells.is(columns.get(i), key.get(i))) {
                return false;
            }
        }
        return true;
    }

    private TraceDraft begin(Line line, Row cells) {
        finish();
        key = new ArrayList<>();
        if (hasKey(cells)) {
            text.layout().keyColumns().forEach(column -> key.add(cells.get(column)));
        }
        draft = draft(line);
        draft.identity().putAll(text.identity(headings, cells));
        goOn(draft, text.alike(cells, lastOfKey + 1));
        return draft;
    }

    private void finish() {
        if (draft == null) {
            return;
        }
        var finished = draft;
        draft = null;
        goOn(null, Optional.empty());
        finished(finished);
        var earlier = held.remove(key);
        if (earlier != null) {
            rejoin(earlier, finished);
            settle(earlier);
        } else if (lineOfKey.containsKey(key)) {
            noteReturn(finished);
        }
        lineOfKey.put(key, finished.firstRow().line());
        held.put(key, finished);
        if (held.size() > HELD_BACK) {
            var oldest = held.entrySet().iterator().next();
            held.remove(oldest.getKey());
            settle(oldest.getValue());
        }
    }

    private static void rejoin(TraceDraft earlier, TraceDraft later) {
        if (later.carriesOn(earlier)) {
            var what = "the rows of one trace lie apart, at lines "
                    + earlier.firstRow().line() + " and " + later.firstRow().line();
            earlier.spoil(ProblemCode.BAD_TRACE, earlier.firstRow(), what, "the rows of a trace together", "");
            later.spoil(ProblemCode.BAD_TRACE, later.firstRow(), what, "the rows of a trace together", "");
        }
    }

    private void noteReturn(TraceDraft finished) {
        finished.remark(new Problem(
                ProblemCode.DUPLICATE_TRACE,
                finished.firstRow(),
                "the key " + Words.quoted(String.join(", ", key)) + " was there before, at line " + lineOfKey.get(key),
                "",
                "the rows are taken as a trace of their own"));
    }

    private void settle(TraceDraft finished) {
        gate.settle(finished, text.layout(), sha256, ledger);
    }

    @Override
    void breakOff(Where where, IOException cause) {
        breakOff(draft, BrokenFile.problem(where, cause));
    }

    @Override
    void end() {
        finish();
        held.values().forEach(this::settle);
        held.clear();
    }
}
