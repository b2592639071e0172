package wallchart.web;

import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.net.URI;
import java.util.List;

/**
 * Holds every answer of every web test against the OpenAPI document: the address, the method, the status, the media type, the
 * promised headers and the body. What is not declared fails the test.
 *
 * <p>An address or a method that the document does not have may only be answered by a problem: 404, 400 or 405.
 */
final class ConformsToOpenApi implements Filter {

    private static final String PROBLEM = "/components/schemas/Problem";
    private static final List<Integer> NOBODY_THERE = List.of(400, 404, 405, 413, 414, 431);

    private final ApiDocument document;

    ConformsToOpenApi(ApiDocument document) {
        this.document = document;
    }

    @Override
    public Response filter(
            FilterableRequestSpecification request, FilterableResponseSpecification expected, FilterContext context) {
        var response = context.next(request, expected);
        var method = request.getMethod().equals("HEAD") ? "GET" : request.getMethod();
        check(
                method,
                URI.create(request.getURI()).getRawPath(),
                response,
                request.getMethod().equals("HEAD") ? "" : response.asString());
        return response;
    }

    private void check(String method, String path, Response response, String body) {
        var template = document.findTemplate(path);
        if (template.isEmpty() || !document.declares(template.get(), method)) {
            require(
                    NOBODY_THERE.contains(response.statusCode()),
                    "undeclared address answered",
                    method,
                    path,
                    response);
            requireValid(PROBLEM, body, method, path);
            return;
        }
        var declared = document.findResponse(template.get(), method, response.statusCode());
        require(declared.isPresent(), "undeclared status", method, path, response);
        for (var header : document.headers(declared.get())) {
            require(response.header(header) != null, "missing header " + header, method, path, response);
        }
        checkBody(declared.get(), method, path, response, body);
    }

    private void checkBody(String declared, String method, String path, Response response, String body) {
        var types = document.mediaTypes(declared);
        if (types.isEmpty()) {
            require(body.isEmpty(), "undeclared body", method, path, response);
            return;
        }
        var type = String.valueOf(response.contentType()).split(";")[0];
        require(types.contains(type), "undeclared media type " + type, method, path, response);
        if ((type.endsWith("/json") || type.endsWith("+json")) && !body.isEmpty()) {
            requireValid(ApiDocument.mediaTypeSchema(declared, type), body, method, path);
        }
    }

    private void requireValid(String schema, String body, String method, String path) {
        if (body.isEmpty()) {
            return;
        }
        var violations = document.violations(schema, body);
        if (!violations.isEmpty()) {
            throw new AssertionError(method + " " + path + " answers what the document does not promise:\n"
                    + String.join("\n", violations) + "\n" + body);
        }
    }

    private static void require(boolean holds, String what, String method, String path, Response response) {
        if (!holds) {
            throw new AssertionError(what + ": " + method + " " + path + " -> " + response.statusLine());
        }
    }
}
