package org.proviso.journey;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.review.CaseProposals;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.ProposalService;

/**
 * Makes a database in which reviewers have proposed what the sample general election's truth file says, so that the
 * pages of the board have something to decide: {@code ReadyDesk <H2 address>}. Nobody signs in with its accounts.
 */
public final class ReadyDesk {

    private static final String ID = "tamarack-general";

    private ReadyDesk() {}

    public static void main(String[] arguments) {
        TestOffice services = TestOffice.over(arguments[0]);
        OfficeTime.set(services, LocalDateTime.of(2026, 11, 12, 10, 0));
        Staff.hire(services, "ada", Role.REVIEWER);
        Staff.hire(services, "ben", Role.REVIEWER);
        Staff.hire(services, "carl", Role.SUPERVISOR);
        Office office = new Office(services);
        as("carl", () -> accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", ID))));
        Map<String, Truth> truths = Truth.of(ID);
        truths.values().forEach(truth -> bring(office, truth));
        System.out.println(
                office.the(CaseProposals.class).ready(new ElectionId(ID)).size() + " of " + truths.size()
                        + " cases are ready.");
        services.close();
    }

    private static void bring(Office office, Truth truth) {
        EnvelopeKey key = new EnvelopeKey(new ElectionId(ID), truth.envelopeNo());
        try {
            new Reviewing(office, key, truth).work();
            EnvelopeCase now = office.the(CaseService.class).find(key).orElseThrow();
            if (now.state() == CaseState.PROPOSED) {
                as("ben", () -> accepted(office.the(ProposalService.class).secondReview(key, now.version(), true, "")));
            }
        } catch (AssertionError | RuntimeException e) {
            System.out.println(key.envelopeNo() + " stays where it is: " + e.getMessage());
        }
    }
}
