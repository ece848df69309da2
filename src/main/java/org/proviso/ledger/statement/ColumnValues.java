package org.proviso.ledger.statement;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.namedparam.AbstractSqlParameterSource;
import org.springframework.jdbc.core.namedparam.SqlParameterSource;

/** The named values of a statement as the columns hold them. */
final class ColumnValues extends AbstractSqlParameterSource {

    private final SqlParameterSource values;

    ColumnValues(SqlParameterSource values) {
        this.values = values;
    }

    @Override
    public boolean hasValue(String name) {
        return values.hasValue(name);
    }

    @Override
    public @Nullable Object getValue(String name) {
        return ColumnValue.of(values.getValue(name));
    }

    /** What Spring knows of the type, so that an empty value needs no question to the database. */
    @Override
    public int getSqlType(String name) {
        return values.getSqlType(name);
    }
}
