package io.github.saltfront.app.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;

/**
 * What the header of a file says of it, so that one in the present form opens without a look at its migrations. The two numbers
 * are SQLite's application id and user version (SQLite, "Database File Format", offsets 68 and 60).
 *
 * @param program 0 or the number of the program that wrote the file
 * @param form form of its data, 0 where it is not known
 */
record FileMark(int program, int form) {
    /** The letters SALT. */
    private static final int PROGRAM = 0x53414C54;

    /** Of a file that is new, from before there were marks, or about to be changed. */
    static final FileMark NONE = new FileMark(0, 0);

    /** Returns the mark of a file of this program. */
    static FileMark of(int form) {
        return new FileMark(PROGRAM, form);
    }

    /** Reads the mark of a file. */
    static FileMark of(DataSource source) throws SQLException {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            return new FileMark(number(statement, "application_id"), number(statement, "user_version"));
        }
    }

    private static int number(Statement statement, String name) throws SQLException {
        try (ResultSet row = statement.executeQuery("pragma " + name)) {
            return row.getInt(1);
        }
    }

    boolean isLaterThan(int other) {
        return program == PROGRAM && form > other;
    }

    /** Writes it. */
    void put(DataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("pragma application_id = " + program);
            statement.execute("pragma user_version = " + form);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
