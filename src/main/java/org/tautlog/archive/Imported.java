package org.tautlog.archive;

import java.util.List;
import java.util.stream.Stream;

/**
 * What an import did.
 *
 * @param batch the batch that it made; empty where there was nothing new
 * @param traces how many traces it kept
 * @param judgements how many judgements it kept
 * @param newSources files whose traces it kept
 * @param knownSources files whose traces were there before, byte by byte
 */
public record Imported(
        String batch, int traces, int judgements, List<SourceFile> newSources, List<SourceFile> knownSources) {
    public Imported {
        newSources = List.copyOf(newSources);
        knownSources = List.copyOf(knownSources);
    }

    /**
     * Says whether the archive holds traces of a file.
     *
     * @param file the file as its user named it
     * @return whether it was brought now or was there before
     */
    public boolean holds(String file) {
        return Stream.concat(newSources.stream(), knownSources.stream())
                .anyMatch(source -> source.file().equals(file));
    }

    /** {@return whether everything was there before} */
    public boolean changedNothing() {
        return batch.isEmpty();
    }
}
