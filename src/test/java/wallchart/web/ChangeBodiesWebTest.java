package wallchart.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** What is sent about a change is read strictly: every mistake is named by its member, parameter or part of the address. */
class ChangeBodiesWebTest {

    private static final String OPENING = "'title':'Knee','reason':'" + ChangeCalls.REASON + "'";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/baseVersion | ",
                "/baseVersion | ,'baseVersion':'2'",
                "/baseVersion | ,'baseVersion':''",
                "/baseVersion | ,'baseVersion':2.5",
                "/baseVersion | ,'baseVersion':true",
                "/baseVersion | ,'baseVersion':-1",
                "/baseVersion | ,'baseVersion':1000000",
                "/baseVersion | ,'baseVersion':99999999999",
                "/baseVersion | ,'baseVersion':null",
                "/author | ,'baseVersion':2,'author':'lead'",
                "/kind | ,'baseVersion':2,'kind':'revert'",
                "/kind | ,'baseVersion':2,'kind':'urgent'",
                "/kind | ,'baseVersion':2,'kind':1",
                " | ,'baseVersion':2,'title':'Knee again'"
            })
    void a_mistaken_opening(String pointer, String rest) {
        var body = ChangeCalls.json("{" + OPENING + (rest == null ? "" : rest) + "}");
        ChangeCalls.assertWrongMember(
                calls.by(Role.RADIOGRAPHER).body(body).post("/api/v1/charts/r1/changes"), pointer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/title | 'reason':'long enough a reason'",
                "/title | 'title':'','reason':'long enough a reason'",
                "/title | 'title':'half \\ud83d','reason':'long enough a reason'",
                "/title | 'title':'two\\nlines','reason':'long enough a reason'",
                "/title | 'title':7,'reason':'long enough a reason'",
                "/reason | 'title':'Knee'",
                "/reason | 'title':'Knee','reason':'a     b     c'",
                "/reason | 'title':'Knee','reason':'nothing \\u0000 at all here'"
            })
    void mistaken_words(String pointer, String members) {
        var body = ChangeCalls.json("{'baseVersion':2," + members + "}");
        ChangeCalls.assertWrongMember(
                calls.by(Role.RADIOGRAPHER).body(body).post("/api/v1/charts/r1/changes"), pointer);
    }

    @Test
    void a_title_longer_than_a_list_shows() {
        var body =
                ChangeCalls.json("{'baseVersion':2,'title':'" + "k".repeat(121) + "','reason':'long enough a reason'}");
        ChangeCalls.assertWrongMember(
                calls.by(Role.RADIOGRAPHER).body(body).post("/api/v1/charts/r1/changes"), "/title");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/version | 'reason':'long enough a reason'",
                "/version | 'version':0,'reason':'long enough a reason'",
                "/version | 'version':'1','reason':'long enough a reason'",
                "/reason | 'version':1",
                "/title | 'version':1,'reason':'long enough a reason','title':'Back'"
            })
    void a_mistaken_revert(String pointer, String members) {
        var body = ChangeCalls.json("{" + members + "}");
        ChangeCalls.assertWrongMember(
                calls.by(Role.RADIOGRAPHER).body(body).post("/api/v1/charts/r1/reverts"), pointer);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/password | 'meaning':'approved','impactDigest':'DIGEST'",
                "/password | 'password':'','meaning':'approved','impactDigest':'DIGEST'",
                "/password | 'password':4711471147114711,'meaning':'approved','impactDigest':'DIGEST'",
                "/meaning | 'password':'secret-words','impactDigest':'DIGEST'",
                "/meaning | 'password':'secret-words','meaning':'two\\u0007','impactDigest':'DIGEST'",
                "/impactDigest | 'password':'secret-words','meaning':'approved'",
                "/impactDigest | 'password':'secret-words','meaning':'approved','impactDigest':'sha256:0'",
                "/inForceFrom | 'password':'secret-words','meaning':'approved','impactDigest':'DIGEST','inForceFrom':'tomorrow'",
                "/inForceFrom | 'password':'secret-words','meaning':'approved','impactDigest':'DIGEST','inForceFrom':'9999-12-31T23:59:59Z'",
                "/inForceFrom | 'password':'secret-words','meaning':'approved','impactDigest':'DIGEST','inForceFrom':1767225600",
                "/reviewDue | 'password':'secret-words','meaning':'approved','impactDigest':'DIGEST','reviewDue':'2027-02-30'",
                "/reviewDue | 'password':'secret-words','meaning':'approved','impactDigest':'DIGEST','reviewDue':'31.01.2027'",
                "/role | 'password':'secret-words','meaning':'approved','impactDigest':'DIGEST','role':'lead'"
            })
    void a_mistaken_signature(String pointer, String members) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var body = ChangeCalls.json("{" + members + "}").replace("DIGEST", "sha256:" + "0".repeat(64));
        var answer = calls.by(Role.LEAD, opened).body(body).post(ChangeCalls.address(opened) + "/sign");
        ChangeCalls.assertWrongMember(answer, pointer);
        answer.then().body(not(containsString("secret-words"))).body(not(containsString("4711")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "concur | PHYSICIST | /password | 'impactDigest':'sha256:0'",
                "concur | PHYSICIST | /impactDigest | 'password':'p','impactDigest':'sha256:0'",
                "second-review | PHYSICIST | /password | 'findings':'On target in all rooms'",
                "second-review | PHYSICIST | /findings | 'password':'p'",
                "return | LEAD | /reason | ",
                "return | LEAD | /password | 'reason':'Not with this detector','password':'p'",
                "decline | LEAD | /reason | 'reason':7",
                "submit | RADIOGRAPHER | /reason | 'reason':'long enough a reason'",
                "withdraw | RADIOGRAPHER | /reason | 'reason':'long enough a reason'",
                "catch-up | RADIOGRAPHER | /version | 'version':3"
            })
    void a_mistaken_step(String step, Role role, String pointer, String members) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var body = ChangeCalls.json("{" + (members == null ? "" : members) + "}");
        ChangeCalls.assertWrongMember(
                calls.by(role, opened).body(body).post(ChangeCalls.address(opened) + "/" + step), pointer);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "changes?state=open",
                "changes?room=R1",
                "changes?before=0",
                "changes?before=x",
                "changes?limit=0",
                "changes?limit=501",
                "changes?limit=1&limit=2",
                "changes?author=1",
                "second-reviews?open=yes",
                "changes/1?open=true"
            })
    void a_mistaken_question(String question) {
        SERVICE.person(Role.LEAD)
                .get("/api/v1/" + question)
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo(question.replaceAll(".*\\?|=.*", "")));
    }
}
