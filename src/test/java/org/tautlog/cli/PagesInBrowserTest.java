package org.tautlog.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.tautlog.cli.terminal.ReportFile;
import org.tautlog.review.MadeShift;

/** Every page in a browser as its readers have it: narrow, middling and wide, light and dark, by keyboard. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesInBrowserTest {
    private static final List<Integer> WIDTHS_PX = List.of(360, 768, 1400);

    /** Texts that their own box or the window's edge cuts off, without a bar to scroll them. */
    private static final String CUT_OFF = """
            return [...document.querySelectorAll('main *')].filter(e => {
                if (e.closest('svg') || e.closest('.scroll')) return false;
                const box = e.getBoundingClientRect();
                return box.width > 0 && (box.right > innerWidth + 1 || box.left < -1);
            }).map(e => e.outerHTML.slice(0, 120));
            """;

    private final Map<String, Path> pages = new TreeMap<>();

    private Browser browser;

    @BeforeAll
    void open(@TempDir Path folder) throws IOException {
        browser = Browser.open(folder.resolve("profile")).orElse(null);
        assumeTrue(browser != null, "this machine has no chromium with its chromedriver: no page was looked at");
        var out = folder.resolve("reports");
        var archive = ArchivedShift.simulated(folder.resolve("simulated"));
        var line = folder.resolve("simulated/line");
        run("shift", line.toString(), "--no-pdf", "--out", out.toString());
        run("window", line.resolve("joint.toml").toString(), "--draws", "2000", "--out", out.toString());
        run("engine", "FW-000003", "--archive", archive, "--no-pdf", "--out", out.toString());
        run(
                "contain",
                "--serial",
                "FW-000003",
                "--bolt",
                "3",
                "--archive",
                archive,
                "--no-pdf",
                "--out",
                out.toString());
        var made = ArchivedShift.hostile();
        made.add(MadeShift.named("FW" + "-0".repeat(120), 300));
        var hostile = ArchivedShift.of(folder.resolve("hostile"), MadeLogs.write(folder.resolve("hostile/logs"), made));
        var shift = folder.resolve("hostile/reports");
        run("shift", "--archive", hostile, "--no-pdf", "--out", shift.toString());
        run("contain", "--finding", "turn-short", "--archive", hostile, "--no-pdf", "--out", shift.toString());
        run("engine", "<script>alert(1)</script>", "--archive", hostile, "--no-pdf", "--out", shift.toString());
        pages.put("shift", out.resolve("shift.html"));
        pages.put("window", out.resolve("window.html"));
        pages.put("engine", out.resolve("engine-FW-000003.html"));
        pages.put("containment", out.resolve("containment.html"));
        pages.put("hostile shift", shift.resolve("shift.html"));
        pages.put("hostile containment", shift.resolve("containment.html"));
        pages.put("hostile engine", shift.resolve("engine-" + ReportFile.name("<script>alert(1)</script>") + ".html"));
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void no_page_is_wider_than_its_window_nor_complains() {
        pages.forEach((name, page) -> {
            for (int width : WIDTHS_PX) {
                browser.show(page, width, "light");
                var wide = browser.ask("return document.documentElement.scrollWidth");
                assertTrue(((Number) wide).intValue() <= width, name + " at " + width + " px is " + wide + " px wide");
                assertEquals(List.of(), browser.ask(CUT_OFF), name + " at " + width + " px: cut off");
                assertEquals(List.of(), browser.console(), name);
            }
        });
    }

    @Test
    void labels_roles_and_contrast_pass_axe_in_light_and_dark() throws IOException {
        for (var page : pages.entrySet()) {
            browser.show(page.getValue(), 1400, "dark");
            assertEquals(List.of(), browser.axe("{runOnly: ['color-contrast']}"), page.getKey() + ", dark");
            browser.show(page.getValue(), 360, "light");
            assertEquals(List.of(), browser.axe("{}"), page.getKey() + ", light");
        }
    }

    @Test
    void every_link_is_reached_by_the_keyboard_in_the_order_of_the_page() {
        browser.show(pages.get("engine"), 1400, "light");
        var links = ((Number) browser.ask("return document.querySelectorAll('a[href]').length")).intValue();
        assertTrue(links >= 8, links + " links");
        int reached = 0;
        for (int i = 0; i < 4 * links && reached < links; i++) {
            browser.press(Keys.TAB);
            if ("A".equals(browser.ask("return document.activeElement.tagName"))) {
                reached++;
            }
        }
        assertEquals(links, reached, "links reached");
    }

    @Test
    void what_a_log_holds_never_becomes_a_script_or_an_element() {
        for (var name : List.of("hostile shift", "hostile containment", "hostile engine")) {
            browser.show(pages.get(name), 1400, "light");
            assertEquals(0L, browser.ask("return document.querySelectorAll('script, b, img, iframe').length"), name);
            assertTrue(
                    browser.ask("return document.body.innerText").toString().contains("<script>alert(1)</script>"),
                    name);
        }
    }

    private static void run(String... words) {
        var run = CommandLineRun.of(words);
        assertTrue(run.exitCode() <= 1, run.toString());
    }
}
