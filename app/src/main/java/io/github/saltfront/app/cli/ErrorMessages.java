package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.Problem;
import io.github.saltfront.numerics.ConvergenceException;
import io.github.saltfront.plan.PlanningException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.concurrent.CompletionException;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** One clear message for each error, and the exit code: 1 no feasible or converged result, 2 wrong input, 3 our own fault. */
final class ErrorMessages implements CommandLine.IExecutionExceptionHandler {
    static final int INFEASIBLE = 1;
    static final int WRONG_INPUT = 2;
    static final int INTERNAL = 3;

    @Override
    public int handleExecutionException(Exception exception, CommandLine command, ParseResult result) {
        PrintWriter err = command.getErr();
        if (exception instanceof DocumentException document) {
            for (Problem problem : document.problems()) {
                err.println(problem.at(document.file()));
            }
            return WRONG_INPUT;
        }
        if (exception instanceof CompletionException && exception.getCause() instanceof ConvergenceException cause) {
            err.println(cause.getMessage());
            return INFEASIBLE;
        }
        if (exception instanceof IllegalArgumentException || exception instanceof UncheckedIOException) {
            err.println(exception.getMessage());
            return WRONG_INPUT;
        }
        if (exception instanceof ConvergenceException) {
            err.println(exception.getMessage());
            return INFEASIBLE;
        }
        err.println("saltfront failed on its own account (" + exception + "). Please report it with your file.");
        return INTERNAL;
    }

    /** Returns the problem with a request that cannot be met. */
    static Problem problem(PlanningException planning) {
        String message = String.valueOf(planning.getMessage());
        return new Problem(planning.field(), 0, Character.toUpperCase(message.charAt(0)) + message.substring(1));
    }

    /** Returns the exit code for it: a time to serve is the user's to move, everything else is not feasible. */
    static int code(PlanningException planning) {
        return planning.field().equals("serve") ? WRONG_INPUT : INFEASIBLE;
    }
}
