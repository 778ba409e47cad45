/**
 * Whether a process or a machine can keep its limits, with bounds, a word on control beside it, and percentiles where the
 * normal distribution does not hold.
 *
 * <p>Read in this order: {@link org.tautlog.spc.capability.CapabilityStudy}, {@link
 * org.tautlog.spc.capability.Capability}, {@link org.tautlog.spc.capability.SpecLimits}, {@link
 * org.tautlog.spc.capability.Stability}, {@link org.tautlog.spc.capability.AndersonDarling}, {@link org.tautlog.spc.capability.TimeModel} (ISO 22514-2), {@link
 * org.tautlog.spc.capability.ShapePlot}.
 *
 * <p>May import: {@code spc}, {@code spc.chart}, {@code spc.change}, {@code spc.compare}, {@code spc.outlier}. Refuses to: give an index without its stability word.
 */
@NullMarked
package org.tautlog.spc.capability;

import org.jspecify.annotations.NullMarked;
