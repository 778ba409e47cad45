package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.List;
import java.util.Optional;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.JsonForm;
import org.tautlog.intake.layout.LayoutLines;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Proposes the layout file of JSON that nobody described yet: a pointer to each thing, with its reason. */
public final class JsonProposal {
    private final String file;
    private final JsonNode root;
    private final JsonTraceList traces;
    private final LayoutLines text;

    private JsonProposal(String file, JsonNode root) {
        this.file = file;
        this.root = root;
        this.traces = JsonTraceList.of(root);
        this.text = new LayoutLines(file);
    }

    /**
     * Proposes a layout.
     *
     * @param file the file's name
     * @param charset its encoding
     * @param json its text
     * @return the text of a layout file, or why there is none; empty where the text is not of JSON with rows of numbers
     * @throws IOException where the text cannot be read
     */
    public static Optional<Outcome<String>> of(String file, Charset charset, Reader json) throws IOException {
        var root = JsonSketch.of(json);
        return root.isEmpty() || root.get().isEmpty()
                ? Optional.empty()
                : Optional.of(new JsonProposal(file, root.get()).propose(charset));
    }

    private Outcome<String> propose(Charset charset) {
        if (!traces.first().isObject() || JsonSeries.arePoints(root)) {
            return no(
                    "the file is a list of samples without an object around it, so nothing says which trace they are of");
        }
        var series = JsonSeries.of(traces.first(), root);
        var chosen = JsonCurve.of(traces.first(), series);
        if (chosen.isEmpty()) {
            return no("no two rows of numbers of the same length look like angle and torque");
        }
        var curve = chosen.get();
        var list = curve.angle().list();
        if (list.contains("*") || (!list.isEmpty() && traces.holdsTightenings(list))) {
            return no("the traces lie in lists within a list, at " + traces.path() + "/*" + list);
        }
        var apart = curve.tellsApart(traces.first(), series);
        if (apart.isPresent()) {
            return no("the samples at " + curve.angle().path() + " are of several traces: each has its own "
                    + apart.get().key());
        }
        var unit = curve.unknownUnit();
        if (unit.isPresent()) {
            return no(unit.get());
        }
        text.section("text");
        text.line("encoding", LayoutLines.quoted(charset.name()), "told from the first bytes");
        text.section("json");
        text.line("traces", LayoutLines.quoted(traces.path()), whyTraces());
        text.section("identity");
        text.time(identity(curve, series), null);
        text.section("samples");
        curve.write(text, traces.first());
        return Outcome.of(text.text(), List.of());
    }

    private Outcome<String> no(String what) {
        return Outcome.failed(List.of(new Problem(
                ProblemCode.UNKNOWN_LAYOUT,
                Where.file(file),
                what,
                "one JSON object for each trace, with an array for the angle and one for the torque",
                "export it so, or as a table")));
    }

    private String whyTraces() {
        if (!traces.path().isEmpty()) {
            return "a list of " + traces.size() + " objects that each hold a curve";
        }
        return root.isArray()
                ? "the file is a list of " + traces.size() + " traces"
                : "each JSON object of the file is one trace";
    }

    /** States the identity, and returns the recording times. */
    private List<String> identity(JsonCurve curve, List<JsonSeries> series) {
        var inside = JsonIdentity.of(traces.first());
        var above = JsonIdentity.above(root, JsonForm.segments(traces.path()));
        var constant = curve.sameForAll(traces.first(), series);
        for (var field : IdentityField.values()) {
            var place = inside.get(field);
            var repeated = constant.get(field);
            if (place != null) {
                state(field, "column", place, "a usual name of it");
            } else if (repeated != null) {
                state(field, "column", repeated, "the same for all samples");
            } else if (above.get(field) != null) {
                state(field, "header", above.get(field), "stands before the traces, for all of them");
            } else if (field == IdentityField.SERIAL) {
                noSerial();
            }
        }
        return Optional.ofNullable(inside.get(IdentityField.TIME))
                .or(() -> Optional.ofNullable(above.get(IdentityField.TIME)))
                .map(place -> List.of(place.value()))
                .orElse(List.of());
    }

    private void state(IdentityField field, String kind, JsonIdentity.Place place, String why) {
        text.line(
                field.key(),
                "{ " + kind + " = " + LayoutLines.quoted(place.path()) + " }",
                why + (place.value().length() > 30 ? "" : ", such as " + place.value()));
    }

    private void noSerial() {
        if (traces.size() > 1 || !traces.path().isEmpty()) {
            text.noSerial();
            return;
        }
        text.line(IdentityField.SERIAL.key(), "{ file = \"serial\" }", "nothing in the file names it; CHECK THIS");
        text.line("file-name", LayoutLines.quoted(LayoutLines.WHOLE_NAME), "the whole name without its ending");
    }
}
