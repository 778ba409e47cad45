package org.tautlog.report.paper;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperTest {
    private static final Imprint IMPRINT =
            new Imprint("tautlog 0.1.0", OffsetDateTime.parse("2026-03-17T14:00:00+01:00"));

    @Test
    void text_is_found_again_in_the_scripts_that_the_fonts_hold() throws IOException {
        for (var serial : new String[] {"FW-000017", "Größe 7", "Ångström N·m ≤ 3", "двигатель", "κινητήρας", "מנוע"}) {
            var text = text("<p>" + serial + "</p>");
            var reversed = new StringBuilder(serial).reverse().toString();
            assertTrue(text.contains(serial) || text.contains(reversed), serial + " in " + text);
        }
    }

    @Test
    void what_no_font_holds_is_replaced_by_its_number_so_that_serials_stay_apart() throws IOException {
        assertTrue(text("<p>引擎-1</p>").contains("[U+5F15][U+64CE]-1"));
        assertTrue(text("<p>引警-1</p>").contains("[U+5F15][U+8B66]-1"));
        assertTrue(text("<p>a&#x1F527;b</p>").contains("a[U+1F527]b"), "a character of two units");
    }

    @Test
    void what_would_turn_or_hide_the_text_is_replaced_too() throws IOException {
        assertTrue(text("<p>FW&#x202E;71</p>").contains("FW[U+202E]71"), "a right-to-left override");
        assertTrue(text("<p>FW&#x200B;71</p>").contains("FW[U+200B]71"), "a blank of no width");
    }

    @Test
    void the_text_of_a_drawing_is_found_too_wherever_it_stands_and_however_it_is_turned() throws IOException {
        var svg = "<svg xmlns='http://www.w3.org/2000/svg' width='200' height='200' viewBox='0 0 100 100'>"
                + ("<text x='9' y='20'>torque, N·m</text>"
                        + "<text x='90' y='40' text-anchor='end'>FW-000017</text>"
                        + "<g transform='translate(5,90) rotate(-90)'><text>angle</text></g></svg>");
        var text = text(svg).replaceAll("\\s", ""); // the stripper breaks what is turned into lines
        for (var word : new String[] {"torque,N·m", "FW-000017", "angle"}) {
            assertTrue(text.contains(word), word + " in " + text);
        }
    }

    @Test
    void what_is_searched_letter_by_letter_is_found_in_every_face_and_in_drawings() throws IOException {
        var text = text("<p>first <b>finding</b> <i>offline</i> <b><i>file</i></b></p>"
                + drawing("<text y='9'>fit</text><text y='5' font-weight='bold'>final 17</text>"));
        for (var word : new String[] {"first", "finding", "offline", "file", "fit", "final 17"}) {
            assertTrue(text.contains(word), word + " in " + text);
        }
    }

    @Test
    void nothing_that_a_page_names_is_fetched(@TempDir Path folder) throws IOException {
        var secret = Files.writeString(folder.resolve("secret.svg"), drawing("<text y='9'>TOP-SECRET</text>"));
        var asked = new AtomicInteger();
        var server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            asked.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
        try {
            var address = "http://127.0.0.1:" + server.getAddress().getPort() + '/';
            for (var uri : new String[] {address, secret.toUri().toString()}) {
                var page = "<html><head><title>t</title><link rel='stylesheet' href='" + uri + "a.css'/>"
                        + "<style>@import url(" + uri + "b.css); body { font-family: Caladea; background: url(" + uri
                        + "c.png) }"
                        + " @font-face { font-family: x; src: url(" + uri + "d.ttf) }</style></head>"
                        + "<body><p>here</p><img src='" + uri + "' alt='e'/><object data='" + uri + "'></object>"
                        + drawing("<image xlink:href='" + uri + "' width='9' height='9'/><use xlink:href='" + uri
                                + "#x'/>")
                        + "</body></html>";
                var printed = bytes(page);
                assertTrue(read(printed).contains("here"), "the page itself");
                assertFalse(read(printed).contains("TOP-SECRET"), "a file of this machine");
            }
        } finally {
            server.stop(0);
        }
        assertEquals(0, asked.get(), "requests");
    }

    @Test
    void a_page_that_names_entities_of_other_files_is_refused() {
        var page = "<!DOCTYPE html [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><html><body>&e;</body></html>";
        assertThrows(IllegalStateException.class, () -> bytes(page));
    }

    @Test
    void the_file_is_tagged_and_brings_its_fonts() throws IOException {
        try (var pdf = Loader.loadPDF(bytes(page("<h1>A</h1><p><b>b</b> <i>c</i> ▲</p>")))) {
            var catalog = pdf.getDocumentCatalog();
            assertTrue(catalog.getMarkInfo().isMarked(), "marked");
            assertEquals("en", catalog.getLanguage());
            assertFalse(catalog.getStructureTreeRoot().getKids().isEmpty(), "a tree of tags");
            int fonts = 0;
            for (var name : pdf.getPage(0).getResources().getFontNames()) {
                fonts++;
                assertTrue(pdf.getPage(0).getResources().getFont(name).isEmbedded(), name.getName());
            }
            assertEquals(4, fonts, "upright, bold, italic, and one for the triangle");
            assertEquals("tautlog 0.1.0", pdf.getDocumentInformation().getProducer());
        }
    }

    @Test
    void tags_links_and_lists_are_as_pdf_ua_asks() throws IOException {
        var body =
                "<h1>A</h1><p><a href='#end'>to the end</a></p><ul class='in-row'><li>18 <b>hold</b></li><li>2</li></ul>"
                        + "<p id='end'>end</p>";
        assertEquals(List.of(), PdfUa.broken(bytes(page(body))));
        assertFalse(PdfUa.broken(bytes(page("<ul><li style='display: inline-block'>out of the tree</li></ul>")))
                .isEmpty());
    }

    @Test
    void the_same_page_printed_again_is_the_same_file() throws IOException {
        var page = page("<h1>A</h1>" + drawing("<path d='M0 0h9' style='stroke:var(--ink-signal,#b4431c)'/>"));
        assertArrayEquals(bytes(page), bytes(page));
    }

    private static String drawing(String inside) {
        return "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='50' height='50'"
                + " viewBox='0 0 9 9'>" + inside + "</svg>";
    }

    private static String page(String body) {
        return "<!DOCTYPE html><html lang='en'><head><title>A page</title><style>"
                + "body { font-family: Caladea, 'Liberation Sans' }</style></head><body>" + body + "</body></html>";
    }

    private static String text(String body) throws IOException {
        return read(bytes(page(body)));
    }

    private static byte[] bytes(String page) throws IOException {
        var out = new ByteArrayOutputStream();
        Paper.print(page, IMPRINT, out);
        return out.toByteArray();
    }

    private static String read(byte[] printed) throws IOException {
        try (var pdf = Loader.loadPDF(printed)) {
            return new PDFTextStripper().getText(pdf);
        }
    }
}
