package io.github.saltfront.app.web;

import io.github.saltfront.app.follow.CookRegistry;
import io.github.saltfront.app.follow.FollowSettings;
import io.github.saltfront.app.notebook.Notebook;
import io.github.saltfront.app.store.Database;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.words.Phrases;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The web program: listens on loopback, or in the kitchen's network behind an access code. */
public final class WebServer implements AutoCloseable {
    private static final Phrases PHRASES = Phrases.of(WebServer.class);

    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("org.eclipse.jetty"), Logger.getLogger("io.javalin"));

    /** How long what was deleted can be brought back [ms]: 30 days. */
    private static final long KEPT_MS = 30L * 24 * 3600 * 1000;

    /** How long the readings that waited for the start have the processors for themselves [ms]. */
    private static final long FOLLOW_AFTER_MS = 500;

    private final Javalin javalin;
    private final PlanService service;
    private final CookRegistry cooks;
    private final EventStreams streams;
    private final Optional<AccessCode> access;
    private final Database database;

    private WebServer(
            Javalin javalin,
            PlanService service,
            CookRegistry cooks,
            EventStreams streams,
            Optional<AccessCode> access,
            Database database) {
        this.database = database;
        this.javalin = javalin;
        this.service = service;
        this.cooks = cooks;
        this.streams = streams;
        this.access = access;
    }

    /**
     * Starts it.
     *
     * @param options how
     * @return the running server
     * @throws IllegalArgumentException if the port cannot be listened on
     */
    public static WebServer start(WebOptions options) {
        return start(options, FollowSettings.usual(options.programVersion()));
    }

    /**
     * Starts it with cooks that are followed in another way.
     *
     * @param options how
     * @param following how cooks are followed
     * @return the running server
     * @throws IllegalArgumentException if the port cannot be listened on
     */
    public static WebServer start(WebOptions options, FollowSettings following) {
        QUIET.forEach(logger -> logger.setLevel(Level.WARNING));
        // beside the opening of the data, which takes as long
        CompletableFuture<Catalog> loading = CompletableFuture.supplyAsync(Catalog::load);
        Database database = Database.open(options.data());
        database.savedPlans().purge(System.currentTimeMillis() - KEPT_MS);
        database.notedCooks().purge(System.currentTimeMillis() - KEPT_MS);
        Notebook notebook = new Notebook(database, options.programVersion());
        PlanService service = new PlanService(use -> notebook.learning().knowledge(use.profile(), use.butcher()));
        loading.join();
        CookRegistry cooks = new CookRegistry(database.cooks(), service::plan, service.executor(), following);
        // before anybody can ask: a reading must find its cook
        Runnable follow = cooks.takeUp();
        EventStreams streams = new EventStreams(cooks);
        Optional<AccessCode> access =
                options.lan() ? Optional.of(new AccessCode(new SecureRandom())) : Optional.empty();
        Guard guard = new Guard(Addresses.allowed(options.lan()), access);
        Javalin javalin = Javalin.create(config -> configure(
                config,
                guard,
                access,
                routes(service, database, new CooksApi(cooks, streams, notebook, service), options)));
        try {
            javalin.start(options.lan() ? "0.0.0.0" : "127.0.0.1", options.port());
        } catch (RuntimeException e) {
            cooks.close();
            service.close();
            database.close();
            throw new IllegalArgumentException(
                    PHRASES.say("port-got-where-this-computer", options.port(), e.getMessage(), (options.port() + 1)),
                    e);
        }
        CompletableFuture.delayedExecutor(FOLLOW_AFTER_MS, TimeUnit.MILLISECONDS)
                .execute(follow);
        return new WebServer(javalin, service, cooks, streams, access, database);
    }

    static List<Route> routes(PlanService service, Database database, CooksApi cooks, WebOptions options) {
        List<Route> routes = new ArrayList<>(new Api(service, options.programVersion()).routes());
        routes.addAll(new GlanceApi(service, options.programVersion()).routes());
        routes.addAll(new StagesApi(service, options.programVersion()).routes());
        routes.addAll(new Downloads(service).routes());
        routes.addAll(new SavedApi(database.savedPlans(), service, options.programVersion()).routes());
        routes.addAll(cooks.routes());
        Notebook notebook = new Notebook(database, options.programVersion());
        routes.addAll(new NotebookApi(notebook, service, options.programVersion()).routes());
        routes.addAll(new ThermometerApi(notebook.thermometers(), options.programVersion()).routes());
        routes.addAll(new TrialApi(database.trials(), options).routes());
        return routes;
    }

    private static void configure(JavalinConfig config, Guard guard, Optional<AccessCode> access, List<Route> routes) {
        config.startup.showJavalinBanner = false;
        config.startup.startupWatcherEnabled = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.prefer405over404 = true;
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.routes.before(RequestLanguage.spoken(guard::check));
        routes.forEach(route -> config.routes.addEndpoint(
                new Endpoint(route.method(), route.path(), RequestLanguage.spoken(route.handler()))));
        access.ifPresent(code -> {
            Entrance entrance = new Entrance(code);
            config.routes.get(Guard.ENTRANCE, RequestLanguage.spoken(entrance::show));
            config.routes.post(Guard.ENTRANCE, RequestLanguage.spoken(entrance::post));
        });
        PageFiles pages = new PageFiles();
        config.routes.addEndpoint(new Endpoint(HandlerType.GET, "/", pages::first));
        config.routes.addEndpoint(new Endpoint(HandlerType.GET, "/{file}", pages::named));
        Failures.register(config.routes);
    }

    /** Returns the address for a browser on this computer; it lets in without asking. */
    public String address() {
        return address("localhost");
    }

    /** Returns the addresses for other devices; none on loopback. They hold the code. */
    public List<String> lanAddresses() {
        return access.isEmpty()
                ? List.of()
                : Addresses.local().stream().map(this::address).toList();
    }

    /** Returns the access code, if there is one. */
    public Optional<String> accessCode() {
        return access.map(AccessCode::code);
    }

    private String address(String host) {
        return "http://" + host + ":" + javalin.port()
                + access.map(a -> Guard.ENTRANCE + "?code=" + a.code()).orElse("/");
    }

    /** Returns the port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Returns the cooks that are followed. */
    public CookRegistry cooks() {
        return cooks;
    }

    @Override
    public void close() {
        streams.close();
        javalin.stop();
        cooks.close();
        service.close();
        database.close();
    }
}
