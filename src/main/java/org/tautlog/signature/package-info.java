/**
 * What one curve says: zones, snug point, elastic line, yield onset, clamp-load estimate.
 *
 * <p>May import: joint, trace. Refuses to: compare a curve with its peers.
 */
@NullMarked
package org.tautlog.signature;

import org.jspecify.annotations.NullMarked;
