package org.tautlog.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tautlog.archive.ledger.JsonObject;

/**
 * What a batch holds, written into it before it counts: {@code manifest.json}.
 *
 * @param schemaVersion version of the tables
 * @param program version of the program that wrote the batch
 * @param time when it was written, as the writer's clock said
 * @param sources the files whose traces it brings
 * @param judged which sources were judged, and by what
 * @param parts the rows that it holds, by the batch that first brought them
 * @param files every other file of the batch
 * @param replaces names of the batches whose rows it holds and whose place it takes; empty for a batch as imported
 * @param ledgerHead hash of the entry that its own follows in the chain, in lower-case hex; empty while it is being
 *     written, and in batches of programs that did not name it
 */
record Manifest(
        int schemaVersion,
        String program,
        String time,
        List<SourceFile> sources,
        List<JudgedSource> judged,
        List<Part> parts,
        List<DataFile> files,
        List<String> replaces,
        String ledgerHead) {
    /** The name of the file. */
    static final String FILE_NAME = "manifest.json";

    Manifest {
        sources = List.copyOf(sources);
        judged = List.copyOf(judged);
        parts = List.copyOf(parts);
        files = List.copyOf(files);
        replaces = List.copyOf(replaces);
    }

    /**
     * A source that was judged.
     *
     * @param source hash of the source file
     * @param specification name of the specification
     * @param version its version
     * @param specificationSha256 hash of its file's bytes; empty where it was not a file
     * @param program version of the program that judged
     */
    record JudgedSource(
            String source, String specification, String version, String specificationSha256, String program) {}

    /**
     * Rows of one table that came in with one batch.
     *
     * @param table the table
     * @param batch the batch that brought them
     * @param rows how many
     * @param digest their digest, see {@link org.tautlog.archive.table.RowHash#ofRows}
     */
    record Part(String table, String batch, int rows, String digest) {}

    /**
     * A file of the batch.
     *
     * @param name its name in the batch's folder
     * @param table the table whose rows it holds; empty for a file that is not a table
     * @param rows how many rows it holds
     * @param bytes its length
     * @param sha256 hash of its bytes, in lower-case hex
     * @param firstSerial least serial of its rows; empty where they have none
     * @param lastSerial greatest serial of its rows
     * @param firstTime earliest {@code time_utc} of its rows; empty where they have none
     * @param lastTime latest of them
     */
    record DataFile(
            String name,
            String table,
            int rows,
            long bytes,
            String sha256,
            String firstSerial,
            String lastSerial,
            String firstTime,
            String lastTime) {}

    /** Made by the first that writes: whoever reads does not wait for it. */
    private static final class Writer {
        private static final ObjectWriter PRETTY = new ObjectMapper().writer(SerializationFeature.INDENT_OUTPUT);
    }

    /** The same, committed when the chain ended with an entry of that hash. */
    Manifest following(String head) {
        return new Manifest(schemaVersion, program, time, sources, judged, parts, files, replaces, head);
    }

    byte[] toJson() {
        try {
            return (Writer.PRETTY.writeValueAsString(this) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a manifest is always JSON", e);
        }
    }

    /** An older program skips what it does not know: the schema version says whether it may read on. */
    static Manifest parse(byte[] json) {
        try {
            var manifest = JsonObject.parse(new String(json, StandardCharsets.UTF_8));
            return new Manifest(
                    (int) manifest.whole("schemaVersion"),
                    manifest.text("program"),
                    manifest.text("time"),
                    manifest.objects("sources", source -> new SourceFile(source.text("file"), source.text("sha256"))),
                    manifest.objects("judged", Manifest::judged),
                    manifest.objects("parts", Manifest::part),
                    manifest.objects("files", Manifest::file),
                    manifest.texts("replaces"),
                    manifest.text("ledgerHead"));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("the manifest cannot be read: " + e.getMessage(), e);
        }
    }

    private static JudgedSource judged(JsonObject judged) {
        return new JudgedSource(
                judged.text("source"),
                judged.text("specification"),
                judged.text("version"),
                judged.text("specificationSha256"),
                judged.text("program"));
    }

    private static Part part(JsonObject part) {
        return new Part(part.text("table"), part.text("batch"), (int) part.whole("rows"), part.text("digest"));
    }

    private static DataFile file(JsonObject file) {
        return new DataFile(
                file.text("name"),
                file.text("table"),
                (int) file.whole("rows"),
                file.whole("bytes"),
                file.text("sha256"),
                file.text("firstSerial"),
                file.text("lastSerial"),
                file.text("firstTime"),
                file.text("lastTime"));
    }

    int rows(String table) {
        return files.stream()
                .filter(file -> file.table().equals(table))
                .mapToInt(DataFile::rows)
                .sum();
    }
}
