package org.tautlog.report.shift;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Problem;
import org.tautlog.report.judged.EngineClampLoadJson;
import org.tautlog.report.judged.ShapesJson;
import org.tautlog.report.page.SafetyNote;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Sentence;
import org.tautlog.review.FirstPass;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.VerdictCounts;

/**
 * All that a shift's page says as one JSON object, for programs; only the curves and the charts' single points are left out.
 * Keys never change their meaning; a number or time that there is none of is null. Numbers of a feature are in the unit that
 * its name ends in. Lists that grow with the tightenings (held, outliers, unusual, lots, engineClampLoad) end after 500 entries;
 * beside each stands, as heldLeft and so on, how many are left out. verdicts.csv has every tightening.
 *
 * <pre>
 * specification, version, tightenings, engines, start and end (of the shift)
 * verdicts      {conforming, ...}, firstPass {conforming, attempts, share}, held [serials], open (other engines with
 *               something to look at)
 * read          {files, ignored, kept, rejected, problems [sentences], assumptions [sentences]}
 * actions[]     findings [codes; none where a spindle or station is off], where, action; in the order in which to do them
 * findings[]    code, severity, tightenings, leading (how often it is the first finding), most on station, spindle,
 *               there, streams, lots [], first, last
 * spindles[]    station, spindle, verdicts, firstPass, medians of finalTorqueNm, torqueRateNmPerDeg, turnDeg
 * listed[]      rank, serial, bolt, station, spindle, attempt, verdict, findings [codes], shape, whyNoShape; verdicts.csv
 *               has them all
 * falseAlarms   charts, points, seen and expected signals by rules, averages, of one spindle and by shape, series searched
 *               for a step apart from the others, levelSeriesSearched for a level that moved
 * streams[]     station, spindle, feature, n, setAside, median, robustDeviation, offset (robust deviations from the
 *               station's other spindles), moved, centre, lower, upper (control limits), basis, signals, averageSignals,
 *               cp, cpk, pp and ppk {value, low, high}, shape, outside {counted, foretold, low, high}, control,
 *               whyNoCapability, outliers [serials]
 * changes[]     station, spindle, feature, before, after, size, sizeLow, sizeHigh, first, firstTime, earliest, latest, p,
 *               level (p must not exceed it), alike, ofStreams
 * ownShifts[]   station, spindle, feature, holds, adjustedP, size, sizeLow, sizeHigh, first, firstTime, earliest, latest,
 *               onChart
 * cases[]       station, spindle, features []
 * causes[]      pattern, against, what, named (a cause or null), verdict, check, separations [one, other, check, ifOne,
 *               ifOther], whyNot, pair (the likeliest two at once), other and chance (likelihoods), ranked [cause,
 *               likelihood, size, unit, clues [cue, unit, seen, foretold, spreads, agrees]]; likeliest first
 * unusual[]     serial, bolt, station, spindle, distance, limit, mostBy
 * shapes        {compared (conforming curves), withoutShape, streams [station, spindle, bolt, peers, past, learning, compared,
 *               leaving], outliers [serial, bolt, station, spindle, adjustedP, shape {peers, leaves, distance, limit, p,
 *               atDeg, fromDeg, toDeg (past the elastic origin), excessNm, zone}], outliersLeft}
 * lots[]        lot, feature, tightenings, difference, low, high, spindles, alike, adjustedP, holds
 * engineClampLoad[] serial, bolts, withoutEstimate, lowestKN, lowestBolt, meanKN, spreadKN; weakest first
 * sincePrevious {tests, notCompared, features [station, spindle, feature, before, after, shift, low, high,
 *               levelAdjustedP, spreadAdjustedP, levelHolds, spreadHolds], shares [station, spindle, before {conforming,
 *               attempts, share}, now {...}]} or null
 * </pre>
 */
public final class ShiftJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private ShiftJson() {}

    /**
     * Writes the figures.
     *
     * @param review what was found
     * @param out where to; left open
     * @throws IOException where it cannot be written
     */
    public static void write(ShiftReview review, Writer out) throws IOException {
        var generator = FACTORY.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        generator.useDefaultPrettyPrinter();
        var json = new JsonFields(generator);
        generator.writeStartObject();
        counts(json, review);
        read(json, review);
        json.list("actions", actions(review), action -> {
            json.texts("findings", action.findings.stream());
            json.text("where", action.where);
            json.text("action", action.action);
        });
        findings(json, review);
        spindles(json, review);
        listed(json, review);
        StreamsJson.write(json, review);
        ShapesJson.shift(json, review.shapes());
        clampLoads(json, review);
        StreamsJson.sincePrevious(json, review.sincePrevious());
        json.text("safety", SafetyNote.TEXT);
        generator.writeEndObject();
        generator.close();
    }

    private static void counts(JsonFields json, ShiftReview review) throws IOException {
        json.text("specification", review.specification().name());
        json.text("version", review.specification().version());
        json.count("tightenings", review.counts().total());
        json.count("engines", review.engines());
        json.time("start", review.first());
        json.time("end", review.last());
        verdicts(json, review.counts());
        firstPass(json, review.firstPass());
        json.worstTexts("held", review.enginesHeld());
        json.count("open", review.enginesOpen());
    }

    private static void verdicts(JsonFields json, VerdictCounts counts) throws IOException {
        json.object("verdicts", () -> {
            for (var verdict : Verdict.values()) {
                json.count(verdict.word(), counts.of(verdict));
            }
        });
    }

    private static void firstPass(JsonFields json, FirstPass pass) throws IOException {
        json.share("firstPass", pass.conforming(), pass.attempts());
    }

    private static void read(JsonFields json, ShiftReview review) throws IOException {
        var imported = review.imported();
        json.object("read", () -> {
            json.count("files", imported.files());
            json.count("ignored", imported.filesIgnored());
            json.count("kept", imported.kept());
            json.count("rejected", imported.rejected());
            json.texts("problems", imported.problems().stream().map(Problem::sentence));
            json.texts("assumptions", imported.assumptions().stream().map(Problem::sentence));
        });
    }

    private static void findings(JsonFields json, ShiftReview review) throws IOException {
        json.list("findings", review.tallies(), tally -> {
            json.text("code", tally.code().word());
            json.text("severity", tally.severity().word());
            json.count("tightenings", tally.tightenings());
            json.count("leading", tally.leading());
            json.stream(tally.mostIn());
            json.count("there", tally.mostInCount());
            json.count("streams", tally.streams());
            json.texts("lots", tally.lots().stream());
            json.time("first", tally.first());
            json.time("last", tally.last());
        });
    }

    private static void spindles(JsonFields json, ShiftReview review) throws IOException {
        json.list("spindles", review.streams(), summary -> {
            json.stream(summary.stream());
            verdicts(json, summary.counts());
            firstPass(json, summary.firstPass());
            json.number("finalTorqueNm", summary.medianFinalTorqueNm());
            json.number("torqueRateNmPerDeg", summary.medianTorqueRateNmPerDeg());
            json.number("turnDeg", summary.medianTurnDeg());
        });
    }

    private static void listed(JsonFields json, ShiftReview review) throws IOException {
        json.list("listed", review.listed(), listed -> {
            var judgement = listed.judgement();
            json.count("rank", listed.rank());
            json.text("serial", judgement.identity().serial());
            json.text("bolt", judgement.identity().bolt());
            json.stream(listed.stream());
            json.count("attempt", judgement.identity().attempt());
            json.text("verdict", judgement.verdict().word());
            json.texts(
                    "findings", judgement.findings().stream().map(Finding::code).map(FindingCode::word));
            ShapesJson.one(json, listed.shape(), listed.shapeHasPlace());
        });
    }

    private static void clampLoads(JsonFields json, ShiftReview review) throws IOException {
        json.worst(EngineClampLoadJson.KEY, review.clampLoads(), load -> EngineClampLoadJson.write(json, load));
    }

    private record Act(List<String> findings, String where, String action) {}

    /** What to do about spindles and stations first, then about findings. */
    private static List<Act> actions(ShiftReview review) {
        var acts = new ArrayList<Act>();
        CauseWords.ofTools(review)
                .forEach(one -> acts.add(new Act(
                        List.of(),
                        one.what(),
                        Sentence.capital(CauseWords.verdict(one)) + ". " + CauseWords.check(one))));
        review.actions()
                .forEach(action -> acts.add(new Act(
                        action.codes().stream().map(FindingCode::word).toList(), action.where(), action.action())));
        return acts;
    }
}
