/**
 * The commands of the kept evidence.
 *
 * <p>Read first: {@link EvidenceCommands}, {@link ArchiveOption}, {@link ArchivedSpecifications}, {@link ImportRun}. May import: logs, terminal of the command line, and every room below it. Refuses to: compute.
 */
@NullMarked
package org.tautlog.cli.evidence;

import org.jspecify.annotations.NullMarked;
