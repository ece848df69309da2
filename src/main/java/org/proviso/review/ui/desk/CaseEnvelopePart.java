package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.List;
import org.proviso.core.Code;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.PersonName;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.intake.cure.CureScan;
import org.proviso.ui.LabeledValues;
import org.proviso.ui.Links;
import org.proviso.ui.PageSection;
import org.proviso.ui.UsDates;

/** The left part: what the voter wrote, what the poll workers noted, and the signature next to the one on file. */
final class CaseEnvelopePart extends Div {

    private static final String PROTECTED = "protected address";

    CaseEnvelopePart(CasePageContext desk, boolean signatureHidden) {
        addClassName("part");
        getElement().setAttribute("tabindex", "0");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", "What the envelope says");
        Envelope envelope = desk.file().report().envelope();
        boolean hidden = desk.file().isProtected() && !desk.file().showsProtectedAddress();
        LabeledValues facts = said(envelope.affirmation(), hidden);
        handling(envelope.handling(), facts);
        PageSection says = new PageSection("says", "What the envelope says", facts);
        if (desk.mayWork()) {
            says.add(Links.link("Correct envelope", "intake/correct/" + envelope.envelopeNo()));
        }
        add(says, new SignatureStrip(desk, signatureHidden));
        List<CureScan> brought = desk.file().around().pictures().brought();
        if (!brought.isEmpty()) {
            add(brought(desk.key(), brought));
        }
    }

    /** Scans of what the voter brought, each opened beside the page. */
    private static PageSection brought(EnvelopeKey key, List<CureScan> scans) {
        PageSection section = new PageSection("brought", "What the voter brought");
        scans.forEach(scan -> {
            Anchor link = new Anchor(
                    "/images/" + key.electionId() + "/" + key.envelopeNo() + "/evidence/" + scan.cureNo() + "/"
                            + scan.number(),
                    scan.words());
            link.setRouterIgnore(true);
            link.setTarget("_blank");
            section.add(new Paragraph(link));
        });
        return section;
    }

    /** {@code hidden}: the voter is not settled yet, and the possible voter's address is protected by law. */
    private static LabeledValues said(Envelope.Affirmation said, boolean hidden) {
        LabeledValues facts = new LabeledValues();
        facts.add("Name", name(said.name()));
        filled(facts, "Former name", said.formerName());
        LocalDate born = said.birthDate();
        if (born == null && !said.birthDateAsWritten().isEmpty()) {
            facts.add("Date of birth", "\"" + said.birthDateAsWritten() + "\", as written; not a date");
        } else if (born == null) {
            facts.add("Date of birth", state(said, Envelope.Field.DATE_OF_BIRTH));
        } else {
            facts.number("Date of birth", UsDates.digits(born));
        }
        facts.add(
                "Address",
                said.residence().isBlank()
                        ? state(said, Envelope.Field.RESIDENCE_ADDRESS_LINE)
                        : hidden ? PROTECTED : said.residence().oneLine());
        filled(
                facts,
                "Former address",
                hidden && !said.former().isBlank() ? PROTECTED : said.former().oneLine());
        if (said.movedOn() != null) {
            facts.number("Moved on", UsDates.digits(said.movedOn()));
        }
        number(facts, "Last 4 of SSN", said.idLast4());
        number(facts, "Driver's license", said.driversLicense());
        filled(facts, "Party", said.party());
        return facts;
    }

    private static void handling(Envelope.Handling handling, LabeledValues facts) {
        String kind = handling.idKind().isEmpty() ? "" : ", " + DateWords.code(handling.idKind());
        String declared =
                handling.declaration().isEmpty() ? "" : "; declaration of " + DateWords.code(handling.declaration());
        facts.add("ID shown", word(handling.idShown()) + kind + declared);
        filled(facts, "Mail ballot", handling.mailBallotSurrendered().isYes() ? "surrendered at the polls" : "");
        facts.add("Signed", signed(handling));
        facts.add("Envelope condition", spelled(handling.condition()));
        filled(facts, "Poll worker", handling.sentHereByOfficial().isYes() ? "sent the voter here" : "");
        filled(facts, "Official's note", handling.officialNote());
    }

    private static String signed(Envelope.Handling handling) {
        String voter = switch (handling.voterSigned()) {
            case YES -> "voter";
            case MARK -> "voter, by mark" + (handling.markWitness().isYes() ? ", witnessed" : ", no witness");
            case NO -> "voter did not sign";
            case UNKNOWN -> "voter not stated";
        };
        return switch (handling.officialSigned()) {
            case YES -> voter + " and poll worker";
            case NO -> voter + "; poll worker did not sign";
            case UNKNOWN -> voter + "; poll worker not stated";
        };
    }

    private static String name(PersonName name) {
        return String.join(" ", name.first(), name.middle(), name.last(), name.suffix())
                .replaceAll(" +", " ")
                .strip();
    }

    private static void filled(LabeledValues facts, String term, String words) {
        if (!words.isBlank()) {
            facts.add(term, words);
        }
    }

    private static void number(LabeledValues facts, String term, String digits) {
        if (!digits.isBlank()) {
            facts.number(term, digits);
        }
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
