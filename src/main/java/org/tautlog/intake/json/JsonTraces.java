package org.tautlog.intake.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.Reader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tautlog.intake.layout.JsonForm;

/** Cuts JSON into its traces; one at a time is in memory. */
public final class JsonTraces {
    private static final int DEEPEST = 100;

    private final List<String> path;
    private final Set<String> above;
    private final Map<String, String> seen = new HashMap<>();
    private final Taker taker;
    private final ObjectMapper mapper = new ObjectMapper();

    private JsonTraces(String traces, Set<String> above, Taker taker) {
        this.path = JsonForm.segments(traces);
        this.above = above;
        this.taker = taker;
    }

    /** Takes one trace after the other. */
    @FunctionalInterface
    public interface Taker {
        /**
         * Takes a trace.
         *
         * @param trace the trace, an object
         * @param line 1-based line on which it begins
         * @param above the texts asked for that stand before it, by path
         */
        void take(JsonNode trace, int line, Map<String, String> above);
    }

    /**
     * Reads all JSON values of a text.
     *
     * @param text the text
     * @param traces path to the traces, as {@link JsonForm#traces()} has it
     * @param above paths from the root to texts that stand before the traces and hold for all of them
     * @param mostParts a trace of more tokens is refused
     * @param longestText a text of more characters is refused
     * @param taker takes each trace
     * @throws com.fasterxml.jackson.core.JsonProcessingException where the text is no JSON, is cut or breaks a bound
     * @throws IOException where the text cannot be read
     */
    public static void read(Reader text, String traces, Set<String> above, long mostParts, int longestText, Taker taker)
            throws IOException {
        var reading = new JsonTraces(traces, above, taker);
        try (var parser = new Bounded(parser(text, longestText), mostParts)) {
            for (var token = parser.nextToken(); token != null; token = parser.nextToken()) {
                reading.seen.clear();
                reading.walk(parser, reading.path, "");
            }
        }
    }

    /** A parser with bounds. */
    static JsonParser parser(Reader text, int longestText) throws IOException {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxStringLength(longestText)
                        .build())
                .build()
                .createParser(text);
    }

    /** Goes down the path to the traces and passes over all that lies beside it, but for the texts asked for. */
    private void walk(Bounded parser, List<String> path, String at) throws IOException {
        if (path.isEmpty()) {
            if (parser.currentToken() == JsonToken.START_ARRAY) {
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    take(parser);
                }
            } else {
                take(parser);
            }
        } else if (parser.currentToken() == JsonToken.START_OBJECT) {
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                var name = parser.currentName();
                parser.nextToken();
                if (name.equals(path.get(0))) {
                    walk(parser, path.subList(1, path.size()), at + JsonWords.segment(name));
                } else {
                    look(parser, at + JsonWords.segment(name));
                }
            }
        } else {
            pass(parser);
        }
    }

    private void look(Bounded parser, String at) throws IOException {
        if (parser.currentToken().isScalarValue() && above.contains(at)) {
            seen.put(
                    at,
                    parser.currentToken() == JsonToken.VALUE_NULL
                            ? ""
                            : parser.getText().strip());
        } else if (parser.currentToken() == JsonToken.START_OBJECT
                && above.stream().anyMatch(path -> path.startsWith(at + '/'))) {
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                var name = parser.currentName();
                parser.nextToken();
                look(parser, at + JsonWords.segment(name));
            }
        } else {
            pass(parser);
        }
    }

    private static void pass(Bounded parser) throws IOException {
        parser.beginPassing();
        parser.skipChildren();
    }

    private void take(Bounded parser) throws IOException {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            pass(parser);
            return;
        }
        int line = Math.max(1, parser.currentTokenLocation().getLineNr());
        parser.beginTrace();
        JsonNode trace = mapper.readTree(parser);
        parser.beginPassing();
        taker.take(trace, line, seen);
    }

    /** Refuses a trace of more tokens than any has before it fills the memory. */
    private static final class Bounded extends JsonParserDelegate {
        private final long most;
        private boolean inTrace;
        private long tokens;

        Bounded(JsonParser parser, long most) {
            super(parser);
            this.most = most;
        }

        void beginTrace() {
            inTrace = true;
            tokens = 0;
        }

        void beginPassing() {
            inTrace = false;
        }

        @Override
        public JsonToken nextToken() throws IOException {
            if (inTrace && ++tokens > most) {
                throw new StreamConstraintsException("a trace has more than " + most + " parts");
            }
            return super.nextToken();
        }
    }
}
