/** The web program: a server on loopback, its JSON interface and the page it serves. */
@NullMarked
package io.github.saltfront.app.web;

import org.jspecify.annotations.NullMarked;
