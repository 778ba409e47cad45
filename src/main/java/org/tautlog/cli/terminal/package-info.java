/**
 * What every command shares with the person before it: words, files, exit codes.
 *
 * <p>Read first: {@link ExitCode}, {@link Refusal}, {@link Terminal}, {@link Progress}, {@link ReportFile}, {@link ReportOptions},
 * {@link Moment}, {@link Counted}, {@link Program}, {@link Help}. May import: the values of the rooms below. Refuses to: know a command.
 */
@NullMarked
package org.tautlog.cli.terminal;

import org.jspecify.annotations.NullMarked;
