/**
 * All that comes from the plant's files: reading logs with their provenance and rejects, and the log writer beside the
 * reader. How logs lie: {@code intake.layout}, in JSON {@code intake.json}. Joint-specification files: {@code intake.specification}.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.LogReader}, {@link org.tautlog.intake.ReadOptions},
 * {@link org.tautlog.intake.ReadBounds}, {@link org.tautlog.intake.TraceSink},
 * {@link org.tautlog.intake.ReadSummary}, {@link org.tautlog.intake.Tally}; {@link org.tautlog.intake.LayoutProposal}; {@link org.tautlog.intake.LogWriter}.
 *
 * <p>How a log becomes traces: {@code LogFinder} finds files, {@code FilesAhead} has a {@code FileReader} hash and unpack
 * several at once, {@code TextLogs} tells encoding and layout, {@code FilePerTrace}, {@code LongTable} or
 * {@code RowPerTrace} gathers rows into a {@code TraceDraft}; in its file's turn {@code TraceGate} lets it through or rejects
 * it, {@code ReadLedger} keeps the account.
 *
 * <p>May import: joint, trace, problem. Refuses to: judge.
 */
@NullMarked
package org.tautlog.intake;

import org.jspecify.annotations.NullMarked;
