package org.tautlog.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;

/** Everything that the containment's template shows, as words. */
final class ContainmentModel {
    private static final int MOST_ENGINES = 200;
    private static final int MOST_ROWS = 400;

    private ContainmentModel() {}

    static Map<String, Object> of(
            String suspicion, List<Containment> containments, Provenance provenance, Evidence evidence) {
        var engines = ContainmentAnswers.engines(containments);
        var model = new HashMap<String, Object>();
        model.put("suspicion", ShiftAnswers.capital(suspicion));
        model.put("engineCount", engines.size());
        model.put("engineWord", engines.size() == 1 ? "engine" : "engines");
        model.put("engines", engines.subList(0, Math.min(MOST_ENGINES, engines.size())));
        model.put("enginesLeft", Math.max(0, engines.size() - MOST_ENGINES));
        model.put("brackets", brackets(containments));
        model.put("safety", SafetyNote.TEXT);
        model.put("archive", provenance.specificationFile());
        model.put("evidence", Map.of("file", evidence.file(), "sha256", evidence.sha256()));
        model.put("program", provenance.programVersion());
        model.put("written", Times.minutes(provenance.writtenAt()));
        return model;
    }

    private static List<Map<String, Object>> brackets(List<Containment> containments) {
        var brackets = new ArrayList<Map<String, Object>>();
        int room = MOST_ROWS;
        for (var one : containments) {
            int shown = Math.min(room, one.contained().size());
            room -= shown;
            brackets.add(Map.of(
                    "title", ContainmentAnswers.title(one),
                    "held",
                            Figures.count(one.engines().size(), "engine", "engines") + ", "
                                    + one.contained().size() + " of " + one.searched() + " tightenings",
                    "span", ContainmentAnswers.bracket(one),
                    "margins", ContainmentAnswers.margins(one),
                    "lots", ContainmentAnswers.lots(one),
                    "rows",
                            one.contained().subList(0, shown).stream()
                                    .map(ContainmentModel::row)
                                    .toList(),
                    "rowsLeft", one.contained().size() - shown));
        }
        return brackets;
    }

    private static Map<String, Object> row(Contained one) {
        return one.judgement()
                .map(judgement -> row(one, judgement))
                .orElse(Map.of("serial", one.serial(), "why", one.reason().words(), "recorded", false));
    }

    private static Map<String, Object> row(Contained one, BriefJudgement judgement) {
        var identity = judgement.identity();
        var time = identity.time();
        return Map.of(
                "serial", one.serial(),
                "why", one.reason().words(),
                "recorded", true,
                "verdict", judgement.verdict().word(),
                "bolt", identity.bolt(),
                "attempt", identity.attempt(),
                "time", time == null ? "–" : Times.minutes(time),
                "lot", identity.boltLot(),
                "finding",
                        judgement.findings().isEmpty()
                                ? ""
                                : judgement.findings().get(0).title());
    }
}
