package org.tautlog.spc.study;

import org.tautlog.spc.chart.Chart;

/**
 * One line of points in a panel.
 *
 * @param name what it plots, for readers
 * @param chart its points with their limits
 */
public record PanelLine(String name, Chart chart) {}
