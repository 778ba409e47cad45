/**
 * The commands that read logs, and what every other command that reads them shares.
 *
 * <p>Read first: {@link LogCommands}, {@link Judging}, {@link JudgingRequest}, {@link LogInputs}, {@link LayoutOption}, {@link SpecificationSearch}, {@link ReadingAccount}. May import: terminal of the command line, and every room below it. Refuses to: compute.
 */
@NullMarked
package org.tautlog.cli.logs;

import org.jspecify.annotations.NullMarked;
