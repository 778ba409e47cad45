package org.tautlog.report.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.tautlog.report.paper.Imprint;
import org.tautlog.report.paper.Paper;

/**
 * Fills a template of the report, for the screen or for paper; whatever a model holds is escaped as HTML, and characters
 * that no page may hold are replaced visibly.
 */
public final class Pages {
    private static final Pattern UNFIT =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");
    private static final String REPLACEMENT = "\uFFFD";

    private Pages() {}

    /**
     * Writes a page for the screen.
     *
     * @param template name of the template's file
     * @param model what it shows, by the names that it uses
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(String template, Map<String, Object> model, Writer out) throws IOException {
        out.write(filled(template, model, false));
    }

    /**
     * Prints the same page as a PDF.
     *
     * @param template name of the template's file
     * @param model what it shows, by the names that it uses
     * @param provenance what made it; on every page
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void print(String template, Map<String, Object> model, Provenance provenance, OutputStream out)
            throws IOException {
        Paper.print(
                filled(template, model, true),
                new Imprint("tautlog " + provenance.programVersion(), provenance.writtenAt()),
                out);
    }

    private static String filled(String template, Map<String, Object> model, boolean paper) throws IOException {
        var values = new HashMap<>(model);
        values.put("paper", paper);
        var page = new StringWriter();
        try {
            configuration().getTemplate(template).process(values, page);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page's template and its model do not fit", e);
        }
        return UNFIT.matcher(page.getBuffer()).replaceAll(REPLACEMENT);
    }

    private static Configuration configuration() {
        var configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(Pages.class, "/org/tautlog/report");
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        return configuration;
    }
}
