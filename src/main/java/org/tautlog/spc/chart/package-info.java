/**
 * Control charts of one stream: limits from data (phase 1) kept as plain records, and those limits held against new data
 * (phase 2).
 *
 * <p>Read in this order: {@link org.tautlog.spc.chart.IndividualsChart}, {@link org.tautlog.spc.chart.RunRule}, {@link
 * org.tautlog.spc.chart.Chart}, {@link org.tautlog.spc.chart.PhaseOne}, {@link org.tautlog.spc.chart.SubgroupChart}, {@link
 * org.tautlog.spc.chart.ChartConstants}; {@link org.tautlog.spc.chart.PhaseOneLoop} for charts of one's own, {@link
 * org.tautlog.spc.chart.RunningLimits} for series too long to keep. Index and count start at
 * 0 in {@code index} and at 1 in sentences.
 *
 * <p>May import: {@code spc}. Refuses to: pool streams, alter data, or leave out a point without saying so.
 */
@NullMarked
package org.tautlog.spc.chart;

import org.jspecify.annotations.NullMarked;
