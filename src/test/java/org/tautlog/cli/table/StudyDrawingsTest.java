package org.tautlog.cli.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tautlog.cli.CommandLineRun;

/** What the drawings of studies say in words. */
class StudyDrawingsTest {
    @TempDir
    Path folder;

    @Test
    void a_capability_drawing_says_indices_control_limits_and_reference_interval() throws IOException {
        var svg = svg(values(1, 60), "--low 95 --high 105 --unit N·m");
        assertTrue(svg.contains(">x: process capability<"), svg);
        assertTrue(svg.matches("(?s).*>n = 60, Cpk [0-9.]+ \\([0-9.]+ to [0-9.]+ with 95 %\\), Ppk .*"), svg);
        assertTrue(svg.contains(">in control: "), svg);
        assertTrue(svg.matches("(?s).*>( ?)low 95( ?)<.*") && svg.matches("(?s).*>( ?)high 105( ?)<.*"), svg);
        assertTrue(svg.contains("99.865 %: 10") && svg.contains("0.135 %: 9"), svg);
        assertTrue(svg.contains(">x, N·m<"), svg);
    }

    @Test
    void a_limit_far_out_is_named_at_the_edge() throws IOException {
        var svg = svg(values(1, 60), "--high 500");
        assertTrue(svg.contains("high 500 →"), svg);
        assertTrue(svg.contains(">high 500 ↑<"), svg);
    }

    /** The plots are 450 wide, so words at both edges leave room for each other only where they are short. */
    @Test
    void two_limits_far_out_do_not_meet() throws IOException {
        var svg = svg(values(1, 60), "--low -5000 --high 5000");
        assertTrue(svg.contains("← low -5000<") && svg.contains("high 5000 →"), svg);
        assertFalse(svg.contains("off the scale"), svg);
    }

    @Test
    void the_share_counted_outside_is_drawn() throws IOException {
        var svg = svg(values(1, 60), "--low 95 --high 105");
        assertTrue(svg.contains("outside: 0 of 60 counted (0 to "), svg);
    }

    @Test
    void groups_that_find_no_room_are_named() throws IOException {
        var file = values(14, 30);
        var out = folder.resolve("many.png");
        var run = CommandLineRun.of(words(file, "--low 95 --high 105 --by g --out " + out));
        assertTrue(run.err().contains("the first 12 of 14 groups; not drawn: g G12; g G13"), run.err());
        assertTrue(ImageIO.read(out.toFile()).getHeight() > 12 * 600);
    }

    @Test
    void a_hostile_name_stays_text() throws IOException {
        var text = Files.readString(Path.of(values(1, 30))).replace("G0", "<script>alert(1)</script>");
        var svg = svg(Files.writeString(folder.resolve("hostile.csv"), text).toString(), "--low 95 --by g");
        assertFalse(svg.contains("<script"), svg);
        assertTrue(svg.contains("&lt;script&gt;"), svg);
    }

    @Test
    void a_name_that_turns_the_text_round_stands_as_its_number() throws IOException {
        var text = Files.readString(Path.of(values(1, 30))).replace("G0", "a\u202Eb");
        var svg = svg(Files.writeString(folder.resolve("bidi.csv"), text).toString(), "--low 95 --by g");
        assertTrue(svg.contains("a[U+202E]b") && svg.indexOf('\u202E') < 0, svg);
    }

    @Test
    void points_left_out_of_the_limits_are_hollow_and_said_to_be() throws IOException {
        var calm = chart("10,11,10,12,11,10,11,12,10,11,12,10", "--value x");
        assertFalse(calm.contains("left out"), calm);
        var svg = chart("10,11,10,12,11,10,11,99,10,11,12,10", "--value x");
        assertTrue(svg.contains("hollow: left out of the limits"), svg);
    }

    @Test
    void large_limits_all_have_a_power_of_ten_and_zero_has_none() throws IOException {
        var svg = chart("0,3e12,1e12,2e12,0,3e12,2e12,1e12", "--value x");
        assertTrue(svg.matches("(?s).*>upper [0-9.]+E\\+12<.*") && svg.matches("(?s).*>centre 1.50000E\\+12<.*"), svg);
        assertFalse(svg.contains(">0E0<") || svg.contains(">0.0E0<"), svg);
    }

    @Test
    void the_first_signal_of_sums_has_its_words() throws IOException {
        var x = new StringBuilder();
        for (int i = 0; i < 80; i++) x.append(i == 0 ? "" : ",").append(10 + (i * 7 % 11) / 10.0 + (i < 40 ? 0 : 0.6));
        var svg = chart(x.toString(), "--value x --kind cusum --centre 10.5 --deviation 0.32");
        var run = CommandLineRun.of(
                charted(folder.resolve("x.csv").toString(), "--value x --kind cusum --centre 10.5 --deviation 0.32"));
        var first = run.out().replaceFirst("(?s).*? signals:\\s+point (\\d+) .*", "$1");
        assertTrue(svg.contains(">" + first + ": risen since point"), first + svg);
    }

    private String chart(String values, String asked) throws IOException {
        var file = Files.writeString(folder.resolve("x.csv"), "x\n" + values.replace(",", "\n") + "\n");
        var out = folder.resolve("x.svg");
        var run = CommandLineRun.of(charted(file.toString(), asked + " --out " + out));
        assertTrue(run.exitCode() < 2, run.err());
        return Files.readString(out);
    }

    private static String[] charted(String file, String asked) {
        return ("chart " + file + ' ' + asked).split(" ", -1);
    }

    @Test
    void a_drawing_is_refused_before_any_work_where_it_cannot_be_written() throws IOException {
        var file = values(1, 30);
        for (var out : List.of("x.pdf", "NOPE/x.svg")) {
            var run = CommandLineRun.of(words(file, "--low 95 --out " + out));
            assertEquals(2, run.exitCode(), run.err());
            assertTrue(run.out().isEmpty(), run.out());
        }
    }

    @Test
    void a_gauge_drawing_names_components_appraisers_parts_and_the_limit_of_ranges() throws IOException {
        var random = new Random(3);
        var text = new StringBuilder("bolt,who,x\n");
        for (int p = 0; p < 8; p++) {
            double part = 100 + 3 * random.nextGaussian();
            for (var who : List.of("Anna", "a very long name of Bo"))
                for (int t = 0; t < 3; t++)
                    text.append("B" + p + "," + who + "," + (part + random.nextGaussian()) + "\n");
        }
        var file = Files.writeString(folder.resolve("gauge.csv"), text).toString();
        var out = folder.resolve("gauge.svg");
        var words = new String[] {
            "gauge", file, "--value", "x", "--part", "bolt", "--appraiser", "who", "--unit", "N·m", "--out", out + ""
        };
        var run = CommandLineRun.of(words);
        assertEquals(0, run.exitCode(), run.err());
        var svg = Files.readString(out);
        for (var said : List.of(
                "x: gauge study",
                "8 parts, 2 appraisers, 3 trials; n = 48",
                ">repeatability<",
                ">Anna<",
                "a very long…",
                ">B7<",
                ">part<",
                ">standard deviation, N·m<")) assertTrue(svg.contains(said), said + svg);
        assertTrue(svg.matches("(?s).*> ?upper [0-9.]+<.*"), svg);
        var crooked = text.toString().replaceFirst("B7,Anna", "B7,Cy").replaceAll("B7,Anna", "B7,Cy");
        Files.writeString(Path.of(file), crooked);
        var refused = CommandLineRun.of(words);
        assertEquals(2, refused.exitCode(), refused.out());
        assertTrue(refused.err().contains("part B7 was measured by Cy, a very long name of Bo"), refused.err());
    }

    private String svg(String file, String asked) throws IOException {
        var out = folder.resolve("drawing.svg");
        var run = CommandLineRun.of(words(file, asked + " --out " + out));
        assertTrue(Files.exists(out), run.out() + run.err());
        return Files.readString(out);
    }

    private static String[] words(String file, String asked) {
        var words = new ArrayList<>(List.of("capability", file, "--value", "x"));
        words.addAll(List.of(asked.split(" ", -1)));
        return words.toArray(String[]::new);
    }

    private String values(int groups, int each) throws IOException {
        var random = new Random(3);
        var text = new StringBuilder("g,x\n");
        for (int g = 0; g < groups; g++)
            for (int i = 0; i < each; i++) text.append("G" + g + "," + (100 + random.nextGaussian()) + "\n");
        return Files.writeString(folder.resolve("values.csv"), text).toString();
    }
}
