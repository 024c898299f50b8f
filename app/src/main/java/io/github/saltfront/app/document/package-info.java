/**
 * Strict reading of request files in YAML or JSON. {@link io.github.saltfront.app.document.DocumentReader} makes a
 * {@link io.github.saltfront.app.document.Document}, whose {@link io.github.saltfront.app.document.Node}s are asked for what
 * is expected; all problems are collected and reported together. Knows nothing of what a request means.
 */
@NullMarked
package io.github.saltfront.app.document;

import org.jspecify.annotations.NullMarked;
