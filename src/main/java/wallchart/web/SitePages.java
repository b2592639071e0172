package wallchart.web;

import io.javalin.http.Context;
import wallchart.web.request.Parameters;
import wallchart.web.view.SiteView;

/** What every page says alike: the department, its unit of length, its patient groups. */
final class SitePages {

    private final SiteFacts site;

    SitePages(SiteFacts site) {
        this.site = site;
    }

    void site(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, SiteView.of(site.name(), site.lengthUnit(), site.patientGroups(), site.invented()));
    }
}
