package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;
import org.tautlog.spc.study.StudyKind;

/** Every study of every poor table, as its user would ask for it: a plain statement, never NaN, never a failure. */
class DegenerateTablesTest {
    private static final String HEADER = "x,y,n,part,who,ref,spindle\n";

    @TempDir
    Path folder;

    @Test
    void every_chart_of_every_poor_table_says_what_is_wrong() throws IOException {
        int runs = 0;
        for (var table : tables().entrySet()) {
            var file = folder.resolve("table.csv");
            Files.writeString(file, table.getValue());
            for (var words : charts(file.toString())) {
                sound(words, table.getKey());
                runs++;
            }
        }
        assertEquals(tables().size() * (StudyKind.values().length + 4), runs);
    }

    @Test
    void every_study_of_every_poor_table_says_what_is_wrong() throws IOException {
        for (var table : tables().entrySet()) {
            var file = folder.resolve("table.csv");
            Files.writeString(file, table.getValue());
            for (var words : studies(file.toString())) sound(words, table.getKey());
        }
    }

    /** One row more of a stream that is there once: it is named and the others are charted. */
    @Test
    void a_stream_that_appears_once_is_named() throws IOException {
        var file = folder.resolve("streams.csv");
        var text = new StringBuilder("spindle,x\nSP9,100\n");
        var random = new java.util.Random(5);
        for (int t = 0; t < 20; t++)
            for (int s = 1; s <= 3; s++)
                text.append("SP")
                        .append(s)
                        .append(',')
                        .append(100 + random.nextGaussian())
                        .append('\n');
        Files.writeString(file, text);
        var run = CommandLineRun.of("chart", file.toString(), "--kind", "streams", "--by", "spindle", "--value", "x");
        assertTrue(
                run.out().contains("stream spindle SP9 has too few values and is not charted"), run.out() + run.err());
        assertTrue(run.out().contains("centre of spindle SP1"), run.out());
    }

    private static void sound(String[] words, String table) {
        var plain = CommandLineRun.of(words);
        var all = java.util.Arrays.copyOf(words, words.length + 1);
        all[words.length] = "--json";
        var json = CommandLineRun.of(all);
        String what = String.join(" ", words) + " on " + table + ":\n" + plain.out() + plain.err() + json.out();
        assertTrue(plain.exitCode() >= 0 && plain.exitCode() <= 3, plain.exitCode() + " " + what);
        assertEquals(plain.exitCode(), json.exitCode(), what);
        assertFalse((plain.out() + json.out()).contains("Infinity"), what);
        assertFalse((plain.out() + json.out()).replace("is NaN", "").contains("NaN"), what);
        assertFalse((plain.out() + plain.err()).contains("Exception"), what);
        if (plain.exitCode() == 2) {
            assertTrue(plain.err().length() > 20, what);
        } else {
            assertTrue(plain.out().length() > 20 && json.out().startsWith("{"), what);
        }
        if (plain.exitCode() == 3) {
            assertTrue(
                    plain.out().contains("no chart: ")
                            || plain.out().contains("no study: ")
                            || plain.out().contains("linearity: ")
                            || plain.out().contains("no test: "),
                    what);
            assertTrue(json.out().contains("whyMissing"), what);
        }
    }

    private static List<String[]> charts(String file) {
        var all = new ArrayList<String[]>();
        for (var kind : StudyKind.values()) {
            var words = new ArrayList<>(List.of("chart", file, "--kind", kind.word(), "--value", "x"));
            if (kind == StudyKind.T_SQUARED) words.addAll(List.of("--value", "y"));
            if (kind.counts() && kind != StudyKind.FAULTS) words.addAll(List.of("--amount", "n"));
            if (kind.subgroups()) words.addAll(List.of("--subgroup", "2"));
            if (kind == StudyKind.STREAMS) words.addAll(List.of("--by", "spindle"));
            all.add(words.toArray(String[]::new));
        }
        all.add(new String[] {"chart", file, "--value", "x", "--by", "spindle", "--by", "part"});
        all.add(new String[] {"chart", file, "--value", "x", "--value", "y", "--kind", "mean-deviation"});
        all.add(new String[] {"chart", file, "--value", "x", "--value", "y", "--kind", "t2", "--subgroup", "part"});
        all.add(new String[] {"chart", file, "--value", "x", "--centre", "1", "--deviation", "1", "--rules", "nelson"});
        return all;
    }

    private static List<String[]> studies(String file) {
        return List.of(
                new String[] {"capability", file, "--value", "x", "--low", "0", "--high", "3"},
                new String[] {"capability", file, "--value", "x", "--high", "3", "--machine"},
                new String[] {"capability", file, "--value", "x", "--low", "0", "--subgroup", "2"},
                new String[] {"capability", file, "--value", "x", "--low", "0", "--subgroup", "part"},
                new String[] {"gauge", file, "--value", "x", "--part", "part", "--appraiser", "who"},
                new String[] {
                    "gauge",
                    file,
                    "--value",
                    "x",
                    "--part",
                    "part",
                    "--appraiser",
                    "who",
                    "--method",
                    "both",
                    "--tolerance",
                    "1"
                },
                new String[] {"gauge", file, "--value", "x", "--reference", "ref"},
                new String[] {"outliers", file, "--value", "x"},
                new String[] {"outliers", file, "--value", "x", "--by", "spindle"},
                new String[] {"outliers", file, "--value", "x", "--value", "y"},
                new String[] {"changes", file, "--value", "x"},
                new String[] {"groups", file, "--value", "x", "--by", "spindle"});
    }

    private static Map<String, String> tables() {
        var tables = new LinkedHashMap<String, String>();
        tables.put("header only", HEADER);
        tables.put("one row", HEADER + "1,2,10,P1,A,1,SP1\n");
        tables.put("two rows", HEADER + "1,2,10,P1,A,1,SP1\n2,3,10,P2,B,2,SP2\n");
        tables.put("all equal", HEADER + "1,1,10,P1,A,1,SP1\n".repeat(40));
        tables.put("all equal in two groups", HEADER + "1,1,10,P1,A,1,SP1\n1,1,10,P2,B,2,SP2\n".repeat(20));
        tables.put("NaN", HEADER + "NaN,NaN,10,P1,A,1,SP1\n".repeat(6));
        tables.put("one NaN", HEADER + "1,2,10,P1,A,1,SP1\n2,1,10,P2,B,2,SP2\n".repeat(6) + "NaN,1,10,P1,A,1,SP1\n");
        tables.put("infinite", HEADER + "1,2,10,P1,A,1,SP1\n".repeat(6) + "Infinity,-Infinity,10,P1,A,1,SP1\n");
        tables.put("text", HEADER + "good,bad,many,P1,A,one,SP1\n".repeat(6));
        tables.put("blank cells", HEADER + ",,,,,,\n".repeat(6) + "1,,10,,A,,\n");
        tables.put("huge", HEADER + "1e300,-1e300,1e300,P1,A,1e300,SP1\n1,1,1,P2,B,1,SP2\n".repeat(6));
        tables.put("tiny", HEADER + "1e-300,2e-300,10,P1,A,1,SP1\n2e-300,1e-300,10,P2,B,2,SP2\n".repeat(12));
        tables.put("zero", HEADER + "0,0,0,P1,A,0,SP1\n".repeat(12));
        tables.put("negative", HEADER + "-1,-2,-10,P1,A,-1,SP1\n-3,-1,-10,P2,B,-2,SP2\n".repeat(12));
        tables.put("one of a kind", HEADER + "1,2,10,P1,A,1,SP1\n2,3,11,P2,B,2,SP1\n".repeat(9) + "5,5,5,P3,C,3,SP3\n");
        tables.put("two values in turn", HEADER + "1,2,10,P1,A,1,SP1\n2,1,10,P1,B,1,SP2\n".repeat(30));
        return tables;
    }
}
