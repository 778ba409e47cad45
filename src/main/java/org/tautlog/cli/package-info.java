/**
 * Commands, progress and exit codes; the only printer and the only clock.
 *
 * <p>May import: every room. Refuses to: compute.
 */
@NullMarked
package org.tautlog.cli;

import org.jspecify.annotations.NullMarked;
