/**
 * Charts as small self-contained SVG: one trace against its peers, one control chart, the curves of a window study.
 *
 * <p>Public types in reading order: {@link org.tautlog.report.chart.TraceChart},
 * {@link org.tautlog.report.chart.ControlChart}, {@link org.tautlog.report.chart.ControlScale},
 * {@link org.tautlog.report.chart.BandChart},
 * {@link org.tautlog.report.chart.WarmUpChart},
 * {@link org.tautlog.report.chart.SeriesChart} (control charts in a file of their own),
 * {@link org.tautlog.report.chart.CapabilityChart}, {@link org.tautlog.report.chart.GaugeChart}.
 *
 * <p>May import: review and below; alone in the house it sees JFreeChart, AWT and Batik. Refuses to: compute, or fix a
 * colour: the page's style decides by custom properties, so that one drawing serves light, dark and paper.
 */
@NullMarked
package org.tautlog.report.chart;

import org.jspecify.annotations.NullMarked;
