package org.tautlog.report.paper;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** What a PDF breaks of ISO 14289-1 (PDF/UA-1), as far as a machine can tell, by the veraPDF library. */
public final class PdfUa {
    private static final int SHOWN = 20;

    private PdfUa() {}

    /** The clauses that are broken, with the place; empty where the document conforms. */
    public static List<String> broken(byte[] pdf) throws IOException {
        VeraGreenfieldFoundryProvider.initialise();
        var foundry = Foundries.defaultInstance();
        try (var parser = foundry.createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                var validator = foundry.createValidator(PDFAFlavour.PDFUA_1, SHOWN, false, false, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .map(check -> check.getRuleId().getClause() + " " + check.getMessage() + " "
                            + check.getLocation().getContext())
                    .toList();
        } catch (VeraPDFException e) {
            throw new IOException(e);
        }
    }
}
