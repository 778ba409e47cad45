package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EngineTest {
    @TempDir
    Path folder;

    @Test
    void one_that_started_meanwhile_answers_as_one_that_starts_with_the_question() throws Exception {
        try (var meanwhile = new Engine(folder.resolve("a"));
                var asked = new Engine(folder.resolve("b"))) {
            meanwhile.startMeanwhile();
            assertEquals(answer(asked), answer(meanwhile));
        }
    }

    @Test
    void one_that_was_started_and_never_asked_is_closed_and_starts_no_second_time() throws Exception {
        var engine = new Engine(folder.resolve("a"));
        engine.startMeanwhile();
        engine.close();
        assertThrows(SQLException.class, () -> answer(engine));
    }

    private static List<String> answer(Engine engine) throws SQLException, IOException {
        var rows = new ArrayList<String>();
        engine.query("SELECT * FROM range(?)", List.of(3), row -> rows.add(row.getString(1)));
        return rows;
    }
}
