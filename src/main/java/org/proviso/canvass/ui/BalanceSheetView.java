package org.proviso.canvass.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassPlace;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.canvass.sheet.BalanceSheetService;
import org.proviso.canvass.sheet.ChangedFigures;
import org.proviso.canvass.sheet.SaveFigures;
import org.proviso.canvass.sheet.SheetCell;
import org.proviso.canvass.sheet.SheetOfBalances;
import org.proviso.canvass.sheet.SheetRow;
import org.proviso.canvass.sheet.TypedFigure;
import org.proviso.core.act.ActResult;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChangedMeanwhile;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** The sheet of balances: every voting location with its figures, typed box by box, differences marked as one types. */
@Route(value = "canvass/sheet", layout = OfficeFrame.class)
@PageTitle("Sheet of balances · Proviso")
@PermitAll
public final class BalanceSheetView extends Composite<Div> implements SheetLine.Desk {

    private static final Set<BalanceRule> CHECKED = EnumSet.complementOf(EnumSet.of(BalanceRule.NOTHING_PENDING));

    private final transient BalanceSheetService sheets;
    private final transient CanvassService canvass;
    private final transient AccessService access;
    private final ElectionLine election;
    private final SheetEntries entries = new SheetEntries();
    private final PageHead head = new PageHead("Sheet of balances", "");
    private final TypedField source = new TypedField("source", "Source of what you type").like("closing form, log");
    private final SheetTable locations;
    private final SheetTable county;
    private final SheetPaging paging;
    private final ActButton save = new ActButton("Save sheet").first();
    private final Paragraph at = new Paragraph();
    private final Paragraph changed = new Paragraph();
    private transient SheetOfBalances sheet;
    private transient Map<CanvassPlace, List<BalanceResult>> balances;

    BalanceSheetView(
            BalanceSheetService sheets, CanvassService canvass, AccessService access, WorkingElection workplace) {
        access.demand(Permission.CLOSE_ELECTION);
        this.access = access;
        this.sheets = sheets;
        this.canvass = canvass;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
        boolean open = !election.closed();
        locations = new SheetTable("Voting locations", "row", SheetColumns.OF_LOCATIONS, open, this);
        county = new SheetTable("The county's own figures", "county", SheetColumns.OF_COUNTY, open, this);
        sheet = sheets.sheet(election.id());
        balances = balances(List.of());
        paging = new SheetPaging(this::showRows);
        getContent().addClassNames("sheet", "canvass", "wide");
        head.beside(Links.link("Back to Canvass", "canvass"));
        getContent().add(head);
        if (open) {
            getContent().add(source);
        }
        getContent()
                .add(
                        paging,
                        scroll(locations),
                        locationsFile(),
                        new H2("The county's own figures"),
                        scroll(county),
                        countyFile(),
                        acts(open));
        showRows();
    }

    private DownloadLinks locationsFile() {
        return DownloadLinks.of(
                        "Voting locations",
                        election.id(),
                        () -> new SheetList(SheetColumns.OF_LOCATIONS, savedRows(paging.chosen())))
                .narrowed(() -> paging.chosen().words());
    }

    private DownloadLinks countyFile() {
        return DownloadLinks.of(
                "The county's own figures",
                election.id(),
                () -> new SheetList(
                        SheetColumns.OF_COUNTY,
                        sheetNow().rows().stream()
                                .filter(row -> row.where().isCounty())
                                .toList()));
    }

    private SheetOfBalances sheetNow() {
        access.demand(Permission.CLOSE_ELECTION);
        return sheets.sheet(election.id());
    }

    /** The rows of all pages that are chosen, and the county's under them, with the figures that are saved. */
    private List<SheetRow> savedRows(SheetPaging.Chosen chosen) {
        SheetOfBalances now = sheetNow();
        Set<CanvassPlace> off = canvass.balances(election.id(), now.accounts(), CHECKED).stream()
                .filter(balance -> !balance.isSettled())
                .map(BalanceResult::where)
                .collect(Collectors.toSet());
        return now.rows().stream()
                .filter(row -> row.where().isCounty()
                        || (chosen.isSought(row.where().words()) && (!chosen.onlyOff() || off.contains(row.where()))))
                .sorted(Comparator.comparing((SheetRow row) -> row.where().isCounty()))
                .toList();
    }

    private static Div scroll(SheetTable table) {
        Div scroll = new Div(table);
        scroll.addClassName("across");
        return scroll;
    }

    private Div acts(boolean open) {
        at.addClassNames("soft", "small");
        changed.addClassName("problem");
        changed.getElement().setAttribute("role", "alert");
        changed.setVisible(false);
        save.getElement().setAttribute("data-finish", true);
        save.does(() -> save((CanvassPlace) null));
        save.setVisible(open);
        Span how = new Span(open ? "Tab goes to the next box, Ctrl+Enter saves the sheet." : "The election is closed.");
        how.addClassNames("soft", "small");
        Div acts = new Div(save, how);
        acts.addClassName("acts");
        Div foot = new Div(at, changed, acts);
        foot.addClassName("foot");
        return foot;
    }

    /** The rows that are chosen, a page of them. */
    private void showRows() {
        List<SheetRow> all = sheet.rows().stream().filter(this::isChosen).toList();
        List<SheetRow> county =
                sheet.rows().stream().filter(row -> row.where().isCounty()).toList();
        locations.show(Stream.concat(paging.page(all).stream(), county.stream()).toList(), entries);
        this.county.show(county, entries);
        mark();
    }

    private boolean isChosen(SheetRow row) {
        return !row.where().isCounty()
                && paging.chosen().isSought(row.where().words())
                && (!paging.chosen().onlyOff() || isOff(row.where()));
    }

    private boolean isOff(CanvassPlace where) {
        return of(where).stream().anyMatch(balance -> !balance.isSettled());
    }

    private List<BalanceResult> of(CanvassPlace where) {
        return balances.getOrDefault(where, List.of());
    }

    private Map<CanvassPlace, List<BalanceResult>> balances(List<TypedFigure> typed) {
        return canvass.balances(election.id(), sheet.with(typed), CHECKED).stream()
                .collect(Collectors.groupingBy(BalanceResult::where));
    }

    private Stream<SheetLine> lines() {
        return Stream.concat(locations.lines().stream(), county.lines().stream());
    }

    private void mark() {
        lines().forEach(line -> line.balance(of(line.row().where()), entries));
        long off = sheet.rows().stream()
                .filter(row -> of(row.where()).stream().anyMatch(BalanceResult.Differs.class::isInstance))
                .count();
        long rows = sheet.rows().stream().filter(row -> !row.where().isCounty()).count();
        head.say(UsDates.count(rows, "row") + " and the county, " + off + " of them off. "
                + (entries.count() == 0
                        ? "Nothing typed is waiting to be saved."
                        : UsDates.count(entries.count(), "figure") + " typed and not saved yet."));
    }

    @Override
    public void typed(SheetLine line, Figure figure, String text) {
        entries.type(SheetEntries.Box.of(line.row(), figure), text, line.row().cell(figure));
        balances = balances(entries.figures(sheet, null));
        mark();
    }

    @Override
    public void at(SheetLine line, Figure figure) {
        SheetCell cell = line.row().cell(figure);
        at.setText(
                line.row().where().words() + ", " + SheetColumns.heading(figure).replace("\u00ad", "") + ": "
                        + (cell.number() == null ? "" : cell.text() + ", ") + cell.words());
    }

    @Override
    public void save(SheetLine line) {
        save(line.row().where());
    }

    /** Saves one row, or (null) all that was typed. Whatever is not saved stays in its box. */
    private void save(@Nullable CanvassPlace of) {
        changed.setText("");
        changed.setVisible(false);
        source.problem("");
        if (entries.isWrong(of)) {
            say("Not saved. A figure is a whole number: check the marked boxes.", MessageLine::refused);
            return;
        }
        List<TypedFigure> typed = entries.figures(sheet, of);
        if (typed.isEmpty()) {
            say("Nothing to save: no figure was changed.", MessageLine::refused);
            return;
        }
        try {
            write(new SaveFigures(election.id(), typed, source.text()));
        } catch (OptimisticLockingFailureException e) {
            tell(e);
        }
    }

    private void write(SaveFigures command) {
        ActResult<List<TypedFigure>> result = sheets.save(command);
        if (result instanceof ActResult.Refused<List<TypedFigure>> refused) {
            boolean noSource = refused.refusals().stream().anyMatch(refusal -> "because".equals(refusal.field()));
            source.problem(noSource ? "Required." : "");
            if (noSource) {
                source.focus();
            }
            say("Not saved. " + refused.words(), MessageLine::refused);
            return;
        }
        entries.forget(command.figures());
        again();
        say(
                "Saved: " + UsDates.count(result.ifAccepted().map(List::size).orElse(0), "figure") + ".",
                MessageLine::done);
    }

    /** Also at the foot, which is seen from every row. */
    private void say(String words, Consumer<String> line) {
        line.accept(words);
        at.setText(words);
    }

    /** Nothing typed is lost: the sheet shows the new numbers beside it, and saving again saves over them. */
    private void tell(OptimisticLockingFailureException stale) {
        again();
        MessageLine.refused(ChangedMeanwhile.WORDS);
        String which = stale instanceof ChangedFigures figures ? figures.getMessage() + " " : "";
        changed.setText(
                ChangedMeanwhile.WORDS + " " + which
                        + "What you typed is still in its box, with the number that stands now under it. Check it and save again.");
        changed.setVisible(true);
    }

    /** Reads the sheet anew and leaves the boxes, the focus and what was typed where they are. */
    private void again() {
        sheet = sheets.sheet(election.id());
        balances = balances(entries.figures(sheet, null));
        lines().forEach(line -> sheet.rows().stream()
                .filter(row -> row.where().equals(line.row().where()))
                .findFirst()
                .ifPresent(row -> line.show(row, entries)));
        mark();
    }
}
