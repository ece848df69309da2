package org.proviso.journey;

import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.function.Supplier;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.ActResults;
import org.proviso.database.TestOffice;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;

/**
 * The sample primary at noon two days after the election, as all tests that are marked {@link OnPages} begin with it.
 * Each test works on envelopes and people that no other one of its class touches.
 */
final class PagesOffice implements BeforeAllCallback {

    static final String DATABASE = "jdbc:h2:mem:on-pages;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";

    static final ElectionId ELECTION = new ElectionId(Primary.ID);

    private static final TestOffice OFFICE = TestOffice.sharedOver(DATABASE);

    private static final Primary PRIMARY = loaded();

    /**
     * Each class begins with the election as it was loaded, so which classes ran before in the same of two forks changes
     * nothing. That this class is loaded loads the election, before the server starts.
     */
    @Override
    public void beforeAll(ExtensionContext tests) {
        OFFICE.empty();
        loaded();
    }

    @TestConfiguration
    static class Server {

        @Bean
        @org.springframework.context.annotation.Primary
        Clock standingStill() {
            return Clock.fixed(Instant.parse("2026-08-06T16:00:00Z"), ZoneOffset.UTC);
        }

        @Bean
        PageDriver pageDriver(ApplicationContext server) {
            return PageDriver.of(server);
        }
    }

    private static Primary loaded() {
        Primary primary = Primary.loaded(OFFICE);
        primary.at(2, 12, 0);
        return primary;
    }

    /** What makes an envelope or an account ready, and what other people do meanwhile. */
    static Primary primary() {
        return PRIMARY;
    }

    static <T> T the(Class<T> service) {
        return PRIMARY.office().the(service);
    }

    static EnvelopeKey key(String envelopeNo) {
        return new EnvelopeKey(ELECTION, new EnvelopeNumber(envelopeNo));
    }

    /** Ada has taken the case. */
    static EnvelopeKey taken(String envelopeNo) {
        EnvelopeKey key = free(envelopeNo);
        PRIMARY.taken(key, new UserName("ada"));
        return key;
    }

    /** Nobody has the case; where the desk handed it to Ada, she returned it. */
    static EnvelopeKey free(String envelopeNo) {
        EnvelopeKey key = key(envelopeNo);
        if (state(key) == CaseState.IN_REVIEW) {
            as("ada", () -> accepted(the(CaseAssignmentService.class).giveBack(key, version(key))));
        }
        return key;
    }

    /** Ada found out whose envelope it is and compared the signature, and proposed an outcome where there is one. */
    static EnvelopeKey worked(String envelopeNo) {
        EnvelopeKey key = free(envelopeNo);
        PRIMARY.reviewing(key).work();
        return key;
    }

    /** Ada has taken the case and confirmed who the voter is. */
    static EnvelopeKey linked(String envelopeNo) {
        EnvelopeKey key = taken(envelopeNo);
        VoterId voter = new VoterId(PRIMARY.truth(key).voterId());
        as("ada", () -> accepted(the(LinkService.class).confirm(new ConfirmLink(key, version(key), voter, ""))));
        return key;
    }

    static int version(EnvelopeKey key) {
        return PRIMARY.now(key).version();
    }

    static CaseState state(EnvelopeKey key) {
        return the(CaseService.class).find(key).map(EnvelopeCase::state).orElseThrow();
    }

    /** The case as a reviewer sees it. */
    static CaseFile file(EnvelopeKey key) {
        return as("ada", () -> the(CaseFileService.class).open(key).orElseThrow());
    }

    /** Somebody did it and was not refused. */
    static <T> T done(String who, Supplier<ActResult<T>> act) {
        return ActResults.accepted(as(who, act));
    }
}
