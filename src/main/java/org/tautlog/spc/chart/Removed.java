package org.tautlog.spc.chart;

/**
 * A point that phase 1 left out of the limits because it lay beyond them. It stays in the data and on the chart.
 *
 * @param kind the chart on which it lay outside
 * @param index place in the series, from 0
 * @param value what lay outside
 * @param lower lower limit of that round
 * @param upper upper limit of that round
 * @param round the round in which it was left out, from 1
 */
public record Removed(ChartKind kind, int index, double value, double lower, double upper, int round) {}
