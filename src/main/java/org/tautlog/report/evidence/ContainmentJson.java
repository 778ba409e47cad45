package org.tautlog.report.evidence;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.problem.Problem;
import org.tautlog.report.judged.JudgementJson;
import org.tautlog.report.page.Provenance;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Rounded;
import org.tautlog.report.words.Times;
import org.tautlog.report.words.Word;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.EngineHold;
import org.tautlog.review.stream.Change;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.trace.TraceIdentity;

/** A containment as one JSON object. Keys never change their meaning; an end that is open is null. */
public final class ContainmentJson {
    private static final int CHANGE_DECIMALS = 5;

    private ContainmentJson() {}

    /**
     * Writes a containment.
     *
     * @param hold the engines that are held
     * @param whole the judgements of {@link #shown}, by what they are in brief
     * @param provenance what made it
     * @return one JSON object without a line end
     */
    public static String of(EngineHold hold, Map<BriefJudgement, Judgement> whole, Provenance provenance) {
        return JsonFields.line(json -> {
            json.text("suspicion", hold.suspicion());
            json.texts("engines", hold.engines().stream());
            json.list("brackets", hold.places(), containment -> bracket(json, containment, whole));
            json.list(
                    "decisions",
                    hold.decisions().values().stream().flatMap(List::stream).toList(),
                    kept -> {
                        json.text("serial", kept.decision().serial());
                        DossierJson.decision(json, kept);
                    });
            json.texts("problems", hold.problems().stream().map(Problem::sentence));
            json.text("program", provenance.programVersion());
            json.text("safety", SafetyNote.TEXT);
        });
    }

    /**
     * The tightenings that the object shows in whole, as it lists the first of each bracket alone.
     *
     * @param containments the brackets
     * @return the tightenings
     */
    public static List<BriefJudgement> shown(List<Containment> containments) {
        return containments.stream()
                .flatMap(one -> one.contained().stream().limit(JsonFields.MOST))
                .flatMap(one -> one.judgement().stream())
                .distinct()
                .toList();
    }

    private static void bracket(JsonFields json, Containment one, Map<BriefJudgement, Judgement> whole)
            throws IOException {
        json.text("place", one.place());
        json.text("cause", one.cause());
        end(json, "lastGood", one.lastGood().orElse(null));
        end(json, "firstGood", one.firstGood().orElse(null));
        change(json, one);
        explained(json, one);
        json.count("goodRun", Containment.GOOD_RUN);
        json.count("clockMarginMinutes", one.clockMargin().toMinutes());
        json.count("searched", one.searched());
        json.worst("contained", one.contained(), contained -> contained(json, contained, whole));
        json.list("lots", one.lots(), lot -> {
            json.text("lot", lot.lot());
            json.count("inside", lot.inside());
            json.count("outside", lot.outside());
            json.count("enginesOutside", lot.enginesOutside());
            json.texts("stationsOutside", lot.stationsOutside().stream());
        });
    }

    private static void change(JsonFields json, Containment one) throws IOException {
        if (one.change().isEmpty()) {
            json.none("change");
            return;
        }
        var change = one.change().get();
        json.object("change", () -> {
            json.text("feature", change.feature().key());
            json.rounded("before", Rounded.of(change.point().before(), CHANGE_DECIMALS));
            json.rounded("after", Rounded.of(change.point().after(), CHANGE_DECIMALS));
            json.text("serial", change.first().serial());
            json.count("earliest", change.point().earliest());
            json.count("latest", change.point().latest());
            json.text("earliestSerial", change.earliest().serial());
            json.text("latestSerial", change.latest().serial());
            back(json, one.back().orElse(null));
        });
    }

    private static void explained(JsonFields json, Containment one) throws IOException {
        if (one.explained().isEmpty()) {
            json.none("explained");
            return;
        }
        var met = one.explained().get();
        var step = met.word();
        json.object("explained", () -> {
            json.text("from", Times.iso(step.from()));
            json.text("by", step.by());
            json.text("why", step.why());
            json.texts("features", met.features().stream().map(ChartedFeature::key));
            json.yes("meetsChange", met.meetsChange());
        });
    }

    private static void back(JsonFields json, @Nullable Change back) throws IOException {
        if (back == null) {
            json.none("back");
            return;
        }
        json.object("back", () -> {
            json.text("serial", back.first().serial());
            json.count("earliest", back.point().earliest());
            json.count("latest", back.point().latest());
            json.text("earliestSerial", back.earliest().serial());
            json.text("latestSerial", back.latest().serial());
        });
    }

    private static void end(JsonFields json, String key, @Nullable TraceIdentity identity) throws IOException {
        if (identity == null) {
            json.none(key);
            return;
        }
        json.object(key, () -> {
            json.text("serial", identity.serial());
            json.text("bolt", identity.bolt());
            json.count("attempt", identity.attempt());
            var time = identity.time();
            json.text("time", time == null ? null : Times.iso(time));
        });
    }

    private static void contained(JsonFields json, Contained one, Map<BriefJudgement, Judgement> whole)
            throws IOException {
        json.text("serial", one.serial());
        json.text("reason", Word.of(one.reason()));
        var judgement = one.judgement().map(whole::get);
        if (judgement.isPresent()) {
            json.raw("judgement", JudgementJson.line(judgement.get()));
        } else {
            json.none("judgement");
        }
    }
}
