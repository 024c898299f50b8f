package io.github.saltfront.app.web;

import java.nio.file.Path;

/**
 * How to start the web program.
 *
 * @param port port to listen on; 0 for any free one
 * @param lan whether to listen on all addresses, behind an access code, or on loopback alone
 * @param data file of the saved plans
 * @param programVersion version of the program, for the documents it writes
 */
public record WebOptions(int port, boolean lan, Path data, String programVersion) {}
