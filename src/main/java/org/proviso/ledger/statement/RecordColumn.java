package org.proviso.ledger.statement;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.core.convert.ConversionException;
import org.springframework.core.convert.TypeDescriptor;
import org.springframework.dao.DataRetrievalFailureException;
import org.springframework.jdbc.support.JdbcUtils;

/** The column of a record's component: its name with underscores, and how it is read. */
record RecordColumn(String name, Class<?> read, TypeDescriptor type) {

    static RecordColumn of(String component, MethodParameter parameter) {
        return new RecordColumn(
                JdbcUtils.convertPropertyNameToUnderscoreName(component),
                ColumnConversions.held(parameter.getParameterType()),
                new TypeDescriptor(parameter));
    }

    @Nullable
    Object value(ResultSet row, int number) throws SQLException {
        Object held = JdbcUtils.getResultSetValue(row, row.findColumn(name), read);
        if (held == null && type.isPrimitive()) {
            throw new DataRetrievalFailureException("The column " + name + " is empty.");
        }
        try {
            return held == null || read == type.getType() ? held : ColumnConversions.convert(held, type);
        } catch (ConversionException e) {
            throw new DataRetrievalFailureException("The column " + name + ": " + e.getMessage(), e);
        }
    }
}
