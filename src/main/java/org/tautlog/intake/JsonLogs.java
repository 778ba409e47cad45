package org.tautlog.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tautlog.intake.json.JsonParts;
import org.tautlog.intake.json.JsonPointers;
import org.tautlog.intake.json.JsonTraces;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.JsonForm;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.intake.layout.LogShape;
import org.tautlog.intake.layout.Origin;
import org.tautlog.intake.layout.SampleColumn;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.NumberForm;
import org.tautlog.intake.text.Row;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Reads the traces of a JSON file by the paths that its layout states; one trace at a time is in memory. */
final class JsonLogs {
    /** Beside its samples a trace holds little; what is far longer is no trace. */
    private static final long MOST_TOKENS_A_SAMPLE = 40;

    private final String file;
    private final String sha256;
    private final JsonForm form;
    private final FileLayout layout;
    private final ReadBounds bounds;
    private final ReadLedger ledger;
    private final TraceGate gate;

    JsonLogs(String file, String sha256, LogLayout stated, ReadBounds bounds, ReadLedger ledger, TraceGate gate) {
        this.file = file;
        this.sha256 = sha256;
        this.form = Objects.requireNonNull(stated.json());
        this.layout = layout(stated);
        this.bounds = bounds;
        this.ledger = ledger;
        this.gate = gate;
    }

    void read(Reader text) throws IOException {
        ledger.settleFile(
                () -> {
                    if (isStated()) {
                        readTraces(text);
                    }
                },
                new Problem(
                        ProblemCode.UNKNOWN_LAYOUT,
                        Where.file(file),
                        "there is no trace at '" + form.traces() + "'",
                        "an object or an array of objects",
                        "state where the traces lie in layout.toml under [json] traces"));
    }

    private boolean isStated() {
        for (var quantity : List.of(SampleQuantity.ANGLE, SampleQuantity.TORQUE)) {
            if (!layout.samples().containsKey(quantity)) {
                ledger.problem(new Problem(
                        ProblemCode.MISSING_KEY,
                        Where.file(file).at(quantity.key()),
                        "the layout does not say where in the JSON the " + quantity.key() + " lies",
                        "",
                        "state it in layout.toml under [samples] " + quantity.key()));
                return false;
            }
        }
        return true;
    }

    private void readTraces(Reader text) throws IOException {
        try {
            JsonTraces.read(
                    text,
                    form.traces(),
                    above(),
                    MOST_TOKENS_A_SAMPLE * bounds.mostSamples(),
                    bounds.longestLine(),
                    this::take);
        } catch (StreamConstraintsException e) {
            broken(e, ProblemCode.TOO_LARGE, "the JSON goes beyond a bound: " + e.getOriginalMessage(), "");
        } catch (JsonEOFException e) {
            broken(e, ProblemCode.TRUNCATED, "the file ends in the middle of the JSON", "export it again");
        } catch (JsonProcessingException e) {
            broken(e, ProblemCode.BAD_SYNTAX, "the file is no JSON from here on", "export it again");
        }
    }

    private void broken(JsonProcessingException e, ProblemCode code, String what, String action) {
        var at = e.getLocation();
        ledger.problem(new Problem(
                code, Where.line(file, at == null ? 1 : Math.max(1, at.getLineNr())), what, "", action));
    }

    private Set<String> above() {
        return layout.stated().identity().values().stream()
                .flatMap(origin -> origin instanceof Origin.HeaderLine line ? Stream.of(line.key()) : Stream.of())
                .collect(Collectors.toSet());
    }

    private void take(JsonNode trace, int line, Map<String, String> above) {
        var where = Where.line(file, line);
        var draft = new TraceDraft(layout, where, bounds.mostSamples(), 0);
        draft.identity().putAll(LogText.fromFileName(file, layout.stated()));
        layout.stated().identity().forEach((field, origin) -> {
            var value = value(origin, trace, above);
            if (value.isPresent()
                    && !(field == IdentityField.ATTEMPT && value.get().isEmpty())) {
                draft.identity().put(field, value.get());
            }
        });
        addSamples(draft, trace, where);
        gate.settle(draft, layout, sha256, ledger);
    }

    private static Optional<String> value(Origin origin, JsonNode trace, Map<String, String> above) {
        if (origin instanceof Origin.Fixed fixed) {
            return Optional.of(fixed.value());
        }
        if (origin instanceof Origin.HeaderLine line) {
            return Optional.ofNullable(above.get(line.key()));
        }
        return origin instanceof Origin.Column path
                ? JsonPointers.values(trace, path.name()).stream().findFirst()
                : Optional.empty();
    }

    private void addSamples(TraceDraft draft, JsonNode trace, Where where) {
        var paths = new EnumMap<SampleQuantity, String>(SampleQuantity.class);
        layout.samples().forEach((quantity, source) -> {
            if (source.isColumn()) {
                paths.put(quantity, layout.header().get(source.column()));
            }
        });
        int stage = 0;
        for (var part : JsonParts.of(trace, form.points(), paths)) {
            stage++;
            boolean first = draft.samples() == 0;
            var target = first ? draft : new TraceDraft(layout, where, bounds.mostSamples(), 0);
            target.ofStage(stage);
            addPart(target, part, where);
            if (!first) {
                draft.append(target).ifPresent(ledger::assume);
            }
        }
    }

    private void addPart(TraceDraft draft, Map<SampleQuantity, List<String>> part, Where where) {
        part.entrySet()
                .removeIf(entry -> entry.getValue().isEmpty()
                        && (entry.getKey() == SampleQuantity.TIME || entry.getKey() == SampleQuantity.STAGE));
        int count = part.values().stream().mapToInt(List::size).max().orElse(0);
        var cells = new ArrayList<String>(Collections.nCopies(layout.header().size(), ""));
        var sample = Row.of(cells);
        for (var entry : part.entrySet()) {
            int column =
                    Objects.requireNonNull(layout.samples().get(entry.getKey())).column();
            if (entry.getValue().size() != count) {
                var path = layout.header().get(column);
                draft.spoil(
                        ProblemCode.BAD_TRACE,
                        where.at(path),
                        "there are " + entry.getValue().size() + " values at '" + path + "'",
                        count + " as the others have",
                        "");
            }
        }
        for (int i = 0; i < count && draft.fault().isEmpty(); i++) {
            for (var entry : part.entrySet()) {
                cells.set(
                        Objects.requireNonNull(layout.samples().get(entry.getKey()))
                                .column(),
                        entry.getValue().get(i));
            }
            draft.add(sample, where.line());
        }
    }

    /** The paths stand for columns, so that what is told of a column can be told of a path. */
    private static FileLayout layout(LogLayout stated) {
        var paths = new ArrayList<String>();
        var samples = new EnumMap<SampleQuantity, SampleColumn>(SampleQuantity.class);
        stated.samples().forEach((quantity, source) -> {
            double factor = (source.factor() == null ? 1.0 : source.factor()) * source.sign();
            int column = source.column().isEmpty() ? -1 : paths.size();
            if (column >= 0) {
                paths.add(source.column());
            }
            samples.put(quantity, new SampleColumn(column, factor, source.step(), source.marks()));
        });
        return new FileLayout(
                stated,
                LogShape.FILE_PER_TRACE,
                ',',
                new NumberForm('.', false),
                paths,
                1,
                0,
                samples,
                Map.of(),
                List.of(),
                -1,
                ' ');
    }
}
