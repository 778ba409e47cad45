/**
 * A simulated assembly line: demo traces and the truth about them.
 *
 * <p>May import: joint, trace. Refuses to: write files.
 */
@NullMarked
package org.tautlog.line;

import org.jspecify.annotations.NullMarked;
