/**
 * The commands that review a shift, from logs or the archive, once or as it runs.
 *
 * <p>Read first: {@link ShiftCommands}. May import: logs, evidence, terminal of the command line, and every room below it. Refuses to: compute.
 */
@NullMarked
package org.tautlog.cli.shift;

import org.jspecify.annotations.NullMarked;
