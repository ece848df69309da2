package org.proviso.canvass.ui;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.proviso.canvass.BalanceResult;
import org.proviso.files.table.TableColumn;
import org.proviso.ui.ListedRows;

/** Every total of the canvass as a list: at which place, what it says, and how it stands under the page's headings. */
record TotalsList(List<BalanceResult> balances) implements ListedRows {

    @Override
    public List<TableColumn> columns() {
        return Stream.of("Place", "Total", "How it stands")
                .map(TableColumn::text)
                .toList();
    }

    @Override
    public void each(Consumer<List<String>> row) {
        balances.forEach(balance -> row.accept(List.of(balance.place(), balance.words(), standing(balance))));
    }

    private static String standing(BalanceResult balance) {
        if (balance instanceof BalanceResult.Holds) {
            return "agrees";
        }
        if (balance instanceof BalanceResult.Explained) {
            return "explained";
        }
        return balance instanceof BalanceResult.Differs ? "out of balance" : "cannot be checked yet";
    }
}
