/**
 * All that comes from the plant's files: log layouts, reading and sniffing, provenance, rejects, joint-specification files; the log writer beside the reader.
 *
 * <p>May import: joint, trace, problem. Refuses to: judge.
 */
@NullMarked
package org.tautlog.intake;

import org.jspecify.annotations.NullMarked;
