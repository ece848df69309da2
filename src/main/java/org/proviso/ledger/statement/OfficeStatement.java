package org.proviso.ledger.statement;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.ResultSetExtractor;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.namedparam.BeanPropertySqlParameterSource;
import org.springframework.jdbc.core.namedparam.SqlParameterSource;
import org.springframework.jdbc.core.simple.JdbcClient.MappedQuerySpec;
import org.springframework.jdbc.core.simple.JdbcClient.ResultQuerySpec;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.jdbc.support.KeyHolder;

/** One statement of Spring's client, with keys and codes as the text that the columns hold ({@link ColumnValue}). */
record OfficeStatement(StatementSpec plain) implements StatementSpec {

    @Override
    public StatementSpec param(@Nullable Object value) {
        plain.param(ColumnValue.of(value));
        return this;
    }

    @Override
    public StatementSpec param(int place, @Nullable Object value) {
        plain.param(place, ColumnValue.of(value));
        return this;
    }

    @Override
    public StatementSpec param(int place, @Nullable Object value, int sqlType) {
        plain.param(place, ColumnValue.of(value), sqlType);
        return this;
    }

    @Override
    public StatementSpec param(String name, @Nullable Object value) {
        plain.param(name, ColumnValue.of(value));
        return this;
    }

    @Override
    public StatementSpec param(String name, @Nullable Object value, int sqlType) {
        plain.param(name, ColumnValue.of(value), sqlType);
        return this;
    }

    @Override
    public StatementSpec params(@Nullable Object... values) {
        for (Object value : values) {
            param(value);
        }
        return this;
    }

    @Override
    public StatementSpec params(List<?> values) {
        values.forEach(this::param);
        return this;
    }

    @Override
    public StatementSpec params(Map<String, ?> values) {
        values.forEach(this::param);
        return this;
    }

    @Override
    public StatementSpec paramSource(Object values) {
        return paramSource(new BeanPropertySqlParameterSource(values));
    }

    @Override
    public StatementSpec paramSource(SqlParameterSource values) {
        plain.paramSource(new ColumnValues(values));
        return this;
    }

    @Override
    public ResultQuerySpec query() {
        return plain.query();
    }

    @Override
    public <T> MappedQuerySpec<T> query(Class<T> type) {
        if (ColumnConversions.isText(type)) {
            return plain.query((row, number) -> ColumnConversions.of(row.getString(1), type));
        }
        return type.isRecord() ? plain.query(RecordMapper.of(type)) : plain.query(type);
    }

    @Override
    public <T> MappedQuerySpec<T> query(RowMapper<T> mapper) {
        return plain.query(mapper);
    }

    @Override
    public void query(RowCallbackHandler handler) {
        plain.query(handler);
    }

    @Override
    public <T> T query(ResultSetExtractor<T> extractor) {
        return plain.query(extractor);
    }

    @Override
    public int update() {
        return plain.update();
    }

    @Override
    public int update(KeyHolder keys) {
        return plain.update(keys);
    }

    @Override
    public int update(KeyHolder keys, String... columns) {
        return plain.update(keys, columns);
    }
}
