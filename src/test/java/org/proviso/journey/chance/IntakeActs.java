package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.ID;
import static org.proviso.journey.chance.ChanceOffice.pick;
import static org.proviso.journey.chance.ChanceOffice.seen;
import static org.proviso.journey.chance.ChanceOffice.somebody;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.proviso.access.Permission;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.rules.Ask;
import org.proviso.intake.CureStore;
import org.proviso.intake.IntakeService;
import org.proviso.intake.ReceiveEnvelope;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.RecordCure;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.RecordedTransmittal;
import org.proviso.intake.TransmittalService;
import org.proviso.intake.correction.CorrectEnvelope;
import org.proviso.intake.correction.CorrectableEnvelope;
import org.proviso.intake.correction.CorrectedCast;
import org.proviso.intake.correction.EnvelopeCorrectionService;
import org.proviso.intake.cure.CureService;
import org.proviso.intake.cure.TakeBackCure;
import org.proviso.intake.keying.FinishKeying;
import org.proviso.intake.keying.KeyedAddress;
import org.proviso.intake.keying.KeyedAffirmation;
import org.proviso.intake.keying.KeyedHandling;
import org.proviso.intake.keying.KeyingDraft;
import org.proviso.intake.keying.KeyingResult;
import org.proviso.intake.keying.KeyingService;
import org.proviso.review.EnvelopeCase;

/** What intake does: bags, envelopes, keying, what voters bring. */
final class IntakeActs {

    /** Envelopes that each location was given. */
    private static final int SUPPLIED = 60;

    private final ChanceOffice office;

    /** Versions of envelopes whose second keying read otherwise. */
    private final Map<EnvelopeNumber, Integer> keyedOtherwise = new HashMap<>();

    IntakeActs(ChanceOffice office) {
        this.office = office;
    }

    /** Mostly one that still lies in its bag. */
    Optional<Attempt<?>> receive(Random random) {
        List<EnvelopeNumber> waiting = office.notReceived();
        boolean again = waiting.isEmpty() || random.nextInt(10) == 0;
        return again && random.nextBoolean()
                ? Optional.empty()
                : Optional.of(received(
                        somebody(random, Permission.KEY_ENVELOPES),
                        pick(
                                random,
                                again ? List.copyOf(office.election().paper().keySet()) : waiting)));
    }

    Attempt<?> received(String who, EnvelopeNumber number) {
        Envelope paper = office.election().paper().get(number);
        Envelope.Cast cast = paper.cast();
        ReceiveEnvelope command = new ReceiveEnvelope(
                ID,
                number,
                paper.receiptNo(),
                paper.source(),
                cast.votingLocation(),
                cast.precinct(),
                cast.ballotStyle(),
                cast.partyBallot(),
                cast.at(),
                cast.extendedHours(),
                cast.inLineAtClose(),
                cast.issueReasons(),
                office.now(),
                null,
                false);
        return Attempt.of(
                        who,
                        Permission.KEY_ENVELOPES,
                        "receives " + number,
                        () -> office.the(ReceivingService.class).receive(command))
                .then(envelope -> office.figures().received(1));
    }

    /** Mostly one that waits for keying, now and then a second time, with a slip or without. */
    Optional<Attempt<?>> key(Random random) {
        List<EnvelopeCase> cases = office.cases();
        List<EnvelopeCase> waiting = office.cases(one -> one.state() == org.proviso.review.CaseState.RECEIVED);
        List<EnvelopeCase> from = waiting.isEmpty() || random.nextInt(4) == 0 ? cases : waiting;
        return Optional.of(keyed(
                somebody(random, Permission.KEY_ENVELOPES),
                pick(random, from).key().envelopeNo(),
                random.nextInt(6) == 0 ? "x" : ""));
    }

    /** With something typed after the last name that is not there. */
    Attempt<?> keyed(String who, EnvelopeNumber number, String slip) {
        Envelope paper = office.election().paper().get(number);
        return Attempt.of(
                        who,
                        Permission.KEY_ENVELOPES,
                        "keys " + number + (slip.isEmpty() ? "" : " with a slip"),
                        () -> office.the(KeyingService.class)
                                .handIn(new FinishKeying(
                                        ID,
                                        number,
                                        draft(number),
                                        affirmation(paper.affirmation(), slip),
                                        handling(paper.handling()),
                                        keyedOtherwise.get(number))))
                .entered(result -> result instanceof KeyingResult.Keyed)
                .then(result -> {
                    if (result instanceof KeyingResult.KeyedTwice twice) {
                        keyedOtherwise.put(number, twice.version());
                    }
                });
    }

    /** The version of the draft of whoever is signed in. */
    private int draft(EnvelopeNumber number) {
        return office.the(KeyingService.class)
                .draft(ID, number)
                .map(KeyingDraft::version)
                .orElse(0);
    }

    private static KeyedAffirmation affirmation(Envelope.Affirmation said, String slip) {
        return new KeyedAffirmation(
                said.name().last() + slip,
                said.name().first(),
                said.name().middle(),
                said.name().suffix(),
                said.formerName(),
                said.birthDate(),
                said.birthDateAsWritten(),
                address(said.residence()),
                address(said.former()),
                said.movedOn(),
                said.mailAddress(),
                said.idLast4(),
                said.driversLicense(),
                said.phone(),
                said.email(),
                said.language(),
                said.party(),
                said.statementsTicked(),
                states(said));
    }

    /** The sample leaves it open why a box holds nothing; whoever keys it says that it was left blank. */
    private static Map<Field, FieldState> states(Envelope.Affirmation said) {
        Map<Field, FieldState> states = new EnumMap<>(Field.class);
        Map.of(
                        Field.LAST_NAME, said.name().last(),
                        Field.FIRST_NAME, said.name().first(),
                        Field.DATE_OF_BIRTH, String.valueOf(said.birthDate()).replace("null", ""),
                        Field.RESIDENCE_ADDRESS_LINE, said.residence().line(),
                        Field.CITY, said.residence().city(),
                        Field.ZIP, said.residence().zip(),
                        Field.ID_LAST4, said.idLast4(),
                        Field.STATEMENTS_TICKED, String.join("", said.statementsTicked()))
                .forEach((field, text) -> {
                    if (text.isEmpty()) {
                        states.put(field, FieldState.LEFT_BLANK);
                    }
                });
        states.putAll(said.fieldStates());
        return states;
    }

    private static KeyedAddress address(Address address) {
        return new KeyedAddress(address.line(), address.unit(), address.city(), address.zip());
    }

    private static KeyedHandling handling(Envelope.Handling seen) {
        return new KeyedHandling(
                seen.idShown(),
                seen.idKind(),
                seen.declaration(),
                seen.mailBallotSurrendered(),
                seen.sentHereByOfficial(),
                seen.officialNote(),
                seen.voterSigned(),
                seen.markWitness(),
                seen.officialSigned(),
                seen.condition());
    }

    /** Something that a voter brought, with a stamp that may be late or impossible. */
    Optional<Attempt<?>> cure(Random random) {
        EnvelopeNumber number = pick(random, office.cases()).key().envelopeNo();
        Ask ask = pick(random, List.of(Ask.values()));
        RecordCure command = new RecordCure(
                ID, number, ask, office.now().minusHours(random.nextInt(60) - 2L), "Brought to the counter.");
        return Optional.of(Attempt.of(
                somebody(random, Permission.RECORD_CURE_EVIDENCE),
                Permission.RECORD_CURE_EVIDENCE,
                "records that the voter of " + number + " did " + ask.code(),
                () -> office.the(CureService.class).record(command)));
    }

    /** Any envelope is written anew as its paper says, or with a slip in the name; of one not keyed only how it was cast. */
    Optional<Attempt<?>> correctEnvelope(Random random) {
        EnvelopeNumber number = pick(random, office.cases()).key().envelopeNo();
        CorrectableEnvelope now = office.read(
                "carl",
                () -> office.the(EnvelopeCorrectionService.class)
                        .find(ID, number)
                        .orElseThrow());
        Envelope paper = office.election().paper().get(number);
        boolean keyed = !now.keyed().isEmpty();
        Envelope.Cast cast = now.envelope().cast();
        Attempt.Version version = now.version() == 0 ? new Attempt.Version(0, false) : seen(random, now.version());
        CorrectEnvelope command = new CorrectEnvelope(
                ID,
                number,
                version.number(),
                new CorrectedCast(
                        cast.votingLocation(),
                        cast.precinct(),
                        cast.ballotStyle(),
                        cast.partyBallot(),
                        cast.at(),
                        cast.extendedHours(),
                        cast.inLineAtClose(),
                        random.nextBoolean() ? paper.cast().issueReasons() : Set.of("challenged")),
                keyed ? affirmation(paper.affirmation(), random.nextInt(3) == 0 ? "x" : "") : null,
                keyed ? handling(paper.handling()) : null,
                "Read again.");
        return Optional.of(Attempt.of(
                        somebody(random, Permission.KEY_ENVELOPES),
                        Permission.KEY_ENVELOPES,
                        "corrects " + number,
                        () -> office.the(EnvelopeCorrectionService.class).correct(command))
                .with(version));
    }

    /** Something that is recorded as brought, taken back or not. */
    Optional<Attempt<?>> takeBackCure(Random random) {
        List<CureStore.CureRow> rows = office.the(CureStore.class).rows(ID);
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        CureStore.CureRow row = pick(random, rows);
        return Optional.of(Attempt.of(
                somebody(random, Permission.RECORD_CURE_EVIDENCE),
                Permission.RECORD_CURE_EVIDENCE,
                "takes back evidence " + row.number() + " of " + row.envelopeNo(),
                () -> office.the(CureService.class)
                        .takeBack(new TakeBackCure(ID, row.envelopeNo(), row.number(), "On the wrong envelope."))));
    }

    /** A return that came late. */
    Optional<Attempt<?>> late(Random random) {
        List<String> without = withoutReturn();
        return without.isEmpty()
                ? Optional.empty()
                : Optional.of(returned(somebody(random, Permission.RECEIVE_BAGS), pick(random, without)));
    }

    private List<String> withoutReturn() {
        List<String> there = returns().stream()
                .map(recorded -> recorded.transmittal().votingLocation())
                .toList();
        return office.election().sentBack().keySet().stream()
                .filter(location -> !there.contains(location))
                .toList();
    }

    List<RecordedTransmittal> returns() {
        return office.the(IntakeService.class).recordedTransmittals(ID);
    }

    Attempt<?> returned(String who, String location) {
        int sent = office.election().sentBack().getOrDefault(location, 0);
        return Attempt.of(
                who,
                Permission.RECEIVE_BAGS,
                "records the return of " + location,
                () -> office.the(TransmittalService.class).record(transmittal(location, sent, 0)));
    }

    /** Any return is written anew as what the location really sent, or as something else. */
    Optional<Attempt<?>> correct(Random random) {
        List<RecordedTransmittal> returns = returns();
        if (returns.isEmpty()) {
            return Optional.empty();
        }
        RecordedTransmittal wrong = pick(random, returns);
        int sent = office.election().sentBack().getOrDefault(wrong.transmittal().votingLocation(), 0);
        return Optional.of(corrected(
                somebody(random, Permission.RECEIVE_BAGS),
                wrong,
                seen(random, wrong.version()),
                sent + (random.nextInt(3) == 0 ? 1 : 0),
                random.nextInt(3) == 0 ? 1 : 0));
    }

    Attempt<?> corrected(String who, RecordedTransmittal wrong, Attempt.Version version, int envelopes, int loose) {
        String location = wrong.transmittal().votingLocation();
        return Attempt.of(
                        who,
                        Permission.RECEIVE_BAGS,
                        "corrects the return of " + location + " to " + envelopes,
                        () -> office.the(TransmittalService.class)
                                .correct(wrong.lineNo(), version.number(), transmittal(location, envelopes, loose)))
                .with(version);
    }

    /** With a loose ballot the bag came back under another seal too. */
    private static RecordTransmittal transmittal(String location, int envelopes, int loose) {
        Transmittal said = new Transmittal(
                location,
                null,
                "bag",
                "1001",
                loose == 0 ? "1001" : "1002",
                SUPPLIED,
                envelopes,
                0,
                SUPPLIED - envelopes,
                envelopes,
                0,
                loose);
        return new RecordTransmittal(
                ID,
                said.votingLocation(),
                said.day(),
                said.bag(),
                said.sealOut(),
                said.sealIn(),
                said.supplied(),
                said.issued(),
                said.spoiled(),
                said.unused(),
                said.returned(),
                said.scannedInError(),
                said.looseBallots());
    }
}
