package wallchart.web;

import static io.restassured.RestAssured.given;

import io.restassured.specification.RequestSpecification;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import wallchart.people.NewPerson;
import wallchart.people.People;
import wallchart.people.Role;
import wallchart.people.SignInSettings;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/**
 * The real service on a free port with a department of two rooms, and clients of every kind. Every answer is held against the
 * OpenAPI document.
 *
 * <p>One for each test class: {@code @RegisterExtension static final RunningService SERVICE = new RunningService();}
 */
final class RunningService implements BeforeAllCallback, AfterAllCallback {

    /** When a test begins. */
    static final String NOW = "2026-03-02T08:00:00Z";

    private static final Actor FOUNDER = Actor.system("test");
    private static final ConformsToOpenApi CONFORMS = new ConformsToOpenApi(ApiDocument.ours());

    private final boolean secureCookies;
    private final Map<String, String> tokens = new HashMap<>();
    private final Map<Role, SignedInClient> signedIn = new EnumMap<>(Role.class);
    private SettableClock clock;
    private Database database;
    private Services services;
    private WebServer server;

    RunningService() {
        this(false);
    }

    RunningService(boolean secureCookies) {
        this.secureCookies = secureCookies;
    }

    /** What a signed-in person holds. */
    record SignedInClient(String cookie, String csrfToken) {}

    @Override
    public void beforeAll(ExtensionContext context) {
        start();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        server.close();
        database.close();
    }

    RunningService start() {
        clock = SettableClock.at("2026-01-01T08:00:00Z");
        database = Database.open(TestDatabases.inMemory(), Mode.SITE, clock);
        services = Department.found(database, new People(database, SignInSettings.DEFAULTS), clock, FOUNDER);
        server = WebServer.start(new WebSettings("127.0.0.1", 0, secureCookies), services);
        return this;
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

    WebServer server() {
        return server;
    }

    /** Somebody without credentials. */
    RequestSpecification anybody() {
        return given().baseUri("http://127.0.0.1").port(port()).filter(CONFORMS).redirects().follow(false);
    }

    /** The workstation of a room. */
    RequestSpecification workstation(String room) {
        var token = tokens.computeIfAbsent(
                room, id -> services.people().issueRoomToken(FOUNDER, id, "console").secret());
        return anybody().header("Authorization", "Bearer " + token);
    }

    /** A person of that role, signed in. */
    RequestSpecification person(Role role) {
        return anybody().header("Cookie", client(role).cookie());
    }

    SignedInClient client(Role role) {
        return signedIn.computeIfAbsent(role, this::signIn);
    }

    private SignedInClient signIn(Role role) {
        addPerson(role.slug(), role);
        var answer = anybody()
                .contentType("application/json")
                .body(Map.of("name", role.slug(), "password", password(role.slug())))
                .post("/api/v1/session");
        var cookie = answer.header("Set-Cookie").split(";")[0];
        return new SignedInClient(cookie, answer.path("csrfToken"));
    }

    void addPerson(String name, Role role) {
        services.people().add(FOUNDER, new NewPerson(name, "Pat " + name, role, password(name)));
    }

    static String password(String name) {
        return "three blue lamps, person no. " + name.length();
    }
}
