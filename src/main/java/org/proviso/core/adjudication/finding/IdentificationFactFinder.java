package org.proviso.core.adjudication.finding;

import java.util.Optional;
import org.proviso.core.Envelope;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.Voter;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.IdentificationFact;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;

/**
 * Was the identification rule met? The federal floor asks it of those who registered by mail and have not voted in a
 * federal election in the state, unless their number was matched (52 USC 21083(b)(1), (3)(B)); states may ask more.
 */
final class IdentificationFactFinder {

    private final Envelope.Handling handling;
    private final Optional<Voter> voter;
    private final DeadlineBook book;
    private final CuresByStamp cures;

    private IdentificationFactFinder(Envelope envelope, Optional<Voter> voter, DeadlineBook book, CuresByStamp cures) {
        this.handling = envelope.handling();
        this.voter = voter;
        this.book = book;
        this.cures = cures;
    }

    static Finding findFacts(Envelope envelope, Optional<Voter> voter, DeadlineBook book, CuresByStamp cures) {
        return new IdentificationFactFinder(envelope, voter, book, cures).find();
    }

    private Finding find() {
        if (handling.idShown().isYes()) {
            String kind = handling.idKind().isEmpty() ? "" : ": " + DateWords.code(handling.idKind());
            return found(IdentificationFact.SHOWN, EvidenceSource.ENVELOPE, "Identification was shown" + kind + ".");
        }
        return switch (asked()) {
            case NO ->
                found(
                        IdentificationFact.NOT_REQUIRED,
                        EvidenceSource.ROLL,
                        "The law does not require identification from this voter.");
            case UNKNOWN ->
                Finding.unknown(Evidence.of(
                        EvidenceSource.ROLL,
                        "The records do not show whether the law requires identification from this voter."));
            case YES -> required();
        };
    }

    private Finding required() {
        if (handling.idShown() == YesNo.UNKNOWN) {
            return Finding.unknown(Evidence.of(
                    EvidenceSource.ENVELOPE, "The envelope does not say whether identification was shown."));
        }
        if (!handling.declaration().isEmpty()
                && !book.pack().of(Rules.DECLARATION_EXCUSES).isFirm()) {
            return Finding.unknown(Evidence.of(
                    EvidenceSource.ENVELOPE,
                    "No identification; the voter swore a declaration. No source read and no county ruling says whether it"
                            + " excuses the voter."));
        }
        if (!handling.declaration().isEmpty() && book.pack().isYes(Rules.DECLARATION_EXCUSES)) {
            return found(
                    IdentificationFact.EXCUSED,
                    EvidenceSource.ENVELOPE,
                    "No identification; the voter swore a declaration (" + DateWords.code(handling.declaration())
                            + ").");
        }
        return cures.weigh(
                Ask.IDENTIFICATION,
                found(IdentificationFact.MISSING, EvidenceSource.ENVELOPE, "No identification was shown."),
                IdentificationFact.SUPPLIED_IN_TIME,
                IdentificationFact.SUPPLIED_LATE);
    }

    private YesNo asked() {
        return switch (book.pack().word(Rules.ID_REQUIRED_OF)) {
            case "nobody" -> YesNo.NO;
            case "everyone" -> YesNo.YES;
            case "first_time_mail" ->
                voter.map(IdentificationFactFinder::firstTimeByMail).orElse(YesNo.UNKNOWN);
            default -> YesNo.UNKNOWN;
        };
    }

    private static YesNo firstTimeByMail(Voter voter) {
        if (voter.numberMatched().isYes() || voter.idRequired().isNo() || voter.lastVotedOn() != null) {
            return YesNo.NO;
        }
        if (voter.idRequired().isYes()) {
            return YesNo.YES;
        }
        // An empty last vote may mean never, or a roll without that column: who came by mail is a question for a
        // person.
        RegistrationChannel channel = voter.registration().channel();
        return channel == null || channel == RegistrationChannel.MAIL ? YesNo.UNKNOWN : YesNo.NO;
    }

    private static Finding found(IdentificationFact word, EvidenceSource source, String words) {
        return Finding.of(word, Evidence.of(source, words));
    }
}
