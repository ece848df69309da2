package org.proviso.browser.twists;

import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.Staff;
import org.proviso.browser.RunningOffice;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.database.OfficeTime;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.journey.Office;
import org.proviso.journey.Primary;
import org.proviso.journey.Reviewing;
import org.proviso.journey.Truth;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.springframework.util.FileSystemUtils;

/**
 * The sample primary as a demonstration, on the second day after the election: its ordinary envelopes are reviewed and wait
 * for the board, those of the twists lie untouched.
 */
public final class TwistsOffice implements AutoCloseable {

    static final ElectionId ELECTION = new ElectionId(Primary.ID);

    private static final String DATABASE = "jdbc:h2:mem:twists;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";
    /** Of the newer roll: the voter of P-1007, whom no search found. */
    static final String FOUND_LATER =
            "T9900017,Seaborn,Isaiah,Matthew,,1995-10-06,903,Flint St,Apt 4,Birch Hall,49874,304,A,"
                    + "2026-06-15,motor_vehicle,2026-06-17,active,,,,,,,Granite,2026-06-17,no,yes,full,,no,,en";

    static final String FREE_RECEIPT = "4817-2206-5";
    static final String WITHOUT_RETURN = "Cedar Forks School";
    static final String ONE_TOO_MANY = "Sorrel Township Hall";
    private static final ZoneId COUNTY = ZoneId.of("America/Detroit");
    private static final LocalDateTime PREPARED = LocalDateTime.of(2026, 8, 5, 9, 0);
    private static final LocalDateTime BEGINS = LocalDateTime.of(2026, 8, 6, 9, 0);

    private final TestOffice services;
    private final RunningOffice server;

    private TwistsOffice(TestOffice services, RunningOffice server) {
        this.services = services;
        this.server = server;
    }

    /** Prepares the office and starts its server. */
    public static TwistsOffice open(Set<String> left) {
        System.setProperty("proviso.demo", "true");
        TestOffice services = TestOffice.over(DATABASE);
        Staff.hireForDemo(services);
        OfficeTime.set(services, PREPARED);
        as("supervisor", () -> accepted(services.the(ElectionLoadService.class).load(folder())));
        review(new Office(services), left);
        clockBegins(services);
        return new TwistsOffice(services, RunningOffice.over(DATABASE));
    }

    /** The sample with two slips at the voting locations: a return that never came, and one that says one too many. */
    private static Path folder() {
        try {
            Path folder = Files.createTempDirectory("proviso-twists-").resolve(Primary.ID);
            FileSystemUtils.copyRecursively(Primary.FOLDER, folder);
            Path returns = folder.resolve("transmittals.csv");
            List<String> lines = Files.readAllLines(returns).stream()
                    .filter(line -> !line.startsWith(WITHOUT_RETURN))
                    .map(line -> line.startsWith(ONE_TOO_MANY) ? line.replace(",60,2,0,58,2,", ",60,3,0,57,3,") : line)
                    .toList();
            Files.write(returns, lines);
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void review(Office office, Set<String> left) {
        Map<String, Truth> truths = Truth.of(Primary.ID);
        truths.forEach((number, truth) -> {
            if (!left.contains(number)) {
                new Reviewing(
                                office,
                                new EnvelopeKey(ELECTION, new EnvelopeNumber(number)),
                                truth,
                                "reviewer",
                                "second")
                        .work();
            }
        });
        office.the(CaseService.class)
                .inState(ELECTION, CaseState.PROPOSED)
                .forEach(proposed -> as(
                        "second",
                        () -> accepted(office.the(org.proviso.review.acts.ProposalService.class)
                                .secondReview(proposed.key(), proposed.version(), true, ""))));
    }

    /** The server's clock goes on from there in real time. */
    private static void clockBegins(TestOffice services) {
        Instant begins = BEGINS.atZone(COUNTY).toInstant();
        services.jdbc()
                .sql("insert into office_clock (clock_no, ahead_millis, not_before) values (1, ?, ?)")
                .params(Duration.between(Instant.now(), begins).toMillis(), begins.atOffset(ZoneOffset.UTC))
                .update();
    }

    static <T> T accepted(ActResult<T> outcome) {
        return outcome.ifAccepted().orElseThrow(() -> new AssertionError("refused: " + outcome.refusals()));
    }

    public String address() {
        return server.address();
    }

    public <T> T the(Class<T> service) {
        return server.the(service);
    }

    @Override
    public void close() {
        server.close();
        services.close();
    }
}
