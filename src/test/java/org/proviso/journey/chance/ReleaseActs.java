package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.ID;
import static org.proviso.journey.chance.ChanceOffice.pick;
import static org.proviso.journey.chance.ChanceOffice.seen;
import static org.proviso.journey.chance.ChanceOffice.somebody;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.proviso.access.Permission;
import org.proviso.canvass.Figure;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.release.Batch;
import org.proviso.release.BatchChangeService;
import org.proviso.release.EnvelopeToOpen;
import org.proviso.release.ReleaseService;
import org.proviso.release.RemakeService;
import org.proviso.release.RemakeSheet;

/** What the release team does: batches made, put right, opened, remade and handed off. */
final class ReleaseActs {

    private final ChanceOffice office;

    ReleaseActs(ChanceOffice office) {
        this.office = office;
    }

    private ReleaseService releases() {
        return office.the(ReleaseService.class);
    }

    private BatchChangeService changes() {
        return office.the(BatchChangeService.class);
    }

    private RemakeService remakes() {
        return office.the(RemakeService.class);
    }

    Optional<Attempt<?>> othersDone(Random random) {
        return Optional.of(othersDone(somebody(random, Permission.SET_GATES)));
    }

    Attempt<?> othersDone(String who) {
        return Attempt.of(
                who,
                Permission.SET_GATES,
                "records that the other ballots are done",
                () -> releases().recordOtherBallotsComplete(ID));
    }

    List<EnvelopeToOpen> waiting() {
        return office.read("hal", () -> releases().waiting(ID));
    }

    /** Some of those that wait, or of any. */
    Optional<Attempt<?>> make(Random random) {
        List<EnvelopeToOpen> waiting = waiting();
        Set<EnvelopeNumber> some = new TreeSet<>();
        boolean apart = random.nextBoolean();
        waiting.stream()
                .filter(one -> one.decision().ballot().heldApart() == apart || random.nextInt(20) == 0)
                .filter(one -> random.nextInt(3) != 0)
                .forEach(one -> some.add(one.key().envelopeNo()));
        if (random.nextInt(20) == 0) {
            some.add(pick(random, office.cases()).key().envelopeNo());
        }
        return some.isEmpty()
                ? Optional.empty()
                : Optional.of(made(
                        somebody(random, Permission.OPEN_ENVELOPES),
                        some,
                        random.nextInt(4) == 0 ? "It is late." : ""));
    }

    Attempt<?> made(String who, Set<EnvelopeNumber> envelopes, String alone) {
        return Attempt.of(
                who,
                Permission.OPEN_ENVELOPES,
                "makes a batch of " + envelopes,
                () -> releases().makeBatch(ID, envelopes, alone));
    }

    List<Batch> batches() {
        return office.read("hal", () -> releases().batches(ID));
    }

    private Optional<Batch> batch(Random random) {
        List<Batch> batches = batches();
        return batches.isEmpty() ? Optional.empty() : Optional.of(pick(random, batches));
    }

    private Attempt<Batch> onBatch(
            String who,
            Permission needs,
            String words,
            Batch batch,
            Attempt.Version version,
            BiFunction<Integer, Integer, ActResult<Batch>> act) {
        return Attempt.of(
                        who,
                        needs,
                        words + " batch " + batch.number(),
                        () -> act.apply(batch.number(), version.number()))
                .with(version);
    }

    Optional<Attempt<?>> begin(Random random) {
        return batch(random)
                .map(batch -> begun(somebody(random, Permission.OPEN_ENVELOPES), batch, seen(random, batch.version())));
    }

    Attempt<?> begun(String who, Batch batch, Attempt.Version version) {
        return onBatch(
                who,
                Permission.OPEN_ENVELOPES,
                "begins to open",
                batch,
                version,
                (number, seen) -> releases().beginOpening(ID, number, seen));
    }

    /** Now and then an envelope is empty, or more than there are. */
    Optional<Attempt<?>> record(Random random) {
        return batch(random)
                .map(batch -> opened(
                        somebody(random, Permission.OPEN_ENVELOPES),
                        batch,
                        seen(random, batch.version()),
                        random.nextInt(6) == 0 ? random.nextInt(batch.envelopes() + 2) : 0));
    }

    Attempt<?> opened(String who, Batch batch, Attempt.Version version, int empty) {
        return onBatch(
                        who,
                        Permission.OPEN_ENVELOPES,
                        "has opened with " + empty + " empty",
                        batch,
                        version,
                        (number, seen) -> releases().recordOpening(ID, number, seen, empty))
                .ofTwoPeople()
                .then(open -> office.figures().add(Figure.EMPTY, empty));
    }

    Optional<Attempt<?>> askToDissolve(Random random) {
        return batch(random)
                .map(batch -> askedToDissolve(
                        somebody(random, Permission.OPEN_ENVELOPES), batch, seen(random, batch.version())));
    }

    Attempt<?> askedToDissolve(String who, Batch batch, Attempt.Version version) {
        return onBatch(
                who,
                Permission.OPEN_ENVELOPES,
                "asks to dissolve",
                batch,
                version,
                (number, seen) -> changes().askToDissolve(ID, number, seen, "It is too small."));
    }

    Optional<Attempt<?>> keep(Random random) {
        return batch(random)
                .map(batch -> kept(somebody(random, Permission.OPEN_ENVELOPES), batch, seen(random, batch.version())));
    }

    Attempt<?> kept(String who, Batch batch, Attempt.Version version) {
        return onBatch(
                who,
                Permission.OPEN_ENVELOPES,
                "keeps",
                batch,
                version,
                (number, seen) -> changes().keep(ID, number, seen));
    }

    Optional<Attempt<?>> dissolve(Random random) {
        return batch(random)
                .map(batch ->
                        dissolved(somebody(random, Permission.OPEN_ENVELOPES), batch, seen(random, batch.version())));
    }

    Attempt<?> dissolved(String who, Batch batch, Attempt.Version version) {
        return onBatch(
                        who,
                        Permission.OPEN_ENVELOPES,
                        "dissolves",
                        batch,
                        version,
                        (number, seen) -> changes().dissolve(ID, number, seen))
                .ofTwoPeople();
    }

    Optional<Attempt<?>> takeOut(Random random) {
        EnvelopeNumber any = pick(random, office.cases()).key().envelopeNo();
        return batch(random)
                .map(batch -> takenOut(
                        somebody(random, Permission.OPEN_ENVELOPES), batch, seen(random, batch.version()), any));
    }

    Attempt<?> takenOut(String who, Batch batch, Attempt.Version version, EnvelopeNumber envelope) {
        return onBatch(
                who,
                Permission.OPEN_ENVELOPES,
                "takes " + envelope + " out of",
                batch,
                version,
                (number, seen) -> changes().takeOut(ID, number, seen, envelope, "It must stay closed."));
    }

    /** Envelopes that must stay closed. */
    List<EnvelopeNumber> stopped(Batch batch) {
        return office.read("hal", () -> changes().stopped(ID, batch.number())).stream()
                .flatMap(refusal -> Optional.ofNullable(refusal.about()).stream())
                .toList();
    }

    List<RemakeSheet> sheets(Batch batch) {
        return office.read("hal", () -> remakes().sheets(ID, batch.number()));
    }

    Optional<Attempt<?>> copy(Random random) {
        return batch(random).flatMap(batch -> {
            List<RemakeSheet> sheets = sheets(batch);
            if (sheets.isEmpty()) {
                return Optional.empty();
            }
            RemakeSheet sheet = pick(random, sheets);
            String who = somebody(random, Permission.REMAKE_BALLOTS);
            Attempt.Version version = seen(random, sheet.version());
            return Optional.of(sheet.firstCopier() == null ? copied(who, sheet, version) : remade(who, sheet, version));
        });
    }

    Attempt<?> copied(String who, RemakeSheet sheet, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.REMAKE_BALLOTS,
                        "begins to copy sheet " + sheet.number() + " of batch " + sheet.batchNo(),
                        () -> remakes().beginRemake(ID, sheet.batchNo(), sheet.number(), version.number()))
                .with(version);
    }

    Attempt<?> remade(String who, RemakeSheet sheet, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.REMAKE_BALLOTS,
                        "has read back sheet " + sheet.number() + " of batch " + sheet.batchNo(),
                        () -> remakes().recordRemake(ID, sheet.batchNo(), sheet.number(), version.number()))
                .with(version)
                .ofTwoPeople()
                .then(done -> office.figures().add(Figure.REMADE, sheet.ballots()));
    }

    Optional<Attempt<?>> handOff(Random random) {
        return batch(random)
                .map(batch -> handedOff(
                        somebody(random, Permission.HAND_OFF),
                        batch,
                        seen(random, batch.version()),
                        batch.ballots() + (random.nextInt(8) == 0 ? 1 : 0)));
    }

    Attempt<?> handedOff(String who, Batch batch, Attempt.Version version, int ballots) {
        return onBatch(
                        who,
                        Permission.HAND_OFF,
                        "hands off " + ballots + " ballots of",
                        batch,
                        version,
                        (number, seen) -> remakes().handOff(ID, number, seen, ballots))
                .then(done -> office.figures().add(Figure.HANDED_OFF, ballots));
    }
}
