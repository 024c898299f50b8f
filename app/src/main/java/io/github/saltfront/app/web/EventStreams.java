package io.github.saltfront.app.web;

import io.github.saltfront.app.follow.CookListener;
import io.github.saltfront.app.follow.CookRegistry;
import io.javalin.http.Handler;
import io.javalin.http.sse.SseClient;
import io.javalin.http.sse.SseHandler;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/**
 * Streams of what happens to one cook: first the whole state, then every change. Each listener has a thread and a short queue
 * of its own, so that a phone asleep holds nobody up; one that cannot follow is cut off, comes back by itself and gets the
 * whole state anew.
 */
final class EventStreams implements AutoCloseable {
    private static final int MOST = 64;
    private static final int QUEUE = 200;
    private static final int BEAT_S = 15;

    private final CookRegistry cooks;
    private final Set<Stream> streams = ConcurrentHashMap.newKeySet();

    EventStreams(CookRegistry cooks) {
        this.cooks = cooks;
    }

    /** An event to be sent. */
    private record Event(String name, String json) {}

    /** One listener. */
    private final class Stream implements CookListener {
        private final String cook;
        private final SseClient client;
        private final BlockingQueue<Event> queue = new ArrayBlockingQueue<>(QUEUE);
        private volatile boolean lost;

        private Stream(String cook, SseClient client) {
            this.cook = cook;
            this.client = client;
        }

        @Override
        public void changed(String id, String event, String json) {
            boolean own = id.equals(cook);
            // of other cooks only what can ring
            if (own || !event.equals("readings")) {
                lost |= !queue.offer(own ? new Event(event, json) : new Event("cooks", ""));
            }
        }

        private void run() {
            try {
                cooks.add(this);
                client.sendEvent("cook", WebJson.text(cooks.state(cook)));
                while (!lost && !client.terminated()) {
                    Optional<Event> next = Optional.ofNullable(queue.poll(BEAT_S, TimeUnit.SECONDS));
                    if (next.isEmpty()) {
                        client.sendComment("still here");
                    } else if (next.get().name().equals("cooks")) {
                        queue.removeIf(event -> event.name().equals("cooks"));
                        client.sendEvent("cooks", WebJson.text(cooks.going()));
                    } else {
                        client.sendEvent(next.get().name(), next.get().json());
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (RuntimeException e) {
                lost = true; // the connection is gone; the page comes back by itself
            } finally {
                end();
            }
        }

        private void end() {
            cooks.remove(this);
            streams.remove(this);
            client.close();
        }
    }

    Handler handler() {
        SseHandler sse = new SseHandler(this::open);
        return context -> {
            cooks.state(context.pathParam("id")); // tells what is not there before a stream is begun
            if (streams.size() >= MOST) {
                throw new Refused(503, "", "Too many pages listen at once; close some of them.");
            }
            sse.handle(context);
        };
    }

    private void open(SseClient client) {
        client.keepAlive();
        Stream stream = new Stream(client.ctx().pathParam("id"), client);
        client.onClose(() -> stream.lost = true);
        streams.add(stream);
        Thread thread = new Thread(stream::run, "event stream");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() {
        streams.forEach(stream -> {
            stream.lost = true;
            stream.client.close();
        });
    }
}
