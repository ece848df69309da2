package org.proviso.review.file;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.proviso.core.Address;
import org.proviso.core.Envelope;
import org.proviso.core.PrecinctId;
import org.proviso.core.PrecinctPart;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.LocatedAddress;
import org.proviso.core.adjudication.finding.Records;

/** An address of the case with the precinct and the style that the street file gives it; empty where it gives none. */
public record CaseAddress(String address, String which, String precinct, String style) {

    private static final String PROTECTED = "protected address";

    static List<CaseAddress> of(CaseReport report, Records records) {
        Envelope.Affirmation said = report.envelope().affirmation();
        boolean hidden = report.voter().map(Voter::confidential).orElse(false)
                && !report.link().isSettled();
        List<CaseAddress> homes = new ArrayList<>();
        if (!said.residence().isBlank()) {
            homes.add(located(said.residence(), "now", hidden, records));
        }
        if (!said.former().isBlank()) {
            homes.add(located(said.former(), "before", hidden, records));
        }
        report.voter().ifPresent(voter -> homes.add(onRoll(voter, hidden, records)));
        return List.copyOf(homes);
    }

    private static CaseAddress onRoll(Voter voter, boolean hidden, Records records) {
        PrecinctId part =
                new PrecinctId(voter.residence().precinct(), voter.residence().split());
        String line = voter.residence().address().line();
        return new CaseAddress(
                hidden ? PROTECTED : line, "roll", precinct(List.of(part)), style(List.of(part), records));
    }

    private static CaseAddress located(Address address, String which, boolean hidden, Records records) {
        LocatedAddress found = records.locate(address);
        String place = switch (found.place()) {
            case FOUND -> precinct(found.parts());
            case OUT_OF_COUNTY -> "not in the county";
            default -> "not in the street file";
        };
        return new CaseAddress(hidden ? PROTECTED : address.line(), which, place, style(found.parts(), records));
    }

    private static String precinct(List<PrecinctId> parts) {
        return parts.isEmpty()
                ? ""
                : String.join(
                        ", ",
                        parts.stream()
                                .map(part -> part.precinct() + (part.split().isEmpty() ? "" : " " + part.split()))
                                .toList());
    }

    private static String style(List<PrecinctId> parts, Records records) {
        return String.join(
                ", ",
                new TreeSet<>(parts.stream()
                        .flatMap(part -> records.rows(part).stream())
                        .map(PrecinctPart::ballotStyle)
                        .toList()));
    }
}
