package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import wallchart.people.People;
import wallchart.people.Person;
import wallchart.people.Registration;
import wallchart.web.problem.Failures;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.AccountBodies;
import wallchart.web.request.Parameters;
import wallchart.web.request.PathParameters;
import wallchart.web.view.PersonView;

/** The accounts of the department's people. */
final class PeoplePages {

    private static final String ASK_AGAIN = "private, no-cache";

    private final People people;

    PeoplePages(People people) {
        this.people = people;
    }

    void list(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, PersonView.All.of(people.list()));
    }

    void person(Context ctx) {
        Parameters.none(ctx.queryString());
        var person = find(ctx);
        if (!Answers.isKnown(ctx, tag(person), ASK_AGAIN)) {
            Answers.json(ctx, PersonView.of(person));
        }
    }

    void add(Context ctx) {
        Parameters.none(ctx.queryString());
        var person = AccountBodies.person(ctx);
        var added = done(people.add(Doorkeeper.actor(ctx), person));
        ctx.status(HttpStatus.CREATED).header("Location", "/api/v1/people/" + added.id());
        answer(ctx, added);
    }

    void changeRole(Context ctx) {
        Parameters.none(ctx.queryString());
        var role = AccountBodies.role(ctx);
        var seen = seen(ctx);
        answer(ctx, done(people.changeRole(Doorkeeper.actor(ctx), seen.id(), seen.revision(), role)));
    }

    void setPassword(Context ctx) {
        Parameters.none(ctx.queryString());
        var password = AccountBodies.password(ctx);
        var seen = seen(ctx);
        answer(ctx, done(people.setPassword(Doorkeeper.actor(ctx), seen.id(), seen.revision(), password)));
    }

    void disable(Context ctx) {
        Parameters.none(ctx.queryString());
        var reason = AccountBodies.reason(ctx);
        var seen = seen(ctx);
        answer(ctx, done(people.disable(Doorkeeper.actor(ctx), seen.id(), seen.revision(), reason)));
    }

    void enable(Context ctx) {
        Parameters.none(ctx.queryString());
        var reason = AccountBodies.reason(ctx);
        var seen = seen(ctx);
        answer(ctx, done(people.enable(Doorkeeper.actor(ctx), seen.id(), seen.revision(), reason)));
    }

    private Person find(Context ctx) {
        long id = PathParameters.id(ctx);
        return people.find(id)
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.UNKNOWN_PERSON, "person " + id + " is unknown: see GET /api/v1/people"));
    }

    /** The account as the caller saw it. */
    private Person seen(Context ctx) {
        var person = find(ctx);
        IfMatch.require(ctx, tag(person));
        return person;
    }

    private static Person done(Registration result) {
        if (result instanceof Registration.Refused refused) {
            throw new RequestRefused(Failures.of(refused, "/password"));
        }
        return ((Registration.Registered) result).person();
    }

    private static void answer(Context ctx, Person person) {
        ctx.header("ETag", "\"" + tag(person) + "\"");
        Answers.json(ctx, PersonView.of(person));
    }

    private static String tag(Person person) {
        return "person-" + person.id() + "-" + person.revision();
    }
}
