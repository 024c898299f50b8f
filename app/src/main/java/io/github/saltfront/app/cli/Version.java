package io.github.saltfront.app.cli;

import picocli.CommandLine.IVersionProvider;

/** Version of the program, from the manifest of its jar. */
final class Version implements IVersionProvider {
    static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }

    @Override
    public String[] getVersion() {
        return new String[] {"saltfront " + text()};
    }
}
