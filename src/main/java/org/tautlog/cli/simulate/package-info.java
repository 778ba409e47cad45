/**
 * The command that makes logs of the simulated line, and what it writes.
 *
 * <p>Read first: {@link SimulateCommands}. May import: terminal of the command line, and every room below it. Refuses to: compute.
 */
@NullMarked
package org.tautlog.cli.simulate;

import org.jspecify.annotations.NullMarked;
