package org.tautlog.report.judged;

import java.io.IOException;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Rounded;
import org.tautlog.review.EngineClampLoad;

/** One engine's estimated clamp loads in JSON, under the one key and the one set of names that all reports share. */
public final class EngineClampLoadJson {
    /** The key under which a report has these. */
    public static final String KEY = "engineClampLoad";

    private static final int DECIMALS = 2;

    private EngineClampLoadJson() {}

    /**
     * Writes the fields of one engine.
     *
     * @param json the fields that they become part of
     * @param load its clamp loads
     * @throws IOException where it cannot be written
     */
    public static void write(JsonFields json, EngineClampLoad load) throws IOException {
        json.text("serial", load.serial());
        json.count("bolts", load.bolts());
        json.count("withoutEstimate", load.withoutEstimate());
        json.rounded("lowestKN", Rounded.of(load.lowestKN(), DECIMALS));
        json.text("lowestBolt", load.lowestBolt());
        json.rounded("meanKN", Rounded.of(load.meanKN(), DECIMALS));
        json.rounded("spreadKN", Rounded.of(load.spreadKN(), DECIMALS));
    }
}
