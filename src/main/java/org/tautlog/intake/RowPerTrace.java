package org.tautlog.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.tautlog.intake.file.BrokenFile;
import org.tautlog.intake.layout.SampleColumn;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** One trace a row, its samples in list cells. */
final class RowPerTrace extends TraceTable {
    private final TraceGate gate;
    private final String sha256;
    private final Pattern separator;
    private final Map<String, String> headings = new HashMap<>();

    RowPerTrace(LogText text, ReadLedger ledger, int mostSamples, TraceGate gate, String sha256) {
        super(text, ledger, mostSamples);
        this.gate = gate;
        this.sha256 = sha256;
        char sign = text.layout().listSeparator();
        this.separator = Pattern.compile(sign == ' ' ? "\\s+" : Pattern.quote(String.valueOf(sign)));
    }

    @Override
    void take(Line line) {
        var layout = text.layout();
        if (line.isBlank()) {
            ledger.lines.ignored(1);
        } else if (line.number() < layout.headerLine()) {
            var heading = text.heading(line);
            heading.ifPresent(found -> headings.putIfAbsent(found.getKey(), found.getValue()));
            ledger.lines.kept(1);
        } else if (line.number() == layout.headerLine() || line.number() == layout.unitsLine()) {
            ledger.lines.kept(1);
            if (line.number() == layout.unitsLine()) {
                text.noteUnits(line);
            }
        } else if (text.isComment(line)
                || text.row(line)
                        .filter(cells ->
                                text.isHeader(cells) || (text.isUnitsAgain(cells) && !text.isOtherHeader(line, cells)))
                        .isPresent()) {
            ledger.lines.ignored(1);
        } else if (!changesColumns(line, text.row(line))) {
            takeTrace(line);
        }
    }

    private void takeTrace(Line line) {
        var draft = draft(line);
        draft.countRow();
        var row = text.row(line);
        if (row.isPresent()) {
            draft.identity().putAll(text.identity(headings, row.get()));
            addSamples(draft, row.get(), line);
        } else {
            spoil(draft, line);
        }
        gate.settle(draft, text.layout(), sha256, ledger);
    }

    private void addSamples(TraceDraft draft, List<String> row, Line line) {
        var lists = new HashMap<Integer, List<String>>();
        int count = -1;
        for (var quantity : SampleQuantity.values()) {
            var source = text.layout().samples().get(quantity);
            if (source == null || !source.isColumn()) {
                continue;
            }
            var list = list(row.get(source.column()));
            boolean mayLack = quantity == SampleQuantity.TIME || quantity == SampleQuantity.STAGE;
            if (mayLack && list.isEmpty()) {
                continue;
            }
            if (count >= 0 && list.size() != count) {
                unequal(draft, line, source, list.size(), count);
                return;
            }
            count = list.size();
            lists.put(source.column(), list);
        }
        var cells = new ArrayList<String>(row);
        var sample = Row.of(cells);
        text.layout().samples().values().stream()
                .filter(SampleColumn::isColumn)
                .forEach(source -> cells.set(source.column(), ""));
        for (int i = 0; i < count && draft.fault().isEmpty(); i++) {
            for (var list : lists.entrySet()) {
                cells.set(list.getKey(), list.getValue().get(i));
            }
            draft.add(sample, line.number());
        }
    }

    private void unequal(TraceDraft draft, Line line, SampleColumn source, int found, int wanted) {
        draft.spoil(
                ProblemCode.BAD_TRACE,
                text.at(line).at(text.layout().header().get(source.column())),
                "the list has " + found + " values",
                wanted + " as the others have",
                "");
    }

    private List<String> list(String cell) {
        boolean bracketed = cell.startsWith("[") && cell.endsWith("]") && cell.length() > 1;
        var inside = (bracketed ? cell.substring(1, cell.length() - 1) : cell).strip();
        return inside.isEmpty()
                ? List.of()
                : Arrays.stream(separator.split(inside, -1)).map(String::strip).toList();
    }

    @Override
    void breakOff(Where where, IOException cause) {
        ledger.problem(BrokenFile.problem(where, cause));
    }

    @Override
    void end() {
        // Each row is settled when it was read.
    }
}
