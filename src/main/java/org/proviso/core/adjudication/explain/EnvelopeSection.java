package org.proviso.core.adjudication.explain;

import org.proviso.core.Code;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.DateWords;

/** What the envelope says. */
final class EnvelopeSection {

    static final String PROTECTED = "protected address";

    private EnvelopeSection() {}

    static void write(CaseReport report, TextPage page) {
        Envelope.Affirmation said = report.envelope().affirmation();
        boolean hide = report.voter().map(Voter::confidential).orElse(false);
        page.title("What the envelope says");
        page.labelled("Name", said.name().listed());
        page.labelled("Former name", said.formerName());
        page.labelled("Date of birth", born(said));
        page.labelled(
                "Address",
                said.residence().isBlank()
                        ? state(said, Envelope.Field.RESIDENCE_ADDRESS_LINE)
                        : hide ? PROTECTED : said.residence().oneLine());
        page.labelled(
                "Former address",
                said.former().isBlank() ? "" : hide ? PROTECTED : said.former().oneLine());
        page.labelled("Date moved", said.movedOn() == null ? "" : DateWords.date(said.movedOn()));
        page.labelled("Last 4 of SSN", said.idLast4());
        page.labelled("Driver's license", said.driversLicense());
        handling(report.envelope().handling(), page);
    }

    private static String born(Envelope.Affirmation said) {
        if (said.birthDate() != null) {
            return DateWords.date(said.birthDate());
        }
        return said.birthDateAsWritten().isBlank()
                ? state(said, Envelope.Field.DATE_OF_BIRTH)
                : "\"" + said.birthDateAsWritten() + "\", as written; not a date";
    }

    private static void handling(Envelope.Handling handling, TextPage page) {
        page.labelled("ID shown", shown(handling));
        page.labelled(
                "Mail ballot", handling.mailBallotSurrendered().isYes() ? "surrendered at the voting location" : "");
        page.labelled(
                "Signed",
                "voter " + spelled(handling.voterSigned()) + ", poll worker " + word(handling.officialSigned()));
        page.labelled("Envelope", spelled(handling.condition()));
        page.labelled("Official's note", handling.officialNote());
    }

    private static String shown(Envelope.Handling handling) {
        String kind = handling.idKind().isEmpty() ? "" : ", " + DateWords.code(handling.idKind());
        String declared =
                handling.declaration().isEmpty() ? "" : "; declaration of " + DateWords.code(handling.declaration());
        return word(handling.idShown()) + kind + declared;
    }

    private static String state(Envelope.Affirmation said, Envelope.Field field) {
        Envelope.FieldState state = said.fieldStates().get(field);
        return state == null ? "empty" : spelled(state);
    }

    private static String word(YesNo answer) {
        return answer == YesNo.UNKNOWN ? "not stated" : answer.isYes() ? "yes" : "no";
    }

    private static String spelled(Code code) {
        return code.code().equals("unknown") ? "not stated" : code.code().replace('_', ' ');
    }
}
