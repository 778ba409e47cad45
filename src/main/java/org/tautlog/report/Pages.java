package org.tautlog.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** Fills a template that lies beside this class's resources; whatever a model holds is escaped as HTML. */
final class Pages {
    private Pages() {}

    static void write(String template, Map<String, Object> model, Writer out) throws IOException {
        try {
            configuration().getTemplate(template).process(model, out);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page's template and its model do not fit", e);
        }
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
