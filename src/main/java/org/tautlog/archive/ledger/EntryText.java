package org.tautlog.archive.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.HexFormat;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.BatchesMerged;
import org.tautlog.archive.ledger.LedgerEvent.Decided;

/** An entry as its line of text, and back. */
final class EntryText {
    private static final JsonFactory JSON = new JsonFactory();
    private static final String OWN_HASH = ",\"sha256\":";

    private EntryText() {}

    static String write(int number, String previous, OffsetDateTime time, LedgerEvent event) {
        var text = new StringWriter();
        try (var entry = JSON.createGenerator(text)) {
            entry.writeStartObject();
            entry.writeNumberField("number", number);
            entry.writeStringField("previous", previous);
            entry.writeStringField("time", time.toString());
            write(event, entry);
            entry.writeEndObject();
        } catch (IOException e) {
            throw new IllegalStateException("an entry is always JSON", e);
        }
        return closed(text.toString().substring(0, text.toString().length() - 1));
    }

    private static String closed(String open) {
        return open + OWN_HASH + '"' + sha256(open) + "\"}";
    }

    private static void write(LedgerEvent event, JsonGenerator entry) throws IOException {
        if (event instanceof BatchKept kept) {
            entry.writeStringField("kind", "batch");
            entry.writeStringField("batch", kept.batch());
            entry.writeStringField("manifest", kept.manifestSha256());
        } else if (event instanceof BatchesMerged merged) {
            entry.writeStringField("kind", "merge");
            entry.writeStringField("batch", merged.batch());
            entry.writeStringField("manifest", merged.manifestSha256());
            entry.writeArrayFieldStart("replaced");
            for (var name : merged.replaced()) {
                entry.writeString(name);
            }
            entry.writeEndArray();
        } else if (event instanceof Decided decided) {
            entry.writeStringField("kind", "decision");
            write(decided.decision(), entry);
        }
    }

    /** Reads a line; nothing may stand in it that its hash does not cover. */
    static LedgerEntry read(String line) {
        int own = line.lastIndexOf(OWN_HASH);
        if (own < 0) {
            throw new IllegalArgumentException("the entry has no hash of its own");
        }
        if (!line.equals(closed(line.substring(0, own)))) {
            throw new IllegalArgumentException("the entry does not fit its hash");
        }
        var entry = JsonObject.parse(line);
        return new LedgerEntry(
                (int) entry.whole("number"), entry.text("previous"), time(entry), event(entry), entry.text("sha256"));
    }

    /** Whether a text that is no entry may be the beginning of one. */
    static boolean isBegun(String line) {
        int own = line.lastIndexOf(OWN_HASH);
        return own < 0 || closed(line.substring(0, own)).startsWith(line);
    }

    private static void write(Decision decision, JsonGenerator entry) throws IOException {
        entry.writeStringField("serial", decision.serial());
        entry.writeStringField("bolt", decision.bolt());
        entry.writeStringField("action", decision.action().word());
        entry.writeStringField("by", decision.by());
        entry.writeStringField("reason", decision.reason());
    }

    private static LedgerEvent event(JsonObject entry) {
        var kind = entry.text("kind");
        return switch (kind) {
            case "batch" -> new BatchKept(entry.text("batch"), entry.text("manifest"));
            case "merge" -> new BatchesMerged(entry.text("batch"), entry.text("manifest"), entry.texts("replaced"));
            case "decision" ->
                new Decided(new Decision(
                        entry.text("serial"),
                        entry.text("bolt"),
                        DecisionAction.parse(entry.text("action"))
                                .orElseThrow(() -> new IllegalArgumentException(
                                        "'" + entry.text("action") + "' is no action of a decision")),
                        entry.text("by"),
                        entry.text("reason")));
            default -> throw new IllegalArgumentException("'" + kind + "' is no kind of entry");
        };
    }

    private static OffsetDateTime time(JsonObject entry) {
        try {
            return OffsetDateTime.parse(entry.text("time"));
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("'" + entry.text("time") + "' is no time", e);
        }
    }

    private static String sha256(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
