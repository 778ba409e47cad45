/**
 * The studies of any table of figures, ours or not.
 *
 * <p>Read first: {@link TableCommands}. May import: terminal of the command line, and every room below it. Refuses to: compute.
 */
@NullMarked
package org.tautlog.cli.table;

import org.jspecify.annotations.NullMarked;
