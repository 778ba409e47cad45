package org.tautlog.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** What the build says about the program. */
final class Program implements IVersionProvider {
    static String version() {
        var properties = new Properties();
        try (var stream = Program.class.getResourceAsStream("/org/tautlog/program.properties")) {
            if (stream == null) {
                throw new IllegalStateException("program.properties is missing from the program");
            }
            properties.load(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version", "unknown");
    }

    @Override
    public String[] getVersion() {
        return new String[] {"tautlog " + version()};
    }
}
