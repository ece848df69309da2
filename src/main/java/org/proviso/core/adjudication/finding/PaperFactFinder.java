package org.proviso.core.adjudication.finding;

import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.ChallengeFact;
import org.proviso.core.adjudication.facts.EnvelopeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FieldFact;
import org.proviso.core.adjudication.facts.OfficialErrorFact;
import org.proviso.core.adjudication.facts.OfficialSignatureFact;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.rules.Ask;

/** The facts the envelope itself shows, regardless of who the voter is. */
final class PaperFactFinder {

    private static final Map<Fact<FieldFact>, Envelope.Field> FIELDS = Map.of(
            Fact.FIELD_LAST_NAME, Envelope.Field.LAST_NAME,
            Fact.FIELD_FIRST_NAME, Envelope.Field.FIRST_NAME,
            Fact.FIELD_BIRTH_DATE, Envelope.Field.DATE_OF_BIRTH,
            Fact.FIELD_ADDRESS, Envelope.Field.RESIDENCE_ADDRESS_LINE,
            Fact.FIELD_CITY, Envelope.Field.CITY,
            Fact.FIELD_ZIP, Envelope.Field.ZIP,
            Fact.FIELD_ID_LAST4, Envelope.Field.ID_LAST4,
            Fact.FIELD_STATEMENTS, Envelope.Field.STATEMENTS_TICKED);

    private final Envelope envelope;
    private final CuresByStamp cures;
    private final FindingMap found = new FindingMap();

    private PaperFactFinder(Envelope envelope, CuresByStamp cures) {
        this.envelope = envelope;
        this.cures = cures;
    }

    static Map<Fact<?>, Finding> findFacts(Envelope envelope, Election election, CuresByStamp cures) {
        PaperFactFinder facts = new PaperFactFinder(envelope, cures);
        facts.condition();
        facts.voterSignature();
        facts.officialSignature();
        FIELDS.forEach(facts::field);
        facts.officialError();
        facts.challenge();
        facts.found.put(Fact.COURT_ORDER, CourtOrderFactFinder.findFacts(envelope, election));
        facts.found.put(Fact.VOTE_TIME, VoteTimeFactFinder.findFacts(envelope, election));
        return facts.found.findings();
    }

    private void condition() {
        Envelope.Condition condition = envelope.handling().condition();
        EnvelopeFact word = Code.find(EnvelopeFact.class, condition.code()).orElse(null);
        if (word != null) {
            found.put(
                    Fact.ENVELOPE, word, EvidenceSource.ENVELOPE, "Condition of the envelope: " + word.meaning() + ".");
        } else {
            found.unknown(Fact.ENVELOPE, EvidenceSource.ENVELOPE, "The condition of the envelope was not recorded.");
        }
    }

    private void voterSignature() {
        Fact<SignatureFact> fact = Fact.VOTER_SIGNATURE;
        switch (envelope.handling().voterSigned()) {
            case YES ->
                found.put(fact, SignatureFact.SIGNED, EvidenceSource.ENVELOPE, "The voter signed the affirmation.");
            case NO -> found.put(fact, signedLater(SignatureFact.MISSING, "The signature line is blank."));
            case MARK -> mark();
            case UNKNOWN ->
                found.unknown(fact, EvidenceSource.ENVELOPE, "The record does not say whether the voter signed.");
        }
    }

    private void mark() {
        YesNo witness = envelope.handling().markWitness();
        if (witness.isYes()) {
            found.put(
                    Fact.VOTER_SIGNATURE,
                    SignatureFact.MARK_WITNESSED,
                    EvidenceSource.ENVELOPE,
                    "The voter made a mark, and a witness signed.");
        } else if (witness.isNo()) {
            found.put(
                    Fact.VOTER_SIGNATURE,
                    signedLater(SignatureFact.MARK_NOT_WITNESSED, "The voter made a mark; no witness signed."));
        } else {
            found.unknown(
                    Fact.VOTER_SIGNATURE,
                    EvidenceSource.ENVELOPE,
                    "The voter made a mark; the record does not say whether a witness signed.");
        }
    }

    private Finding signedLater(SignatureFact first, String words) {
        return cures.weigh(
                Ask.SIGNATURE,
                Finding.of(first, Evidence.of(EvidenceSource.ENVELOPE, words)),
                SignatureFact.SIGNED_LATER_IN_TIME,
                SignatureFact.SIGNED_LATER_LATE);
    }

    private void officialSignature() {
        switch (envelope.handling().officialSigned()) {
            case YES ->
                found.put(
                        Fact.OFFICIAL_SIGNATURE,
                        OfficialSignatureFact.SIGNED,
                        EvidenceSource.ENVELOPE,
                        "The poll worker signed.");
            case NO ->
                found.put(
                        Fact.OFFICIAL_SIGNATURE,
                        OfficialSignatureFact.MISSING,
                        EvidenceSource.ENVELOPE,
                        "The poll worker did not sign.");
            case UNKNOWN ->
                found.unknown(
                        Fact.OFFICIAL_SIGNATURE,
                        EvidenceSource.ENVELOPE,
                        "The record does not say whether the poll worker signed.");
        }
    }

    private void field(Fact<FieldFact> fact, Envelope.Field field) {
        Envelope.FieldState state = envelope.affirmation().fieldStates().get(field);
        String name = DateWords.code(field.code());
        if (state != null) {
            FieldFact word = FieldFact.valueOf(state.name());
            found.put(fact, word, EvidenceSource.ENVELOPE, "Field " + name + ": " + word.meaning() + ".");
        } else if (isFilled(field)) {
            found.put(fact, FieldFact.KEYED);
        } else if (field == Envelope.Field.DATE_OF_BIRTH
                && !envelope.affirmation().birthDateAsWritten().isBlank()) {
            found.put(
                    fact,
                    FieldFact.NOT_A_DATE,
                    EvidenceSource.ENVELOPE,
                    "The voter wrote \"" + envelope.affirmation().birthDateAsWritten()
                            + "\" as the date of birth, which is not a date.");
        } else {
            found.unknown(fact, EvidenceSource.ENVELOPE, "Field " + name + " is empty; no reason was recorded.");
        }
    }

    private boolean isFilled(Envelope.Field field) {
        Envelope.Affirmation said = envelope.affirmation();
        return switch (field) {
            case LAST_NAME -> !said.name().last().isBlank();
            case FIRST_NAME -> !said.name().first().isBlank();
            case DATE_OF_BIRTH -> said.birthDate() != null;
            case RESIDENCE_ADDRESS_LINE -> !said.residence().isBlank();
            case CITY -> !said.residence().city().isBlank();
            case ZIP -> !said.residence().zip().isBlank();
            case ID_LAST4 -> !said.idLast4().isBlank();
            case STATEMENTS_TICKED -> !said.statementsTicked().isEmpty();
        };
    }

    private void officialError() {
        String note = envelope.handling().officialNote();
        if (envelope.handling().sentHereByOfficial().isYes()) {
            found.put(
                    Fact.OFFICIAL_ERROR,
                    OfficialErrorFact.NOTED,
                    EvidenceSource.ENVELOPE,
                    note.isBlank() ? "A poll worker sent the voter here." : "The poll worker noted: \"" + note + "\"");
        } else {
            found.put(
                    Fact.OFFICIAL_ERROR,
                    Finding.of(
                            OfficialErrorFact.NOT_NOTED,
                            note.isBlank()
                                    ? new Evidence[0]
                                    : new Evidence[] {
                                        Evidence.of(EvidenceSource.ENVELOPE, "The poll worker noted: \"" + note + "\"")
                                    }));
        }
    }

    private void challenge() {
        if (envelope.cast().issueReasons().contains("challenged")) {
            found.put(
                    Fact.CHALLENGE,
                    ChallengeFact.PENDING,
                    EvidenceSource.ENVELOPE,
                    "The envelope was issued because the voter was challenged; the outcome of the challenge is not on file.");
        } else {
            found.put(Fact.CHALLENGE, ChallengeFact.NONE);
        }
    }
}
