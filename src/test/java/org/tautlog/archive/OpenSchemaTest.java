package org.tautlog.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.archive.Tightenings.SHIFT_START;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.archive.table.Table;

/** What an archive says of itself is enough to read it by SQL alone: its own examples, and a word for each column. */
class OpenSchemaTest {
    private static final OffsetDateTime SHIFT_ASKED_FOR = OffsetDateTime.parse("2026-03-17T05:00Z");

    @TempDir
    Path folder;

    private String description;

    @BeforeEach
    void an_archive_that_was_tidied() throws IOException {
        var archive = Archive.create(folder);
        int day = (int) (SHIFT_ASKED_FOR.toEpochSecond() - SHIFT_START.toEpochSecond()) / 60;
        Tightenings.take(archive, "early.csv", 16, 3);
        Tightenings.take(archive, "shift.csv", day, 2);
        Tightenings.take(archive, "shift.csv", day, 2, Tightenings.specification("4"));
        archive.tidy(Tightenings.STAMP);
        description = Files.readString(folder.resolve("ARCHIVE.md"));
    }

    @Test
    void its_three_examples_answer_in_plain_sql() throws SQLException {
        var examples = Stream.of(description.split("\\R\\R", -1))
                .filter(paragraph -> paragraph.matches("(?s)    (SELECT|WITH) .*"))
                .toList();
        assertEquals(3, examples.size(), examples.toString());
        var ofOneEngine = Pattern.compile("read_|union_by_name|\\bALL\\b|\\.parquet|\\.jsonl");
        examples.forEach(example -> assertFalse(ofOneEngine.matcher(example).find(), example));
        var traces = rows(examples.get(0));
        assertEquals(8, traces.size(), "bolts of FW-000017");
        assertTrue(traces.get(0).startsWith("1 | 1 | 2026-03-02T06:17:01+01:00 | [0.0, 0.25, "), traces.get(0));
        var shift = rows(examples.get(1));
        assertEquals(2 * 8, shift.size(), "two engines, judged by two versions, one verdict a bolt");
        assertTrue(shift.get(0).contains(" | 4 | nonconforming | [turn-short, feature-missing]"), shift.get(0));
        assertTrue(shift.stream().allMatch(row -> row.contains(" | 4 | ")), "the later version stands");
        var spindles = rows(examples.get(2));
        assertEquals(2 * 4, spindles.size(), "four spindles under each of two versions");
        assertTrue(spindles.get(0).endsWith(" | 3 | S40 | 1 | 10 | 88.5 | 0.0"), spindles.get(0));
        assertTrue(spindles.get(7).endsWith(" | 4 | S40 | 4 | 4 | 88.5 | 0.0"), spindles.get(7));
    }

    @Test
    void every_column_has_its_word() {
        var unnamed = new ArrayList<String>();
        for (var table : Table.all()) {
            for (var column : table.columns()) {
                var name = column.name().replaceAll("_(sd|missing)$", "");
                var of = name.replaceAll("^(specification|finding)(?=_)", "");
                if (!description.contains("`" + name + "`") && !description.contains("`" + of + "`")) {
                    unnamed.add(column.name());
                }
            }
        }
        assertEquals(List.of(), unnamed);
    }

    private List<String> rows(String sql) throws SQLException {
        var tables = Stream.of(description.split("\\R\\R", -1))
                .filter(paragraph -> paragraph.startsWith("    CREATE VIEW "))
                .collect(Collectors.joining())
                .replaceAll("'(batches/|ledger)", "'" + folder.toAbsolutePath() + "/$1");
        var rows = new ArrayList<String>();
        try (var duck = DriverManager.getConnection("jdbc:duckdb:");
                var statement = duck.createStatement()) {
            assertFalse(statement.execute(tables), "tables");
            var result = statement.executeQuery(sql);
            while (result.next()) {
                var cells = new ArrayList<String>();
                for (int i = 1; i <= result.getMetaData().getColumnCount(); i++) {
                    cells.add(String.valueOf(result.getObject(i)));
                }
                rows.add(String.join(" | ", cells));
            }
        }
        return rows;
    }
}
