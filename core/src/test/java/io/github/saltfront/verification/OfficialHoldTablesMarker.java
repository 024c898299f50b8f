package io.github.saltfront.verification;

/** Lies beside the data of this package on the class path, so that tests of other packages can load them. */
public final class OfficialHoldTablesMarker {
    private OfficialHoldTablesMarker() {}
}
