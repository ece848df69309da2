package org.proviso.notices;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.Envelope;
import org.proviso.core.PersonName;
import org.proviso.core.Voter;

/**
 * Where a voter is written to: the mailing address on the affirmation, then the roll's; where neither has one, the
 * residence as the voter wrote it, then as the roll has it. The record of the roll is there only once a person settled
 * who the voter is, so that nobody else gets the letter. {@code isProtected}: the law protects the address of the voter,
 * or of somebody who may be the voter.
 */
record Addressee(Envelope.Affirmation said, Optional<Voter> voter, boolean isProtected) {

    MailTo mailTo() {
        return isProtected ? new MailTo(name(), MailTo.HELD, true) : new MailTo(name(), address(), false);
    }

    /** The language asked for on the affirmation, then on the roll; English where neither says. */
    String language() {
        return first(said.language(), voter.map(Voter::language).orElse(""), Letter.ENGLISH);
    }

    private String address() {
        return first(
                said.mailAddress(),
                voter.map(Voter::mailAddress).orElse(""),
                said.residence().isBlank() ? "" : said.residence().oneLine(),
                voter.map(known -> known.residence().address().oneLine()).orElse(""));
    }

    private String name() {
        return first(
                inFull(said.name()), voter.map(known -> inFull(known.name())).orElse(""));
    }

    private static String first(String... texts) {
        return Stream.of(texts).filter(text -> !text.isBlank()).findFirst().orElse("");
    }

    private static String inFull(PersonName name) {
        return Stream.of(name.first(), name.middle(), name.last(), name.suffix())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining(" "));
    }
}
