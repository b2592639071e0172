package wallchart;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.DepartmentDocument.ChangePart;
import wallchart.DepartmentDocument.RowPart;
import wallchart.DepartmentDocument.StepPart;
import wallchart.Refusals.Refused;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.people.Person;
import wallchart.signoff.Change;
import wallchart.signoff.ChangeKind;
import wallchart.signoff.Outcome;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Actor;

/** The changes that the demo's people are said to have proposed, returned and signed. */
final class DemoChanges {

    private final SignoffDesk desk;
    private final List<ChangePart> parts;

    DemoChanges(SignoffDesk desk, List<ChangePart> parts) {
        this.desk = desk;
        this.parts = parts;
    }

    /** One step of one change. */
    interface Step {
        int daysAgo();

        void take(Clock then, Map<String, Person> people);
    }

    List<Step> steps() {
        var steps = new ArrayList<Step>();
        parts.forEach(part -> {
            var told = new ToldChange(part);
            part.steps().forEach(step -> steps.add(told.step(step)));
        });
        return steps;
    }

    /** One change, as far as it has been told. */
    private final class ToldChange {

        private final ChangePart part;
        private Change change;

        ToldChange(ChangePart part) {
            this.part = part;
        }

        Step step(StepPart step) {
            return new Step() {
                @Override
                public int daysAgo() {
                    return step.daysAgo();
                }

                @Override
                public void take(Clock then, Map<String, Person> people) {
                    ToldChange.this.take(
                            desk.at(then), then, people.get(step.by()).asActor(), step);
                }
            };
        }

        private void take(SignoffDesk at, Clock then, Actor by, StepPart step) {
            edit(at, by, step.rows() == null ? List.of() : step.rows());
            change = done(
                    switch (step.act()) {
                        case "open" -> opened(at, by);
                        case "submit" -> at.submit(by, change.id(), revision());
                        case "return" -> at.giveBack(by, change.id(), revision(), step.words());
                        case "decline" -> at.decline(by, change.id(), revision(), step.words());
                        case "concur" -> at.concur(by, change.id(), revision(), Optional.empty());
                        case "sign" -> signed(at, then, by, step);
                        default -> throw new Refused(part.title() + ": no step is called " + step.act());
                    });
            if (step.act().equals("open")) {
                edit(at, by, part.rows());
            }
        }

        private Outcome opened(SignoffDesk at, Actor by) {
            var kind = ChangeKind.find(part.kind()).orElseThrow();
            return at.open(by, part.room(), part.title(), part.reason(), at.newest(part.room()), kind);
        }

        private Outcome signed(SignoffDesk at, Clock then, Actor by, StepPart step) {
            var from = Optional.ofNullable(step.inForceInDays())
                    .map(days -> then.instant().plus(Duration.ofDays(days)));
            var impact = at.impact(change.id()).orElseThrow().digest();
            return at.sign(by, change.id(), revision(), step.words(), from, impact, Optional.empty());
        }

        private void edit(SignoffDesk at, Actor by, List<RowPart> rows) {
            for (var row : rows) {
                var now = find(at, row.row());
                var fields = new LinkedHashMap<>(RowFields.of(now));
                fields.putAll(row.set());
                change = done(at.putRow(by, change.id(), revision(), now.key(), fields));
            }
        }

        private Row find(SignoffDesk at, String key) {
            return at.proposal(change.id()).orElseThrow().after().rows().stream()
                    .filter(row -> row.key().toString().equals(key))
                    .findFirst()
                    .orElseThrow(() -> new Refused(part.title() + ": room " + part.room() + " has no row " + key));
        }

        private int revision() {
            return change.head().revision();
        }

        private Change done(Outcome outcome) {
            if (outcome instanceof Outcome.Done done) {
                return done.change();
            }
            var refused = (Outcome.Refused) outcome;
            throw new Refused(part.title() + ": " + refused.detail() + " " + refused.findings() + refused.problems());
        }
    }
}
