package org.proviso.canvass.sheet;

import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.canvass.CanvassFigures;
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.election.ElectionService;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * The sheet of balances: every figure of every voting location, and what a supervisor types over it. Each figure that
 * changed is an act of its own, with who, when, the number before and the new one; all that was typed is saved or nothing.
 */
@Service
@Validated
public class BalanceSheetService {

    private final CanvassService canvass;
    private final SheetStore store;
    private final IntakeService intake;
    private final ElectionService elections;
    private final AccessService access;
    private final StaffList staff;
    private final ActDoor door;

    BalanceSheetService(
            CanvassService canvass,
            SheetStore store,
            IntakeService intake,
            ElectionService elections,
            AccessService access,
            StaffList staff,
            ActDoor door) {
        this.canvass = canvass;
        this.store = store;
        this.intake = intake;
        this.elections = elections;
        this.access = access;
        this.staff = staff;
        this.door = door;
    }

    /** The sheet as it stands. */
    @Transactional(readOnly = true)
    public SheetOfBalances sheet(ElectionId electionId) {
        access.demand(Permission.CLOSE_ELECTION);
        return read(electionId, store.notes(electionId));
    }

    /**
     * Saves what was typed; what is new are the figures that changed. A figure that stands at the number typed is left as it
     * is, with the source it has. Throws {@link ChangedFigures} where one is not as it was seen.
     */
    @Transactional
    public ActResult<List<TypedFigure>> save(@Valid SaveFigures typed) {
        return door.demand(Permission.CLOSE_ELECTION)
                .lockNothing()
                .refuse(user -> elections.closed(typed.electionId()))
                .refuseAll(user -> typed.figures().stream()
                        .flatMap(figure -> notTyped(figure).stream())
                        .distinct()
                        .toList())
                .refuse(user -> typed.because().isBlank()
                        ? Optional.of(Refusal.at("because", Why.NO_REASON, "Enter the source of the figures."))
                        : Optional.empty())
                .save(user -> insert(typed, user))
                .recordEach(saved -> saved.stream()
                        .map(figure -> line(typed.electionId(), figure))
                        .toList());
    }

    private static Optional<Refusal> notTyped(TypedFigure typed) {
        CanvassPlace where = CanvassService.COUNTY.equals(typed.place())
                ? new CanvassPlace(null, typed.hours())
                : new CanvassPlace(typed.place(), typed.hours());
        return Refusal.when(
                !new SheetRow(where, Map.of()).typed().contains(typed.figure()),
                Why.COUNTED_NOT_NOTED,
                "The program counts this figure or adds it up. It cannot be entered.");
    }

    private List<TypedFigure> insert(SaveFigures typed, OfficeUser by) {
        List<SheetStore.Note> notes = store.notes(typed.electionId());
        List<TypedFigure> changed = changed(read(typed.electionId(), notes), typed.figures());
        int last = notes.isEmpty() ? 0 : notes.get(notes.size() - 1).noteNo();
        for (TypedFigure figure : changed) {
            last++;
            store.insert(typed.electionId(), last, figure, typed.because().strip(), by.userName());
        }
        return changed;
    }

    private static List<TypedFigure> changed(SheetOfBalances now, List<TypedFigure> typed) {
        List<TypedFigure> changed = new ArrayList<>();
        List<TypedFigure> stale = new ArrayList<>();
        for (TypedFigure figure : typed) {
            Optional<SheetCell> cell = now.row(figure).map(row -> row.cell(figure.figure()));
            if (cell.isEmpty()) {
                stale.add(figure);
            } else if (!cell.get().text().equals(String.valueOf(figure.number()))) {
                (cell.get().isAsSeen(figure) ? changed : stale).add(figure);
            }
        }
        if (!stale.isEmpty()) {
            throw new ChangedFigures(stale);
        }
        return changed;
    }

    private SheetOfBalances read(ElectionId electionId, List<SheetStore.Note> notes) {
        List<CanvassFigures> accounts = canvass.accounts(electionId);
        SheetReader reader = new SheetReader(notes, intake.transmittals(electionId), staff, elections.zone(electionId));
        List<SheetRow> rows = new ArrayList<>();
        for (CanvassFigures hours : accounts) {
            hours.locations()
                    .forEach((place, figures) -> rows.add(reader.row(new CanvassPlace(place, hours.hours()), figures)));
            rows.add(reader.row(new CanvassPlace(null, hours.hours()), hours.county()));
        }
        return new SheetOfBalances(accounts, rows);
    }

    private static LedgerLine line(ElectionId electionId, TypedFigure figure) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("figure", figure.figure().code());
        payload.put("hours", figure.hours().code());
        if (figure.seen() != null) {
            payload.put("before", figure.seen());
        }
        payload.put("number", figure.number());
        return LedgerLine.of(LedgerChain.of(electionId), "figure_noted", figure.place(), payload);
    }
}
