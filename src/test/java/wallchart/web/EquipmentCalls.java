package wallchart.web;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wallchart.people.Role;

/** The medical physicist at work on the equipment of rooms over HTTP. */
final class EquipmentCalls {

    static final String REASON = "Yearly measurement of the tube";

    private final RunningService service;

    EquipmentCalls(RunningService service) {
        this.service = service;
    }

    static String address(String room) {
        return "/api/v1/rooms/" + room + "/equipment";
    }

    Response inForce(String room) {
        return service.person(Role.RADIOGRAPHER).get(address(room));
    }

    /** The physicist, who writes without having seen anything. */
    RequestSpecification writing() {
        return service.person(Role.PHYSICIST)
                .header("X-CSRF-Token", service.signedIn(Role.PHYSICIST).csrfToken())
                .contentType("application/json");
    }

    /** Puts a part, or everything, having seen the room as it is now. */
    Response put(String room, String part, Object body) {
        return writing()
                .header("If-Match", inForce(room).header("ETag"))
                .body(body)
                .put(address(room) + part);
    }

    Response putOutput(String room, Map<String, ?> body) {
        return put(room, "/tube/output", body);
    }

    Response tryOutput(String room, Map<String, ?> body) {
        return writing().body(body).post(address(room) + "/tube/output/effects");
    }

    /** A measurement with which no fit quarrels, times a factor. */
    static Map<String, Object> output(String day, double factor) {
        return outputAt(
                day,
                Stream.of("50 19.2", "60 29.9", "80 54.8", "100 83.0", "120 112.0", "150 156.5")
                        .map(point -> point.split(" "))
                        .map(point -> point[0] + " " + Math.round(Double.parseDouble(point[1]) * factor * 100) / 100.0)
                        .toArray(String[]::new));
    }

    /** Each point is written as kV, blank, uGy/mAs. */
    static Map<String, Object> outputAt(String day, String... points) {
        var body = new LinkedHashMap<String, Object>();
        body.put("measuredOn", day);
        body.put("totalFiltrationMmAl", 3);
        body.put("hvlMmAl", 3.1);
        body.put("hvlAtKV", 80);
        body.put("uncertaintyPercent", 8);
        body.put(
                "microGyPerMAsAtOneMetre",
                Stream.of(points)
                        .map(point -> point.split(" "))
                        .map(point -> Map.of("kV", Integer.valueOf(point[0]), "output", Double.valueOf(point[1])))
                        .toList());
        body.put("reason", REASON);
        return body;
    }

    /** 80 kV is 18 % over what the other points follow. */
    static Map<String, Object> anOddOutput(String day) {
        return outputAt(day, "50 19.2", "60 29.9", "70 41.7", "80 64.7", "100 83.0", "120 112.0", "150 156.5");
    }

    static Map<String, Object> with(Map<String, Object> body, String member, Object value) {
        var other = new LinkedHashMap<>(body);
        other.put(member, value);
        return other;
    }

    static Map<String, Object> without(Map<String, Object> body, String member) {
        var other = new LinkedHashMap<>(body);
        other.remove(member);
        return other;
    }

    /** The document in force with another name, to be put whole. */
    Map<String, Object> renamed(String room, String name) {
        Map<String, Object> document = inForce(room).path("document");
        var other = new LinkedHashMap<>(document);
        other.put("name", name);
        return Map.of("document", other, "reason", "Renamed on the new plan");
    }

    List<Map<String, Object>> revisions(String room) {
        return service.person(Role.LEAD).get(address(room) + "/revisions").path("revisions");
    }
}
