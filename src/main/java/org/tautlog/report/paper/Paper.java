package org.tautlog.report.paper;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.OutputStream;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;

/**
 * Prints a page as a PDF. The page is well-formed as XML and has its style inside; the style knows CSS 2.1 and the margins
 * of pages. Nothing is fetched: what the page names outside of itself is left out.
 */
public final class Paper {
    private Paper() {}

    /**
     * Prints.
     *
     * @param page the page, well-formed as XML
     * @param imprint who prints, and when
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void print(String page, Imprint imprint, OutputStream out) throws IOException {
        var document = PrintedPage.of(page, Fonts.glyphs());
        XRLog.setLoggingEnabled(false);
        try (var pdf = new PDDocument();
                var drawer = new DrawingsKeepText()) {
            var builder = new PdfRendererBuilder()
                    .usePDDocument(pdf)
                    .withW3cDocument(document, null)
                    .useSVGDrawer(drawer)
                    .useUriResolver((base, uri) -> null)
                    .withProducer(imprint.program())
                    .usePdfUaAccessibility(true);
            for (var priority : ExternalResourceControlPriority.values()) {
                builder.useExternalResourceAccessControl((uri, type) -> false, priority);
            }
            Fonts.embed(builder, pdf);
            try (var renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
                describeLinks(pdf);
                sign(pdf, imprint);
                pdf.save(out);
            }
        }
    }

    /** PDF/UA-1 asks of each link to say in words where it leads (ISO 14289-1, 7.18.5). */
    private static void describeLinks(PDDocument pdf) throws IOException {
        for (var page : pdf.getPages()) {
            for (var mark : page.getAnnotations()) {
                if (mark instanceof PDAnnotationLink link
                        && link.getAction() instanceof PDActionGoTo action
                        && action.getDestination() instanceof PDPageDestination place) {
                    link.setContents("To page " + (place.retrievePageNumber() + 1));
                }
            }
        }
    }

    private static void sign(PDDocument pdf, Imprint imprint) {
        var time = GregorianCalendar.from(imprint.printedAt().toZonedDateTime());
        var information = pdf.getDocumentInformation();
        information.setCreationDate(time);
        information.setModificationDate(time);
        information.setCreator(imprint.program());
        pdf.setDocumentId(imprint.printedAt().toInstant().toEpochMilli());
    }
}
