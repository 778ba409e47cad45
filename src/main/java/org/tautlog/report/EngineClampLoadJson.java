package org.tautlog.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.tautlog.review.EngineClampLoad;

/** One engine's estimated clamp loads in JSON, under the one key and the one set of names that all reports share. */
final class EngineClampLoadJson {
    static final String KEY = "engineClampLoad";
    private static final int DECIMALS = 2;

    private EngineClampLoadJson() {}

    static void write(JsonGenerator json, EngineClampLoad load) throws IOException {
        json.writeStartObject();
        json.writeStringField("serial", load.serial());
        json.writeNumberField("bolts", load.bolts());
        json.writeNumberField("withoutEstimate", load.withoutEstimate());
        json.writeNumberField("lowestKN", SignatureField.rounded(load.lowestKN(), DECIMALS));
        json.writeStringField("lowestBolt", load.lowestBolt());
        json.writeNumberField("meanKN", SignatureField.rounded(load.meanKN(), DECIMALS));
        json.writeNumberField("spreadKN", SignatureField.rounded(load.spreadKN(), DECIMALS));
        json.writeEndObject();
    }
}
