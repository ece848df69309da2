package org.proviso.files.mapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.CheckIn;
import org.proviso.core.Code;
import org.proviso.core.Contest;
import org.proviso.core.Entitlement;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.StreetSegment;
import org.proviso.files.election.BallotStyleReader;
import org.proviso.files.election.CheckInReader;
import org.proviso.files.election.ContestReader;
import org.proviso.files.election.EnvelopeReader;
import org.proviso.files.election.MailBallotReader;
import org.proviso.files.election.PrecinctReader;
import org.proviso.files.election.StreetReader;
import org.proviso.files.election.TransmittalReader;
import org.proviso.files.election.VotedElsewhereReader;
import org.proviso.files.roll.RollReader;

/** The table of our columns says what the readers say. */
class OurFieldsTest {

    private static final Map<ListKind, BiConsumer<Path, Consumer<String>>> READERS = Map.of(
            ListKind.ROLL, RollReader::read,
            ListKind.MAIL_BALLOTS, MailBallotReader::read,
            ListKind.CHECK_INS, CheckInReader::read,
            ListKind.VOTED_ELSEWHERE, VotedElsewhereReader::read,
            ListKind.STREETS, StreetReader::read,
            ListKind.PRECINCTS, PrecinctReader::read,
            ListKind.BALLOT_STYLES, BallotStyleReader::read,
            ListKind.CONTESTS, ContestReader::read,
            ListKind.TRANSMITTALS, TransmittalReader::read,
            ListKind.ENVELOPES, EnvelopeReader::read);

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource
    void every_column_is_one_of_the_readers_and_none_is_missing(ListKind list) {
        String header = OurFields.of(list).stream().map(OurField::name).collect(Collectors.joining(","));
        Path file = OwnFiles.write(folder, list.file(), header + "\n");
        List<String> warnings = new ArrayList<>();

        READERS.get(list).accept(file, warnings::add);

        assertThat(warnings).isEmpty();
    }

    @Test
    void the_roll_and_the_envelopes_have_every_column_that_may_be_left_out_too() {
        assertThat(names(ListKind.ROLL))
                .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                RollReader.columns().required().stream(), RollReader.columns().optional().stream())
                        .toList());
        assertThat(names(ListKind.ENVELOPES))
                .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                EnvelopeReader.columns().required().stream(),
                                EnvelopeReader.columns().optional().stream())
                        .toList());
    }

    @Test
    void the_words_of_a_coded_column_are_the_ones_its_reader_takes() {
        same(ListKind.ROLL, "status", RollStatus.class);
        same(ListKind.ROLL, "registration_channel", RegistrationChannel.class);
        same(ListKind.ROLL, "entitlement", Entitlement.class);
        same(ListKind.MAIL_BALLOTS, "state", MailBallot.State.class);
        same(ListKind.CHECK_INS, "kind", CheckIn.Kind.class);
        same(ListKind.STREETS, "parity", StreetSegment.Parity.class);
        same(ListKind.CONTESTS, "level", Contest.Level.class);
        same(ListKind.ENVELOPES, "source", Envelope.Source.class);
        same(ListKind.ENVELOPES, "voter_signed", Envelope.VoterSignature.class);
        same(ListKind.ENVELOPES, "envelope_condition", Envelope.Condition.class);
    }

    @ParameterizedTest
    @EnumSource
    void no_spelling_of_a_code_means_two_of_our_words(ListKind list) {
        for (OurField field : OurFields.of(list)) {
            List<String> spellings = field.codes().entrySet().stream()
                    .flatMap(word -> Stream.concat(Stream.of(word.getKey()), word.getValue().stream()))
                    .map(OurField::plain)
                    .toList();
            assertThat(spellings).as(list + " " + field.name()).doesNotHaveDuplicates();
        }
    }

    private static <E extends Enum<E> & Code> void same(ListKind list, String field, Class<E> type) {
        assertThat(OurFields.find(list, field).orElseThrow().words())
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(type.getEnumConstants()).map(Code::code).toList());
    }

    private static List<String> names(ListKind list) {
        return OurFields.of(list).stream().map(OurField::name).toList();
    }
}
