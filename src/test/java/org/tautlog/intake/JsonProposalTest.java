package org.tautlog.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.problem.ProblemCode;
import org.tautlog.trace.Trace;

/** However the same three samples lie in JSON, the proposed layout reads them. */
class JsonProposalTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "plain | {'serial': 'FW-1', 'bolt': 6, 'angle_deg': [0, 1, 2], 'torqueNm': [1, 2, 4]}",
                "in objects | {'head': {'engine': {'no': 'FW-1'}, 'bolt': {'position': 6}, 'tool': {'serial': 'T9'}},"
                        + " 'data': {'winkel': {'einheit': 'Grad', 'werte': [0, 1, 2]}, 'moment': {'einheit': 'Nm', 'werte': [1, 2, 4]}}}",
                "a list of samples | {'motornummer': 'FW-1', 'schraube': 6, 'units': {'angle': 'deg'},"
                        + " 'points': [{'angle': 0, 'torque': 1}, {'angle': 1, 'torque': 2}, {'angle': 2, 'torque': 4}]}",
                "rows | {'serial': 'FW-1', 'pos': 6, 'units': ['Nm', 'deg'], 'names': ['torque', 'angle'], 'rows': [[1, 0], [2, 1], [4, 2]]}",
                "channels | {'serial': 'FW-1', 'bolt': 6, 'channels': [{'name': 'Torque', 'unit': 'Nm', 'values': [1, 2, 4]},"
                        + " {'name': 'Angle', 'unit': 'deg', 'values': [0, 1, 2]}]}",
                "a list of traces | [{'serial': 'FW-1', 'bolt': 6, 'angles': [0, 1, 2], 'torques': [1, 2, 4]}]",
                "a list below | {'plant': 'Fenwater', 'engine': {'serial': 'FW-1'}, 'bolts':"
                        + " [{'bolt': 6, 'angle': [0, 1, 2], 'torque': [1, 2, 4]}]}",
                "each sample repeats it | {'rows': [{'serial': 'FW-1', 'bolt': 6, 'angle': 0, 'torque': 1},"
                        + " {'serial': 'FW-1', 'bolt': 6, 'angle': 1, 'torque': 2}, {'serial': 'FW-1', 'bolt': 6, 'angle': 2, 'torque': 4}]}"
            })
    void a_curve_is_found_wherever_it_lies(String where, String json) throws IOException {
        var proposal = propose(json);
        assertEquals(1, proposal.traces().size(), () -> where + "\n" + proposal.text());
        var trace = proposal.traces().get(0);
        assertEquals("FW-1", trace.identity().serial(), proposal.text());
        assertEquals("6", trace.identity().bolt(), proposal.text());
        assertEquals(List.of(0.0, 1.0, 2.0), angles(trace));
        assertEquals(
                List.of(1.0, 2.0, 4.0),
                IntStream.range(0, 3).mapToObj(trace.curve()::torqueNm).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'name': 'Snug', | 'name': 'Turn', | /steps/*/name",
                "'step': 1, | 'step': 2, | /steps/*/step",
                "'ok': true, | 'ok': true, | /steps/*\""
            })
    void a_list_of_stages_is_one_trace_whose_angle_is_counted_on(String first, String second, String pointer)
            throws IOException {
        var proposal = propose("{'serial': 'FW-1', 'steps': [{" + first + " 'angle': [0, 1, 2], 'torque': [1, 2, 4]}, {"
                + second + " 'angle': [0, 1], 'torque': [4, 5]}]}");
        assertTrue(proposal.text().contains("stage = { column = \"" + pointer), proposal.text());
        var trace = proposal.traces().get(0);
        assertEquals(List.of(0.0, 1.0, 2.0, 2.0, 3.0), angles(trace));
        assertEquals(
                List.of(1, 1, 1, 2, 2),
                IntStream.range(0, 5).mapToObj(trace.curve()::stage).toList());
        assertTrue(
                proposal.summary().assumptions().stream()
                        .anyMatch(assumed -> assumed.sentence().contains("starts over")),
                proposal.summary().toString());
    }

    @Test
    void json_lines_are_as_many_traces() throws IOException {
        var line = "{'serial': 'FW-%s', 'angle': [0, 1, 2], 'torque': [1, 2, %s]}\n";
        var proposal = propose(line.replace("%s", "4") + line.replace("%s", "5"));
        assertEquals(
                List.of("FW-4", "FW-5"),
                proposal.traces().stream()
                        .map(trace -> trace.identity().serial())
                        .toList());
    }

    @Test
    void series_that_no_name_tells_are_told_by_their_numbers_and_the_serial_by_the_file() throws IOException {
        var proposal = propose("{'a': [0, 1, 2.2, 3, 4.1, 5, 6, 7, 8], 'b': [1, 1, 2, 2, 3, 3, 4, 5, 6.5]}");
        assertTrue(proposal.text().contains("torque = { column = \"/b\""), proposal.text());
        assertEquals(3, proposal.text().split("CHECK THIS", -1).length - 1, proposal.text());
        assertEquals("strange", proposal.traces().get(0).identity().serial());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'engines': [{'serial': 'FW-1', 'bolts': [{'bolt': 1, 'angle': [0, 1], 'torque': [1, 2]},"
                        + " {'bolt': 2, 'angle': [0, 1], 'torque': [1, 2]}]}]} | lists within a list, at /engines/*/bolts",
                "{'rows': [{'serial': 'A', 'angle': 0, 'torque': 1}, {'serial': 'B', 'angle': 1, 'torque': 2}]} | has its own serial",
                "[{'angle': 0, 'torque': 1}, {'angle': 1, 'torque': 2}] | without an object around it",
                "{'angle': [0, 1], 'torque': [1, 2], 'torqueUnit': 'bar'} | is no unit of torque",
                "{'serial': 'FW-1', 'result': 'OK'} | look like angle and torque"
            })
    void json_that_would_be_read_wrongly_gets_a_reason_and_no_layout(String json, String reason) throws IOException {
        var outcome = LayoutProposal.of(write(json), 3);
        assertTrue(outcome.value().isEmpty());
        assertEquals(ProblemCode.UNKNOWN_LAYOUT, outcome.problems().get(0).code());
        assertTrue(
                outcome.problems().get(0).sentence().contains(reason),
                outcome.problems().toString());
    }

    private LayoutProposal propose(String json) throws IOException {
        var outcome = LayoutProposal.of(write(json), 3);
        return outcome.value().orElseThrow(() -> new AssertionError(outcome.problems()));
    }

    private Path write(String json) throws IOException {
        return Files.writeString(folder.resolve("strange.json"), json.replace('\'', '"'));
    }

    private static List<Double> angles(Trace trace) {
        return IntStream.range(0, trace.curve().size())
                .mapToObj(trace.curve()::angleDeg)
                .toList();
    }
}
