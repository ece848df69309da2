package org.proviso.database;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.CallableStatement;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/** Connections that tell {@link Statements} of every statement sent and every row read, where somebody counts; others are the plain ones. */
public final class CountingDataSource extends DelegatingDataSource {

    public CountingDataSource(DataSource plain) {
        super(plain);
    }

    @Override
    public Connection getConnection() throws SQLException {
        Connection plain = super.getConnection();
        return Statements.areCounted() ? counted(plain) : plain;
    }

    private static Connection counted(Connection plain) {
        return proxy(Connection.class, (proxy, method, arguments) -> {
            Object found = invoked(plain, method, arguments);
            String sql = arguments != null && arguments[0] instanceof String text ? text : "";
            return found instanceof Statement statement ? counted(statement, sql) : found;
        });
    }

    private static Statement counted(Statement plain, String prepared) {
        Class<? extends Statement> kind = plain instanceof CallableStatement
                ? CallableStatement.class
                : plain instanceof PreparedStatement ? PreparedStatement.class : Statement.class;
        return proxy(kind, (proxy, method, arguments) -> {
            if (method.getName().startsWith("execute")) {
                Statements.sent(arguments != null && arguments[0] instanceof String text ? text : prepared);
            }
            Object found = invoked(plain, method, arguments);
            return found instanceof ResultSet rows ? counted(rows) : found;
        });
    }

    private static ResultSet counted(ResultSet plain) {
        return proxy(ResultSet.class, (proxy, method, arguments) -> {
            Object found = invoked(plain, method, arguments);
            if (method.getName().equals("next") && Boolean.TRUE.equals(found)) {
                Statements.row();
            }
            return found;
        });
    }

    private static Object invoked(Object plain, java.lang.reflect.Method method, Object[] arguments) throws Throwable {
        try {
            return method.invoke(plain, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    private static <T> T proxy(Class<T> kind, InvocationHandler handler) {
        return kind.cast(Proxy.newProxyInstance(kind.getClassLoader(), new Class<?>[] {kind}, handler));
    }
}
