package org.proviso.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.files.InputException;
import picocli.CommandLine;

class MatchCommandTest {

    private static final String ROLL = """
            zip,voter_id,last_name,first_name,middle_name,suffix,date_of_birth,house_number,street,unit,city,id_last4
            49871,V1,Oyelaran,Catherine,Marie,,1974-03-09,1204,N Quarry St,,Millbrook,4821
            49871,V2,Thackeray,Owen,,SR,1950-06-02,88,Sorrel Ln,3,Millbrook,1111
            49871,V3,Thackeray,Owen,,JR,1979-11-30,88,Sorrel Ln,3,Millbrook,2222
            """;

    private static final String ENVELOPES = """
            envelope_no,last_name,first_name,middle_name,suffix,date_of_birth,residence_address_line,city,zip,id_last4
            E1,Oyelaran,Kate,,,1974-03-09,1204 North Quarry Street,Millbrook,49871,4821
            E2,Thackeray,Owen,,,,88 Sorrel Lane Apt 3,Millbrook,49871,
            E3,Zabriskie,Tor,,,1988-08-08,9 Elsewhere Rd,Farville,10001,8080
            """;

    @TempDir
    Path folder;

    @Test
    void pairs_are_written_in_the_order_of_the_envelopes() throws IOException {
        String out = run(ROLL, ENVELOPES, "1");
        assertThat(out)
                .containsPattern("index: 3 voters in [0-9.]+ s")
                .containsPattern("match: 3 envelopes in [0-9.]+ s");
        assertThat(Files.readAllLines(folder.resolve("links.csv")))
                .hasSize(4)
                .startsWith("envelope_no,voter_id,probability,verdict")
                .anyMatch(line -> line.matches("E1,V1,(0\\.999\\d+|1\\.000000),sure"))
                .anyMatch(line -> line.matches("E2,V[23],0\\.\\d{6},ambiguous"))
                .anyMatch(line -> line.equals("E3,,0.000000,none"));
    }

    @Test
    void the_number_of_threads_changes_no_byte() throws IOException {
        run(ROLL, ENVELOPES, "1");
        byte[] links = Files.readAllBytes(folder.resolve("links.csv"));
        run(ROLL, ENVELOPES, "5");
        assertThat(Files.readAllBytes(folder.resolve("links.csv"))).isEqualTo(links);
    }

    @Test
    void a_bad_row_is_named_and_nothing_is_written() throws IOException {
        String bad = ROLL.replace("1979-11-30", "1979-13-30");
        assertThat(failure(bad)).contains("roll.csv", "line 4", "date_of_birth");
        assertThat(failure(ROLL.replace("V3", "V2"))).contains("roll.csv", "V2");
        assertThat(failure(ROLL.replace("id_last4", "last4"))).contains("id_last4");
        assertThat(folder.resolve("links.csv")).doesNotExist();
    }

    @Test
    void every_bad_row_of_both_files_is_named_and_the_output_stays_as_it_was() throws IOException {
        Path links = Files.writeString(folder.resolve("links.csv"), "mine");
        String roll = ROLL.replace("1979-11-30", "1979-13-30").replace("V1,", ",") + "49871,V4,short\n";
        String envelopes = ENVELOPES.replace("1988-08-08", "8/8/1988").replace("E2,", "E1,");
        Shell run = match(arguments(roll, envelopes, "1"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err().lines().toList())
                .containsExactly(
                        "proviso match: 5 errors found; nothing was written",
                        "  roll.csv line 2, column voter_id: is empty",
                        "  roll.csv line 4, column date_of_birth: \"1979-13-30\" is not a date (write it as 1990-12-31)",
                        "  roll.csv line 5: has 3 fields but the header has 12",
                        "  envelopes.csv line 3, column envelope_no: \"E1\" appears twice, in lines 2 and 3",
                        "  envelopes.csv line 4, column date_of_birth: \"8/8/1988\" is not a date (write it as 1990-12-31)");
        assertThat(links).hasContent("mine");
    }

    @Test
    void bad_envelopes_are_all_named_where_the_roll_is_good() throws IOException {
        Shell run = match(arguments(ROLL, ENVELOPES.replace("E1,", ",").replace("E3,", ","), "2"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err().lines())
                .contains(
                        "  envelopes.csv line 2, column envelope_no: is empty",
                        "  envelopes.csv line 4, column envelope_no: is empty");
        assertThat(folder.resolve("links.csv")).doesNotExist();
    }

    @Test
    void of_very_many_bad_rows_a_hundred_are_named_and_the_rest_counted() throws IOException {
        StringBuilder roll = new StringBuilder(ROLL);
        for (int i = 0; i < 250; i++) {
            roll.append("49871,W").append(i).append(",Bad,Row,,,never,1,Oak St,,Millbrook,\n");
        }
        Shell run = match(arguments(roll.toString(), ENVELOPES, "2"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err().lines()).hasSize(102);
        assertThat(run.err())
                .startsWith("proviso match: 250 errors found; nothing was written\n")
                .endsWith("  and 150 more\n");
    }

    private static Shell match(String[] options) {
        List<String> line = new ArrayList<>(List.of(options));
        line.add(0, "match");
        return Shell.run(line.toArray(String[]::new));
    }

    private String failure(String roll) throws IOException {
        StringWriter problem = new StringWriter();
        CommandLine line = commandLine(new StringWriter());
        line.setExecutionExceptionHandler((exception, command, result) -> {
            assertThat(exception).isInstanceOf(InputException.class);
            problem.write(exception.getMessage());
            return 2;
        });
        assertThat(line.execute(arguments(roll, ENVELOPES, "1"))).isEqualTo(2);
        return problem.toString();
    }

    private String run(String roll, String envelopes, String threads) throws IOException {
        StringWriter out = new StringWriter();
        assertThat(commandLine(out).execute(arguments(roll, envelopes, threads)))
                .isZero();
        return out.toString();
    }

    private static CommandLine commandLine(StringWriter out) {
        return new CommandLine(new MatchCommand()).setOut(new PrintWriter(out));
    }

    private String[] arguments(String roll, String envelopes, String threads) throws IOException {
        Path rollFile = Files.writeString(folder.resolve("roll.csv"), roll);
        Path envelopeFile = Files.writeString(folder.resolve("envelopes.csv"), envelopes);
        return new String[] {
            "--roll",
            rollFile.toString(),
            "--envelopes",
            envelopeFile.toString(),
            "--out",
            folder.resolve("links.csv").toString(),
            "--threads",
            threads
        };
    }
}
