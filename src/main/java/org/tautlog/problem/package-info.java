/**
 * What went wrong, where, what was expected and what to do; results that carry their problems.
 *
 * <p>May import: nothing of ours. Refuses to: decide, print or throw for anyone.
 */
@NullMarked
package org.tautlog.problem;

import org.jspecify.annotations.NullMarked;
