package org.proviso.election;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rules;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;

/** An election settled under the pack of a state: it loads, is kept whole, and comes back as it was. */
class StatePackInOfficeTest {

    private static final Path SAMPLE = Path.of("sample-cases", "tamarack-primary");

    @TempDir
    private Path temporary;

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    @OnADatabase
    void an_office_works_under_the_pack_of_its_state(TestOffice office) throws IOException {
        Path folder = underPack("us-co");
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        accepted(office.the(ElectionLoadService.class).load(folder));
        RulesService rules = office.the(RulesService.class);
        DeadlineBook book = rules.book(new ElectionId("tamarack-primary"));

        assertThat(book.pack().pack().name()).isEqualTo("Colorado");
        assertThat(book.pack().of(Rules.DECISION).isKnown()).isTrue();
        DeadlineBook kept =
                rules.book(new ElectionId("tamarack-primary"), book.pack().hash());
        assertThat(kept.pack().all()).isEqualTo(book.pack().all());
    }

    private Path underPack(String pack) throws IOException {
        Path folder = Files.createDirectories(temporary.resolve("tamarack-primary"));
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(SAMPLE.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path election = folder.resolve("election.yaml");
        Files.writeString(election, Files.readString(election).replaceFirst("rule_pack: .*", "rule_pack: " + pack));
        return folder;
    }
}
