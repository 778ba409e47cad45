package org.tautlog.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonFieldsTest {
    @ParameterizedTest
    @CsvSource({"0, 0, 0", "500, 500, 0", "501, 500, 1", "100000, 500, 99500"})
    void a_list_that_grows_with_the_shift_ends_and_says_how_many_are_left(int there, int listed, int left)
            throws IOException {
        var engines = IntStream.range(0, there).mapToObj(i -> "FW-" + i).toList();
        var json = new ObjectMapper().readTree(JsonFields.line(fields -> {
            fields.worst("weakest", engines, serial -> fields.text("serial", serial));
            fields.worstTexts("held", engines);
        }));
        assertEquals(listed, json.path("weakest").size());
        assertEquals(left, json.path("weakestLeft").asInt(-1));
        assertEquals(listed, json.path("held").size());
        assertEquals(left, json.path("heldLeft").asInt(-1));
        JsonNode last = json.path("held").path(listed - 1);
        assertEquals(listed == 0 ? "" : "FW-" + (listed - 1), last.asText());
    }
}
