package org.tautlog.archive.ledger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HexFormat;
import org.tautlog.archive.ledger.LedgerEvent.BatchKept;
import org.tautlog.archive.ledger.LedgerEvent.BatchesMerged;
import org.tautlog.archive.ledger.LedgerEvent.Decided;

/** An entry as its line of text, and back. */
final class EntryText {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String OWN_HASH = ",\"sha256\":";

    private EntryText() {}

    static String write(int number, String previous, OffsetDateTime time, LedgerEvent event) {
        var node = JSON.createObjectNode();
        node.put("number", number).put("previous", previous).put("time", time.toString());
        if (event instanceof BatchKept kept) {
            node.put("kind", "batch").put("batch", kept.batch()).put("manifest", kept.manifestSha256());
        } else if (event instanceof BatchesMerged merged) {
            node.put("kind", "merge").put("batch", merged.batch()).put("manifest", merged.manifestSha256());
            merged.replaced().forEach(node.putArray("replaced")::add);
        } else if (event instanceof Decided decided) {
            decision(node.put("kind", "decision"), decided.decision());
        }
        var text = node.toString();
        var open = text.substring(0, text.length() - 1);
        return open + OWN_HASH + '"' + sha256(open) + "\"}";
    }

    /** Reads a line; the hash of the entry is the one its text has, whatever it says of itself. */
    static LedgerEntry read(String line) {
        int own = line.lastIndexOf(OWN_HASH);
        if (own < 0) {
            throw new IllegalArgumentException("the entry has no hash of its own");
        }
        JsonNode node;
        try {
            node = JSON.readTree(line);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("the entry is not JSON", e);
        }
        var actual = sha256(line.substring(0, own));
        if (!actual.equals(text(node, "sha256"))) {
            throw new IllegalArgumentException("the entry does not fit its hash");
        }
        return new LedgerEntry(node.path("number").asInt(), text(node, "previous"), time(node), event(node), actual);
    }

    private static void decision(ObjectNode node, Decision decision) {
        node.put("serial", decision.serial())
                .put("bolt", decision.bolt())
                .put("action", decision.action().word())
                .put("by", decision.by())
                .put("reason", decision.reason());
    }

    private static LedgerEvent event(JsonNode node) {
        var kind = text(node, "kind");
        return switch (kind) {
            case "batch" -> new BatchKept(text(node, "batch"), text(node, "manifest"));
            case "merge" -> {
                var replaced = new ArrayList<String>();
                node.path("replaced").forEach(name -> replaced.add(name.asText()));
                yield new BatchesMerged(text(node, "batch"), text(node, "manifest"), replaced);
            }
            case "decision" ->
                new Decided(new Decision(
                        text(node, "serial"),
                        text(node, "bolt"),
                        DecisionAction.parse(text(node, "action"))
                                .orElseThrow(() -> new IllegalArgumentException(
                                        "'" + text(node, "action") + "' is no action of a decision")),
                        text(node, "by"),
                        text(node, "reason")));
            default -> throw new IllegalArgumentException("'" + kind + "' is no kind of entry");
        };
    }

    private static OffsetDateTime time(JsonNode node) {
        try {
            return OffsetDateTime.parse(text(node, "time"));
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("'" + text(node, "time") + "' is no time", e);
        }
    }

    private static String text(JsonNode node, String key) {
        return node.path(key).asText();
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
