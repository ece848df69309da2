package org.proviso.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.Proviso;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.proviso.election.clock.OfficeClockService;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

/** The whole server as a demonstration: it begins with the sample, once. */
class DemoElectionLoaderTest {

    @TempDir
    private Path data;

    private ConfigurableApplicationContext started(boolean demo) {
        return SpringApplication.run(
                Proviso.class,
                "--server.port=0",
                "--proviso.demo=" + demo,
                "--spring.datasource.url=jdbc:h2:file:" + data.resolve("proviso") + ";WRITE_DELAY=0");
    }

    @Test
    void the_first_start_loads_the_sample_and_the_second_finds_it_there_with_its_clock() {
        long acts;
        try (ConfigurableApplicationContext first = started(true)) {
            assertThat(first.getBean(ElectionService.class).all()).containsExactly(new ElectionId("tamarack-general"));
            assertThat(first.getBean(IntakeService.class).envelopes(new ElectionId("tamarack-general")))
                    .hasSize(240);
            aMovedClockLetsDeadlinesPass(first);
            acts = acts(first);
        }
        try (ConfigurableApplicationContext second = started(true)) {
            assertThat(second.getBean(ElectionService.class).all()).containsExactly(new ElectionId("tamarack-general"));
            assertThat(acts(second)).isEqualTo(acts);
        }
    }

    @Test
    void an_office_that_is_no_demonstration_begins_empty() {
        try (ConfigurableApplicationContext office = started(false)) {
            assertThat(office.getBean(ElectionService.class).all()).isEmpty();
        }
    }

    private static void aMovedClockLetsDeadlinesPass(ConfigurableApplicationContext office) {
        OfficeClockService clock = office.getBean(OfficeClockService.class);
        assertThat(office.getBean(Clock.class).instant())
                .isBetween(CarriedSample.WORK_BEGINS, CarriedSample.WORK_BEGINS.plusSeconds(3_600));
        assertThat(passed(office)).isZero();
        Staff.signIn("supervisor");
        accepted(clock.moveTo(LocalDateTime.of(2026, 11, 14, 9, 0)));
        Staff.signOut();
        assertThat(passed(office)).isPositive();
    }

    private static long passed(ConfigurableApplicationContext office) {
        return office
                .getBean(LedgerService.class)
                .read(LedgerChain.of(new ElectionId("tamarack-general")), 0, 1_000)
                .stream()
                .filter(entry -> entry.act().equals("deadline_passed"))
                .count();
    }

    private static long acts(ConfigurableApplicationContext office) {
        LedgerService ledger = office.getBean(LedgerService.class);
        return List.of(LedgerChain.OFFICE, LedgerChain.of(new ElectionId("tamarack-general"))).stream()
                .mapToLong(chain -> ledger.head(chain).sequence())
                .sum();
    }
}
