/**
 * The one chain of everything that ever happened to an archive: batches kept, batches merged, decisions taken, and the
 * seals that a key holder sets on it.
 *
 * <p>Public types in reading order: {@link org.tautlog.archive.ledger.Decision},
 * {@link org.tautlog.archive.ledger.DecisionAction}, {@link org.tautlog.archive.ledger.LedgerEntry},
 * {@link org.tautlog.archive.ledger.LedgerEvent}, {@link org.tautlog.archive.ledger.Ledger},
 * {@link org.tautlog.archive.ledger.FolderLock}, {@link org.tautlog.archive.ledger.Seal},
 * {@link org.tautlog.archive.ledger.SealKeys}, {@link org.tautlog.archive.ledger.JsonObject}.
 *
 * <p>The ledger is a text file, {@code ledger.jsonl}: one entry a line, in JSON, never edited. Each entry holds its
 * number, the hash of the entry before it ({@code previous}) and its own ({@code sha256}), which is the SHA-256 of its
 * line up to, and without, the text {@code ,"sha256":}; nothing but that hash may follow. A last line that lacks only its
 * end of line counts. One that is not whole is an entry whose writer died: it never counted, readers are told of it, and
 * the next writer cuts it off.
 *
 * <p>May import: problem. Refuses to: know what a batch holds.
 */
@NullMarked
package org.tautlog.archive.ledger;

import org.jspecify.annotations.NullMarked;
