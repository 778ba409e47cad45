package org.tautlog.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.tautlog.review.ShiftReview;

/**
 * A shift review as one HTML page that needs nothing beside it: no network, no script, style and charts inside. All text
 * from logs is escaped.
 */
public final class ShiftPage {
    private ShiftPage() {}

    /**
     * Writes the page.
     *
     * @param review what was found
     * @param provenance what made it
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(ShiftReview review, Provenance provenance, Writer out) throws IOException {
        try {
            configuration().getTemplate("shift.ftlh").process(ShiftModel.of(review, provenance), out);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page's template and its model do not fit", e);
        }
    }

    private static Configuration configuration() {
        var configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(ShiftPage.class, "/org/tautlog/report");
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        return configuration;
    }
}
