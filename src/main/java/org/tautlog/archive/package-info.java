/**
 * The kept evidence: traces, judgements and decisions, findable, whole, and provably what they were when they were kept.
 *
 * <p>An archive is a folder. {@code batches/} holds one folder per import, of Parquet files that never change and a
 * manifest that names them with their hashes; {@code ledger.jsonl} is the chain of what happened, see
 * {@link org.tautlog.archive.ledger}; the columns are those of {@link org.tautlog.archive.table}. The folder carries its
 * own description, {@code ARCHIVE.md}, with queries in plain SQL for whoever opens it without this program.
 *
 * <p>A batch comes to be in {@code staging/}, manifest and all, is forced to the disk, and counts from the moment at which
 * its folder is renamed into {@code batches/}: wholly or not at all, however its writer dies. Its line in the ledger
 * follows; where the writer died in between, the next writer enters it, and knows it by the end of the chain that its
 * manifest names: a batch that names another was put there, which is told, and is never entered. Writers take turns for
 * those last steps alone, and there see whether another brought the same sources meanwhile. Readers take no turns: they
 * list the manifests, read the files these name, and ask again where a merge took a file away meanwhile. They never search
 * by pattern, as a file that is cut short would spoil the answer to every question.
 *
 * <p>The ledger's entries name each batch by the hash of its manifest, the manifest names each file by its hash and the
 * rows of each import by a digest, and each entry names the one before it: so the last hash stands for every byte, and a
 * key holder can seal it. Merging small batches keeps that proof, as the merged one carries their manifests and its rows
 * still give their digests.
 *
 * <p>Public types in reading order: {@link org.tautlog.archive.Archive}, {@link org.tautlog.archive.Importer},
 * {@link org.tautlog.archive.SourceFile}, {@link org.tautlog.archive.SpecificationUsed},
 * {@link org.tautlog.archive.Stamp}, {@link org.tautlog.archive.Imported}, {@link org.tautlog.archive.ArchiveQuery},
 * {@link org.tautlog.archive.JudgementFilter}, {@link org.tautlog.archive.BriefFilter}, {@link org.tautlog.archive.KeptDecision},
 * {@link org.tautlog.archive.Counts}, {@link org.tautlog.archive.Tidied}, {@link org.tautlog.archive.Verification},
 * {@link org.tautlog.archive.SealCheck}, {@link org.tautlog.archive.ArchiveRefusal}.
 *
 * <p>May import: judge, signature, joint.window, trace, problem. Refuses to: forget; alter; judge.
 */
@NullMarked
package org.tautlog.archive;

import org.jspecify.annotations.NullMarked;
