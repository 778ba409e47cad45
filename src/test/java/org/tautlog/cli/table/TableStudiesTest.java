package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.cli.CommandLineRun;

class TableStudiesTest {
    @TempDir
    Path folder;

    @Test
    void an_unknown_column_is_answered_with_the_names_that_are_there() throws IOException {
        var run = CommandLineRun.of("chart", table("Time;Torque [Nm]\n1;2\n"), "--value", "torq");
        assertEquals(2, run.exitCode());
        assertTrue(run.err().contains("no column 'torq'"), run.err());
        assertTrue(run.err().contains("'Torque [Nm]'"), run.err());
    }

    @ParameterizedTest
    @CsvSource({"'x\n', EMPTY", "'x\n5\n', ONE", "'x\n5\n5\n5\n5\n5\n', SAME", "'', NOTHING"})
    void what_cannot_be_charted_says_why(String text, String what) throws IOException {
        var run = CommandLineRun.of("chart", table(text), "--value", "x");
        assertEquals(what.equals("NOTHING") ? 2 : 3, run.exitCode(), run.out() + run.err());
        assertTrue(run.out().contains("no chart: ") || run.err().contains("empty"), run.out() + run.err());
    }

    @Test
    void text_among_numbers_is_counted_and_named() throws IOException {
        var run = CommandLineRun.of("chart", table("x\n1\n2\nn/a\n3\n\n2\n1\n"), "--value", "x");
        assertEquals(1, run.exitCode());
        assertTrue(run.err().contains(":4 (x): 'n/a' is no number"), run.err());
        assertTrue(run.err().contains("1 of 6 rows could not be used"), run.err());
        assertTrue(run.out().contains("n = 5"), run.out());
    }

    @ParameterizedTest
    @CsvSource({"individuals, 3", "ewma, 1", "cusum, 1"})
    void a_table_too_long_to_keep_is_charted_in_two_passes(String kind, int least) throws IOException {
        var table = folder.resolve("long.csv");
        try (var rows = Files.newBufferedWriter(table)) {
            rows.write("x\n");
            for (int i = 0; i <= LongCharting.MOST_AT_ONCE; i++) {
                rows.write(i == 5 ? "n/a\n" : i == 700_000 ? "90\n" : i % 2 == 0 ? "1\n" : i % 3 == 0 ? "3\n" : "2\n");
            }
        }
        var limits = folder.resolve("limits.json").toString();
        var drawing = folder.resolve("chart.svg");
        var run = CommandLineRun.of(
                "chart",
                table.toString(),
                "--value",
                "x",
                "--kind",
                kind,
                "--freeze",
                limits,
                "--out",
                drawing.toString());
        assertEquals(1, run.exitCode(), run.err());
        assertTrue(run.err().contains(":7 (x): 'n/a' is no number"), run.err());
        assertTrue(run.out().contains("n = 1000000, 1000000 points, limits from all 1000000 points"), run.out());
        assertTrue(run.out().contains("no point is left out of the limits"), run.out());
        assertTrue(run.out().contains("(line 700002)"), run.out());
        assertTrue(Files.size(drawing) < 1_000_000, "the drawing takes " + Files.size(drawing));
        var held = CommandLineRun.of("chart", table.toString(), "--value", "x", "--limits", limits, "--json");
        assertTrue(
                held.out().contains("\"basis\":\"frozen limits\""), held.out().substring(0, 300));
        int count = Integer.parseInt(held.out().replaceAll("(?s).*\"signalCount\":([0-9]+).*", "$1"));
        assertTrue(count >= least, "signals " + count);
    }

    @ParameterizedTest
    @CsvSource({"p", "np", "u", "p-laney"})
    void a_count_that_cannot_be_is_rejected_with_its_line_and_the_rest_is_charted(String kind) throws IOException {
        var table = table("bad,of\n3,50\n5,50\n4,0\n2,50\nseven,50\n60,50\n6,50\n-1,50\n4,50\n");
        var run = CommandLineRun.of("chart", table, "--kind", kind, "--value", "bad", "--amount", "of");
        int rejected = kind.equals("u") ? 3 : 4;
        assertEquals(1, run.exitCode(), run.out() + run.err());
        assertTrue(run.err().contains(rejected + " of 9 rows could not be used"), run.err());
        for (int line : kind.equals("u") ? new int[] {4, 6, 9} : new int[] {4, 6, 7, 9})
            assertTrue(run.err().contains("table.csv:" + line), run.err());
        assertTrue(run.out().contains((9 - rejected) + " points"), run.out());
    }

    @Test
    void decimal_commas_are_read() throws IOException {
        var run = CommandLineRun.of("chart", table("x;y\n1,5;0\n2,5;0\n1,5;0\n2,5;0\n"), "--value", "x");
        assertTrue(run.out().contains("centre") && run.out().contains("  2\n"), run.out());
    }

    @Test
    void a_hostile_header_stays_text_in_the_drawing() throws IOException {
        var drawing = folder.resolve("chart.svg");
        var name = "<script>alert(1)</script>";
        var run = CommandLineRun.of(
                "chart", table(name + "\n1\n2\n1\n3\n2\n"), "--value", name, "--out", drawing.toString());
        assertEquals(0, run.exitCode(), run.err());
        var svg = Files.readString(drawing);
        assertFalse(svg.contains("<script"), svg);
        assertTrue(svg.contains("&lt;script&gt;"), svg);
    }

    @Test
    void a_picture_holds_ink() throws IOException {
        var drawing = folder.resolve("chart.png");
        CommandLineRun.of("chart", table("x\n1\n2\n1\n3\n2\n"), "--value", "x", "--out", drawing.toString());
        var image = ImageIO.read(drawing.toFile());
        int dark = 0;
        for (int x = 0; x < image.getWidth(); x++)
            for (int y = 0; y < image.getHeight(); y++) dark += (image.getRGB(x, y) & 0xFF) < 0x60 ? 1 : 0;
        assertTrue(dark > 500, "dark pixels: " + dark);
    }

    @Test
    void a_tableseries_makes_no_tabledrawing() throws IOException {
        var text = new StringBuilder("x\n");
        var random = new java.util.Random(9);
        for (int i = 0; i < 30_000; i++) text.append(random.nextGaussian()).append('\n');
        var file = table(text.toString());
        for (var kind : new String[] {"individuals", "ewma", "cusum"}) {
            var drawing = folder.resolve(kind + ".svg");
            var run = CommandLineRun.of("chart", file, "--value", "x", "--kind", kind, "--out", drawing.toString());
            assertTrue(Files.size(drawing) < 600_000, kind + " " + Files.size(drawing) + run.err());
        }
    }

    @Test
    void streams_tell_the_one_that_left_the_others() throws IOException {
        var limits = folder.resolve("limits.json").toString();
        var words = new String[] {"--value", "x", "--by", "spindle", "--kind", "streams"};
        var before = CommandLineRun.of(with(words, table(streams(0)), "--freeze", limits));
        assertEquals(before.out().contains("signal") ? 1 : 0, before.exitCode(), before.err());
        var after = CommandLineRun.of(with(words, table(streams(8)), "--limits", limits));
        assertEquals(1, after.exitCode(), after.out() + after.err());
        assertTrue(after.out().contains("frozen limits"), after.out());
        assertTrue(after.out().contains("spindle SP3 above the other streams"), after.out());
        assertFalse(after.out().contains("spindle SP2 above the other streams"), after.out());
        assertTrue(after.out().contains("decision value h of one stream's sums"), after.out());
        assertTrue(
                after.out().contains("spindle SP3 rising against the other streams, sum ")
                        && after.out().contains(" past h "),
                after.out());
        var others =
                table(streams(0).lines().filter(row -> !row.startsWith("SP3")).collect(Collectors.joining("\n"))
                        + "\nSP9,100\n");
        var fewer = CommandLineRun.of(with(words, others, "--limits", limits));
        assertTrue(fewer.out().contains("SP3 of the frozen limits has no value here"), fewer.out() + fewer.err());
        assertTrue(fewer.out().contains("SP9 is unknown to the frozen limits"), fewer.out());
    }

    @Test
    void limits_a_millionth_of_their_level_apart_are_told_apart_wherever_they_stand() throws IOException {
        var text = new StringBuilder("x\n");
        var random = new java.util.Random(9);
        for (int i = 0; i < 40; i++)
            text.append(1e6 + 0.1 * random.nextGaussian()).append('\n');
        var table = table(text + "1000007.25\n");
        var drawing = folder.resolve("narrow.svg");
        var run = CommandLineRun.of("chart", table, "--value", "x", "--out", drawing.toString());
        for (var what : new String[] {"centre", "lower limit", "upper limit"})
            assertTrue(run.out().matches("(?s).*\\s" + what + " +(999999|1000000)\\.[0-9]{3,}\\n.*"), run.out());
        assertTrue(run.out().contains("value 1000007.25 beyond 999999."), run.out());
        var svg = Files.readString(drawing);
        assertTrue(svg.matches("(?s).*>upper 1000000\\.[0-9]{3,}<.*"), svg);
        assertTrue(svg.matches("(?s).*>1,000,00[0-9](\\.[0-9])?<.*>1,000,00[0-9](\\.[0-9])?<.*"), svg);
        var strays = CommandLineRun.of("outliers", table, "--value", "x");
        assertTrue(strays.out().contains("1000007.25: "), strays.out());
        var fine = table(text.toString());
        CommandLineRun.of("chart", fine, "--value", "x", "--out", drawing.toString());
        assertTrue(Files.readString(drawing).matches("(?s).*>1,000,000\\.[0-9]<.*"), Files.readString(drawing));
        var capability = CommandLineRun.of("capability", fine, "--value", "x", "--low", "999999", "--high", "1000001");
        assertTrue(capability.out().matches("(?s).*mean (999999|1000000)\\.[0-9]{3,},.*"), capability.out());
        var json = CommandLineRun.json("chart", fine, "--value", "x");
        var first = Double.parseDouble(text.toString().split("\n", -1)[1]);
        assertEquals(
                first,
                json.path("groups")
                        .get(0)
                        .path("panels")
                        .get(0)
                        .path("lines")
                        .get(0)
                        .path("points")
                        .get(0)
                        .path("value")
                        .asDouble());
    }

    @Test
    void the_worst_points_bear_their_words_and_long_rules_stand_below() throws IOException {
        var text = new StringBuilder("x\n");
        for (int i = 0; i < 80; i++)
            text.append(i == 77 ? 130 : 100 + i % 2 + (i / 12) % 2 * 1.3).append('\n');
        var drawing = folder.resolve("rules.svg");
        var run = CommandLineRun.of(
                "chart",
                table(text.toString()),
                "--value",
                "x",
                "--width",
                "6",
                "--rules",
                "nelson",
                "--out",
                drawing.toString());
        assertTrue(run.out().contains("14 points running, up and down in turn"), run.out());
        var svg = Files.readString(drawing);
        assertTrue(svg.contains(">78: above<"), "the one beyond the limits comes first: " + svg);
        assertTrue(svg.matches("(?s).*>[0-9]+: fourteen-alternating[^<]*<.*"), svg);
        assertFalse(svg.matches("(?s).*>[0-9]+: 14 points running.*"), svg);
        assertTrue(svg.contains("fourteen-alternating: 14 points running"), svg);
    }

    @Test
    void limits_are_said_as_they_were_stated() throws IOException {
        var table = table("x\n101325000.1\n101325000.4\n101325000.2\n101325000.9\n101325000.5\n");
        var run = CommandLineRun.of("capability", table, "--value", "x", "--low", "101324900", "--high", "101325100");
        assertTrue(run.out().contains("low 101324900, high 101325100"), run.out() + run.err());
    }

    private static String streams(double shift) {
        var text = new StringBuilder("spindle,x\n");
        var random = new java.util.Random(7);
        for (int t = 0; t < 30; t++)
            for (int s = 1; s <= 4; s++)
                text.append("SP" + s + "," + (100 + random.nextGaussian() + (s == 3 && t >= 20 ? shift : 0)) + "\n");
        return text.toString();
    }

    private static String[] with(String[] words, String file, String... more) {
        return java.util.stream.Stream.of(new String[] {"chart", file}, words, more)
                .flatMap(java.util.Arrays::stream)
                .toArray(String[]::new);
    }

    @Test
    void capability_says_whether_control_was_shown() throws IOException {
        var text = new StringBuilder("x\n");
        var random = new java.util.Random(3);
        for (int i = 0; i < 60; i++) text.append(100 + random.nextGaussian()).append('\n');
        var run =
                CommandLineRun.of("capability", table(text.toString()), "--value", "x", "--low", "95", "--high", "105");
        assertTrue(run.out().contains("Cpk") && run.out().contains("in control"), run.out() + run.err());
        var upsideDown = CommandLineRun.of("capability", table("x\n1\n"), "--value", "x", "--low", "2", "--high", "1");
        assertEquals(2, upsideDown.exitCode());
    }

    @Test
    void capability_names_the_line_of_a_stray_and_of_a_level_that_moved() throws IOException {
        var stray = new StringBuilder("x\n");
        var moved = new StringBuilder("x\n");
        var random = new java.util.Random(5);
        for (int i = 0; i < 200; i++) {
            double z = random.nextGaussian();
            stray.append(i == 100 ? 118 : 100 + z).append('\n');
            moved.append(100 + z + (i < 100 ? 0 : 1.5)).append('\n');
        }
        var words =
                new String[] {"capability", table(stray.toString()), "--value", "x", "--low", "95", "--high", "105"};
        var run = CommandLineRun.of(words);
        assertEquals(1, run.exitCode());
        assertTrue(run.out().contains("OUT OF CONTROL") && run.out().contains("a stray at line 102:"), run.out());
        assertTrue(run.out().contains("outside: 1 of 200 counted"), run.out());
        words[1] = table(moved.toString());
        var level = CommandLineRun.of(words).out();
        assertTrue(level.matches("(?s).*OUT OF CONTROL.*the level moved at line (9[5-9]|10[0-9])\\R.*"), level);
    }

    /** Only figures in the unit of the values follow their spread; z and p do not. */
    @Test
    void fine_values_lend_no_digits_to_figures_without_a_unit() throws IOException {
        var text = new StringBuilder("x\n");
        var random = new java.util.Random(6);
        for (int i = 0; i < 40; i++)
            text.append(101325 + 1e-4 * random.nextGaussian()).append('\n');
        var out = CommandLineRun.of("changes", table(text.toString()), "--value", "x")
                .out();
        assertTrue(out.matches("(?s).*, z -?[0-9]\\.[0-9]{1,7}, p.*"), out);
        for (var found = java.util.regex.Pattern.compile("(?:z|p value|tau) -?0\\.0*([1-9][0-9]*)")
                        .matcher(out);
                found.find(); ) assertTrue(found.group(1).length() <= 6, found.group());
        assertTrue(out.matches("(?s).*before 10132[45]\\.[0-9]{6,}.*"), out);
    }

    @Test
    void values_that_fill_no_subgroup_are_named() throws IOException {
        var text = new StringBuilder("x\n");
        var random = new java.util.Random(4);
        for (int i = 0; i < 62; i++) text.append(100 + random.nextGaussian()).append('\n');
        var words = new String[] {
            "capability", table(text.toString()), "--value", "x", "--low", "95", "--high", "105", "--subgroup", "5"
        };
        var run = CommandLineRun.of(words);
        assertTrue(run.out().contains("n = 60"), run.out() + run.err());
        assertTrue(run.out().contains("the last 2 values fill no subgroup of 5 and are not studied"), run.out());
        var json = CommandLineRun.of(
                java.util.stream.Stream.concat(java.util.Arrays.stream(words), java.util.stream.Stream.of("--json"))
                        .toArray(String[]::new));
        assertTrue(json.out().contains("\"notes\":[\"the last 2 values fill no subgroup of 5"), json.out());
        words[9] = "31";
        assertFalse(CommandLineRun.of(words).out().contains("note:"));
    }

    @Test
    void every_rule_is_switched_off_by_itself_the_limits_too() throws IOException {
        var table = table("x\n" + "1\n2\n".repeat(10) + "90\n" + "1\n".repeat(9) + "2\n");
        var both = CommandLineRun.of("chart", table, "--value", "x", "--rules", "nine-one-side");
        assertTrue(both.out().contains("above the upper limit") && both.out().contains("9 points running"), both.out());
        var rule = CommandLineRun.of(
                "chart", table, "--value", "x", "--rules", "nine-one-side", "--without", "beyond-limits");
        assertTrue(rule.out().contains("9 points running") && !rule.out().contains("limit\n"), rule.out());
        var limits =
                CommandLineRun.of("chart", table, "--value", "x", "--rules", "nelson", "--without", "nine-one-side");
        assertTrue(limits.out().contains("above the upper limit"), limits.out());
        assertFalse(limits.out().contains("9 points running"), limits.out());
        var none = CommandLineRun.of("chart", table, "--value", "x", "--without", "beyond-limits");
        assertEquals(2, none.exitCode(), none.err());
        assertTrue(none.err().contains("no rule to watch"), none.err());
        assertEquals(
                2,
                CommandLineRun.of("chart", table, "--value", "x", "--kind", "ewma", "--without", "beyond-limits")
                        .exitCode());
    }

    @Test
    void wrong_words_are_refused() throws IOException {
        var file = table("x\n1\n2\n3\n");
        assertEquals(
                2,
                CommandLineRun.of("chart", file, "--value", "x", "--kind", "pie")
                        .exitCode());
        assertEquals(
                2,
                CommandLineRun.of("chart", file, "--value", "x", "--rules", "ten")
                        .exitCode());
        assertEquals(
                2,
                CommandLineRun.of("chart", file, "--value", "x", "--kind", "p").exitCode());
        assertEquals(
                2,
                CommandLineRun.of("chart", file, "--value", "x", "--out", "a.pdf")
                        .exitCode());
        assertEquals(2, CommandLineRun.of("gauge", file, "--value", "x").exitCode());
    }

    private String table(String text) throws IOException {
        return Files.writeString(folder.resolve("table.csv"), text).toString();
    }
}
