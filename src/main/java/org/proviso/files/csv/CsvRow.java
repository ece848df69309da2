package org.proviso.files.csv;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.PersonName;
import org.proviso.core.YesNo;
import org.proviso.files.InputException;

/**
 * One row of a CSV file. Cells are asked for by column name, or faster by the number {@link CsvTable#column} gave. An
 * optional column that the file does not have reads as empty; an empty cell is unknown: the empty string, null, or
 * {@code UNKNOWN}. What cannot be read is an {@link InputException} that names file, line and column.
 */
public final class CsvRow {

    private final String file;
    private final CsvHeader header;
    private final CsvCells cells;

    CsvRow(String file, CsvHeader header, CsvCells cells) {
        this.file = file;
        this.header = header;
        this.cells = cells;
    }

    /** The line the row starts in. */
    public int line() {
        return cells.line();
    }

    public boolean isEmpty(int column) {
        return column < 0 || cells.length(column) == 0;
    }

    /** The text as written. */
    public String text(int column) {
        return cells.text(column);
    }

    public String text(String column) {
        return text(index(column));
    }

    /** The text, which may not be blank. */
    public String required(int column) {
        String text = text(column);
        if (text.isBlank()) {
            throw wrong(column, "is empty");
        }
        return text;
    }

    public String required(String column) {
        return required(index(column));
    }

    /** A number or code that other rows refer to: spaces around it would break the reference, so they are refused. */
    public String key(int column) {
        return unspaced(column, text(column));
    }

    public String key(String column) {
        return key(index(column));
    }

    /** A key that may not be empty. */
    public String requiredKey(int column) {
        return unspaced(column, required(column));
    }

    public String requiredKey(String column) {
        return requiredKey(index(column));
    }

    public @Nullable LocalDate date(int column) {
        return isEmpty(column) ? null : CellParser.date(this, column);
    }

    public @Nullable LocalDate date(String column) {
        return date(index(column));
    }

    /** A local date and time, {@code 2026-11-03T18:52} with or without seconds. */
    public @Nullable LocalDateTime dateTime(String column) {
        int index = index(column);
        return isEmpty(index) ? null : CellParser.dateTime(this, index);
    }

    public LocalDateTime requiredDateTime(String column) {
        required(column);
        return CellParser.dateTime(this, index(column));
    }

    /** A whole number, not negative. */
    public @Nullable Integer whole(String column) {
        int index = index(column);
        return isEmpty(index) ? null : CellParser.whole(this, index);
    }

    public int requiredWhole(String column) {
        required(column);
        return CellParser.whole(this, index(column));
    }

    public YesNo yesNo(int column) {
        return isEmpty(column) ? YesNo.UNKNOWN : CellParser.yesNo(this, column);
    }

    public YesNo yesNo(String column) {
        return yesNo(index(column));
    }

    public <E extends Enum<E> & Code> @Nullable E code(int column, Class<E> type) {
        return isEmpty(column) ? null : CellParser.code(this, column, text(column), type);
    }

    /** The code, or this one where the cell is empty. */
    public <E extends Enum<E> & Code> E code(String column, Class<E> type, E whereEmpty) {
        E code = code(index(column), type);
        return code == null ? whereEmpty : code;
    }

    public <E extends Enum<E> & Code> E requiredCode(int column, Class<E> type) {
        return CellParser.code(this, column, required(column), type);
    }

    public <E extends Enum<E> & Code> E requiredCode(String column, Class<E> type) {
        return requiredCode(index(column), type);
    }

    /** The constant that a word within this column's cell spells. */
    public <E extends Enum<E> & Code> E codeIn(String column, String word, Class<E> type) {
        return CellParser.code(this, index(column), word, type);
    }

    /** The four columns of a person's name. */
    public PersonName name() {
        return new PersonName(text("last_name"), text("first_name"), text("middle_name"), text("suffix"));
    }

    /** The words of a cell that lists them with {@code ;} between, in the order written. */
    public Set<String> words(String column) {
        return CellParser.words(this, index(column));
    }

    /** The exception for what is wrong with the whole row. */
    public InputException wrong(String reason) {
        return new InputException(file, line(), "", reason);
    }

    /** The exception for what is wrong with one cell. */
    public InputException wrong(String column, String reason) {
        return new InputException(file, line(), column, reason);
    }

    InputException wrong(int column, String reason) {
        return wrong(header.name(column), reason);
    }

    private String unspaced(int column, String text) {
        if (!text.isEmpty() && (text.charAt(0) <= ' ' || text.charAt(text.length() - 1) <= ' ')) {
            throw wrong(column, InputException.quoted(text) + " has a space before or after it");
        }
        return text;
    }

    int index(String column) {
        return header.index(column);
    }

    int length(int column) {
        return cells.length(column);
    }

    char at(int column, int index) {
        return cells.at(column, index);
    }

    long hash(int column, long seed) {
        return cells.hash(column, seed);
    }
}
