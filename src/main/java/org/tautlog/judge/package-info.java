/**
 * One trace held against the window and the fault signatures: findings and verdict.
 *
 * <p>May import: signature, joint, trace. Refuses to: see peers: that is the review's.
 */
@NullMarked
package org.tautlog.judge;

import org.jspecify.annotations.NullMarked;
