package org.proviso.journey;

import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.util.EnumMap;
import java.util.Map;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.NoteFigure;
import org.proviso.canvass.VotingHours;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.core.act.ActResult;
import org.proviso.core.chain.ChainHead;
import org.proviso.intake.IntakeService;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.RecordedTransmittal;
import org.proviso.intake.TransmittalService;

/** The supervisor adds up: notes what only people can tell, clears up what differs, and closes. */
final class AddingUp {

    private final Office office;
    private final String election;

    AddingUp(Office office, String election) {
        this.office = office;
        this.election = election;
    }

    /** One location's return says one more than came in: counted again, it was one less; the poll list has it. */
    void clearUp(String location, int really) {
        TransmittalService returns = office.the(TransmittalService.class);
        RecordedTransmittal wrong =
                as("carl", () -> office.the(IntakeService.class).recordedTransmittals(new ElectionId(election)))
                        .stream()
                        .filter(recorded ->
                                recorded.transmittal().votingLocation().equals(location))
                        .findFirst()
                        .orElseThrow();
        Transmittal said = wrong.transmittal();
        as("carl", () -> {
            returns.correct(
                    wrong.lineNo(),
                    wrong.version(),
                    new RecordTransmittal(
                            new ElectionId(election),
                            location,
                            said.day(),
                            said.bag(),
                            said.sealOut(),
                            said.sealIn(),
                            said.supplied(),
                            said.issued(),
                            said.spoiled(),
                            said.unused(),
                            really,
                            said.scannedInError(),
                            said.looseBallots()));
            return true;
        });
        note(location, Figure.UNACCOUNTED, said.returned() - really, "On the poll list; the voter left with it.");
    }

    /** A return that never came is fetched: so many envelopes went out and came back. */
    void lateReturn(String location, int envelopes) {
        RecordTransmittal late = new RecordTransmittal(
                new ElectionId(election),
                location,
                null,
                "late",
                "",
                "",
                60,
                envelopes,
                0,
                60 - envelopes,
                envelopes,
                0,
                0);
        as("carl", () -> office.the(TransmittalService.class).record(late));
    }

    void note(String place, Figure figure, int number, String because) {
        accepted(as(
                "carl",
                () -> office.the(CanvassService.class)
                        .noteFigure(new NoteFigure(
                                new ElectionId(election), place, VotingHours.REGULAR, figure, number, because))));
    }

    /** Every location reports nothing missing; the mail-ballot office's log stands for a return. */
    void noteTheUsual(int fromMailOffice) {
        for (CanvassFigures accounts :
                as("carl", () -> office.the(CanvassService.class).accounts(new ElectionId(election)))) {
            accounts.locations().keySet().forEach(place -> {
                note(place, Figure.MISSING, 0, "Stock counted.");
                note(place, Figure.UNACCOUNTED, 0, "Poll list compared.");
            });
        }
        Map<Figure, Integer> log = new EnumMap<>(Figure.class);
        log.put(Figure.SUPPLIED, fromMailOffice);
        log.put(Figure.ISSUED, fromMailOffice);
        log.put(Figure.SENT_BACK, fromMailOffice);
        log.put(Figure.SPOILED, 0);
        log.put(Figure.UNUSED, 0);
        log.forEach((figure, number) -> note("Mail-ballot office", figure, number, "Hand-over log."));
    }

    ActResult<ChainHead> close() {
        return as("dora", () -> office.the(CanvassService.class).closeElection(new ElectionId(election)));
    }
}
