package io.github.saltfront.safety;

/** Whose kitchen it is; decides the words, never the figures. */
public enum Kitchen {
    /** A household. */
    HOME,
    /** A cooking school or class. */
    TEACHING,
    /** A food business: local code and its approved written process decide. */
    PROFESSIONAL
}
