package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Ask;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.release.Batch;
import org.proviso.release.EnvelopeToOpen;
import org.proviso.release.ReleaseService;
import org.proviso.release.RemakeService;
import org.proviso.release.RemakeSheet;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.SnapshotKind;

/** The canvass of the sample general election as a script, from the first review to the ballots handed off. */
final class Canvass {

    static final String ID = "tamarack-general";

    private final Office office;
    private final Map<String, Truth> truths = Truth.of(ID);

    Canvass(TestOffice services) {
        this.office = Office.staffed(services);
    }

    void at(int day, int hour, int minute) {
        OfficeTime.set(office.services(), LocalDateTime.of(2026, 11, day, hour, minute));
    }

    Office office() {
        return office;
    }

    void load() {
        at(4, 12, 0);
        as("carl", () -> accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", ID))));
    }

    /** Works on every case that waits for a reviewer; what the rules said of each in the end. */
    Map<Recommendation, Integer> review() {
        Map<Recommendation, Integer> said = new EnumMap<>(Recommendation.class);
        for (EnvelopeCase envelopeCase : office.the(CaseService.class).inState(new ElectionId(ID), CaseState.OPEN)) {
            said.merge(new Reviewing(office, envelopeCase.key(), truth(envelopeCase.key())).work(), 1, Integer::sum);
        }
        for (EnvelopeCase envelopeCase :
                office.the(CaseService.class).inState(new ElectionId(ID), CaseState.PROPOSED)) {
            as(
                    "ben",
                    () -> accepted(office.the(ProposalService.class)
                            .secondReview(envelopeCase.key(), envelopeCase.version(), true, "")));
        }
        return said;
    }

    private Truth truth(EnvelopeKey key) {
        return truths.get(key.envelopeNo().value());
    }

    /** Every second voter who may still bring something does so; the stamp is two days before the keying. */
    int cure() {
        int cured = 0;
        int turn = 0;
        for (EnvelopeCase envelopeCase : office.the(CaseService.class).inState(new ElectionId(ID), CaseState.OPEN)) {
            Set<Ask> asks = asks(envelopeCase.key());
            boolean own = !truth(envelopeCase.key()).signature().equals("another_hand");
            if (!asks.isEmpty() && own && turn++ % 2 == 0) {
                asks.forEach(ask -> bring(envelopeCase.key(), ask));
                cured++;
            }
        }
        return cured;
    }

    private Set<Ask> asks(EnvelopeKey key) {
        CaseReport report = office.the(AssessmentService.class).now(key);
        return report.asks().stream()
                .map(DueAsk::ask)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Ask.class)));
    }

    private void bring(EnvelopeKey key, Ask ask) {
        LocalDateTime stamp = LocalDateTime.of(2026, 11, 5, 10, 30);
        as("jon", () -> {
            office.the(CureService.class)
                    .record(new RecordCure(
                            new ElectionId(ID), key.envelopeNo(), ask, stamp, "Brought to the counter."));
            return true;
        });
        if (ask == Ask.REGISTRATION) {
            new Reviewing(office, key, truth(key)).registrationFinished(stamp);
        }
    }

    int meet(LocalDateTime when) {
        OfficeTime.set(office.services(), when);
        return new BoardMeeting(office, ID).hold(when);
    }

    /** Opens everything that counts in one batch, remakes what is to be remade, and hands it off. */
    int release(int empty) {
        ReleaseService releases = office.the(ReleaseService.class);
        accepted(as("carl", () -> releases.recordOtherBallotsComplete(new ElectionId(ID))));
        Set<EnvelopeNumber> waiting = new LinkedHashSet<>();
        for (EnvelopeToOpen envelope : as("hal", () -> releases.waiting(new ElectionId(ID)))) {
            waiting.add(envelope.key().envelopeNo());
        }
        Batch made = accepted(as("hal", () -> releases.makeBatch(new ElectionId(ID), waiting, "")));
        Batch begun =
                accepted(as("hal", () -> releases.beginOpening(new ElectionId(ID), made.number(), made.version())));
        Batch opened = accepted(
                as("ida", () -> releases.recordOpening(new ElectionId(ID), made.number(), begun.version(), empty)));
        RemakeService remakes = office.the(RemakeService.class);
        for (RemakeSheet sheet : as("hal", () -> remakes.sheets(new ElectionId(ID), made.number()))) {
            accepted(as(
                    "hal",
                    () -> remakes.beginRemake(new ElectionId(ID), made.number(), sheet.number(), sheet.version())));
            accepted(as(
                    "ida",
                    () -> remakes.recordRemake(
                            new ElectionId(ID), made.number(), sheet.number(), sheet.version() + 1)));
        }
        return accepted(as(
                        "ida",
                        () -> remakes.handOff(new ElectionId(ID), made.number(), opened.version(), opened.ballots())))
                .ballots();
    }

    Map<CaseState, Integer> states() {
        Map<CaseState, Integer> states = new EnumMap<>(CaseState.class);
        office.the(CaseService.class)
                .all(new ElectionId(ID))
                .forEach(envelopeCase -> states.merge(envelopeCase.state(), 1, Integer::sum));
        return states;
    }

    /** The mail-ballot office decides the ballots that had come back: all are accepted. */
    void mailBallotsDecided(Path temporary) throws IOException {
        String decided = Files.readAllLines(Path.of("sample-cases", ID, "mail-ballots.csv")).stream()
                .map(line -> line.replace(",returned,", ",accepted,"))
                .collect(Collectors.joining("\n", "", "\n"));
        Path newer = Files.writeString(temporary.resolve("mail-ballots.csv"), decided);
        as("carl", () -> office.the(NewerFileService.class).load(new ElectionId(ID), SnapshotKind.MAIL_BALLOTS, newer));
    }

    int receivedFrom(String location) {
        return (int) office.the(IntakeService.class).envelopes(new ElectionId(ID)).stream()
                .filter(envelope -> envelope.cast().votingLocation().equals(location))
                .count();
    }

    /** What is open in the cases that nobody settled, for a test that fails. */
    String openQuestions() {
        return office.the(CaseService.class).inState(new ElectionId(ID), CaseState.OPEN).stream()
                .map(EnvelopeCase::key)
                .map(key -> key.envelopeNo() + " "
                        + office.the(AssessmentService.class)
                                .now(key)
                                .settled()
                                .outcome()
                                .recommendation() + " "
                        + office.the(AssessmentService.class).now(key).settled().stillOpen())
                .collect(Collectors.joining("\n"));
    }

    /** What the truth says counts, counts; what waited for the voter counts where the voter came. */
    void settledAsTheTruthSays() {
        Map<EnvelopeNumber, Decision> decided =
                office.the(DecisionService.class).standing(new ElectionId(ID));
        List<String> otherwise = new ArrayList<>();
        for (Truth truth : truths.values()) {
            Decision decision = decided.get(truth.envelopeNo());
            String outcome = decision == null ? "" : decision.as().words();
            boolean ended = truth.outcome().equals("sent on") || truth.outcome().equals("administrative end");
            boolean same = ended ? decision == null : outcome.equals(truth.outcome());
            if (!same && !truth.outcome().equals("wait for the voter")) {
                otherwise.add(truth.envelopeNo() + " " + truth.outcome() + ": " + outcome);
            }
        }
        assertThat(otherwise).isEmpty();
    }
}
