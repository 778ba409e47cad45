package org.tautlog.archive;

/**
 * How much an archive holds.
 *
 * @param batches folders of rows
 * @param sources files imported
 * @param serials engines
 * @param traces tightenings
 * @param judgements verdicts, of every version of every specification
 * @param problems what the imports met and could not keep as a trace
 * @param decisions decisions, superseded ones too
 */
public record Counts(int batches, int sources, int serials, int traces, int judgements, int problems, int decisions) {}
