package wallchart.web;

import static org.hamcrest.Matchers.equalTo;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import wallchart.chart.RowFields;
import wallchart.people.Role;

/** The department's people at work on changes of room r1 over HTTP. A change is carried as the answer in which it was last seen. */
final class ChangeCalls {

    static final String CHANGES = "/api/v1/changes";
    static final String KNEE = "KNEE/ap/adult/table-bucky/10-13";
    static final String TABLETOP_KNEE = "KNEE/ap/adult/tabletop/10-13";
    static final String SPINE = "LSPINE/ap/adult/table-bucky/18-24";
    static final String REASON = "Knees of the last weeks were too noisy";

    private final RunningService service;

    ChangeCalls(RunningService service) {
        this.service = service;
    }

    /** Somebody of that role who writes. */
    RequestSpecification by(Role role) {
        return service.person(role)
                .header("X-CSRF-Token", service.signedIn(role).csrfToken())
                .contentType("application/json");
    }

    /** The same, having seen the change as it is in that answer. */
    RequestSpecification by(Role role, Response seen) {
        return by(role).header("If-Match", seen.header("ETag"));
    }

    Response open(Role author) {
        return open(author, "ordinary");
    }

    /** A change on the newest version. */
    Response open(Role author, String kind) {
        return by(author)
                .body(Map.of("title", "Knee", "reason", REASON, "baseVersion", newest(), "kind", kind))
                .post("/api/v1/charts/r1/changes");
    }

    int newest() {
        return service.services().charts().versions("r1").get(0).number();
    }

    static String address(Response change) {
        return CHANGES + "/" + change.path("id");
    }

    static String row(Response change, String key) {
        return address(change) + "/rows/" + key;
    }

    /** The fields of a row of the newest version. */
    Map<String, Object> fields(String key) {
        var rows = service.services()
                .charts()
                .version("r1", newest())
                .orElseThrow()
                .content()
                .rows();
        var found = rows.stream().filter(row -> row.key().toString().equals(key));
        return new LinkedHashMap<>(RowFields.of(found.findFirst().orElseThrow()));
    }

    /** The author writes another mAs into a row. */
    Response edit(Role author, Response change, String key, Object mAs) {
        var fields = fields(key);
        fields.put("mAs", mAs);
        return by(author, change).body(fields).put(row(change, key));
    }

    /** A step without a body. */
    Response step(Role who, Response change, String step) {
        return by(who, change).post(address(change) + "/" + step);
    }

    Response step(Role who, Response change, String step, Map<String, ?> body) {
        return by(who, change).body(body).post(address(change) + "/" + step);
    }

    /** A radiographer's change of one row's mAs, handed in. */
    Response submitted(String kind, String key, Object mAs) {
        var edited = edit(Role.RADIOGRAPHER, open(Role.RADIOGRAPHER, kind), key, mAs);
        return step(Role.RADIOGRAPHER, edited, "submit");
    }

    String digest(Response change) {
        return service.person(Role.LEAD).get(address(change) + "/impact").path("digest");
    }

    /** JSON that was written with single quotes, as is easier to read here. */
    static String json(String singleQuoted) {
        return singleQuoted.replace('\'', '"');
    }

    /** @param pointer of the member that is wrong; null where the body as a whole is */
    static void assertWrongMember(Response answer, String pointer) {
        answer.then()
                .statusCode(400)
                .body("code", equalTo("invalid-body"))
                .body("errors[0].pointer", equalTo(pointer == null ? "" : pointer));
    }

    static String password(Role role) {
        return Department.password(role.slug());
    }

    /** What the lead radiographer sends to sign the change with the impact it has. */
    Map<String, Object> signature(Response change) {
        var body = new HashMap<String, Object>();
        body.put("password", password(Role.LEAD));
        body.put("meaning", "approved for use");
        body.put("impactDigest", digest(change));
        return body;
    }

    Response sign(Response change) {
        return step(Role.LEAD, change, "sign", signature(change));
    }
}
