package org.tautlog.spc.chart;

/**
 * Where the process lies and how much it varies, drawn one above the other.
 *
 * @param location chart of single values or of means
 * @param spread chart of moving ranges, ranges or standard deviations
 */
public record ChartPair(Chart location, Chart spread) {}
