package org.tautlog.archive.table;

/**
 * A record out of the archive with what proves it.
 *
 * @param <T> the type of the record
 * @param value the record, equal to the one that was given to the archive
 * @param batch the batch that brought it in
 * @param sha256 the hash of its row, see {@link RowHash}
 */
public record Kept<T>(T value, String batch, String sha256) {}
