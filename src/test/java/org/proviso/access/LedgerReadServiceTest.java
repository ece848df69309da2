package org.proviso.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringWriter;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.ledger.LedgerChain;

/** The ledger is read by whoever works in the office or observes it, and by no visitor. */
class LedgerReadServiceTest {

    private static final LedgerChain NONE = new LedgerChain("election:none");

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnADatabase
    void an_observer_reads_checks_and_takes_away_the_chain(TestOffice office) {
        Staff.hire(office, "ines", Role.OBSERVER);
        Staff.signIn("ines");
        LedgerReadService ledger = office.the(LedgerReadService.class);
        StringWriter file = new StringWriter();
        ledger.export(LedgerChain.OFFICE, file);
        assertThat(file.toString()).isEmpty();
        assertThat(ledger.head(LedgerChain.OFFICE).sequence()).isZero();
        assertThat(ledger.read(LedgerChain.OFFICE, 0, 10)).isEmpty();
        assertThat(ledger.verify(LedgerChain.OFFICE).isWhole()).isTrue();
    }

    @OnADatabase
    void a_visitor_does_not_even_learn_whether_there_is_such_a_chain(TestOffice office) {
        LedgerReadService ledger = office.the(LedgerReadService.class);
        List<ThrowingCallable> reads = List.of(
                () -> ledger.head(NONE),
                () -> ledger.read(NONE, 0, 10),
                () -> ledger.verify(NONE),
                () -> ledger.export(NONE, new StringWriter()));
        reads.forEach(read -> assertThatThrownBy(read).isInstanceOf(NotPermittedException.class));
    }
}
