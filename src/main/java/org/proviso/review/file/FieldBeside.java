package org.proviso.review.file;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.PersonName;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.AddressLocator;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.PackedDate;

/** What an envelope says in one field beside what a record of the roll says there, and whether they are the same. */
public record FieldBeside(Field field, String onEnvelope, String onRecord, Likeness likeness) {

    /** In place of an address that the law protects. */
    private static final String PROTECTED = "protected address";

    /** A field that both have. */
    public enum Field {
        NAME("Name"),
        BIRTH_DATE("Date of birth"),
        ADDRESS("Address");

        private final String words;

        Field(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The same as a reader takes it, different, or not to be compared because one of them says nothing. */
    public enum Likeness {
        SAME,
        DIFFERS,
        NOT_COMPARED
    }

    /** {@code hidden}: the address is protected by law, and nobody settled yet that the voter is this one. */
    public static List<FieldBeside> of(Envelope.Affirmation said, Voter voter, boolean hidden) {
        return List.of(name(said.name(), voter.name()), born(said, voter.birthDate()), home(said, voter, hidden));
    }

    private static FieldBeside name(PersonName said, PersonName record) {
        boolean empty = said.listed().isBlank() || record.listed().isBlank();
        boolean same = NameText.fold(said.listed()).equals(NameText.fold(record.listed()));
        return new FieldBeside(Field.NAME, said.listed(), record.listed(), likeness(empty, same));
    }

    /** A roll's placeholder is unknown, never a difference. What is no date differs from every date. */
    private static FieldBeside born(Envelope.Affirmation said, @Nullable LocalDate record) {
        String written = said.birthDate() == null ? said.birthDateAsWritten() : digits(said.birthDate());
        boolean empty = written.isEmpty() || PackedDate.of(record) == PackedDate.UNKNOWN;
        return new FieldBeside(
                Field.BIRTH_DATE, written, digits(record), likeness(empty, Objects.equals(said.birthDate(), record)));
    }

    private static String digits(@Nullable LocalDate date) {
        return date == null ? "" : DateWords.date(date);
    }

    private static FieldBeside home(Envelope.Affirmation said, Voter voter, boolean hidden) {
        Address written = said.residence();
        Address record = voter.residence().address();
        Likeness likeness = likeness(written.isBlank() || record.isBlank(), isSame(written, record));
        return new FieldBeside(Field.ADDRESS, words(written, hidden), words(record, hidden), likeness);
    }

    private static String words(Address address, boolean hidden) {
        return hidden && !address.isBlank() ? PROTECTED : address.oneLine();
    }

    /** The same house; units are compared where both name one. */
    private static boolean isSame(Address written, Address record) {
        String unit = NameText.fold(written.unit());
        String other = NameText.fold(record.unit());
        return AddressLocator.same(written, record) && (unit.isEmpty() || other.isEmpty() || unit.equals(other));
    }

    private static Likeness likeness(boolean empty, boolean same) {
        return empty ? Likeness.NOT_COMPARED : same ? Likeness.SAME : Likeness.DIFFERS;
    }
}
