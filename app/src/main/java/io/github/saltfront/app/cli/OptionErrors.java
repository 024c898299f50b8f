package io.github.saltfront.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** One message for options that cannot be read, and where to read on; a page of usage would bury it. */
final class OptionErrors implements CommandLine.IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException exception, String[] args) {
        CommandLine command = exception.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(exception.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(exception, err);
        err.println("Try \"" + command.getCommandSpec().qualifiedName() + " --help\".");
        err.flush();
        return ErrorMessages.WRONG_INPUT;
    }
}
