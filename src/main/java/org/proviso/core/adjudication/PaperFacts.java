package org.proviso.core.adjudication;

import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Challenge;
import org.proviso.core.adjudication.facts.EnvelopeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FieldFact;
import org.proviso.core.adjudication.facts.OfficialError;
import org.proviso.core.adjudication.facts.OfficialSignature;
import org.proviso.core.adjudication.facts.SignatureFact;
import org.proviso.core.rules.Ask;

/** The facts that the envelope itself tells, whoever the voter is. */
final class PaperFacts {

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
    private final Cures cures;
    private final FindingMap found = new FindingMap();

    private PaperFacts(Envelope envelope, Cures cures) {
        this.envelope = envelope;
        this.cures = cures;
    }

    static Map<Fact<?>, Finding> of(Envelope envelope, Election election, Cures cures) {
        PaperFacts facts = new PaperFacts(envelope, cures);
        facts.condition();
        facts.voterSignature();
        facts.officialSignature();
        FIELDS.forEach(facts::field);
        facts.officialError();
        facts.challenge();
        facts.found.put(Fact.COURT_ORDER, CourtOrders.of(envelope, election));
        facts.found.put(Fact.VOTE_TIME, VoteTimes.of(envelope, election));
        return facts.found.findings();
    }

    private void condition() {
        Envelope.Condition condition = envelope.handling().condition();
        EnvelopeFact word = Code.find(EnvelopeFact.class, condition.code()).orElse(null);
        if (word != null) {
            found.put(Fact.ENVELOPE, word, Source.ENVELOPE, "The envelope: " + word.meaning() + ".");
        } else {
            found.unknown(Fact.ENVELOPE, Source.ENVELOPE, "Nobody noted the condition of the envelope.");
        }
    }

    private void voterSignature() {
        Fact<SignatureFact> fact = Fact.VOTER_SIGNATURE;
        switch (envelope.handling().voterSigned()) {
            case YES -> found.put(fact, SignatureFact.SIGNED, Source.ENVELOPE, "The voter signed the affirmation.");
            case NO -> found.put(fact, signedLater(SignatureFact.MISSING, "The place for the signature is empty."));
            case MARK -> mark();
            case UNKNOWN -> found.unknown(fact, Source.ENVELOPE, "Nobody noted whether the voter signed.");
        }
    }

    private void mark() {
        YesNo witness = envelope.handling().markWitness();
        if (witness.isYes()) {
            found.put(
                    Fact.VOTER_SIGNATURE,
                    SignatureFact.MARK_WITNESSED,
                    Source.ENVELOPE,
                    "The voter made a mark, and a witness signed.");
        } else if (witness.isNo()) {
            found.put(
                    Fact.VOTER_SIGNATURE,
                    signedLater(SignatureFact.MARK_NOT_WITNESSED, "The voter made a mark; no witness signed."));
        } else {
            found.unknown(
                    Fact.VOTER_SIGNATURE,
                    Source.ENVELOPE,
                    "The voter made a mark; nobody noted whether a witness signed.");
        }
    }

    private Finding signedLater(SignatureFact first, String words) {
        return cures.weigh(
                Ask.SIGNATURE,
                Finding.of(first, Evidence.of(Source.ENVELOPE, words)),
                SignatureFact.SIGNED_LATER_IN_TIME,
                SignatureFact.SIGNED_LATER_LATE);
    }

    private void officialSignature() {
        switch (envelope.handling().officialSigned()) {
            case YES ->
                found.put(
                        Fact.OFFICIAL_SIGNATURE,
                        OfficialSignature.SIGNED,
                        Source.ENVELOPE,
                        "The poll official signed.");
            case NO ->
                found.put(
                        Fact.OFFICIAL_SIGNATURE,
                        OfficialSignature.MISSING,
                        Source.ENVELOPE,
                        "The poll official did not sign.");
            case UNKNOWN ->
                found.unknown(
                        Fact.OFFICIAL_SIGNATURE, Source.ENVELOPE, "Nobody noted whether the poll official signed.");
        }
    }

    private void field(Fact<FieldFact> fact, Envelope.Field field) {
        Envelope.FieldState state = envelope.affirmation().fieldStates().get(field);
        String name = Words.code(field.code());
        if (state != null) {
            FieldFact word = FieldFact.valueOf(state.name());
            found.put(fact, word, Source.ENVELOPE, "The field " + name + ": " + word.meaning() + ".");
        } else if (isFilled(field)) {
            found.put(fact, FieldFact.KEYED);
        } else {
            found.unknown(fact, Source.ENVELOPE, "The field " + name + " is empty; nobody noted why.");
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
                    OfficialError.NOTED,
                    Source.ENVELOPE,
                    note.isBlank() ? "An official sent the voter here." : "The official noted: \"" + note + "\"");
        } else {
            found.put(
                    Fact.OFFICIAL_ERROR,
                    Finding.of(
                            OfficialError.NOT_NOTED,
                            note.isBlank()
                                    ? new Evidence[0]
                                    : new Evidence[] {
                                        Evidence.of(Source.ENVELOPE, "The official noted: \"" + note + "\"")
                                    }));
        }
    }

    private void challenge() {
        if (envelope.cast().issueReasons().contains("challenged")) {
            found.put(
                    Fact.CHALLENGE,
                    Challenge.PENDING,
                    Source.ENVELOPE,
                    "The envelope was issued because the voter was challenged; nothing tells how it ended.");
        } else {
            found.put(Fact.CHALLENGE, Challenge.NONE);
        }
    }
}
