package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;

/** An address that the law protects: hidden while its voter is merely possible, and every view of it afterwards is an act. */
class ProtectedAddressTest {

    @OnADatabase
    void a_protected_address_is_hidden_until_the_link_is_settled_and_then_every_view_is_written_down(
            TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("protected_address");
        CaseFileService files = services.the(CaseFileService.class);

        CaseFile before = as("ada", () -> files.open(key).orElseThrow());
        assertThat(before.isProtected()).isTrue();
        assertThat(before.showsProtectedAddress()).isFalse();
        assertThat(seen(services, key)).isZero();

        String voter = String.valueOf(before.report().link().voterId());
        EnvelopeCase envelopeCase = primary.taken(key, new UserName("ada"));
        as(
                "ada",
                () -> accepted(services.the(LinkService.class)
                        .confirm(new ConfirmLink(key, envelopeCase.version(), new VoterId(voter), ""))));
        assertThat(as("ada", () -> files.open(key).orElseThrow()).showsProtectedAddress())
                .isTrue();
        as("ben", () -> files.open(key).orElseThrow());
        assertThat(seen(services, key)).isEqualTo(2);
    }

    @OnADatabase
    void the_case_of_any_other_voter_leaves_no_such_entry(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        as("ada", () -> services.the(CaseFileService.class).open(key).orElseThrow());
        assertThat(seen(services, key)).isZero();
    }

    private static long seen(TestOffice services, EnvelopeKey key) {
        return services
                .the(LedgerService.class)
                .about(LedgerChain.of(new ElectionId(Primary.ID)), key.envelopeNo())
                .stream()
                .map(LedgerEntry::act)
                .filter("protected_address_seen"::equals)
                .count();
    }
}
