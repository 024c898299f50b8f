package io.github.saltfront.app.web;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;

/**
 * A route of the JSON interface.
 *
 * @param method method
 * @param path path with names in braces, as in the OpenAPI document
 * @param handler what answers
 */
record Route(HandlerType method, String path, Handler handler) {}
