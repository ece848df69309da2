package org.proviso.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Transmittal;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.proviso.files.ContentHash;
import org.proviso.files.election.LaterFolder;
import org.proviso.files.election.SignatureFiles;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Envelopes and returns that come as files after the election was loaded: a bag's worth, as often as one comes. What the
 * office has already is left as it is and told, so that a file that comes twice doubles nothing.
 */
@Service
public class LaterFileService {

    private final IntakeService intake;
    private final EnvelopeStore envelopes;
    private final AffirmationStore affirmations;
    private final TransmittalStore transmittals;
    private final ImageStore images;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    LaterFileService(
            IntakeService intake,
            EnvelopeStore envelopes,
            AffirmationStore affirmations,
            TransmittalStore transmittals,
            ImageStore images,
            ElectionService elections,
            AccessService access,
            ActDoor door) {
        this.intake = intake;
        this.envelopes = envelopes;
        this.affirmations = affirmations;
        this.transmittals = transmittals;
        this.images = images;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    private record Read(LaterFiles files, SignatureFiles signatures) {}

    /**
     * Reads the files of a folder and compares them with what the office has; nothing is kept. Throws
     * {@link org.proviso.files.InputException} where a file is not right.
     */
    @Transactional(readOnly = true)
    public LaterFiles look(ElectionId electionId, Path folder) {
        access.demand(Permission.LOAD_FILES);
        return read(electionId, folder).files();
    }

    /** Loads what is new, whole or not at all; refused where nothing is, and once the election is closed. */
    @Transactional
    public ActResult<LaterFiles> load(ElectionId electionId, Path folder) {
        return door.demand(Permission.LOAD_FILES)
                .lockNothing()
                .refuse(any -> elections.closed(electionId))
                .saveOrRefuse(any -> keep(electionId, read(electionId, folder)))
                .tell(files -> new EnvelopesFiled(electionId, files.envelopes()))
                .record(files -> LedgerLine.of(
                        LedgerChain.of(electionId),
                        "envelopes_filed",
                        electionId.value(),
                        payload(files, ContentHash.ofFolder(folder))));
    }

    private ActResult<LaterFiles> keep(ElectionId electionId, Read read) {
        LaterFiles files = read.files();
        Optional<Refusal> nothing = Refusal.when(
                files.isNothingNew(),
                Why.NOTHING_NEW,
                "The office has every envelope and return of these files already. Nothing changed.");
        if (nothing.isPresent()) {
            return ActResult.refused(nothing.get());
        }
        envelopes.append(electionId, files.envelopes());
        affirmations.insert(electionId, files.envelopes());
        images.insert(electionId, read.signatures().of(files.envelopes()));
        files.transmittals().forEach(transmittal -> transmittals.add(electionId, transmittal));
        return ActResult.accepted(files);
    }

    private Read read(ElectionId electionId, Path folder) {
        Election election = elections
                .find(electionId)
                .orElseThrow(() -> new IllegalArgumentException("The office has no election " + electionId + "."));
        LaterFolder came =
                LaterFolder.read(folder, elections.ballots(electionId).styles(), election);
        Map<EnvelopeNumber, Envelope> there = intake.envelopes(electionId, numbers(came)).stream()
                .collect(Collectors.toMap(Envelope::envelopeNo, envelope -> envelope));
        List<Envelope> news = new ArrayList<>();
        List<EnvelopeNumber> same = new ArrayList<>();
        List<EnvelopeNumber> otherwise = new ArrayList<>();
        for (Envelope envelope : came.envelopes()) {
            Envelope known = there.get(envelope.envelopeNo());
            if (known == null) {
                news.add(envelope);
            } else {
                (saysTheSame(envelope, known) ? same : otherwise).add(envelope.envelopeNo());
            }
        }
        return new Read(returns(electionId, came, news, same, otherwise), came.signatures());
    }

    private LaterFiles returns(
            ElectionId electionId,
            LaterFolder came,
            List<Envelope> news,
            List<EnvelopeNumber> same,
            List<EnvelopeNumber> otherwise) {
        Map<List<String>, Transmittal> there = new LinkedHashMap<>();
        transmittals.all(electionId).forEach(transmittal -> there.put(bag(transmittal), transmittal));
        List<Transmittal> newReturns = new ArrayList<>();
        List<String> returnsOtherwise = new ArrayList<>();
        int returnsThere = 0;
        for (Transmittal transmittal : came.transmittals()) {
            Transmittal known = there.putIfAbsent(bag(transmittal), transmittal);
            if (known == null) {
                newReturns.add(transmittal);
            } else if (known.equals(transmittal)) {
                returnsThere++;
            } else {
                returnsOtherwise.add(String.join(" ", bag(transmittal)).strip());
            }
        }
        return new LaterFiles(news, newReturns, same, otherwise, returnsThere, returnsOtherwise, came.warnings());
    }

    /** A voting location sends each bag of a day once. */
    private static List<String> bag(Transmittal transmittal) {
        String day = transmittal.day() == null ? "" : transmittal.day().toString();
        return List.of(transmittal.votingLocation(), day, transmittal.bag());
    }

    private static Set<EnvelopeNumber> numbers(LaterFolder came) {
        return came.envelopes().stream().map(Envelope::envelopeNo).collect(Collectors.toSet());
    }

    /** What was seen at the table and in the office may have been corrected since; who voted it, where and when may not. */
    private static boolean saysTheSame(Envelope file, Envelope known) {
        return file.cast().equals(known.cast())
                && file.affirmation().equals(known.affirmation())
                && Objects.equals(file.receiptNo(), known.receiptNo());
    }

    /** Numbers only: whose envelopes they are stays out. */
    private static Map<String, Object> payload(LaterFiles files, String content) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("content", content);
        payload.put("envelopes", numbers(files.envelopes()));
        payload.put(
                "not_yet_keyed",
                numbers(files.envelopes().stream()
                        .filter(LaterFileService::waitsForKeying)
                        .toList()));
        payload.put("transmittals", files.transmittals().size());
        payload.put("there_already", files.there().size() + files.returnsThere());
        payload.put("there_otherwise", files.thereOtherwise());
        return payload;
    }

    private static List<EnvelopeNumber> numbers(List<Envelope> envelopes) {
        return envelopes.stream().map(Envelope::envelopeNo).toList();
    }

    private static boolean waitsForKeying(Envelope envelope) {
        return envelope.affirmation().fieldStates().containsValue(FieldState.NOT_YET_KEYED);
    }
}
