/**
 * Control charts, run rules, capability, outliers and change points for many parallel streams: plain arrays in, values out.
 *
 * <p>May import: nothing of ours. Refuses to: know what a tightening is.
 */
@NullMarked
package org.tautlog.spc;

import org.jspecify.annotations.NullMarked;
