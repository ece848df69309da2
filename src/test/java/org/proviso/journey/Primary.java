package org.proviso.journey;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.ElectionService;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.CaseAssignmentService;

/** The sample primary in a staffed office, on the day after the election at noon. */
public record Primary(Office office, Map<String, Truth> truths) {

    public static final String ID = "tamarack-primary";
    public static final Path FOLDER = Path.of("sample-cases", ID);

    public static Primary loaded(TestOffice services) {
        services.begin("the primary, loaded by Carl", () -> {
            Office.staffed(services);
            as("carl", () -> accepted(services.the(ElectionLoadService.class).load(FOLDER)));
        });
        Primary primary = new Primary(new Office(services), Truth.of(ID));
        primary.at(1, 12, 0);
        return primary;
    }

    public LocalDate day() {
        return office.the(ElectionService.class)
                .find(new ElectionId(ID))
                .orElseThrow()
                .date();
    }

    /** Sets the office's clock to so many days after the election. */
    public void at(int daysAfter, int hour, int minute) {
        LocalDateTime moment = day().plusDays(daysAfter).atTime(hour, minute);
        OfficeTime.set(office.services(), moment);
    }

    /** The first envelope of that scenario. */
    public EnvelopeKey envelope(String scenario) {
        return truths.values().stream()
                .filter(truth -> truth.scenario().equals(scenario))
                .map(truth -> new EnvelopeKey(new ElectionId(ID), truth.envelopeNo()))
                .findFirst()
                .orElseThrow();
    }

    public Truth truth(EnvelopeKey key) {
        return truths.get(key.envelopeNo().value());
    }

    public EnvelopeCase now(EnvelopeKey key) {
        return office.the(CaseService.class).find(key).orElseThrow();
    }

    public Reviewing reviewing(EnvelopeKey key) {
        return new Reviewing(office, key, truth(key));
    }

    public EnvelopeCase taken(EnvelopeKey key, UserName by) {
        return as(
                by.value(),
                () -> Office.accepted(office.the(CaseAssignmentService.class).take(key, now(key).version())));
    }

    /** Why an act was refused. */
    public static Refusal.Why why(ActResult<EnvelopeCase> outcome) {
        return ((ActResult.Refused<EnvelopeCase>) outcome).refusals().get(0).why();
    }
}
