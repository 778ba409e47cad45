/**
 * Bolt, layers, materials and friction; stiffness, preload, yield and warm-up.
 *
 * <p>May import: nothing of ours. Refuses to: read or write files.
 */
@NullMarked
package org.tautlog.joint;

import org.jspecify.annotations.NullMarked;
