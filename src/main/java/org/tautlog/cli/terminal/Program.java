package org.tautlog.cli.terminal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** What the build says about the program. */
public final class Program implements IVersionProvider {
    /** For the command line, which makes one. */
    public Program() {}

    /**
     * The version that the build wrote into the program.
     *
     * @return the version
     */
    public static String version() {
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
