package wallchart.web;

import static io.restassured.RestAssured.given;

import io.restassured.specification.RequestSpecification;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import wallchart.people.Role;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/**
 * The real service on a free port with the invented {@link Department}, and clients of every kind. Every answer they get is held
 * against the OpenAPI document.
 *
 * <p>One for each test class: {@code @RegisterExtension static final RunningService SERVICE = new RunningService();}
 */
final class RunningService implements BeforeAllCallback, AfterAllCallback {

    /** Where the clock stands when a test class begins: both versions are out. */
    static final String NOW = "2026-03-02T08:00:00Z";

    private static final ConformsToOpenApi CONFORMS = new ConformsToOpenApi(ApiDocument.ours());

    private final boolean secureCookies;
    private final Map<String, String> tokens = new HashMap<>();
    private final Map<Role, SignedInClient> clients = new EnumMap<>(Role.class);
    private final SettableClock clock = SettableClock.at("2026-01-01T08:00:00Z");
    private Database database;
    private Services services;
    private WebServer server;

    RunningService() {
        this(false);
    }

    RunningService(boolean secureCookies) {
        this.secureCookies = secureCookies;
    }

    /** What the browser of a signed-in person holds. */
    record SignedInClient(String cookie, String csrfToken) {}

    @Override
    public void beforeAll(ExtensionContext context) {
        start();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        stop();
    }

    RunningService start() {
        database = Database.open(TestDatabases.inMemory(), Mode.SITE, clock);
        services = Department.found(database, clock);
        clock.set(NOW);
        server = WebServer.start(new WebSettings("127.0.0.1", 0, secureCookies), services);
        return this;
    }

    void stop() {
        server.close();
        database.close();
    }

    int port() {
        return server.port();
    }

    SettableClock clock() {
        return clock;
    }

    Database database() {
        return database;
    }

    Services services() {
        return services;
    }

    /** Somebody without credentials. */
    RequestSpecification anybody() {
        return client(port());
    }

    /** A client of any server on this machine, its answers held against the document. */
    static RequestSpecification client(int port) {
        return given().baseUri("http://127.0.0.1")
                .port(port)
                .urlEncodingEnabled(false)
                .filter(CONFORMS);
    }

    /** The workstation of a room. */
    RequestSpecification workstation(String room) {
        return anybody().header("Authorization", "Bearer " + token(room));
    }

    /** The secret of a room's workstation. */
    String token(String room) {
        return tokens.computeIfAbsent(room, id -> services.people()
                .issueRoomToken(Actor.system("test"), id, "console")
                .secret());
    }

    /** A person of that role, signed in. */
    RequestSpecification person(Role role) {
        return anybody().header("Cookie", signedIn(role).cookie());
    }

    SignedInClient signedIn(Role role) {
        return clients.computeIfAbsent(role, this::signIn);
    }

    private SignedInClient signIn(Role role) {
        Department.person(services.people(), role.slug(), role);
        var answer = anybody()
                .contentType("application/json")
                .body(Map.of("name", role.slug(), "password", Department.password(role.slug())))
                .post("/api/v1/session");
        return new SignedInClient(answer.header("Set-Cookie").split(";")[0], answer.path("csrfToken"));
    }
}
