package io.github.saltfront.app.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One run of the whole command line, as a user has it.
 *
 * @param code exit code
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record CommandRun(int code, String out, String err) {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
        return new CommandRun(code, out.toString(), err.toString());
    }

    JsonNode json() {
        return MAPPER.readTree(out);
    }
}
