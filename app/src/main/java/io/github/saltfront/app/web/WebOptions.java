package io.github.saltfront.app.web;

import io.github.saltfront.app.store.DataPlace;
import java.nio.file.Path;

/**
 * How to start the web program.
 *
 * @param port port to listen on; 0 for any free one
 * @param lan whether to listen on all addresses, behind an access code, or on loopback alone
 * @param data where the saved plans and cooks are
 * @param programVersion version of the program, for the documents it writes
 */
public record WebOptions(int port, boolean lan, DataPlace data, String programVersion) {
    /**
     * Starts it with a file of data.
     *
     * @param port port to listen on; 0 for any free one
     * @param lan whether to listen on all addresses, behind an access code, or on loopback alone
     * @param data file of the saved plans and cooks
     * @param programVersion version of the program, for the documents it writes
     */
    public WebOptions(int port, boolean lan, Path data, String programVersion) {
        this(port, lan, DataPlace.of(data), programVersion);
    }
}
