package org.tautlog.report.shift;

import java.io.IOException;
import org.tautlog.report.words.JsonFields;
import org.tautlog.report.words.Word;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.cause.RankedCause;

/** Why something differs, as fields of the shift's JSON object; {@link ShiftJson} names them all. */
final class CauseJson {
    private CauseJson() {}

    static void write(JsonFields json, Diagnosis one) throws IOException {
        json.text("pattern", Word.of(one.pattern()));
        json.text("against", Word.of(one.against()));
        json.text("what", one.what());
        json.text("named", one.named().map(named -> Word.of(named.cause())).orElse(null));
        json.text("verdict", CauseWords.verdict(one));
        json.text("check", CauseWords.check(one));
        json.list("separations", one.separations(), separation -> {
            json.text("one", Word.of(separation.one()));
            json.text("other", Word.of(separation.other()));
            json.text("check", separation.check().act(separation.pattern()));
            json.text("ifOne", separation.check().seen(separation.one()));
            json.text("ifOther", separation.check().seen(separation.other()));
        });
        json.text("whyNot", one.whyNot());
        json.texts("pair", one.pair().stream().map(Word::of));
        json.number("other", one.other());
        json.number("chance", one.chance());
        json.list("ranked", one.ranked(), ranked -> ranked(json, ranked));
    }

    private static void ranked(JsonFields json, RankedCause ranked) throws IOException {
        json.text("cause", Word.of(ranked.cause()));
        json.number("likelihood", ranked.likelihood());
        json.number("size", ranked.size());
        json.text(
                "unit", ranked.cause().unit().equals("%") ? "" : ranked.cause().unit());
        json.list("clues", ranked.clues(), clue -> {
            json.text("cue", Word.of(clue.cue()));
            json.text("unit", clue.cue().unit());
            json.number("seen", clue.seen());
            json.number("foretold", clue.foretold());
            json.number("spreads", clue.spreads());
            json.yes("agrees", clue.agrees());
        });
    }
}
