package org.proviso.setup.columns;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.mapping.FieldSource;
import org.proviso.files.mapping.ListKind;
import org.proviso.files.mapping.MappingReader;
import org.proviso.files.mapping.MappingYaml;
import org.proviso.files.mapping.Misfit;
import org.proviso.files.mapping.OurField;
import org.proviso.files.mapping.OurFields;

/** A supervisor corrects what was proposed for the office's file. */
class OwnFileTest {

    @TempDir
    Path folder;

    private OwnFile file() throws IOException {
        Path file = Files.writeString(folder.resolve("ballots.txt"), """
                VUID|PACKET|SENT|ALT|STATUS
                700001|M1|10/01/2026|B-77|ISS
                700002|M2|10/12/2026|B-78|RECVD
                700003|M3|10/02/2026|B-79|ZZ
                """);
        return OwnFile.proposed(file, ListKind.MAIL_BALLOTS, 2026);
    }

    private static OurField field(String name) {
        return OurFields.find(ListKind.MAIL_BALLOTS, name).orElseThrow();
    }

    @Test
    void another_column_is_chosen_and_none() throws IOException {
        OwnFile file = file();
        file.choose(field("ballot_serial"), "ALT");
        assertThat(file.mapping().source("ballot_serial"))
                .map(FieldSource::from)
                .hasValue(List.of("ALT"));
        int serial = OurFields.of(ListKind.MAIL_BALLOTS).indexOf(field("ballot_serial"));
        assertThat(file.preview().first()).extracting(row -> row.get(serial)).containsExactly("B-77", "B-78", "B-79");
        file.choose(field("ballot_serial"), "");
        assertThat(file.mapping().source("ballot_serial")).isEmpty();
        file.choose(field("voter_id"), "");
        assertThat(file.mapping().missing()).containsExactly("voter_id");
    }

    @Test
    void a_code_gets_its_meaning_and_is_no_misfit_any_more() throws IOException {
        OwnFile file = file();
        assertThat(OwnFile.unknownCodes(file.mapping(), file.preview()))
                .extracting(Misfit::value)
                .contains("ZZ");
        for (Misfit unknown : OwnFile.unknownCodes(file.mapping(), file.preview())) {
            file.choose(unknown.field(), unknown.value(), "void");
        }
        assertThat(file.preview().refused()).isZero();
        int state = OurFields.of(ListKind.MAIL_BALLOTS).indexOf(field("state"));
        assertThat(file.preview().first().get(2).get(state)).isEqualTo("void");
    }

    /** Tomorrow's file of the same office needs no click: the mapping that was taken along is read back as it was. */
    @Test
    void the_mapping_taken_along_reads_the_next_file_the_same() throws IOException {
        OwnFile file = file();
        file.choose("state", "ZZ", "late");
        file.named("county ballots", 2);
        Path next = Files.copy(folder.resolve("ballots.txt"), folder.resolve("next.txt"));
        OwnFile again = OwnFile.read(next, MappingReader.read("m.yaml", MappingYaml.of(file.mapping())), 2026);
        assertThat(MappingYaml.of(again.mapping())).isEqualTo(MappingYaml.of(file.mapping()));
        assertThat(again.preview()).isEqualTo(file.preview());
        assertThat(Files.readString(
                        again.convert(folder.resolve("mail-ballots.csv")).file()))
                .isEqualTo(Files.readString(
                        file.convert(folder.resolve("again.csv")).file()));
    }
}
